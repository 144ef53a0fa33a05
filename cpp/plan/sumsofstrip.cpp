// SPDX-License-Identifier: MIT
#include "plan/parts.h"
#include "plan/sums.h"

#include <array>

namespace matside {

namespace {

using Answer = std::optional<Working>;

Answer width(const Sums &a)
{
    return Tell("F1", "max(hoop + 2 * margin, sent + 2 * (seam + fray))", a.plan.strip.width)
        .given("hoop", a.plan.basis.hoopOutside.across, "/hoop/outside")
        .given("margin", a.project.strip.margin, "/strip/margin")
        .from("sent", a.plan.block.sent.across, "block.sent.across")
        .given("seam", a.plan.basis.seam, "/seam")
        .fixed("fray", a.m.fray);
}
Answer reach(const Sums &a)
{
    return Tell("F2", "(hoop - outline) / 2", a.plan.strip.reach)
        .given("hoop", a.plan.basis.hoopOutside.along, "/hoop/outside")
        .given("outline", a.plan.block.outline.along, "/blocks/width");
}
/// The widest sashing a gap is to yield, and what truing takes.
void tellWidest(const Sums &a, Tell &tell)
{
    const bool back = a.plan.sashing.cutBack && *a.plan.sashing.cutBack > a.plan.sashing.cutFront;
    tell.from("widest", back ? *a.plan.sashing.cutBack : a.plan.sashing.cutFront,
              back ? "sashing.cutBack" : "sashing.cutFront");
    tell.fixed("truing", a.m.truing);
}
Answer gap(const Sums &a)
{
    if (a.project.strip.gap)
        return Tell("F3", "gap", a.plan.strip.gap, Round::UpEighth)
            .given("gap", *a.project.strip.gap, "/strip/gap");
    std::string formula = "2 * seam + sliver";
    if (!a.project.strip.frameMayOverlap)
        formula += ", reach";
    const bool yields = a.project.strip.harvest && a.project.strip.harvestGaps == 0;
    if (yields)
        formula += ", 2 * seam + widest + truing";
    Tell tell("F3", "up(max(" + formula + "), eighth)", a.plan.strip.gap, Round::UpEighth);
    tell.given("seam", a.plan.basis.seam, "/seam").given("sliver", a.project.strip.sliver, "/strip/sliver");
    if (!a.project.strip.frameMayOverlap)
        tell.from("reach", a.plan.strip.reach, "strip.reach");
    if (yields)
        tellWidest(a, tell);
    return tell.fixed("eighth", a.m.eighth);
}
Answer wideGap(const Sums &a)
{
    Tell tell("F3", "max(gap, up(2 * seam + widest + truing, eighth))", a.plan.strip.wideGap,
              Round::UpEighth);
    tell.from("gap", a.plan.strip.gap, "strip.gap").given("seam", a.plan.basis.seam, "/seam");
    tellWidest(a, tell);
    return tell.fixed("eighth", a.m.eighth);
}
bool widened(const Plan &plan)
{
    return plan.strip.wideGaps > 0;
}
std::string withWider(const Sums &a, const std::string &formula)
{
    return widened(a.plan) ? formula + " + wider * (wideGap - gap)" : formula;
}
/// What the wider gaps before a place come to.
void tellWider(const Sums &a, Tell &tell, std::int64_t before)
{
    if (widened(a.plan))
        tell.fixed("wider", std::min(before, a.plan.strip.wideGaps))
            .from("wideGap", a.plan.strip.wideGap, "strip.wideGap");
}
Answer end(const Sums &a)
{
    if (a.project.strip.tails)
        return Tell("F4", "seam + fray", a.plan.strip.end, Round::UpEighth)
            .given("seam", a.plan.basis.seam, "/seam")
            .fixed("fray", a.m.fray);
    return Tell("F4", "max(seam + fray, up(reach + tail, eighth))", a.plan.strip.end, Round::UpEighth)
        .given("seam", a.plan.basis.seam, "/seam")
        .fixed("fray", a.m.fray)
        .from("reach", a.plan.strip.reach, "strip.reach")
        .given("tail", a.project.strip.tail, "/strip/tail")
        .fixed("eighth", a.m.eighth);
}
Answer advance(const Sums &a)
{
    return Tell("F5", "sent + gap", a.plan.strip.advance)
        .from("sent", a.plan.block.sent.along, "block.sent.along")
        .from("gap", a.plan.strip.gap, "strip.gap");
}
Answer perStrip(const Sums &a)
{
    return Tell("F5", "max(0, floor((usable - 2 * end + gap) / (sent + gap)))", a.plan.strip.perStrip)
        .given("usable", a.plan.strip.usable, "/strip/usable")
        .from("end", a.plan.strip.end, "strip.end")
        .from("gap", a.plan.strip.gap, "strip.gap")
        .from("sent", a.plan.block.sent.along, "block.sent.along");
}
Answer used(const Sums &a)
{
    Tell tell("F5", withWider(a, "2 * end + perStrip * sent + (perStrip - 1) * gap"), a.plan.strip.used);
    tell.from("end", a.plan.strip.end, "strip.end")
        .from("perStrip", a.plan.strip.perStrip, "strip.perStrip")
        .from("sent", a.plan.block.sent.along, "block.sent.along")
        .from("gap", a.plan.strip.gap, "strip.gap");
    tellWider(a, tell, a.plan.strip.perStrip);
    return tell;
}
Answer remainder(const Sums &a)
{
    return Tell("F5", "usable - used", a.plan.strip.remainder)
        .given("usable", a.plan.strip.usable, "/strip/usable")
        .from("used", a.plan.strip.used, "strip.used");
}
Answer strips(const Sums &a)
{
    const bool shared = onSharedStrips(a.project);
    const std::int64_t ofSet = sparesOfSet(a.project);
    Tell tell("F5",
              ofSet > 0 ? "ceil(((columns * rows + spare) * kits + spareInAll) / perStrip)"
              : shared  ? "ceil((columns * rows + spare) * kits / perStrip)"
                        : "kits * ceil((columns * rows + spare) / perStrip)",
              a.plan.strip.strips);
    tell.given("columns", a.project.blocks.columns, "/blocks/columns")
        .given("rows", a.project.blocks.rows, "/blocks/rows")
        .given("spare", a.project.blocks.spare, "/blocks/spare")
        .given("kits", a.project.kits, "/kits");
    if (ofSet > 0)
        tell.given("spareInAll", ofSet, "/blocks/spareInAll");
    return tell.from("perStrip", a.plan.strip.perStrip, "strip.perStrip");
}

bool onStrip(const Sums &a, const std::vector<Length> &places)
{
    return a.index >= 0 && static_cast<std::size_t>(a.index) < places.size();
}
Answer start(const Sums &a)
{
    if (!onStrip(a, a.plan.strip.starts))
        return std::nullopt;
    Tell tell("F5", withWider(a, "end + before * (sent + gap)"),
              a.plan.strip.starts[static_cast<std::size_t>(a.index)]);
    tell.from("end", a.plan.strip.end, "strip.end")
        .fixed("before", a.index)
        .from("sent", a.plan.block.sent.along, "block.sent.along")
        .from("gap", a.plan.strip.gap, "strip.gap");
    tellWider(a, tell, a.index);
    return tell;
}
Answer centre(const Sums &a)
{
    if (!onStrip(a, a.plan.strip.centres))
        return std::nullopt;
    return Tell("F5", "start + sent / 2", a.plan.strip.centres[static_cast<std::size_t>(a.index)])
        .from("start", a.plan.strip.starts[static_cast<std::size_t>(a.index)],
              "strip.starts." + std::to_string(a.index))
        .from("sent", a.plan.block.sent.along, "block.sent.along");
}
Answer drawn(const Sums &a)
{
    if (!onStrip(a, a.plan.strip.drawn))
        return std::nullopt;
    Tell tell("F5", withWider(a, "end + before * (outline + gap)"),
              a.plan.strip.drawn[static_cast<std::size_t>(a.index)]);
    tell.from("end", a.plan.strip.end, "strip.end")
        .fixed("before", a.index)
        .given("outline", a.plan.block.outline.along, "/blocks/width")
        .from("gap", a.plan.strip.gap, "strip.gap");
    tellWider(a, tell, a.index);
    return tell;
}
bool fits(const Plan &plan)
{
    return plan.strip.perStrip > 0;
}
std::size_t places(const Plan &plan)
{
    return plan.strip.starts.size();
}

constexpr std::array sums{
    Sum{"strip.width", width},
    Sum{"strip.reach", reach},
    Sum{"strip.gap", gap},
    Sum{"strip.wideGap", wideGap, widened},
    Sum{"strip.end", end},
    Sum{"strip.advance", advance},
    Sum{"strip.perStrip", perStrip},
    Sum{"strip.used", used, fits},
    Sum{"strip.remainder", remainder, fits},
    Sum{"strip.strips", strips, fits},
    Sum{"strip.starts", start, nullptr, places},
    Sum{"strip.centres", centre, nullptr, places},
    Sum{"strip.drawn", drawn, nullptr, places},
};

} // namespace

std::span<const Sum> stripSums()
{
    return sums;
}

} // namespace matside
