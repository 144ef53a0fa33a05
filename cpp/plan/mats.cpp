// SPDX-License-Identifier: MIT
#include "plan/mats.h"

#include "plan/formulas.h"
#include "plan/remarks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace matside {

namespace {

constexpr std::int64_t mostInRow = 200;
constexpr std::int64_t mostOfAll = 1000;

/// A table's edge lengths with the longer one along, and what must keep off it.
struct Bench {
    Length along;
    Length across;
    Pair mat;
    Length apart;
    Length fromEdge;

    /// From the table's edge to the inner edge of a mat.
    [[nodiscard]] Length depth() const { return mat.across + fromEdge; }
    [[nodiscard]] std::int64_t inRow(Length span) const
    {
        return std::clamp<std::int64_t>((span + apart).floorDiv(mat.along + apart), 0, mostInRow);
    }
    [[nodiscard]] Length rowOf(std::int64_t mats) const
    {
        return mat.along * mats + apart * std::max<std::int64_t>(mats - 1, 0);
    }
};

/// So many places in the middle of a span, as far from each other as they are from its ends where there is
/// room.
std::vector<Length> spread(const Bench &bench, std::int64_t mats, Length span)
{
    std::vector<Length> middles;
    if (mats <= 0)
        return middles;
    const Length gap = max(bench.apart, (span - bench.mat.along * mats).scaled(1, mats));
    const Length pitch = bench.mat.along + gap;
    for (std::int64_t i = 0; i < mats; ++i)
        middles.push_back(pitch.scaled(2 * i - mats + 1, 2));
    return middles;
}

/// How many lie in each row and at each end.
struct Shares {
    std::int64_t rows = 1;
    std::int64_t side = 0;
    std::int64_t end = 0;
    Length room;    ///< for each row
    Length endRoom; ///< for those at each end

    [[nodiscard]] std::int64_t all() const { return rows * side + 2 * end; }
};

Shares shared(const Bench &bench, bool ends)
{
    const bool facing = bench.across >= bench.depth() * 2 + bench.apart;
    const std::int64_t rows = facing ? 2 : 1;
    const Shares sides{rows, bench.inRow(bench.along), 0, bench.along, {}};
    Shares best;
    const Length kept = (bench.depth() + bench.apart) * 2;
    const bool longEnough = bench.along >= bench.depth() * 2 + bench.apart;
    for (std::int64_t end = ends && longEnough ? bench.inRow(bench.across) : 0; end > 0; --end) {
        const bool clear = facing && bench.across - bench.rowOf(end) >= kept;
        const Length room = clear ? bench.along : bench.along - kept;
        const Length endRoom = clear ? bench.across - kept : bench.across;
        const Shares tried{rows, bench.inRow(room), end, room, endRoom};
        if (tried.all() > best.all())
            best = tried;
    }
    return best.end > 0 ? best : sides;
}

MatsLaid onStraight(const Bench &bench, bool ends, std::int64_t most)
{
    MatsLaid laid;
    if (bench.mat.along > bench.along || bench.depth() > bench.across)
        return laid;
    const Shares fits = shared(bench, ends);
    const std::int64_t all = std::min(fits.all(), most);
    const std::int64_t atEnds = std::min(2 * fits.end, all);
    const std::int64_t atSides = all - atEnds;
    laid.side = (atSides + fits.rows - 1) / fits.rows;
    laid.end = (atEnds + 1) / 2;
    const Length across = bench.across.scaled(1, 2) - bench.fromEdge - bench.mat.across.scaled(1, 2);
    const Length along = bench.along.scaled(1, 2) - bench.fromEdge - bench.mat.across.scaled(1, 2);
    for (const Length at : spread(bench, laid.side, fits.room))
        laid.places.push_back({at, across, 0});
    for (const Length at : spread(bench, atSides - laid.side, fits.room))
        laid.places.push_back({at, -across, 180});
    for (const Length at : spread(bench, laid.end, fits.endRoom))
        laid.places.push_back({-along, at, 90});
    for (const Length at : spread(bench, atEnds - laid.end, fits.endRoom))
        laid.places.push_back({along, at, 270});
    return laid;
}

/// A round table, its lengths in ticks.
struct Rim {
    double half;   ///< of a mat, along the rim
    double middle; ///< of a mat from the table's middle
    std::int64_t most = 0;
};

Rim rimOf(const Bench &bench)
{
    const auto ticks = [](Length length) { return static_cast<double>(length.count()); };
    Rim rim{ticks(bench.mat.along) / 2, 0};
    const double inner = ticks(bench.across) / 2 - ticks(bench.fromEdge);
    const double deep = ticks(bench.mat.across);
    if (inner + 1 < std::hypot(rim.half, deep / 2)) // a tick may be lost in rounding
        return rim;
    const double chord = std::sqrt(std::max(inner * inner - rim.half * rim.half, 0.0));
    rim.middle = chord - deep / 2;
    const auto lie = [&](std::int64_t mats) {
        const double angle = std::numbers::pi / static_cast<double>(mats);
        return (chord - deep) * std::sin(angle) - rim.half * std::cos(angle) >= ticks(bench.apart) / 2;
    };
    rim.most = 1;
    while (rim.most < mostInRow && lie(rim.most + 1))
        ++rim.most;
    return rim;
}

/// `mats` of a ring of `ring`, from the angle on, about a middle that lies `off` to the right.
void round(MatsLaid &laid, const Rim &rim, std::int64_t mats, std::int64_t ring, double from, Length off)
{
    for (std::int64_t i = 0; i < mats; ++i) {
        const double turn = from + 360.0 * (static_cast<double>(i) + 0.5) / static_cast<double>(ring);
        const double angle = turn * std::numbers::pi / 180;
        laid.places.push_back({Length::ticks(std::llround(rim.middle * std::sin(angle))) + off,
                               Length::ticks(-std::llround(rim.middle * std::cos(angle))),
                               std::fmod(turn + 180, 360)});
    }
}

MatsLaid onRound(const Bench &bench, Length leaf, std::int64_t most)
{
    MatsLaid laid;
    const Rim rim = rimOf(bench);
    if (leaf <= Length() || rim.most < 2) {
        laid.side = std::min(rim.most, most);
        round(laid, rim, laid.side, laid.side,
              180.0 - 180.0 / static_cast<double>(std::max<std::int64_t>(laid.side, 1)), {});
        return laid;
    }
    const bool facing = bench.across >= bench.depth() * 2 + bench.apart;
    const std::int64_t halves = std::min(rim.most - rim.most % 2, most);
    const std::int64_t straight = std::min(facing ? 2 * bench.inRow(leaf - bench.apart) : 0, most - halves);
    const std::int64_t right = (halves + 1) / 2;
    round(laid, rim, right, 2 * right, 0, leaf.scaled(1, 2));
    round(laid, rim, halves - right, 2 * right, 180, -leaf.scaled(1, 2));
    const Length across = bench.across.scaled(1, 2) - bench.fromEdge - bench.mat.across.scaled(1, 2);
    const std::int64_t below = (straight + 1) / 2;
    for (const Length at : spread(bench, below, leaf - bench.apart))
        laid.places.push_back({at, across, 0});
    for (const Length at : spread(bench, straight - below, leaf - bench.apart))
        laid.places.push_back({at, -across, 180});
    laid.side = laid.count();
    return laid;
}

} // namespace

MatUse matUse(System system)
{
    if (system == System::Inch)
        return {Length::inches(4),
                Length::inches(1),
                {Pair{Length::inches(18), Length::inches(12)}, Pair{Length::inches(20), Length::inches(14)}}};
    return {Length::mm(100),
            Length::mm(25),
            {Pair{Length::mm(450), Length::mm(300)}, Pair{Length::mm(500), Length::mm(350)}}};
}

MatsLaid layMats(const Table &table, const Pair &mat, bool ends, System system, std::int64_t most)
{
    const std::optional<Length> along = table.along(table.leafIn);
    const std::optional<Length> across = table.across();
    if (!along || !across || mat.along <= Length() || mat.across <= Length() || most <= 0)
        return {};
    const MatUse use = matUse(system);
    const Bench bench{max(*along, *across), min(*along, *across), mat, use.apart, use.fromEdge};
    if (table.diameter)
        return onRound(bench, table.leafLying(table.leafIn), most);
    MatsLaid laid = onStraight(bench, ends, most);
    if (*along < *across)
        for (MatPlace &place : laid.places)
            place = {place.across, place.along, std::fmod(630 - place.turn, 360)};
    return laid;
}

std::optional<Problem> whyNoMats(const Table &table, const Pair &mat, System system)
{
    if (!table.along(false) || !table.across() || layMats(table, mat, false, system).count() > 0)
        return std::nullopt;
    const Length edge = matUse(system).fromEdge;
    if (table.diameter) {
        // Its corners on a circle, and the edge all round.
        const Length least = diagonalOf(mat.along, mat.across) + edge * 2;
        return Problem{"/table",
                       "fit-mats-off-round-table",
                       {told(mat.along), told(mat.across), told(least, Round::UpQuarter)},
                       {}};
    }
    return Problem{
        "/table", "fit-mats-off-table", {told(mat.along), told(mat.across), told(mat.across + edge)}, {}};
}

std::optional<MatsLaid> setOfMats(const Project &project, const Plan &plan)
{
    if (!project.table || project.kits < 2 || project.lesson)
        return std::nullopt;
    const Pair made = plan.size.finished;
    const Pair mat{max(made.along, made.across), min(made.along, made.across)};
    const auto lie = [&](bool ends, std::int64_t most) {
        return layMats(*project.table, mat, ends, project.system, most);
    };
    // As many as lie with the ends taken, and not without: so it was meant.
    const std::int64_t sides = lie(false, mostOfAll).count();
    if (MatsLaid full = lie(true, mostOfAll); full.count() == project.kits && sides != project.kits)
        return full;
    for (const bool ends : {false, true})
        if (MatsLaid laid = lie(ends, project.kits); laid.count() == project.kits)
            return laid;
    return std::nullopt;
}

} // namespace matside
