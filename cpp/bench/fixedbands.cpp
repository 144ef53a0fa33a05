// SPDX-License-Identifier: MIT
#include "bench/build.h"
#include "bench/clothlay.h"
#include "bench/progress.h"

#include <algorithm>
#include <utility>

namespace matside {

namespace {

bool holds(const LaidStrip &strip, const std::string &does)
{
    return strip.does != does && std::any_of(strip.pieces.begin(), strip.pieces.end(),
                                             [&](const LaidPiece &piece) { return piece.does == does; });
}

/// The bands of one name in a layout.
struct Bands {
    Length height;
    Length longest; ///< piece cut from them
    Length run;     ///< along the selvage; 0: across the cloth
    std::int64_t count = 0;
};

Bands bandsNamed(const Project &project, const MadeLayout &layout, const std::string &name)
{
    Bands bands;
    for (const LaidStrip &strip : layout.strips) {
        if (strip.does != name)
            continue;
        bands.height = strip.height; // bands of the sashings' width carry the newest one
        bands.count += strip.repeats;
        bands.run = strip.run;
        for (const LaidPiece &piece : strip.pieces)
            bands.longest = max(bands.longest, piece.across);
    }
    for (const MadeCut &cut : project.made.cut)
        if (cut.cloth == layout.cloth && cut.does == name)
            bands.count -= cut.spoiled;
    return bands;
}

} // namespace

bool bandsAreWider(const Bench &bench, const std::string &cloth, const std::string &does)
{
    const MadeLayout *layout = bench.project.made.layoutOf(cloth);
    return layout && std::any_of(layout->strips.begin(), layout->strips.end(), [&](const LaidStrip &strip) {
               return holds(strip, does) &&
                      std::any_of(strip.pieces.begin(), strip.pieces.end(), [&](const LaidPiece &piece) {
                          return piece.does == does && piece.along < strip.height;
                      });
           });
}

void lieInBands(const Project &project, Step &step)
{
    const MadeLayout *layout = project.made.layoutOf(step.cloth);
    if (!layout || (step.does != Does::CutPatch && step.does != Does::CutBacking))
        return;
    const std::string does = progressName(step);
    for (const LaidStrip &strip : layout->strips) {
        if (!holds(strip, does))
            continue;
        for (const LaidPiece &piece : strip.pieces) {
            if (piece.does != does)
                continue;
            const BandLie lie{strip.height, piece.across, piece.along, piece.count * strip.repeats};
            BandLie *last = step.lies.empty() ? nullptr : &step.lies.back();
            if (last && last->band == lie.band && last->off == lie.off && last->width == lie.width)
                last->count += lie.count;
            else
                step.lies.push_back(lie);
        }
    }
    if (step.lies.empty())
        return;
    std::int64_t used = 0; // spoiled pieces had a place too
    for (const MadeCut &cut : project.made.cut)
        used += cut.cloth == step.cloth && cut.does == does ? cut.count : 0;
    for (; step.lie + 1 < step.lies.size() && used >= step.lies[step.lie].count; ++step.lie)
        used -= step.lies[step.lie].count;
    const BandLie &next = step.lies[step.lie];
    step.ruler = placeRulers(project.rulers, next.off, next.width, 1);
}

std::vector<Piece> bandsFrom(Bench &bench, const std::string &cloth, const std::string &does,
                             const char *sashingFigure)
{
    std::vector<Piece> from;
    const MadeLayout *layout = bench.project.made.layoutOf(cloth);
    if (!layout)
        return from;
    const std::string sashings = bandName({}, true);
    const bool trial = std::exchange(bench.trial, false); // the bands are everybody's
    for (const LaidStrip &strip : layout->strips) {
        const std::string piece = strip.does + '/' + cloth;
        if (!holds(strip, does) ||
            std::any_of(from.begin(), from.end(), [&](const Piece &had) { return had.name == piece; }))
            continue;
        from.push_back({piece, 0});
        if (std::any_of(bench.steps.begin(), bench.steps.end(),
                        [&](const Step &step) { return step.id == piece; }))
            continue;
        const Bands bands = bandsNamed(bench.project, *layout, strip.does);
        const bool own = strip.does == sashings;
        const std::int64_t count = std::max<std::int64_t>(bands.count, 0);
        Step &band = bands.run > Length()
                         ? cutAlong(bench, cloth, count, {bands.run, bands.height}, bands.longest)
                         : cutAcross(bench, Does::CutBand, cloth, count, {layout->usable, bands.height},
                                     bands.longest, own ? 0 : bands.height.count());
        if (own)
            band.figure = sashingFigure;
        band.makes = {{piece, 1}};
    }
    bench.trial = trial;
    return from;
}

} // namespace matside
