// SPDX-License-Identifier: MIT
#include "app/trimhold.h"

#include "app/findings.h"
#include "app/joinwords.h"
#include "app/trimmodel.h"
#include "app/wording.h"

namespace matside {

namespace {

TrimLines linesThatHold(FindingKind kind)
{
    switch (kind) {
    case FindingKind::Plain:
        return TrimLines::BothLines;
    case FindingKind::Split:
    case FindingKind::Tilted:
    case FindingKind::Taper:
        return TrimLines::CutSide;
    default:
        return TrimLines::Nothing;
    }
}

} // namespace

Pair stitchedAs(const MadeBlock &block, const Plan &plan, Marks marks)
{
    if (block.outline)
        return {(*block.outline)[0], (*block.outline)[1]};
    return stitchedFor(block, plan, marks).value_or(plan.block.outline);
}

std::optional<Pair> stitchedFor(const MadeBlock &block, const Plan &plan, Marks marks)
{
    const Pair &sent = plan.block.sent;
    if (!block.sent || sent.along <= Length() || sent.across <= Length())
        return std::nullopt;
    // What was sent to the machine larger than today's comes out larger by as much.
    const Length fine = stepOf(Round::Fine, marks);
    const auto drawnUp = [&](Length outline, Length was, Length is) {
        return was == is ? outline : outline.scaled(was.count(), is.count()).nearestTo(fine);
    };
    return Pair{drawnUp(plan.block.outline.along, (*block.sent)[0], sent.along),
                drawnUp(plan.block.outline.across, (*block.sent)[1], sent.across)};
}

Side firstCutSide(const std::optional<Finding> &finding, bool begunByLine, Hand hand)
{
    const bool tilts = finding && finding->cut &&
                       (finding->kind == FindingKind::Tilted || finding->kind == FindingKind::Taper);
    if (tilts && !begunByLine)
        return finding->cut->order.front();
    return hand == Hand::Left ? Side::Left : Side::Right;
}

Side sideAtBlade(Side first, int cut, Hand hand)
{
    const int on = hand == Hand::Left ? cut - 1 : 5 - cut;
    return static_cast<Side>((static_cast<int>(first) + on) % 4);
}

TrimHold trimHoldOf(const TrimBlock &block, const Plan &plan, Marks marks)
{
    TrimHold hold;
    hold.line = plan.basis.allowance;
    hold.holds = block.finding ? linesThatHold(block.finding->kind)
                 : block.off   ? TrimLines::Nothing
                               : TrimLines::BothLines;
    if (hold.holds == TrimLines::Nothing)
        return hold;
    // Centred on its own size (F23): a larger block loses as much on both sides, a smaller one shows as much.
    const bool along = block.own == Side::Left || block.own == Side::Right;
    const Pair &own = block.finding ? block.finding->own : block.stitched;
    hold.stitches = along ? own.along : own.across;
    const Length trimmed = along ? plan.block.trimmed.along : plan.block.trimmed.across;
    const Length fine = stepOf(Round::Fine, marks);
    // What was cut before its size was known is cut: then the rest of it lies on this side.
    const Length line =
        block.opposite ? trimmed - hold.stitches - *block.opposite : (trimmed - hold.stitches).scaled(1, 2);
    hold.own = (line - plan.basis.allowance).magnitude() >= fine;
    if (hold.own)
        hold.line = line.nearestTo(fine);
    return hold;
}

TrimWay trimWayOf(const TrimHold &hold, const std::optional<Finding> &finding,
                  const std::optional<CommonSize> &common, const Plan &plan, const QString &other)
{
    if (hold.holds != TrimLines::Nothing)
        return TrimWay::Cut;
    if (!finding || finding->kind != FindingKind::CommonSize)
        return TrimWay::Measure;
    if (common && common->outline != plan.block.outline)
        return TrimWay::Common;
    return other.isEmpty() ? TrimWay::Measure : TrimWay::Others;
}

QString trimWaySays(TrimWay way, const std::optional<Finding> &finding, int side, const QString &other)
{
    switch (way) {
    case TrimWay::Cut:
        //: the blade has cut this side and is closed again
        return TrimModel::tr("Side %1 cut, blade closed").arg(side);
    case TrimWay::Others:
        //: %1 is the name of another block, "A2"
        return TrimModel::tr("Measure %1 too").arg(other);
    case TrimWay::Common:
        //: on a button: it shows what a common size of all blocks would mean, before it is taken
        return TrimModel::tr("See the common size");
    case TrimWay::Measure:
        break;
    }
    if (!finding)
        return TrimModel::tr("Measure the block");
    return finding->does == Remedy::RestitchLine
               //: the outer line was unpicked and stitched anew: the block is measured again
               ? TrimModel::tr("Stitched again: measure it")
               : TrimModel::tr("Measure it again");
}

QString trimFirstSays(const TrimHold &hold, const Plan &plan, Marks marks, int side)
{
    QString lies = trimLineLies(side);
    if (side < 3 && hold.own)
        //: %1 is where the ruler's line lies, "on the outer stitches"; %2 the planned line, %3 the size
        //: within the block's stitches, not that it is cut to
        return TrimModel::tr("%1, not %2: it centres this block, stitched %3")
            .arg(lies, braced(plan.basis.allowance, marks), braced(hold.stitches, marks));
    if (side > 2 && hold.holds == TrimLines::CutSide)
        //: %1 is the side the ruler's line lies on, "on cut side 1"
        return TrimModel::tr("%1, which decides: the stitches may lie off their line").arg(lies);
    return lies;
}

QString trimHoldCheck(const TrimHold &hold, const std::optional<Finding> &finding, Marks marks, int side)
{
    if (hold.holds != TrimLines::CutSide || !finding)
        return trimCheck(side);
    if (side == 1 && finding->kind == FindingKind::Split)
        //: the ruler is turned half the lean: its line and the stitched line cross in the middle of the side
        return TrimModel::tr("Line and stitches cross mid-side; they part by %1 at both corners.")
            .arg(laidByRuler(finding->figures.lean.magnitude().scaled(1, 4), marks));
    if (side == 1 && finding->cut)
        //: %1 is a side of the block: "bottom"
        return TrimModel::tr("Begin with the truest side: %1. A cross line through the outline’s corner.")
            .arg(readingText(static_cast<std::size_t>(finding->cut->order.front())));
    return side > 2 ? TrimModel::tr("Turn it a quarter again. A cross line on the side cut before.")
                    : trimCheck(side);
}

QString noFigureSays(const std::optional<Finding> &finding, const std::optional<CommonSize> &common,
                     const Plan &plan, Marks marks)
{
    const QString planned = sizeText(plan.block.trimmed, marks);
    if (!finding)
        //: cut: the size of the trimmed block, not that within its stitches
        return TrimModel::tr("Planned cut %1. No figure holds before it is measured.").arg(planned);
    if (finding->kind == FindingKind::MeasureAgain)
        return TrimModel::tr("Planned cut %1. No figure holds before its readings agree.").arg(planned);
    if (finding->kind != FindingKind::CommonSize)
        return TrimModel::tr("Planned cut %1, but it is not to be cut as it is.").arg(planned);
    if (!common || common->outline == plan.block.outline)
        return TrimModel::tr("Planned cut %1. No figure holds before the common size is known.").arg(planned);
    const Length both = plan.basis.allowance * 2;
    //: the common size of the blocks measured, taken for all that are not cut yet
    return TrimModel::tr("Planned cut %1. If the common size is taken, cut %2.")
        .arg(planned, sizeText({common->outline.along + both, common->outline.across + both}, marks));
}

} // namespace matside
