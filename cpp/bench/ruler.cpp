// SPDX-License-Identifier: MIT
#include "bench/ruler.h"

#include <algorithm>

namespace matside {

namespace {

/// A ruler as it lies: `along` runs beside the cut, `measure` is read across it.
struct Laid {
    const Ruler *ruler = nullptr;
    Length along;
    Length measure;
    bool turned = false;
};

/// A turned ruler serves only where it reaches the whole cut (a cross-cut); it is too short to slide along.
bool serves(const Laid &way, Length cutLength, bool slide)
{
    return way.along >= cutLength || (slide && !way.turned);
}

/// Every ruler both ways: turned, its length measures and its width runs beside the cut.
std::vector<Laid> everyWay(const std::vector<Ruler> &rulers)
{
    std::vector<Laid> ways;
    for (const Ruler &ruler : rulers) {
        ways.push_back({&ruler, ruler.length, ruler.width});
        if (ruler.length != ruler.width)
            ways.push_back({&ruler, ruler.width, ruler.length, true});
    }
    return ways;
}

void layFirst(RulerPlace &place, const Laid &laid, Length line)
{
    place.first = laid.ruler->name;
    place.firstLength = laid.along;
    place.firstWidth = laid.measure;
    place.line = line;
}

/// The ruler that measures enough with the least to spare, among those long enough (or the longest).
const Laid *oneRuler(const std::vector<Laid> &ways, Length width, Length cutLength, bool slide)
{
    const Laid *best = nullptr;
    for (const Laid &way : ways) {
        if (way.measure < width || !serves(way, cutLength, slide))
            continue;
        const bool better = !best || (slide ? way.along > best->along : way.measure < best->measure);
        if (better)
            best = &way;
    }
    return best;
}

/// Another ruler that measures the rest, the longest beside the cut.
const Laid *spacerFor(const std::vector<Laid> &ways, const Laid &fence, Length rest)
{
    const Laid *best = nullptr;
    for (const Laid &way : ways)
        if (way.ruler != fence.ruler && way.measure >= rest && (!best || way.along > best->along))
            best = &way;
    return best;
}

/// Two butted: the fence is the longest way of lying that leaves a rest another ruler can measure.
bool twoRulers(RulerPlace &place, const std::vector<Laid> &ways, Length width, Length cutLength, bool slide)
{
    const Laid *fence = nullptr;
    const Laid *spacer = nullptr;
    for (const Laid &second : ways) {
        const Length rest = width - second.measure;
        if (rest <= Length() || !serves(second, cutLength, slide) || (fence && second.along <= fence->along))
            continue;
        const Laid *first = spacerFor(ways, second, rest);
        if (!first)
            continue;
        fence = &second;
        spacer = first;
    }
    if (!fence)
        return false;
    layFirst(place, *spacer, width - fence->measure);
    place.second = fence->ruler->name;
    place.secondWidth = fence->measure;
    place.secondLength = fence->along;
    return true;
}

} // namespace

RulerPlace placeRulers(const std::vector<Ruler> &rulers, Length width, Length cutLength, std::int64_t layers)
{
    RulerPlace place;
    place.layers = layers;
    const std::vector<Laid> ways = everyWay(rulers);
    for (const bool slide : {false, true}) {
        place.fence = slide ? Fence::SlideAlong : Fence::LongEnough;
        if (const Laid *one = oneRuler(ways, width, cutLength, slide)) {
            layFirst(place, *one, width);
            return place;
        }
        if (twoRulers(place, ways, width, cutLength, slide))
            return place;
    }
    place.fence = Fence::Mat;
    place.line = width;
    place.keep = "beside-ruler";
    return place;
}

RulerPlace placeOnOutline(const std::vector<Ruler> &rulers, Length allowance, Length trimmed)
{
    RulerPlace place = placeRulers(rulers, allowance, trimmed, 1);
    // A ruler that covers the whole block holds it flat: the smallest that does, if she owns one.
    const Ruler *cover = nullptr;
    for (const Ruler &ruler : rulers)
        if (min(ruler.length, ruler.width) >= trimmed && (!cover || ruler.length < cover->length))
            cover = &ruler;
    if (cover) {
        layFirst(place, {cover, cover->length, cover->width, false}, allowance);
        place.second.reset();
        place.secondWidth = place.secondLength = Length();
        place.fence = Fence::LongEnough;
    }
    place.on = LineOn::Outline;
    place.line = allowance;
    place.keep = place.fence == Fence::Mat ? "beside-ruler" : "under-rulers";
    return place;
}

std::int64_t layersFor(System system, Length width, Length usedLength)
{
    const Length narrow = system == System::Inch ? Length::inches(2) : Length::mm(50);
    const Length farAcross = system == System::Inch ? Length::inches(30) : Length::mm(760);
    return width < narrow || usedLength > farAcross ? 1 : 2;
}

Length straightWidth(Length strip, Length usedLength, Length off, Length width)
{
    return strip - usedLength.scaled(off.count(), width.count() * 2);
}

} // namespace matside
