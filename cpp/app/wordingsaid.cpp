// SPDX-License-Identifier: MIT
//
// What a mishap means, parted into acts: a line of the answer is one or several, each with its vignette.
#include "app/acts.h"
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

/// An act of an answer. Those of one code stand together, in the order in which they are done. `draws` is
/// its vignette; what has none stands with the words before it.
struct ToldAct {
    std::string_view code;
    const char *text;
    std::string_view draws;
    std::string_view minds = {};
};

// %1 and %2 as the answer tells them; lengths come with their unit.
constexpr std::array acts{
    ToldAct{"keep-for-narrower",
            QT_TRANSLATE_NOOP("Words", "Keep it: a narrower strip or patches come out of it."), "narrower"},
    ToldAct{"keep-for-narrower", QT_TRANSLATE_NOOP("Words", "Straighten the end first."), "straighten",
            "blade"},
    ToldAct{"make-again", QT_TRANSLATE_NOOP("Words", "To make again: %1. It stands in the list once more."),
            "again"},
    //: %1 is a block's name, "B2"; spare: a block stitched over and above the layout
    ToldAct{"spare-takes-it",
            QT_TRANSLATE_NOOP("Words", "A spare takes the place of %1: nothing is made again."), "spare"},
    ToldAct{"block-again",
            QT_TRANSLATE_NOOP(
                "Words", "Block %1 is stitched again, with the same thread lot. It stands next in the list."),
            "block-again"},
    ToldAct{"needs-cloth", QT_TRANSLATE_NOOP("Words", "Still to cut of %1: {%2} along the selvage."),
            "along-selvage"},
    ToldAct{"rest-yields", QT_TRANSLATE_NOOP("Words", "What is left of %1, {%2}, yields it."), "rest-yields"},
    //: what is left was never measured: it is reckoned from what the shopping list says was bought
    ToldAct{"rest-yields-reckoned",
            QT_TRANSLATE_NOOP("Words", "Bought as Shop lists it, {%2} of %1 is left: that yields it."),
            "rest-yields"},
    //: %2 is left of the cloth; its edge is cut straight first, which takes some of that
    ToldAct{"rest-yields-just",
            QT_TRANSLATE_NOOP(
                "Words", "{%2} of %1 is left: that yields it if squaring the edge takes no more than {%3}."),
            "rest-yields"},
    //: it is cut again from what is left over on strips already cut
    ToldAct{"strips-yield",
            QT_TRANSLATE_NOOP("Words",
                              "It comes out of what is left on a strip of %1 already cut: nothing to buy."),
            "rest-yields"},
    //: the edge that the last cut left, from which the next strip is measured
    ToldAct{"square-edge", QT_TRANSLATE_NOOP("Words", "First square the cut edge of %1 to its fold again."),
            "straighten", "blade"},
    ToldAct{"nothing-more-needed", QT_TRANSLATE_NOOP("Words", "Nothing more is needed of %1."), "good"},
    ToldAct{"rest-short", QT_TRANSLATE_NOOP("Words", "What is left of %1, {%2}, does not yield it."),
            "rest-short"},
    ToldAct{
        "rest-short-reckoned",
        QT_TRANSLATE_NOOP("Words", "Bought as Shop lists it, {%2} of %1 is left: that does not yield it."),
        "rest-short"},
    ToldAct{
        "measure-rest",
        QT_TRANSLATE_NOOP(
            "Words", "Nobody has measured what is left of %1. Measure it along the selvage before you buy."),
        "along-selvage"},
    ToldAct{"buy", QT_TRANSLATE_NOOP("Words", "Buy at least {%2} of %1, of the same lot."), "buy"},
    //: %1 is a step in words
    ToldAct{"becomes-wrong",
            QT_TRANSLATE_NOOP("Words", "Made to the old measure, at “%1”: look at it before you use it."),
            "look"},
    ToldAct{"nothing-wrong-with-the-rest", QT_TRANSLATE_NOOP("Words", "What is made already stays good."),
            "good"},
    ToldAct{"counted", QT_TRANSLATE_NOOP("Words", "Counted as done."), "good"},
    ToldAct{"restart-thread",
            QT_TRANSLATE_NOOP("Words", "Pick the thread back about {1 in} and start again on the line."),
            "pick-back"},
    ToldAct{"restart-thread", QT_TRANSLATE_NOOP("Words", "Inside stippling it will not show."), "stipple",
            "needle"},
    ToldAct{"change-bobbin", QT_TRANSLATE_NOOP("Words", "The bobbin is counted as new from here."), "bobbin"},
    ToldAct{"judge-pleat", QT_TRANSLATE_NOOP("Words", "A pleat under {%1} on the back may stay."),
            "pleat-small"},
    ToldAct{"judge-pleat",
            QT_TRANSLATE_NOOP("Words", "A longer one, or a cut through the ground, means a new block."),
            "pleat-long"},
    ToldAct{"find-needle", QT_TRANSLATE_NOOP("Words", "Needle broken? Find all the pieces before you go on."),
            "needle-pieces", "needle"},
    ToldAct{"patch-again", QT_TRANSLATE_NOOP("Words", "Not pressed yet: unpick that patch’s stitches only."),
            "ripper-patch", "ripper"},
    ToldAct{"patch-again", QT_TRANSLATE_NOOP("Words", "Peel it off, lay the right one, stitch it again."),
            "peel", "needle"},
    ToldAct{"patch-again", QT_TRANSLATE_NOOP("Words", "Pressed already: a new block."), "pressed"},
    ToldAct{"power-again", QT_TRANSLATE_NOOP("Words", "Leave the block in the hoop."), "hoop-stays"},
    ToldAct{"power-again",
            QT_TRANSLATE_NOOP("Words", "Start again at the stop you were at; nothing here was lost."), "stop",
            "needle"},
    ToldAct{"torn",
            QT_TRANSLATE_NOOP(
                "Words", "Blocks lost beyond the tear: %1. They are on record and stand in the list again."),
            "torn"},
    ToldAct{
        "torn-carries",
        QT_TRANSLATE_NOOP("Words", "No stitched block is lost. What no longer fits goes to the next strip."),
        "carry"},
    ToldAct{"carries-over", QT_TRANSLATE_NOOP("Words", "Blocks that go to the next strip: %1."), "carry"},
    //: tail: a waste strip sewn to the end so that the frame has cloth to hold
    ToldAct{"sew-a-tail", QT_TRANSLATE_NOOP("Words", "It would still fit with a waste tail sewn to the end."),
            "tail"},
    ToldAct{"smaller-gap", QT_TRANSLATE_NOOP("Words", "It would still fit with a gap of {%1}."), "gap"},
    ToldAct{
        "not-changed",
        QT_TRANSLATE_NOOP(
            "Words", "Nothing was changed. What you decide at Fit follows at once; what is cut stays cut."),
        "unchanged"},
    ToldAct{"more-strips", QT_TRANSLATE_NOOP("Words", "Hoop strips to cut beyond the plan: %1."), "strips"},
    ToldAct{"fewer-per-strip", QT_TRANSLATE_NOOP("Words", "Blocks on each new strip: %1 instead of %2."),
            "fewer"},
    //: allowance: the cloth left outside a block's stitched line
    ToldAct{"allowance-will-do",
            QT_TRANSLATE_NOOP("Words",
                              "{%1} is enough. Sew that side by the stitched line, not by the raw edge."),
            "by-line"},
    ToldAct{"patch-allowance",
            QT_TRANSLATE_NOOP("Words", "{%1} is too little to hold a seam; it takes {%2}."), "too-little"},
    ToldAct{"patch-allowance",
            QT_TRANSLATE_NOOP("Words", "Lay a scrap of the same three layers edge to edge."), "scrap"},
    ToldAct{"patch-allowance", QT_TRANSLATE_NOOP("Words", "Zigzag it on, trim it to the ruler again."),
            "zigzag", "blade"},
    ToldAct{"or-outer-edge",
            QT_TRANSLATE_NOOP(
                "Words", "Or lay the block so that this side comes to the outer edge, under the binding."),
            "outer"},
    ToldAct{"too-little-left",
            QT_TRANSLATE_NOOP("Words", "{%1} holds nothing: under {%2} the block is made again."),
            "too-little"},
    ToldAct{"too-little-left", QT_TRANSLATE_NOOP("Words", "Its good part serves for a test join."),
            "test-join"},
    ToldAct{"size-within", QT_TRANSLATE_NOOP("Words", "Off by {%1}: up to {%2} that is good work. Go on."),
            "good"},
    ToldAct{"trim-again",
            QT_TRANSLATE_NOOP("Words", "{%1} too large: lay the ruler on the stitched line and trim again."),
            "trim-line", "blade"},
    ToldAct{"seam-from-line",
            QT_TRANSLATE_NOOP(
                "Words", "{%1} too small. It can be used: sew it by the stitched line, not by the raw edge."),
            "by-line"},
    ToldAct{"far-under", QT_TRANSLATE_NOOP("Words", "{%1} too small. Measure its stitched outline."),
            "measure-outline"},
    //: it: the stitched outline of a block
    ToldAct{"far-under",
            QT_TRANSLATE_NOOP("Words", "Is that small too, the outer line is stitched again at size, or the "
                                       "block is made again."),
            "block-again"},
    ToldAct{"ease-row",
            QT_TRANSLATE_NOOP("Words", "Off by {%1}: up to {%2} a row is eased to the long sashing."),
            "ease"},
    ToldAct{"ease-row", QT_TRANSLATE_NOOP("Words", "Pin the ends and the marks first."), "pin-ends"},
    //: scant: less deep than it should be
    ToldAct{"seams-too-scant",
            QT_TRANSLATE_NOOP("Words",
                              "{%2} too long. If every seam shares in it, each was sewn {%1} too scant."),
            "row-long"},
    ToldAct{"seams-too-scant",
            QT_TRANSLATE_NOOP("Words", "Sew them again that much deeper, or try the test join anew."),
            "sew-deep", "needle"},
    ToldAct{"seams-too-deep",
            QT_TRANSLATE_NOOP("Words",
                              "{%2} too short. If every seam shares in it, each was sewn {%1} too deep."),
            "row-short"},
    //: scanter: less deep
    ToldAct{"seams-too-deep", QT_TRANSLATE_NOOP("Words", "Unpick, and sew them again that much scanter."),
            "ripper-seam", "ripper"},
    ToldAct{"find-the-one", QT_TRANSLATE_NOOP("Words", "First measure each sashing as it is seen."),
            "measure-sashing"},
    ToldAct{"find-the-one", QT_TRANSLATE_NOOP("Words", "If one alone is off, only its seams are unpicked."),
            "one-sashing", "ripper"},
    ToldAct{"piece-smaller",
            QT_TRANSLATE_NOOP("Words", "{%1} smaller than planned. Square the opposite side to it."),
            "square-opposite", "blade"},
    ToldAct{"piece-smaller", QT_TRANSLATE_NOOP("Words", "The binding as planned reaches round."), "bind"},
    ToldAct{"measure-round",
            QT_TRANSLATE_NOOP(
                "Words",
                "Enter the four sides and both diagonals under “Measure the piece”: it says where to cut."),
            "six"},
    ToldAct{"unpick-seam", QT_TRANSLATE_NOOP("Words", "Cut every third stitch on the bobbin’s side."),
            "ripper-seam", "ripper"},
    ToldAct{"unpick-seam", QT_TRANSLATE_NOOP("Words", "Draw the other thread out and brush the bits away."),
            "draw-thread"},
    ToldAct{"unpick-seam", QT_TRANSLATE_NOOP("Words", "Press it flat."), "press", "iron"},
    ToldAct{
        "unpick-binding",
        QT_TRANSLATE_NOOP("Words", "Unpick the binding from the last good corner on, not the whole round."),
        "ripper-binding", "ripper"},
    ToldAct{"unpick-binding", QT_TRANSLATE_NOOP("Words", "Press it flat and fold the corner anew."),
            "corner-anew", "iron"},
    ToldAct{"sew-again-at", QT_TRANSLATE_NOOP("Words", "Sew it again {%1} deep."), "sew-deep", "needle"},
    ToldAct{"strip-may-serve",
            QT_TRANSLATE_NOOP(
                "Words", "The strip serves again if it is not frayed or stretched; otherwise make it again."),
            "frayed"},
    //: a strip of sashing cut to length
    ToldAct{"strip-again",
            QT_TRANSLATE_NOOP(
                "Words",
                "Cut {%2} × {%3} of %1 for it: from what the sashing strips left over, or across the cloth."),
            "cut-strip", "blade"},
    //: ditch: the seam line beside a sashing, in which the back is caught from the front
    ToldAct{"unpick-missed",
            QT_TRANSLATE_NOOP("Words",
                              "Unpick the ditch where it missed, and a thumb’s width beyond at both ends."),
            "ripper-ditch", "ripper"},
    ToldAct{"unpick-missed", QT_TRANSLATE_NOOP("Words", "Nothing is cut anew."), ""},
    ToldAct{"fold-less", QT_TRANSLATE_NOOP("Words", "Fold {%1} under, no more: that catches {%2}."),
            "fold-under"},
    ToldAct{"fold-less", QT_TRANSLATE_NOOP("Words", "Pin on the seam line and stitch."), "ditch", "needle"},
    ToldAct{"fold-by-hand",
            QT_TRANSLATE_NOOP(
                "Words", "Where it still does not reach, close it by hand, or lay a tape over the fold."),
            "by-hand"},
    ToldAct{"fold-by-hand", QT_TRANSLATE_NOOP("Words", "Feel all the other joins for the same."), "feel"},
    ToldAct{"binding-missed",
            QT_TRANSLATE_NOOP(
                "Words",
                "Draw the binding over its seam on the back and close the place by hand; no need to unpick."),
            "binding-hand"},
    ToldAct{"edge-covered", QT_TRANSLATE_NOOP("Words", "A notch of {%1}: the binding covers it."), "notch"},
    ToldAct{"edge-covered", QT_TRANSLATE_NOOP("Words", "Lay a scrap of batting in, so that it is filled."),
            "notch-filled"},
    ToldAct{"edge-narrower",
            QT_TRANSLATE_NOOP("Words",
                              "{%1} is left. Trim {%2} off all four sides, so that the edge stays even."),
            "trim-four", "blade"},
    ToldAct{"edge-narrower", QT_TRANSLATE_NOOP("Words", "Bind as planned."), "bind"},
    ToldAct{"patch-edge",
            QT_TRANSLATE_NOOP(
                "Words", "Only {%1} is left. Lay a scrap of the three layers edge to edge into the notch."),
            "scrap"},
    ToldAct{"patch-edge", QT_TRANSLATE_NOOP("Words", "Zigzag it, then square the side again."), "zigzag",
            "blade"},
    ToldAct{"unpick-its-joins",
            QT_TRANSLATE_NOOP("Words", "If %1 was sewn in, unpick the joins on its sides only."),
            "four-joins", "ripper"},
    ToldAct{"unpick-its-joins",
            QT_TRANSLATE_NOOP("Words", "They are sewn again with the new block. All others stay."),
            "sewn-again", "needle"},
    ToldAct{"no-such-block",
            QT_TRANSLATE_NOOP("Words", "No good block of that name is on record: nothing was changed."),
            "unchanged"},
    ToldAct{"nothing-to-record", QT_TRANSLATE_NOOP("Words", "With that measure nothing changes."),
            "unchanged"},
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

std::span<const Worded> saidWords()
{
    static const auto words = [] {
        std::array<Worded, acts.size()> list{};
        for (std::size_t i = 0; i < acts.size(); ++i)
            list[i] = {acts[i].code, acts[i].text};
        return list;
    }();
    return words;
}

Acts actsOf(const Said &line, const Project &project, const std::vector<Step> &steps)
{
    Acts list;
    for (const ToldAct &act : acts) {
        if (act.code != line.code)
            continue;
        QString text = inWords(act.text);
        for (std::size_t i = 0; i < line.args.size(); ++i)
            text.replace(QStringLiteral("%%1").arg(i + 1),
                         argumentText(inHerWords(line.args[i], project, steps), project.marks()));
        if (act.draws.empty() && !list.empty())
            list.back().says += u' ' + text;
        else
            list.push_back({toQt(act.draws), text, mindsText(act.minds), !list.empty()});
    }
    if (list.empty())
        list.push_back({QStringLiteral("unchanged"), toQt(line.code)});
    return list;
}

QString sentence(const Said &line, const Project &project, const std::vector<Step> &steps)
{
    return linesOf(actsOf(line, project, steps)).join(u' ');
}

} // namespace matside
