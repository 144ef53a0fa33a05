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
    Worded{"changed-mind", QT_TRANSLATE_NOOP("Words", "I changed my mind")},
};

constexpr std::array asked{
    Worded{"cloth-ran-out", QT_TRANSLATE_NOOP("Words", "How much of it is left?")},
    //: usable width of the cloth, between the selvages
    Worded{"cloth-narrower", QT_TRANSLATE_NOOP("Words", "How wide is it between the selvages?")},
    Worded{"strip-torn", QT_TRANSLATE_NOOP("Words", "Where is the tear, measured from the zero end?")},
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
    Worded{"judge-pleat", QT_TRANSLATE_NOOP("Words", "A pleat under {1/2 in} on the back may stay. A longer "
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
    Worded{"nothing-to-record", QT_TRANSLATE_NOOP("Words", "With that measure nothing changes.")},
};

/// A cloth or a step named in an answer, in the maker's words.
Argument inHerWords(const Argument &argument, const Project &project, const std::vector<Step> &steps)
{
    const std::string *name = std::get_if<std::string>(&argument);
    if (!name)
        return argument;
    if (clothNamed(project, *name))
        return clothText(project, *name).toStdString();
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
