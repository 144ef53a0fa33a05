// SPDX-License-Identifier: MIT
#pragma once

#include "app/stepmodel.h"

#include <QVariantMap>

namespace matside {

/// The Trim station's four sides of the block in hand: where the ruler lies for each, and the second
/// reference that must agree. The sides are counted while the block lies there; the block is logged with its
/// fourth.
class TrimModel : public QObject, public Single<TrimModel> {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool trimming READ trimming NOTIFY changed FINAL)
    Q_PROPERTY(int side READ side NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView figure READ figure NOTIFY changed FINAL)
    Q_PROPERTY(matside::FigureView second READ second NOTIFY changed FINAL)
    Q_PROPERTY(QString firstSays READ firstSays NOTIFY changed FINAL)
    Q_PROPERTY(QString secondSays READ secondSays NOTIFY changed FINAL)
    Q_PROPERTY(QString checkSays READ checkSays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap apart READ apart NOTIFY changed FINAL)
    Q_PROPERTY(QString actionText READ actionText NOTIFY changed FINAL)
public:
    TrimModel(Workspace &workspace, StepModel &steps);
    using Single<TrimModel>::create;

    [[nodiscard]] bool trimming() const;
    /// 1…4.
    [[nodiscard]] int side() const { return m_side; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] FigureView figure() const;
    /// Sides 3 and 4: the other reading that must agree.
    [[nodiscard]] FigureView second() const;
    [[nodiscard]] QString firstSays() const;
    [[nodiscard]] QString secondSays() const;
    [[nodiscard]] QString checkSays() const;
    [[nodiscard]] QString actionText() const;
    /// The strip that comes apart, empty at another step: {lengthMm, widthMm, blockMm [along, across],
    /// starts, cuts: the middle of each gap, done: blocks already off it}. On cloth as the blocks have drawn
    /// it in.
    [[nodiscard]] QVariantMap apart() const;

    /// The side is cut; the fourth logs the block.
    Q_INVOKABLE void cut();
    /// One side back; before the first, the step's own way back.
    Q_INVOKABLE void back();

signals:
    void changed();

private:
    void follow();

    Workspace &m_workspace;
    StepModel &m_steps;
    int m_side = 1;
    int m_done = -1;
};

} // namespace matside
