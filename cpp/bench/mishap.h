// SPDX-License-Identifier: MIT
#pragma once

#include "bench/step.h"

#include <span>

namespace matside {

/// What can go wrong at a moment of the work; at most six answers are offered at a step.
enum class Mishap {
    TooNarrow,
    Spoiled,
    ClothRanOut,
    ClothNarrower,
    DoneAlready,
    ThreadRanOut,
    PleatOrHole,
    PatchWrong,
    PowerFailed,
    StripTorn,
    WillNotFit,
    CutInto,   ///< the blade went inside the allowance
    SizeOff,   ///< trimmed, joined or squared, it does not measure what it should
    SewnWrong, ///< a seam in the wrong place, or with the wrong piece
    FoldMissed,
    BlockGone, ///< lost, or given away
    ChangedMind
};
[[nodiscard]] std::string nameOf(Mishap mishap);
[[nodiscard]] std::optional<Mishap> mishapNamed(std::string_view name);
/// Steps already begun whose pieces are of another size now, by id: made pieces stay, but they are named.
/// With `tooSmall` only those that are shorter or narrower than is needed now: what is larger can be cut
/// down.
[[nodiscard]] std::vector<std::string> madeToOldMeasure(const std::vector<Step> &before,
                                                        const std::vector<Step> &now, bool tooSmall = false);

/// The answers for a step, the likeliest first.
[[nodiscard]] std::vector<Mishap> mishapsAt(const Step &step);

/// A measure that is needed before it can be answered.
enum class Asks { Nothing, ClothLeft, ClothWidth, TornAt, LeftOutside, SizeNow, Block };
[[nodiscard]] Asks asksOf(Mishap mishap);

/// One line of an answer; the app words it. Codes: keep-for-narrower, make-again (count, step id),
/// spare-takes-it (block), block-again (block), needs-cloth (cloth, length), rest-yields
/// | rest-yields-reckoned (cloth, left), rest-yields-just (cloth, left, to spare), strips-yield (cloth),
/// nothing-more-needed (cloth), rest-short | rest-short-reckoned (cloth, left), measure-rest (cloth),
/// square-edge (cloth), buy (cloth, length as sold), becomes-wrong (step id), nothing-wrong-with-the-rest,
/// counted, restart-thread, change-bobbin, judge-pleat (length), find-needle, patch-again (patch),
/// power-again, torn (blocks), torn-carries, carries-over (count), sew-a-tail, smaller-gap (gap),
/// not-changed, more-strips (count), fewer-per-strip (now, before), nothing-to-record; at Trim, Join and Edge
/// also: allowance-will-do (left), patch-allowance (left, least), or-outer-edge, too-little-left (left,
/// least), size-within (off, limit), trim-again (over), seam-from-line (under), far-under (under), ease-row
/// (off, limit), seams-too-deep | seams-too-scant (each, off), find-the-one, piece-smaller (by),
/// measure-round, unpick-seam, unpick-binding, sew-again-at (seam), strip-may-serve, strip-again (cloth,
/// width, length), unpick-missed, fold-less (fold, catch), fold-by-hand, binding-missed, edge-covered
/// (notch), edge-narrower (left, off), patch-edge (left), unpick-its-joins (block), no-such-block.
struct Said {
    std::string code;
    std::vector<Argument> args;
};

/// What is to be done about it, and the project as it stands then (unchanged where there is only advice).
struct Answered {
    std::vector<Said> says;
    Project next;
    bool changed = false;
    bool mayRemake = false; ///< she judges: the piece can still be given up as spoiled
    bool asksBlock = false; ///< giving it up asks which block it is
};

/// Answers at once: what can be saved and how, what must be made again and of which cloth, whether the rest
/// yields it, the shortest thing to buy if not, and what else becomes wrong (F25). Nothing made is altered.
/// `measure` is what `asksOf` asked for, or `block` the name of the block it asked for.
[[nodiscard]] Answered answerTo(const Project &project, const Plan &plan, const std::vector<Step> &steps,
                                const Step &step, Mishap mishap, std::optional<Length> measure = {},
                                std::int64_t strip = 0, const std::string &block = {});

} // namespace matside
