// SPDX-License-Identifier: MIT
#pragma once

#include "app/departure.h"
#include "app/findings.h"
#include "app/stepmodel.h"
#include "app/trimhold.h"

#include <QVariantList>
#include <QVariantMap>

namespace matside {

/// The Trim station's four sides of the block in hand: where the ruler lies for each, and the second
/// reference that must agree. Each side cut is kept at once; the block is logged with its fourth.
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
    Q_PROPERTY(QVariantList corners READ corners NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList planned READ planned NOTIFY changed FINAL)
    Q_PROPERTY(double times READ times NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap apart READ apart NOTIFY changed FINAL)
    Q_PROPERTY(QVariantMap lies READ lies NOTIFY changed FINAL)
    Q_PROPERTY(QString actionText READ actionText NOTIFY changed FINAL)
    Q_PROPERTY(QString way READ way NOTIFY changed FINAL)
    Q_PROPERTY(QString anywayText READ anywayText NOTIFY changed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL)
    Q_PROPERTY(QString remedy READ remedy NOTIFY changed FINAL)
    Q_PROPERTY(QString remembered READ remembered NOTIFY changed FINAL)
public:
    TrimModel(Workspace &workspace, StepModel &steps);
    using Single<TrimModel>::create;

    [[nodiscard]] bool trimming() const;
    /// 1…4.
    [[nodiscard]] int side() const;
    [[nodiscard]] QString title() const;
    /// The block's own where a finding moves the ruler's line; none where it is not to be cut as it is.
    [[nodiscard]] FigureView figure() const;
    /// Sides 3 and 4: the other reading that must agree; none where the cut side decides alone.
    [[nodiscard]] FigureView second() const;
    [[nodiscard]] QString firstSays() const;
    [[nodiscard]] QString secondSays() const;
    [[nodiscard]] QString checkSays() const;
    /// The one thing to do: to cut only where the ruler's line holds.
    [[nodiscard]] QString actionText() const;
    /// "cut", "measure" the block in hand, measure the "others", see the "common" size.
    [[nodiscard]] QString way() const;
    /// She judges: cut although its measures say not to. Empty where there is no such choice, as long as the
    /// block is not measured or its readings disagree.
    [[nodiscard]] QString anywayText() const;
    /// What the block's own measures say of it, lengths in braces; empty when none were taken and its
    /// logged size is as planned.
    [[nodiscard]] QString verdict() const;
    /// What to do about it.
    [[nodiscard]] QString remedy() const;
    /// What was noted of the block in hand when it was stitched, on one line; empty where nothing was.
    [[nodiscard]] QString remembered() const { return m_remembered; }
    /// The block as it was read or logged, its departure drawn so many times over, where no figure holds for
    /// it; and the size it should have.
    [[nodiscard]] QVariantList corners() const;
    [[nodiscard]] QVariantList planned() const;
    [[nodiscard]] double times() const { return m_drawn ? timesDrawn(departingOf(*m_drawn)) : 1; }
    /// The strip that comes apart, empty at another step: {lengthMm, widthMm, blockMm [along, across],
    /// starts, names: of its blocks, cuts: the middle of each gap, done: blocks already off it}. On cloth as
    /// the blocks have drawn it in.
    [[nodiscard]] QVariantMap apart() const;

    /// How the block lies for this side, empty at another step: {alongMm, acrossMm: of the trimmed block,
    /// across the blade and with it, allowanceMm, side, block: its name, turns: quarters clockwise that it
    /// lies turned by}. Of a crooked one that is cut also names: its sides as they lie (at the blade, at the
    /// foot, across from the blade, at the head), off: how far its stitched corners lie off their planned
    /// places, {x, y} mm from the top left clockwise, so many times over, and times; for the left hand the
    /// other way round, as the drawing is.
    [[nodiscard]] QVariantMap lies() const;

    /// The side is cut; the fourth logs the block. Nothing where the way is another.
    Q_INVOKABLE void cut();
    /// The side is cut although the measures say not to, where she may.
    Q_INVOKABLE void cutAnyway();

signals:
    void changed();

private:
    [[nodiscard]] QVariantMap crooked() const;
    /// Clockwise from how the block stands upright.
    [[nodiscard]] int quartersTurned() const;
    /// Judges the block in hand anew.
    void look();
    void cutSide();
    /// Which of the block's own sides lies at the blade.
    [[nodiscard]] Side own() const;

    Workspace &m_workspace;
    StepModel &m_steps;
    std::optional<Finding> m_finding; ///< on the block's stitched outline; nothing when it was not measured
    std::optional<Finding> m_drawn;   ///< the same, or by its logged size, where no figure holds
    std::optional<Pair> m_loggedOff;  ///< its stitched size, where that was logged off the planned one
    TrimHold m_hold;
    Side m_first = Side::Right; ///< the block's own side that is cut first
    TrimWay m_way = TrimWay::Cut;
    QString m_remembered;
    QString m_other; ///< the next block that has no size yet
};

} // namespace matside
