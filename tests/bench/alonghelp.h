// SPDX-License-Identifier: MIT
#pragma once

#include "bench/clothlay.h"
#include "benchhelp.h"

#include <map>

/// Cloth whose strips run along the selvage, and its pieces laid down by coordinates.
namespace alonghelp {

using namespace matside;
using planhelp::in;

inline Patch patchOf(const char *name, Length width, Length height, std::int64_t perBlock)
{
    Patch patch;
    patch.name = name;
    patch.width = width;
    patch.height = height;
    patch.over = in(0, 1, 2);
    patch.cloth = "leaf";
    patch.perBlock = perBlock;
    return patch;
}

/// Nine blocks with a patch of 60 × 3 in and four of 4 × 4 in from 42 in cloth.
inline Project longPatches()
{
    Project project = benchhelp::nineBlocksOfCloth();
    Cloth cloth;
    cloth.id = cloth.name = "leaf";
    cloth.role = ClothRole::Patch;
    cloth.usable = in(42);
    cloth.soldBy = "1/8 yd";
    cloth.soldStep = in(4, 1, 2);
    project.cloths.push_back(std::move(cloth));
    project.patches = {patchOf("long", in(59), in(2), 1), patchOf("small", in(3), in(3), 4)};
    return project;
}

inline Ruler rulerOf(Length length, Length width)
{
    Ruler ruler;
    ruler.name = "hers";
    ruler.length = length;
    ruler.width = width;
    return ruler;
}

inline ClothLay layOf(const Project &project, const char *cloth = "leaf")
{
    const Plan p = plan(project);
    return layOut(wantedOf(project, p, steps(project, p), cloth), groundOf(project, p, cloth));
}

inline bool runs(const std::vector<LaidStrip> &strips)
{
    return std::any_of(strips.begin(), strips.end(),
                       [](const LaidStrip &strip) { return strip.run > Length(); });
}

/// A piece on the bought cloth, by coordinates: x from selvage to selvage, y along it.
struct Spot {
    std::string does;
    Length x, y, wide, tall;
};

/// Every piece laid down strip by strip: those along the selvage side by side from the squared end, those
/// across after them.
inline std::vector<Spot> spotsOf(const std::vector<LaidStrip> &strips, Length squared)
{
    std::vector<Spot> spots;
    Length beside, below = squared;
    for (const LaidStrip &strip : strips)
        if (strip.owned == 0 && strip.run > Length())
            below = max(below, squared + strip.run);
    for (const LaidStrip &strip : strips)
        for (std::int64_t i = 0; strip.owned == 0 && i < strip.repeats; ++i) {
            Length at;
            for (const LaidPiece &piece : strip.pieces)
                for (std::int64_t k = 0; k < piece.count; ++k, at += piece.across)
                    spots.push_back(strip.run > Length()
                                        ? Spot{piece.does, beside, squared + at, piece.along, piece.across}
                                        : Spot{piece.does, at, below, piece.across, piece.along});
            (strip.run > Length() ? beside : below) += strip.height;
        }
    return spots;
}

/// Nothing overlaps, nothing hangs over the cloth, and all that is wanted is there in its own size.
inline void checkSpots(const std::vector<Spot> &spots, Length usable, Length bought,
                       const std::vector<Wanted> &wanted)
{
    std::map<std::string, std::int64_t> laid;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        const Spot &a = spots[i];
        QVERIFY(a.x >= Length() && a.y >= Length());
        QVERIFY2(a.x + a.wide <= usable && a.y + a.tall <= bought, a.does.c_str());
        for (std::size_t k = i + 1; k < spots.size(); ++k) {
            const Spot &b = spots[k];
            QVERIFY(a.x + a.wide <= b.x || b.x + b.wide <= a.x || a.y + a.tall <= b.y || b.y + b.tall <= a.y);
        }
        ++laid[a.does];
        const auto want =
            std::find_if(wanted.begin(), wanted.end(), [&](const Wanted &w) { return w.does == a.does; });
        QVERIFY(want != wanted.end());
        QVERIFY((a.wide == want->across && a.tall == want->along) ||
                (a.wide == want->along && a.tall == want->across));
    }
    for (const Wanted &want : wanted)
        QCOMPARE(laid[want.does], want.count);
}

} // namespace alonghelp
