// SPDX-License-Identifier: MIT
#include "plan/parts.h"
#include "plan/sums.h"

#include <array>

namespace matside {

namespace {

using Answer = std::optional<Working>;

Answer outlineAlong(const Sums &a)
{
    return Tell("F13", "columns * outline + (columns - 1) * finished", a.plan.size.outline.along)
        .given("columns", a.project.blocks.columns, "/blocks/columns")
        .given("outline", a.plan.block.outline.along, "/blocks/width")
        .from("finished", a.plan.sashing.finished, "sashing.finished");
}
Answer outlineAcross(const Sums &a)
{
    return Tell("F13", "rows * outline + (rows - 1) * finished", a.plan.size.outline.across)
        .given("rows", a.project.blocks.rows, "/blocks/rows")
        .given("outline", a.plan.block.outline.across, "/blocks/height")
        .from("finished", a.plan.sashing.finished, "sashing.finished");
}
Answer rawAlong(const Sums &a)
{
    return Tell("F13", "columns * trimmed + (columns - 1) * allowanceGap", a.plan.size.raw.along)
        .given("columns", a.project.blocks.columns, "/blocks/columns")
        .from("trimmed", a.plan.block.trimmed.along, "block.trimmed.along")
        .from("allowanceGap", a.plan.sashing.allowanceGap, "sashing.allowanceGap");
}
Answer rawAcross(const Sums &a)
{
    return Tell("F13", "rows * trimmed + (rows - 1) * allowanceGap", a.plan.size.raw.across)
        .given("rows", a.project.blocks.rows, "/blocks/rows")
        .from("trimmed", a.plan.block.trimmed.across, "block.trimmed.across")
        .from("allowanceGap", a.plan.sashing.allowanceGap, "sashing.allowanceGap");
}
Answer finishedSize(const Sums &a, Length value, Length outline, const char *figure)
{
    if (isBagged(a.project))
        return Tell("F11", "outlines", value).from("outlines", outline, figure);
    return Tell("F13", "outlines + 2 * outside", value)
        .from("outlines", outline, figure)
        .given("outside", a.plan.basis.outside, a.project.edge.outside ? "/edge/outside" : "/seam");
}
Answer frameWide(const Sums &a)
{
    if (!a.plan.frame)
        return std::nullopt;
    return Tell("F14", "outside - edgeSeam", a.plan.frame->width)
        .given("outside", a.plan.basis.outside, "/edge/outside")
        .given("edgeSeam", a.plan.basis.edgeSeam, "/edge/seam");
}
Answer frameCut(const Sums &a)
{
    if (!a.plan.frame)
        return std::nullopt;
    return Tell("F14", "seam + outside", a.plan.frame->cut)
        .given("seam", a.plan.basis.seam, "/seam")
        .given("outside", a.plan.basis.outside, "/edge/outside");
}
Answer frameFiller(const Sums &a)
{
    if (!a.plan.frame)
        return std::nullopt;
    return Tell("F14", "outside - allowance", a.plan.frame->filler)
        .given("outside", a.plan.basis.outside, "/edge/outside")
        .given("allowance", a.plan.basis.allowance,
               a.project.sashing.allowance ? "/sashing/allowance" : "/seam");
}
Answer frameSides(const Sums &a)
{
    if (!a.plan.frame)
        return std::nullopt;
    return Tell("F14", "across", a.plan.frame->sides)
        .from("across", a.plan.size.raw.across, "size.raw.across");
}
Answer frameEnds(const Sums &a)
{
    if (!a.plan.frame)
        return std::nullopt;
    return Tell("F14", "outlines + 2 * outside", a.plan.frame->ends)
        .from("outlines", a.plan.size.outline.along, "size.outline.along")
        .given("outside", a.plan.basis.outside, "/edge/outside");
}
Answer finishedAlong(const Sums &a)
{
    return finishedSize(a, a.plan.size.finished.along, a.plan.size.outline.along, "size.outline.along");
}
Answer finishedAcross(const Sums &a)
{
    return finishedSize(a, a.plan.size.finished.across, a.plan.size.outline.across, "size.outline.across");
}
Answer bindingWide(const Sums &a)
{
    if (!a.plan.binding)
        return std::nullopt;
    const bool twice = a.project.edge.binding == Binding::Double;
    return Tell("F14",
                twice ? "6 * edgeSeam + 2 * (loft + reachBack + turns)"
                      : "4 * edgeSeam + loft + reachBack + turns",
                a.plan.binding->width)
        .given("edgeSeam", a.plan.basis.edgeSeam, a.project.edge.seam ? "/edge/seam" : "/edge/outside")
        .given("loft", a.project.loft, "/loft")
        .fixed("reachBack", a.project.edge.sewn == Sewn::Hand ? a.m.bindingHand : a.m.bindingMachine)
        .fixed("turns", a.m.bindingTurn);
}
Answer bindingCut(const Sums &a)
{
    if (!a.plan.binding)
        return std::nullopt;
    return Tell("F14", "up(width, bindingStep)", a.plan.binding->cut)
        .from("width", a.plan.binding->width, "binding.width")
        .fixed("bindingStep", a.m.bindingStep);
}
/// Each arc is given: its angle takes a sine that a sum on paper does not show.
Answer scallopedLong(const Sums &a, const ScallopPlan &scallops)
{
    return Tell("F16", "2 * (along * arcAlong + across * arcAcross) + cut + slack", a.plan.binding->length,
                Round::UpQuarter)
        .given("along", scallops.along, "/edge/corner/along")
        .given("arcAlong", scallops.arc.along, "/edge/corner/depth")
        .given("across", scallops.across, "/edge/corner/across")
        .given("arcAcross", scallops.arc.across, "/edge/corner/depth")
        .from("cut", a.plan.binding->cut, "binding.cut")
        .given("slack", a.project.slack, "/slack");
}
Answer bindingLong(const Sums &a)
{
    if (!a.plan.binding)
        return std::nullopt;
    if (a.plan.binding->bias && a.plan.binding->bias->scallops)
        return scallopedLong(a, *a.plan.binding->bias->scallops);
    if (a.plan.binding->bias)
        return Tell("F16", "2 * (along + across) - radius * 194 / 113 + cut + slack", a.plan.binding->length,
                    Round::UpQuarter)
            .from("along", a.plan.size.finished.along, "size.finished.along")
            .from("across", a.plan.size.finished.across, "size.finished.across")
            .given("radius", a.plan.basis.cornerRadius,
                   a.project.edge.corner.kind == CornerKind::Rounded ? "/edge/corner/radius"
                                                                     : "/edge/corner/kind")
            .from("cut", a.plan.binding->cut, "binding.cut")
            .given("slack", a.project.slack, "/slack");
    return Tell("F15", "2 * (along + across) + cut + slack", a.plan.binding->length, Round::UpQuarter)
        .from("along", a.plan.size.finished.along, "size.finished.along")
        .from("across", a.plan.size.finished.across, "size.finished.across")
        .from("cut", a.plan.binding->cut, "binding.cut")
        .given("slack", a.project.slack, "/slack");
}
Answer biasOfSquare(const Sums &a)
{
    if (!a.plan.binding || !a.plan.binding->bias)
        return std::nullopt;
    const bool inch = a.project.system == System::Inch;
    return Tell("F16", "up(sqrt(length * cut) + tubeSeams, wholeStep)", a.plan.binding->bias->square)
        .from("length", a.plan.binding->length, "binding.length")
        .from("cut", a.plan.binding->cut, "binding.cut")
        .fixed("tubeSeams", inch ? Length::inches(3) : Length::mm(75))
        .fixed("wholeStep", inch ? Length::inches(1) : Length::mm(10));
}
Answer bindingStrips(const Sums &a)
{
    if (!a.plan.binding || a.plan.binding->bias)
        return std::nullopt;
    return Tell("F15", "ceil((2 * (along + across) + slack) / (usable - cut))", a.plan.binding->strips)
        .from("along", a.plan.size.finished.along, "size.finished.along")
        .from("across", a.plan.size.finished.across, "size.finished.across")
        .given("slack", a.project.slack, "/slack")
        .given("usable", a.plan.basis.usableBinding, "/cloths")
        .from("cut", a.plan.binding->cut, "binding.cut");
}
bool isRound(const Sums &a)
{
    return a.project.table->diameter.has_value();
}
/// The ends, with the leaf as it lies.
Answer ends(const Sums &a, const TableSeen &seen)
{
    const Table &table = *a.project.table;
    const Length bare = table.along(false).value_or(Length());
    const char *pointer = isRound(a) ? "/table/diameter" : "/table/length";
    if (!seen.leafIn)
        return Tell("F22", "(table - size) / 2", seen.reveal.along)
            .given("table", bare, pointer)
            .from("size", a.plan.size.finished.along, "size.finished.along");
    return Tell("F22", "(table + leaf - size) / 2", seen.reveal.along)
        .given("table", bare, pointer)
        .given("leaf", table.leafLying(true), "/table/leaf")
        .from("size", a.plan.size.finished.along, "size.finished.along");
}
Answer cornerOf(const Sums &a, const TableSeen &seen)
{
    const Table &table = *a.project.table;
    const Length leaf = table.leafLying(seen.leafIn);
    if (leaf >= a.plan.size.finished.along) // beside the straight rim
        return Tell("F22", "(table - across) / 2", seen.corner)
            .given("table", *table.diameter, "/table/diameter")
            .from("across", a.plan.size.finished.across, "size.finished.across");
    if (leaf > Length())
        return Tell("F22", "(table - sqrt((along - leaf) * (along - leaf) + across * across)) / 2",
                    seen.corner)
            .given("table", *table.diameter, "/table/diameter")
            .given("leaf", leaf, "/table/leaf")
            .from("along", a.plan.size.finished.along, "size.finished.along")
            .from("across", a.plan.size.finished.across, "size.finished.across");
    return Tell("F22", "(table - sqrt(along * along + across * across)) / 2", seen.corner)
        .given("table", *table.diameter, "/table/diameter")
        .from("along", a.plan.size.finished.along, "size.finished.along")
        .from("across", a.plan.size.finished.across, "size.finished.across");
}
Answer revealAlong(const Sums &a)
{
    return a.plan.table ? ends(a, *a.plan.table) : std::nullopt;
}
Answer revealAcross(const Sums &a)
{
    if (!a.plan.table)
        return std::nullopt;
    return Tell("F22", "(table - size) / 2", a.plan.table->reveal.across)
        .given("table", a.project.table->across().value_or(Length()),
               isRound(a) ? "/table/diameter" : "/table/width")
        .from("size", a.plan.size.finished.across, "size.finished.across");
}
Answer corner(const Sums &a)
{
    return a.plan.table && a.plan.table->round ? cornerOf(a, *a.plan.table) : std::nullopt;
}
Answer otherAlong(const Sums &a)
{
    return a.plan.table && a.plan.table->other ? ends(a, *a.plan.table->other) : std::nullopt;
}
Answer otherCorner(const Sums &a)
{
    if (!a.plan.table || !a.plan.table->round || !a.plan.table->other)
        return std::nullopt;
    return cornerOf(a, *a.plan.table->other);
}
bool bound(const Plan &plan)
{
    return plan.binding.has_value();
}
bool framed(const Plan &plan)
{
    return plan.frame.has_value();
}
bool stripsKnown(const Plan &plan)
{
    return plan.binding && plan.binding->strips > 0 && !plan.binding->bias;
}
bool onTable(const Plan &plan)
{
    return plan.table.has_value();
}
bool onRound(const Plan &plan)
{
    return plan.table && plan.table->round;
}
bool otherIs(const Plan &plan, bool in)
{
    return plan.table && plan.table->other && plan.table->other->leafIn == in;
}
bool leafIn(const Plan &plan)
{
    return otherIs(plan, true);
}
bool leafOut(const Plan &plan)
{
    return otherIs(plan, false);
}
bool roundLeafIn(const Plan &plan)
{
    return otherIs(plan, true) && plan.table->round;
}
bool roundLeafOut(const Plan &plan)
{
    return otherIs(plan, false) && plan.table->round;
}

constexpr std::array sums{
    Sum{"size.outline.along", outlineAlong},
    Sum{"size.outline.across", outlineAcross},
    Sum{"size.raw.along", rawAlong},
    Sum{"size.raw.across", rawAcross},
    Sum{"size.finished.along", finishedAlong},
    Sum{"size.finished.across", finishedAcross},
    Sum{"frame.width", frameWide, framed},
    Sum{"frame.cut", frameCut, framed},
    Sum{"frame.filler", frameFiller, framed},
    Sum{"frame.sides", frameSides, framed},
    Sum{"frame.ends", frameEnds, framed},
    Sum{"binding.width", bindingWide, bound},
    Sum{"binding.cut", bindingCut, bound},
    Sum{"binding.length", bindingLong, bound},
    Sum{"binding.strips", bindingStrips, stripsKnown},
    Sum{"binding.square", biasOfSquare, onBias},
    Sum{"table.reveal.along", revealAlong, onTable},
    Sum{"table.reveal.across", revealAcross, onTable},
    Sum{"table.corner", corner, onRound},
    Sum{"table.leafIn.along", otherAlong, leafIn},
    Sum{"table.leafIn.corner", otherCorner, roundLeafIn},
    Sum{"table.leafOut.along", otherAlong, leafOut},
    Sum{"table.leafOut.corner", otherCorner, roundLeafOut},
};

} // namespace

std::span<const Sum> edgeSums()
{
    return sums;
}

} // namespace matside
