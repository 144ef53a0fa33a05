// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array stops{
    //: the ring or frame that holds the cloth under the needle
    Worded{"hoop-unknown",
           QT_TRANSLATE_NOOP("Words", "The hoop's sizes are missing: enter what it measures outside, and its "
                                      "stitching field or its opening.")},
    Worded{"field-over-hoop",
           QT_TRANSLATE_NOOP("Words",
                             "%1 inside the hoop is more than it measures outside, %2: the needle would "
                             "meet the frame. Measure both again.")},
    //: sent: the size given to the machine, larger than the outline by what the cloth draws up
    Worded{"sent-over-field",
           QT_TRANSLATE_NOOP("Words", "The block goes to the machine at %1, but the hoop stitches no more "
                                      "than %2.")},
    //: sashing: the strip between two blocks; allowance: cloth outside the stitched line
    Worded{"sashing-under-allowances",
           QT_TRANSLATE_NOOP("Words",
                             "A sashing of %1 is narrower than the two allowances under it, %2: they "
                             "would lie double.")},
    Worded{
        "allowance-pared-too-far",
        QT_TRANSLATE_NOOP("Words", "An allowance of %1 is pared too far to hold a seam; %2 is the least.")},
    Worded{"outside-over-allowance",
           QT_TRANSLATE_NOOP("Words",
                             "The edge keeps %1 outside the stitched line, but the blocks are trimmed "
                             "to %2: the cloth is not there.")},
    //: frame: a strip of sashing all round the piece, under the binding
    Worded{"frame-too-narrow",
           QT_TRANSLATE_NOOP("Words",
                             "With %1 outside the stitched line nothing of the frame would be seen: it "
                             "needs more than %2.")},
    //: gap: cloth between the outlines of two blocks on one strip
    Worded{"gap-under-seams",
           QT_TRANSLATE_NOOP("Words", "A gap of %1 leaves less than the two seam allowances that come out of "
                                      "it, %2.")},
    //: reach: how far the hoop's frame lies beyond the stitched line
    Worded{"gap-under-reach",
           QT_TRANSLATE_NOOP("Words",
                             "With a gap of %1 the ring would close on the block before it: the frame "
                             "reaches %2 beyond the outline.")},
    Worded{"frame-may-overlap-ring",
           QT_TRANSLATE_NOOP("Words", "A ring may not lie on a stitched block: it would crush it. Only a "
                                      "magnetic frame may.")},
    //: waste tail: scrap cloth sewn to a strip's end so that the hoop can hold it
    Worded{"no-block-on-strip",
           QT_TRANSLATE_NOOP("Words",
                             "Not one block fits on the strip: %1 is missing, and %2 with waste tails "
                             "sewn to both ends.")},
    //: fold-under: what is turned under along the back sashing
    Worded{"fold-too-small",
           QT_TRANSLATE_NOOP("Words", "Only %1 is left to fold under on the back; less than %2 cannot be "
                                      "pressed and would be missed by the stitching.")},
    //: catch: how far the folded edge passes the seam it is caught by
    Worded{"catch-out-of-range",
           QT_TRANSLATE_NOOP("Words", "A catch of %1 will not do: keep it between %2 and %3.")},
    Worded{"binding-wider-than-cloth",
           QT_TRANSLATE_NOOP("Words", "Binding cut %1 wide does not come out of cloth %2 wide.")},
    Worded{"scallop-too-deep",
           QT_TRANSLATE_NOOP("Words", "So many scallops cannot be %1 deep: no more than %2.")},
    Worded{"corner-too-round",
           QT_TRANSLATE_NOOP("Words", "Corners rounded by %1 do not fit on the piece; %2 is the most.")},
    //: doubled: folded lengthwise first, so that its fold is ready made
    Worded{"doubled-too-narrow",
           QT_TRANSLATE_NOOP("Words",
                             "Doubled, the back strip catches only %1 past the seam; at least %2 holds.")},
    //: bias: cloth cut slantwise, which goes round a curve
    Worded{"bias-wider-than-cloth",
           QT_TRANSLATE_NOOP("Words", "The bias wants a square of %1, and the cloth is only %2 wide.")},
    //: draw-up: how much the stitching shrinks the cloth
    Worded{"draw-up-out-of-range",
           QT_TRANSLATE_NOOP("Words",
                             "A draw-up of %1 is not likely; it lies between 0 % and %2. Measure the "
                             "test block again.")},
    Worded{"short-longer-than-cloth",
           QT_TRANSLATE_NOOP("Words", "A short sashing is %1 with its spare, longer than its cloth, %2.")},
    Worded{"long-cannot-be-joined",
           QT_TRANSLATE_NOOP("Words",
                             "Cloth %1 wide is too narrow to piece the long sashings with their joins "
                             "at mid-block; %2 is the least.")},
    Worded{"fit-no-size",
           QT_TRANSLATE_NOOP("Words", "Nothing is left for the piece: let less of the table show.")},
    Worded{"fit-washing-out-of-range",
           QT_TRANSLATE_NOOP("Words", "Washing that takes %1 is not likely; say less than %2.")},
    Worded{"fit-block-over-size",
           QT_TRANSLATE_NOOP("Words", "One block makes a piece of %1, larger than the %2 wanted: allow "
                                      "smaller blocks, or let less of the table show.")},
    Worded{"fit-no-block-in-limits",
           QT_TRANSLATE_NOOP("Words",
                             "No block from %1 to %2 goes into a hoop you have: allow other sizes, or "
                             "enter the hoop that takes them.")},
    Worded{"fit-too-many-blocks",
           QT_TRANSLATE_NOOP("Words", "That takes %1 blocks or more, and you allow %2: allow more, or larger "
                                      "blocks.")},
    //: mats: place mats, each laid at the table's edge before one who eats
    Worded{"fit-mats-off-table",
           QT_TRANSLATE_NOOP("Words",
                             "No mats of %1 × %2 lie on this table: it would have to be at least %1 long and "
                             "%3 wide. Ask for the smaller ones, or for one piece.")},
    Worded{"fit-mats-off-round-table",
           QT_TRANSLATE_NOOP("Words",
                             "No mats of %1 × %2 lie on this round table: it would have to be at least %3 "
                             "across. Ask for the smaller ones, or for one piece.")},
    Worded{"fit-mats-too-large",
           QT_TRANSLATE_NOOP(
               "Words", "All layouts near that size come out too large for %1 mats on this table: ask for "
                        "fewer, or allow block sizes on every mark.")},
};

constexpr std::array looks{
    Worded{"hoop-is-close",
           QT_TRANSLATE_NOOP("Words", "The block has %1 of room in the hoop; %2 lets you place it without "
                                      "trying twice.")},
    Worded{"edge-seam-over-outside",
           QT_TRANSLATE_NOOP("Words",
                             "The binding's seam of %1 is deeper than the cloth outside the stitched "
                             "line, %2: it would cover the line.")},
    //: margin: cloth past the hoop's outside at a strip's long edges
    Worded{"margin-is-small",
           QT_TRANSLATE_NOOP("Words", "A margin of %1 past the hoop is hard to hold; %2 is easier.")},
    Worded{"strip-is-tight",
           QT_TRANSLATE_NOOP("Words",
                             "%1 is left over on each strip; a little more draw-up and the %o2 block "
                             "will not fit.")},
    //: lip: the part of the fold that stands past the stitching
    Worded{"lip-is-wide",
           QT_TRANSLATE_NOOP("Words",
                             "Folding on the ruler's mark leaves a lip of %1 past the seam; more than "
                             "%2 may lift.")},
    //: harvested: cut from the gaps between the blocks of a strip
    Worded{"harvest-is-short",
           QT_TRANSLATE_NOOP("Words", "The gap pieces are %1 long, shorter than a short sashing with its "
                                      "spare, %2.")},
    Worded{"gap-under-allowances",
           QT_TRANSLATE_NOOP("Words", "The gap of %1 is under the two wide allowances, %2: the blocks cannot "
                                      "be cut apart so.")},
    Worded{"frame-on-last-block",
           QT_TRANSLATE_NOOP("Words", "The frame lies %1 over the block before it. Pad it, and look for "
                                      "marks.")},
    //: stippling: the quilting inside a block's stitched outline; stay-stitch: a row of stitches that holds a
    //: cut
    Worded{"corner-bites",
           QT_TRANSLATE_NOOP("Words",
                             "The rounded corner cuts %1 into the stippling: stay-stitch beside the line "
                             "before cutting.")},
    Worded{"corner-too-tight",
           QT_TRANSLATE_NOOP("Words", "A corner of %1 is tight for folded binding; it eases round from %2.")},
    //: scallop: one of the round lobes the edge is cut into; its depth is measured from the raw edge
    Worded{"scallop-bites",
           QT_TRANSLATE_NOOP("Words",
                             "Scallops %1 deep cut into the stippling: they need %2 of cloth outside the "
                             "outline, and there is %3. Stay-stitch first.")},
    Worded{"scallop-near",
           QT_TRANSLATE_NOOP("Words",
                             "Between scallops %1 deep the binding comes close to the outline: %2 of cloth "
                             "outside it would clear it, and there is %3.")},
    Worded{"scallop-too-tight",
           QT_TRANSLATE_NOOP("Words",
                             "A scallop’s arc of %1 is tight for folded binding; it eases round from %2.")},
    Worded{"stiff-lip",
           QT_TRANSLATE_NOOP("Words",
                             "Hanging over by only %1, the edge will stick out stiffly; it falls well "
                             "from %2.")},
    Worded{"corner-hangs",
           QT_TRANSLATE_NOOP("Words",
                             "The corners hang %1 past the round table and will stick out; they fall "
                             "well from %2.")},
    Worded{"leaf-in-lip",
           QT_TRANSLATE_NOOP("Words",
                             "With the leaf in, the ends hang over by only %1 and will stick out stiffly; "
                             "they fall well from %2.")},
    Worded{"leaf-out-lip",
           QT_TRANSLATE_NOOP("Words",
                             "With the leaf out, the ends hang over by only %1 and will stick out stiffly; "
                             "they fall well from %2.")},
    // What is made stays as it is; the count stands behind, so that one and many read alike.
    Worded{"blocks-otherwise",
           QT_TRANSLATE_NOOP("Words",
                             "Stitched blocks stay as they are and no longer fit, in all %1: sent as %2, now "
                             "it would be %3. Undo takes the change back.")},
    //: %2 is the first of them, a block's name like A1
    Worded{"blocks-without-place",
           QT_TRANSLATE_NOOP("Words",
                             "Stitched blocks without a place: %1 (%2 first). Undo takes the change back.")},
    //: row: blocks joined side by side; %2 and %3 count blocks
    Worded{"rows-otherwise",
           QT_TRANSLATE_NOOP(
               "Words", "Rows joined already no longer fit, in all %1: joined of %2 blocks, now it would "
                        "be %3. Undo takes the change back.")},
    //: long sashing: the strip between two rows
    Worded{"longs-otherwise",
           QT_TRANSLATE_NOOP(
               "Words", "Long sashings cut already no longer fit, in all %1: cut %2 long, now it would be "
                        "%3. Undo takes the change back.")},
    Worded{"hoop-strips-otherwise",
           QT_TRANSLATE_NOOP("Words",
                             "Hoop strips cut already no longer fit, in all %1: cut %2 wide, now it would be "
                             "%3. Undo takes the change back.")},
    //: sashing: the strip between two blocks
    Worded{"sashing-strips-otherwise",
           QT_TRANSLATE_NOOP("Words",
                             "Sashing strips cut already no longer fit, in all %1: cut %2 wide, now it would "
                             "be %3. Undo takes the change back.")},
    Worded{"binding-strips-otherwise",
           QT_TRANSLATE_NOOP("Words",
                             "Binding strips cut already no longer fit, in all %1: cut %2 wide, now it would "
                             "be %3. Undo takes the change back.")},
    //: part: front, back, sashing … of the piece; %1 and %2 are cloths
    Worded{"cut-of-another-cloth",
           QT_TRANSLATE_NOOP("Words",
                             "What is cut of “%1” no longer counts: “%2” has its part now. Undo takes the "
                             "change back.")},
};

} // namespace

std::span<const Worded> problemWords()
{
    return stops;
}

std::span<const Worded> cautionWords()
{
    return looks;
}

} // namespace matside
