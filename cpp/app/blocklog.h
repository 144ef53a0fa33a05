// SPDX-License-Identifier: MIT
#pragma once

#include "app/photokeeper.h"
#include "app/picturepicker.h"
#include "app/session.h"
#include "app/views.h"

#include <QVariantList>

namespace matside {

/// The log of one finished block: a picture of each face, the outline as measured from the size it should
/// have, what to remember of it. Saving is one undoable command with the block's own record; nothing waits
/// for a disk. Photographs taken are kept even when the program is closed before they are saved.
class BlockLog : public QObject, public Single<BlockLog> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString block READ block WRITE setBlock NOTIFY changed FINAL)
    Q_PROPERTY(int strip READ strip WRITE setStrip NOTIFY changed FINAL)
    Q_PROPERTY(QString head READ head NOTIFY changed FINAL)
    Q_PROPERTY(QString placeSays READ placeSays NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView along READ along NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView across READ across NOTIFY changed FINAL)
    Q_PROPERTY(QString plannedSays READ plannedSays NOTIFY changed FINAL)
    Q_PROPERTY(bool asPlanned READ asPlanned NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList flags READ flags NOTIFY changed FINAL)
    Q_PROPERTY(bool flagged READ flagged NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    Q_PROPERTY(int face READ face WRITE setFace NOTIFY changed FINAL)
    Q_PROPERTY(QUrl front READ front NOTIFY changed FINAL)
    Q_PROPERTY(QUrl back READ back NOTIFY changed FINAL)
    Q_PROPERTY(bool keeping READ keeping NOTIFY changed FINAL)
    Q_PROPERTY(bool canSave READ canSave NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(matside::PhotoSource *camera READ camera CONSTANT FINAL)
    Q_PROPERTY(matside::PicturePicker *picker READ picker CONSTANT FINAL)
public:
    /// The sources outlive the log.
    BlockLog(Workspace &workspace, PhotoKeeper &keeper, PhotoSource &camera, PicturePicker &picker);
    using Single<BlockLog>::create;

    [[nodiscard]] QString block() const { return m_block; }
    /// Takes up a block of the open project: what was logged of it, else the size it should have.
    void setBlock(const QString &block);
    /// The strip it is stitched on, where that is not known yet; 0: the first one open.
    [[nodiscard]] int strip() const { return m_strip; }
    void setStrip(int strip);
    [[nodiscard]] QString head() const;
    [[nodiscard]] QString placeSays() const;
    [[nodiscard]] FigureView along() const;
    [[nodiscard]] FigureView across() const;
    [[nodiscard]] QString plannedSays() const;
    [[nodiscard]] bool asPlanned() const;
    /// {code, says, chosen}
    [[nodiscard]] QVariantList flags() const;
    /// Something is to be remembered of it.
    [[nodiscard]] bool flagged() const { return !m_flags.isEmpty() || !m_words.isEmpty(); }
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString &words);
    /// The face the next picture is of: 0 front, 1 back.
    [[nodiscard]] int face() const { return m_face; }
    void setFace(int face);
    [[nodiscard]] QUrl front() const { return thumb(0); }
    [[nodiscard]] QUrl back() const { return thumb(1); }
    [[nodiscard]] bool keeping() const { return m_keeping; }
    [[nodiscard]] bool canSave() const;
    /// Why the last picture or the last saving did not go through, with what to do.
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] PhotoSource *camera() const { return &m_camera; }
    [[nodiscard]] PicturePicker *picker() const { return &m_picker; }

    /// So many marks of the finest ruler more or less; the first one goes to the next mark.
    Q_INVOKABLE void stepAlong(int marks);
    Q_INVOKABLE void stepAcross(int marks);
    Q_INVOKABLE void setAsPlanned();
    Q_INVOKABLE void toggleFlag(const QString &code);
    /// The picture of a face is not wanted; it goes with the next start.
    Q_INVOKABLE void dropPicture(int face);
    Q_INVOKABLE void dismissProblem();
    /// Saves; saved() follows, once a picture on its way is kept. False when it cannot be.
    Q_INVOKABLE bool save();

signals:
    void changed();
    void saved(const QString &block);
    /// A picture of this face is on the disk.
    void pictureKept(int face);

private:
    void load();
    void receive(const QString &path, bool passing);
    void take(const PhotoPlace &place, const Photograph &photo);
    void refuse(const PhotoPlace &place, const QString &says);
    void step(Length &value, Length planned, int marks);
    bool commit();
    [[nodiscard]] bool isHere(const PhotoPlace &place) const;
    [[nodiscard]] QUrl thumb(std::size_t face) const;
    [[nodiscard]] std::optional<std::size_t> record() const;
    [[nodiscard]] const Step *stitching() const;

    Workspace &m_workspace;
    PhotoKeeper &m_keeper;
    PhotoSource &m_camera;
    PicturePicker &m_picker;
    QString m_block;
    int m_strip = 0;
    Length m_along;
    Length m_across;
    QStringList m_flags;
    QString m_words;
    std::array<std::optional<Photograph>, 2> m_faces;
    int m_face = 0;
    bool m_keeping = false;
    bool m_saveWhenKept = false;
    QString m_problem;
};

/// What can be noted of a block by one touch, in words; the code itself when it is none of ours.
[[nodiscard]] QString flagSays(const QString &code);

} // namespace matside
