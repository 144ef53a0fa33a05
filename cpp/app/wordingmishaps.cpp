// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array mishaps{
    Worded{"too-narrow", QT_TRANSLATE_NOOP("Words", "Too narrow or crooked")},
    Worded{"spoiled", QT_TRANSLATE_NOOP("Words", "Spoiled")},
    Worded{"cloth-ran-out", QT_TRANSLATE_NOOP("Words", "The cloth ran out")},
    Worded{"cloth-narrower", QT_TRANSLATE_NOOP("Words", "Cloth narrower than planned")},
    Worded{"done-already", QT_TRANSLATE_NOOP("Words", "Done already")},
    Worded{"thread-ran-out", QT_TRANSLATE_NOOP("Words", "Thread or bobbin ran out")},
    Worded{"pleat-or-hole", QT_TRANSLATE_NOOP("Words", "Pleat, hole or broken needle")},
    Worded{"patch-wrong", QT_TRANSLATE_NOOP("Words", "Wrong or missing patch")},
    Worded{"power-failed", QT_TRANSLATE_NOOP("Words", "The power failed")},
    Worded{"strip-torn", QT_TRANSLATE_NOOP("Words", "The strip is torn")},
    Worded{"will-not-fit", QT_TRANSLATE_NOOP("Words", "The block will not fit")},
    //: the blade went inside the allowance
    Worded{"cut-into", QT_TRANSLATE_NOOP("Words", "Cut into it")},
    Worded{"size-off", QT_TRANSLATE_NOOP("Words", "It measures wrong")},
    Worded{"sewn-wrong", QT_TRANSLATE_NOOP("Words", "Sewn wrong")},
    //: the stitching in the ditch did not catch the folded edge on the back
    Worded{"fold-missed", QT_TRANSLATE_NOOP("Words", "Missed the fold")},
    Worded{"block-gone", QT_TRANSLATE_NOOP("Words", "A block is lost or given away")},
    Worded{"changed-mind", QT_TRANSLATE_NOOP("Words", "I changed my mind")},
};

constexpr std::array asked{
    Worded{"cloth-ran-out", QT_TRANSLATE_NOOP("Words", "How much of it is left?")},
    //: usable width of the cloth, between the selvages
    Worded{"cloth-narrower", QT_TRANSLATE_NOOP("Words", "How wide is it between the selvages?")},
    Worded{"strip-torn", QT_TRANSLATE_NOOP("Words", "Where is the tear, measured from the zero end?")},
    Worded{"cut-into",
           QT_TRANSLATE_NOOP("Words", "How much is left outside the stitched line, at the narrowest?")},
    Worded{"cut-into-edge",
           QT_TRANSLATE_NOOP("Words", "How much is left outside the stitched line, at the narrowest?")},
    Worded{"size-off", QT_TRANSLATE_NOOP("Words", "How wide is the block, edge to edge?")},
    Worded{"row-off", QT_TRANSLATE_NOOP("Words", "How long is the row, raw end to raw end?")},
    Worded{"piece-off", QT_TRANSLATE_NOOP("Words", "How long is the side that is off, edge to edge?")},
};

// %1 and %2 as the answer tells them; lengths come with their unit.
constexpr std::array said{
    Worded{"keep-for-narrower",
           QT_TRANSLATE_NOOP(
               "Words", "Keep it: a narrower strip or patches come out of it. Straighten the end first.")},
    Worded{"make-again", QT_TRANSLATE_NOOP("Words", "To make again: %1. It stands in the list once more.")},
    //: %1 is a block's name, "B2"; spare: a block stitched over and above the layout
    Worded{"spare-takes-it",
           QT_TRANSLATE_NOOP("Words", "A spare takes the place of %1: nothing is made again.")},
    Worded{"block-again",
           QT_TRANSLATE_NOOP(
               "Words", "Block %1 is stitched again, with the same thread lot. It stands next in the list.")},
    Worded{"needs-cloth", QT_TRANSLATE_NOOP("Words", "Still to cut of %1: {%2} along the selvage.")},
    Worded{"rest-yields", QT_TRANSLATE_NOOP("Words", "What is left of %1, {%2}, yields it.")},
    Worded{"nothing-more-needed", QT_TRANSLATE_NOOP("Words", "Nothing more is needed of %1.")},
    Worded{"rest-short", QT_TRANSLATE_NOOP("Words", "What is left of %1, {%2}, does not yield it.")},
    Worded{
        "measure-rest",
        QT_TRANSLATE_NOOP(
            "Words", "Nobody has measured what is left of %1. Measure it along the selvage before you buy.")},
    Worded{"buy", QT_TRANSLATE_NOOP("Words", "Buy at least {%2} of %1, of the same lot.")},
    //: %1 is a step in words
    Worded{"becomes-wrong",
           QT_TRANSLATE_NOOP("Words", "Made to the old measure: %1 Look at it before you use it.")},
    Worded{"nothing-wrong-with-the-rest", QT_TRANSLATE_NOOP("Words", "What is made already stays good.")},
    Worded{"counted", QT_TRANSLATE_NOOP("Words", "Counted as done.")},
    Worded{"restart-thread", QT_TRANSLATE_NOOP("Words", "Pick the thread back about {1 in} and start again "
                                                        "on the line. Inside stippling it will not show.")},
    Worded{"change-bobbin", QT_TRANSLATE_NOOP("Words", "The bobbin is counted as new from here.")},
    Worded{"judge-pleat", QT_TRANSLATE_NOOP("Words", "A pleat under {%1} on the back may stay. A longer "
                                                     "one, or a cut through the ground, means a new block.")},
    Worded{"find-needle", QT_TRANSLATE_NOOP("Words", "Needle broken? Find all the pieces before you go on.")},
    Worded{"patch-again",
           QT_TRANSLATE_NOOP("Words", "Not pressed yet: unpick that patch’s stitches only, peel it off, lay "
                                      "the right one, stitch it again. Pressed already: a new block.")},
    Worded{"power-again",
           QT_TRANSLATE_NOOP(
               "Words",
               "Leave the block in the hoop. Start again at the stop you were at; nothing here was lost.")},
    Worded{"torn",
           QT_TRANSLATE_NOOP(
               "Words", "Blocks lost beyond the tear: %1. They are on record and stand in the list again.")},
    Worded{
        "torn-carries",
        QT_TRANSLATE_NOOP("Words", "No stitched block is lost. What no longer fits goes to the next strip.")},
    Worded{"carries-over", QT_TRANSLATE_NOOP("Words", "Blocks that go to the next strip: %1.")},
    //: tail: a waste strip sewn to the end so that the frame has cloth to hold
    Worded{"sew-a-tail", QT_TRANSLATE_NOOP("Words", "It would still fit with a waste tail sewn to the end.")},
    Worded{"smaller-gap", QT_TRANSLATE_NOOP("Words", "It would still fit with a gap of {%1}.")},
    Worded{
        "not-changed",
        QT_TRANSLATE_NOOP(
            "Words", "Nothing was changed. What you decide at Fit follows at once; what is cut stays cut.")},
    Worded{"more-strips", QT_TRANSLATE_NOOP("Words", "Hoop strips to cut beyond the plan: %1.")},
    Worded{"fewer-per-strip", QT_TRANSLATE_NOOP("Words", "Blocks on each new strip: %1 instead of %2.")},
    //: allowance: the cloth left outside a block's stitched line
    Worded{"allowance-will-do",
           QT_TRANSLATE_NOOP("Words",
                             "{%1} is enough. Sew that side by the stitched line, not by the raw edge.")},
    Worded{"patch-allowance",
           QT_TRANSLATE_NOOP("Words",
                             "{%1} is too little to hold a seam; it takes {%2}. Lay a scrap of the same "
                             "three layers edge to edge, zigzag it on, trim it to the ruler again.")},
    Worded{"or-outer-edge",
           QT_TRANSLATE_NOOP(
               "Words", "Or lay the block so that this side comes to the outer edge, under the binding.")},
    Worded{"too-little-left",
           QT_TRANSLATE_NOOP("Words", "{%1} holds nothing: under {%2} the block is made again. Its good part "
                                      "serves for a test join.")},
    Worded{"size-within", QT_TRANSLATE_NOOP("Words", "Off by {%1}: up to {%2} that is good work. Go on.")},
    Worded{"trim-again",
           QT_TRANSLATE_NOOP("Words", "{%1} too large: lay the ruler on the stitched line and trim again.")},
    Worded{"seam-from-line",
           QT_TRANSLATE_NOOP(
               "Words", "{%1} too small. It can be used: sew it by the stitched line, not by the raw edge.")},
    Worded{"far-under",
           QT_TRANSLATE_NOOP("Words",
                             "{%1} too small. Measure its stitched outline: is that small too, the outer "
                             "line is stitched again at size, or the block is made again.")},
    Worded{"ease-row",
           QT_TRANSLATE_NOOP("Words",
                             "Off by {%1}: up to {%2} a row is eased to the long sashing. Pin the ends and "
                             "the marks first.")},
    //: scant: less deep than it should be
    Worded{"seams-too-scant",
           QT_TRANSLATE_NOOP("Words",
                             "{%2} too long. If every seam shares in it, each was sewn {%1} too scant: sew "
                             "them again that much deeper, or try the test join anew.")},
    Worded{"seams-too-deep",
           QT_TRANSLATE_NOOP("Words",
                             "{%2} too short. If every seam shares in it, each was sewn {%1} too deep: "
                             "unpick, and sew them again that much scanter.")},
    Worded{
        "find-the-one",
        QT_TRANSLATE_NOOP(
            "Words",
            "First measure each sashing as it is seen: if one alone is off, only its seams are unpicked.")},
    Worded{"piece-smaller",
           QT_TRANSLATE_NOOP("Words",
                             "{%1} smaller than planned. Square the opposite side to it; the binding as "
                             "planned reaches round.")},
    Worded{"measure-round",
           QT_TRANSLATE_NOOP(
               "Words",
               "Enter the four sides and both diagonals under “Measure the piece”: it says where to cut.")},
    Worded{"unpick-seam",
           QT_TRANSLATE_NOOP("Words",
                             "Cut every third stitch on the bobbin’s side, draw the other thread out, brush "
                             "the bits away, press flat. Keep the ripper’s blade off the cloth.")},
    Worded{"unpick-binding",
           QT_TRANSLATE_NOOP("Words",
                             "Unpick the binding from the last good corner on, not the whole round; press it "
                             "flat and fold the corner anew.")},
    Worded{"sew-again-at", QT_TRANSLATE_NOOP("Words", "Sew it again {%1} deep.")},
    Worded{"strip-may-serve",
           QT_TRANSLATE_NOOP(
               "Words", "The strip serves again if it is not frayed or stretched; otherwise make it again.")},
    //: a strip of sashing cut to length
    Worded{"strip-again",
           QT_TRANSLATE_NOOP(
               "Words",
               "Cut {%2} × {%3} of %1 for it: from what the sashing strips left over, or across the cloth.")},
    //: ditch: the seam line beside a sashing, in which the back is caught from the front
    Worded{"unpick-missed", QT_TRANSLATE_NOOP("Words", "Unpick the ditch where it missed, and a thumb’s "
                                                       "width beyond at both ends. Nothing is cut anew.")},
    Worded{"fold-less",
           QT_TRANSLATE_NOOP(
               "Words", "Fold {%1} under, no more: that catches {%2}. Pin on the seam line and stitch.")},
    Worded{"fold-by-hand",
           QT_TRANSLATE_NOOP("Words",
                             "Where it still does not reach, close it by hand, or lay a tape over the fold. "
                             "Feel every other join for the same.")},
    Worded{"binding-missed",
           QT_TRANSLATE_NOOP(
               "Words",
               "Draw the binding over its seam on the back and close the place by hand; no need to unpick.")},
    Worded{"edge-covered",
           QT_TRANSLATE_NOOP(
               "Words",
               "A notch of {%1}: the binding covers it. Lay a scrap of batting in, so that it is filled.")},
    Worded{"edge-narrower",
           QT_TRANSLATE_NOOP("Words",
                             "{%1} is left. Trim {%2} off all four sides, so that the edge stays even, and "
                             "bind as planned.")},
    Worded{"patch-edge",
           QT_TRANSLATE_NOOP("Words",
                             "Only {%1} is left. Lay a scrap of the three layers edge to edge into the "
                             "notch, zigzag it, then square the side again.")},
    Worded{"unpick-its-joins",
           QT_TRANSLATE_NOOP(
               "Words", "If %1 was sewn in, unpick the joins on its sides only; they are sewn again with "
                        "the new block. All others stay.")},
    Worded{"no-such-block",
           QT_TRANSLATE_NOOP("Words", "No good block of that name is on record: nothing was changed.")},
    Worded{"nothing-to-record", QT_TRANSLATE_NOOP("Words", "With that measure nothing changes.")},
};

/// A cloth or a step named in an answer, in the maker's words.
Argument inHerWords(const Argument &argument, const Project &project, const std::vector<Step> &steps)
{
    const std::string *name = std::get_if<std::string>(&argument);
    if (!name)
        return argument;
    // A cloth no one has named goes by its use.
    if (const QString cloth = clothText(project, *name); cloth != toQt(*name))
        return cloth.toStdString();
    for (const Step &step : steps)
        if (step.id == *name)
            return doesText(step, project).toStdString();
    return argument;
}

} // namespace

std::span<const Worded> mishapWords()
{
    return mishaps;
}

std::span<const Worded> askedWords()
{
    return asked;
}

std::span<const Worded> saidWords()
{
    return said;
}

QString sentence(const Said &line, const Project &project, const std::vector<Step> &steps)
{
    QString text = wordsOrCode(said, line.code);
    for (std::size_t i = 0; i < line.args.size(); ++i)
        text.replace(QStringLiteral("%%1").arg(i + 1),
                     argumentText(inHerWords(line.args[i], project, steps), project.marks()));
    return text;
}

} // namespace matside
