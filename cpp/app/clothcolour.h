// SPDX-License-Identifier: MIT
#pragma once

#include "app/photokeeper.h"
#include "app/picturepicker.h"
#include "app/session.h"
#include "shade/sample.h"
#include "shade/value.h"

#include <QImage>
#include <QVariantList>

namespace matside {

/// The colour of one cloth while she looks for it: out of a palette, by steps, or off a photograph. Nothing
/// is saved before she takes it. The photograph is only looked at, in the colours of its own profile, and
/// kept nowhere.
class ClothColour : public QObject, public Single<ClothColour> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString cloth READ cloth WRITE setCloth NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString colour READ colour NOTIFY changed FINAL)
    Q_PROPERTY(QString grey READ grey NOTIFY changed FINAL)
    Q_PROPERTY(QString says READ says NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList palette READ palette NOTIFY reworded FINAL)
    Q_PROPERTY(QVariantList paletteByHue READ paletteByHue NOTIFY reworded FINAL)
    Q_PROPERTY(bool canTake READ canTake NOTIFY changed FINAL)
    Q_PROPERTY(QUrl picture READ picture NOTIFY changed FINAL)
    Q_PROPERTY(bool looking READ looking NOTIFY changed FINAL)
    Q_PROPERTY(bool sampled READ sampled NOTIFY changed FINAL)
    Q_PROPERTY(QString pictureSays READ pictureSays NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(double spotX READ spotX NOTIFY changed FINAL)
    Q_PROPERTY(double spotY READ spotY NOTIFY changed FINAL)
    Q_PROPERTY(matside::PhotoSource *camera READ camera CONSTANT FINAL)
    Q_PROPERTY(matside::PicturePicker *picker READ picker CONSTANT FINAL)
public:
    /// The sources outlive this.
    ClothColour(Workspace &workspace, Session &session, PhotoKeeper &keeper, PhotoSource &camera,
                PicturePicker &picker);
    ~ClothColour() override;
    using Single<ClothColour>::create;

    /// A circle about the place that is tapped, as a share of the picture's shorter side.
    static constexpr double reach = 1.0 / 40;

    [[nodiscard]] QString cloth() const { return m_cloth; }
    /// Takes up a cloth with the colour it has; an empty id lays all of it aside.
    void setCloth(const QString &cloth);
    [[nodiscard]] QString name() const;
    /// "#rrggbb"; empty while nothing was chosen for a cloth without a colour.
    [[nodiscard]] QString colour() const;
    [[nodiscard]] QString grey() const;
    [[nodiscard]] QString says() const;
    /// Seven to a row, lightest first; by hue: five to a row, a hue a row. {value, says}
    [[nodiscard]] QVariantList palette() const;
    [[nodiscard]] QVariantList paletteByHue() const;
    /// There is a colour, and it is not the one the cloth has.
    [[nodiscard]] bool canTake() const;
    /// The photograph looked at; empty when there is none.
    [[nodiscard]] QUrl picture() const;
    /// A photograph is being opened.
    [[nodiscard]] bool looking() const { return m_looking; }
    /// The colour is that of a place in the photograph.
    [[nodiscard]] bool sampled() const { return m_sample.has_value(); }
    /// What to do with the photograph, or what the place that was tapped is like.
    [[nodiscard]] QString pictureSays() const;
    /// Why the last picture cannot be looked at.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// The place tapped, as shares of the picture's width and height.
    [[nodiscard]] double spotX() const { return m_spot.x(); }
    [[nodiscard]] double spotY() const { return m_spot.y(); }
    [[nodiscard]] PhotoSource *camera() const { return &m_camera; }
    [[nodiscard]] PicturePicker *picker() const { return &m_picker; }

    Q_INVOKABLE void choose(const QString &colour);
    /// `what`: "lightness" (half a step of the scale), "hue" (15°) or "strength" (a tenth).
    Q_INVOKABLE void nudge(const QString &what, int steps);
    /// The colour about a place of the picture, given as shares of its width and height.
    Q_INVOKABLE void tap(double across, double down);
    Q_INVOKABLE void dropPicture();
    /// Saves the colour with the cloth; one command that can be undone.
    Q_INVOKABLE bool take();

signals:
    void changed();
    void reworded();
    /// A photograph can be tapped.
    void opened();

private:
    void receive(const QString &path, bool passing);
    [[nodiscard]] const Cloth *listed() const;

    Workspace &m_workspace;
    Session &m_session;
    PhotoKeeper &m_keeper;
    PhotoSource &m_camera;
    PicturePicker &m_picker;
    QString m_cloth;
    std::optional<Colour> m_colour;
    Shade m_shade; ///< the colour as it is stepped: steps forth and back come out where they began
    QString m_path;
    bool m_passing = false; ///< the file is ours to remove
    QImage m_image;
    bool m_looking = false;
    int m_asked = 0; ///< which picture was asked for last
    std::optional<Sample> m_sample;
    QPointF m_spot;
    QString m_problem;
};

} // namespace matside
