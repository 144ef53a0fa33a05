// SPDX-License-Identifier: MIT
#include "app/findings.h"

#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array verdicts{
    Worded{"plain", QT_TRANSLATE_NOOP("Words", "It is square enough.")},
    //: lean: the block is a little of a diamond; %1 is by how much
    Worded{"split", QT_TRANSLATE_NOOP("Words", "It leans by {%1}.")},
    //: stitched: the size within a block's outer stitches, not that it is cut to
    Worded{"common-size", QT_TRANSLATE_NOOP("Words", "Stitched {%2}: off size.")},
    //: cut: the size of a trimmed block
    Worded{"common-size-cut", QT_TRANSLATE_NOOP("Words", "Cut {%2}: off size.")},
    //: %7 is that side of the block: "right"
    Worded{"tilted", QT_TRANSLATE_NOOP("Words", "One side is tilted by {%1}: %7.")},
    //: %7 is the wider end of the block: "top"
    Worded{"taper", QT_TRANSLATE_NOOP("Words", "One end is wider: %7. Each side tilts by {%1}.")},
    //: %1 is by how much, the most of its size or of a tilted side
    Worded{"remake", QT_TRANSLATE_NOOP("Words", "It is {%1} off: too far to be cut as it is.")},
    //: lean: the block is a little of a diamond; %1 is by how much
    Worded{"remake-leaning", QT_TRANSLATE_NOOP("Words", "It leans by {%1}: too far to be cut as it is.")},
    //: %3 is how far the six readings disagree
    Worded{"measure-again", QT_TRANSLATE_NOOP("Words", "The readings disagree by {%3}.")},
    //: of a block's four sides and two diagonals some were not measured yet
    Worded{"read-the-rest", QT_TRANSLATE_NOOP("Words", "Not all six are read yet.")},
};

constexpr std::array remedies{
    Worded{"cut-plainly", QT_TRANSLATE_NOOP("Words", "Cut it plainly, squared off the first side.")},
    Worded{"cut-split",
           QT_TRANSLATE_NOOP("Words",
                             "Split the lean: turn the ruler by half of it, about the middle of the block.")},
    Worded{"use-as-is", QT_TRANSLATE_NOOP("Words", "Use it as it is.")},
    Worded{"trim-to-size", QT_TRANSLATE_NOOP("Words", "Trim it down to size.")},
    //: the largest true square that can still be cut from it
    Worded{"trim-true", QT_TRANSLATE_NOOP("Words", "Trim it true: the largest is {%4}.")},
    Worded{"take-common-size",
           QT_TRANSLATE_NOOP("Words", "Measure the others too, then take a common size.")},
    Worded{"hide-in-seam", QT_TRANSLATE_NOOP("Words", "Cut that side parallel to the one across from it; its "
                                                      "stitches go into the seam. Unpick what shows.")},
    Worded{"hide-both-sides",
           QT_TRANSLATE_NOOP(
               "Words",
               "Cut both sides square to the ends; their stitches go into the seams. Unpick what shows.")},
    Worded{"restitch-line",
           QT_TRANSLATE_NOOP("Words", "Hoop it again, unpick the outer line and stitch it at size. If the "
                                      "stippling does not reach: a new block.")},
    Worded{"block-wet", QT_TRANSLATE_NOOP("Words", "Pin it square on a board, steam it, let it dry and "
                                                   "measure again. If that does not help: a new block.")},
    Worded{"patch-allowance", QT_TRANSLATE_NOOP("Words", "Zigzag a scrap of sandwich to the short allowance, "
                                                         "edge to edge, or put the block at an outer edge.")},
    Worded{"make-again",
           QT_TRANSLATE_NOOP("Words", "Make it again: the same place on a strip, the same thread lot.")},
    Worded{"measure-first", QT_TRANSLATE_NOOP("Words", "Measure again, %5 first. Do not cut yet.")},
    //: %6 lists the sides and diagonals that were not measured: "left, diagonal from top right"
    Worded{"read-the-rest", QT_TRANSLATE_NOOP("Words", "Still to read: %6. Do not cut yet.")},
};

constexpr std::array readings{
    QT_TRANSLATE_NOOP("Words", "top"),
    QT_TRANSLATE_NOOP("Words", "right"),
    QT_TRANSLATE_NOOP("Words", "bottom"),
    QT_TRANSLATE_NOOP("Words", "left"),
    //: a diagonal of the block
    QT_TRANSLATE_NOOP("Words", "diagonal from top left"),
    //: a diagonal of the block
    QT_TRANSLATE_NOOP("Words", "diagonal from top right"),
};

QString pairText(const Pair &pair, Marks marks, Round round)
{
    if (pair.along == pair.across)
        return figureText(pair.along, marks, round);
    return figureText(pair.along, marks, round) + QStringLiteral(" × ") +
           figureText(pair.across, marks, round);
}

QString filled(QString text, const Finding &finding, Marks marks)
{
    const Length off = finding.kind == FindingKind::Remake  ? offBy(finding)
                       : finding.kind == FindingKind::Split ? finding.figures.lean
                                                            : finding.figures.tilt;
    text.replace(QStringLiteral("%1"), figureText(off.magnitude(), marks, Round::Fine));
    text.replace(QStringLiteral("%2"), pairText(finding.own, marks, Round::Nearest));
    text.replace(QStringLiteral("%3"), figureText(finding.figures.K.magnitude(), marks, Round::Fine));
    text.replace(QStringLiteral("%4"), pairText(finding.figures.trueSize, marks, Round::Down));
    text.replace(QStringLiteral("%5"), finding.suspect ? readingText(*finding.suspect)
                                                       : QCoreApplication::translate("Words", "all six"));
    QStringList missing;
    for (const std::size_t reading : finding.missing)
        missing << readingText(reading);
    text.replace(QStringLiteral("%7"),
                 finding.side ? readingText(static_cast<std::size_t>(*finding.side)) : QString());
    text.replace(QStringLiteral("%6"), missing.join(QStringLiteral(", ")));
    return text;
}

} // namespace

std::span<const Worded> verdictWords()
{
    return verdicts;
}

std::span<const Worded> remedyWords()
{
    return remedies;
}

QString readingText(std::size_t reading)
{
    return reading < readings.size() ? QCoreApplication::translate("Words", readings[reading]) : QString();
}

QString sizeText(const Pair &size, Marks marks)
{
    return u'{' + pairText(size, marks, Round::Nearest) + u'}';
}

QString verdictText(const Finding &finding, Marks marks, Measured what)
{
    std::string_view code = nameOf(finding.kind);
    if (finding.does == Remedy::ReadTheRest)
        code = nameOf(finding.does);
    else if (finding.kind == FindingKind::Remake && finding.does == Remedy::BlockWet)
        code = "remake-leaning";
    else if (finding.kind == FindingKind::CommonSize && what == Measured::Trimmed)
        code = "common-size-cut";
    return filled(wordsOrCode(verdicts, code), finding, marks);
}

QString remedyText(const Finding &finding, Marks marks)
{
    return filled(wordsOrCode(remedies, nameOf(finding.does)), finding, marks);
}

} // namespace matside
