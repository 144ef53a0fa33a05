// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <array>

namespace matside {

namespace {

constexpr std::array faults{
    Worded{"not-utf8-or-json",
           QT_TRANSLATE_NOOP("Words", "This is not readable as JSON: it breaks off at line %1, column %2.")},
    Worded{"doubled-key", QT_TRANSLATE_NOOP("Words", "The key \"%1\" stands twice in one place.")},
    Worded{"file-too-large", QT_TRANSLATE_NOOP("Words", "The file is too large: %1 bytes; %2 is the most.")},
    Worded{"too-deep", QT_TRANSLATE_NOOP("Words", "The file is nested deeper than %1 levels.")},
    Worded{"too-many-values",
           QT_TRANSLATE_NOOP("Words", "There are too many values in one place; %1 is the most.")},
    Worded{"text-too-long", QT_TRANSLATE_NOOP("Words", "A text is longer than %1 characters.")},
    Worded{"not-a-project", QT_TRANSLATE_NOOP("Words", "This is not a project file of Matside.")},
    Worded{"version-unknown",
           QT_TRANSLATE_NOOP("Words", "The file does not say which version of the format it is in.")},
    Worded{"version-newer",
           QT_TRANSLATE_NOOP("Words",
                             "The file is in version %1 of the format; this program knows %2. A newer "
                             "Matside will open it.")},
    Worded{"file-not-opened", QT_TRANSLATE_NOOP("Words", "The file %1 cannot be opened: %2.")},
    Worded{"wrong-type", QT_TRANSLATE_NOOP("Words", "There should be %1 here.")},
    Worded{"wrong-count", QT_TRANSLATE_NOOP("Words", "There must be %1 of them here.")},
    Worded{"not-a-choice", QT_TRANSLATE_NOOP("Words", "\"%1\" is not one of the choices.")},
    Worded{"needed", QT_TRANSLATE_NOOP("Words", "This is needed and is missing.")},
    Worded{"not-a-length", QT_TRANSLATE_NOOP("Words", "\"%1\" is not a length.")},
    Worded{"length-too-long", QT_TRANSLATE_NOOP("Words", "\"%1\" is longer than any piece here can be.")},
    Worded{"length-too-small", QT_TRANSLATE_NOOP("Words", "\"%1\" is too small for this.")},
    Worded{"not-a-share", QT_TRANSLATE_NOOP("Words", "\"%1\" is not a percentage.")},
    Worded{"count-out-of-range", QT_TRANSLATE_NOOP("Words", "This lies between %1 and %2.")},
    Worded{"too-many", QT_TRANSLATE_NOOP("Words", "The list is too long; %1 is the most.")},
    //: mark: a line printed on a ruler
    Worded{"finest-not-a-mark", QT_TRANSLATE_NOOP("Words", "No ruler is marked in steps of %1.")},
    Worded{"table-not-whole",
           QT_TRANSLATE_NOOP("Words", "A table needs a length and a width, or a diameter alone.")},
    Worded{"doubled-id", QT_TRANSLATE_NOOP("Words", "Two cloths have the same short name, \"%1\".")},
    Worded{"cloth-not-listed", QT_TRANSLATE_NOOP("Words", "The cloth \"%1\" is not on the list of cloths.")},
    Worded{
        "test-block-not-whole",
        QT_TRANSLATE_NOOP("Words", "A measured test block needs its sent size and its outline, both ways.")},
    Worded{"piece-not-whole",
           QT_TRANSLATE_NOOP("Words", "A measured piece needs four sides and two diagonals.")},
};

/// What a place in the file holds, told instead of the code in "wrong-type".
constexpr std::array kinds{
    Worded{"object", QT_TRANSLATE_NOOP("Words", "a group of keys")},
    Worded{"list", QT_TRANSLATE_NOOP("Words", "a list")},
    Worded{"length", QT_TRANSLATE_NOOP("Words", "a length, such as \"7 1/2 in\",")},
    Worded{"pair", QT_TRANSLATE_NOOP("Words", "two lengths, along and across,")},
    Worded{"share", QT_TRANSLATE_NOOP("Words", "a percentage, such as \"2 %\",")},
    Worded{"count", QT_TRANSLATE_NOOP("Words", "a whole number")},
    Worded{"flag", QT_TRANSLATE_NOOP("Words", "true or false")},
    Worded{"text", QT_TRANSLATE_NOOP("Words", "a text")},
    Worded{"price", QT_TRANSLATE_NOOP("Words", "a price as a number")},
};

constexpr std::array remedies{
    Worded{"set-block", QT_TRANSLATE_NOOP("Words", "Make the block %1.")},
    Worded{"set-finished", QT_TRANSLATE_NOOP("Words", "Make the sashing %1.")},
    Worded{"set-seam", QT_TRANSLATE_NOOP("Words", "Sew with a seam of %1.")},
    Worded{"set-allowance", QT_TRANSLATE_NOOP("Words", "Trim the blocks to an allowance of %1.")},
    Worded{"set-outside", QT_TRANSLATE_NOOP("Words", "Keep %1 outside the stitched line.")},
    Worded{"set-gap", QT_TRANSLATE_NOOP("Words", "Leave a gap of %1.")},
    Worded{"set-cut-back", QT_TRANSLATE_NOOP("Words", "Cut the back sashing %1 wide.")},
    Worded{"set-catch", QT_TRANSLATE_NOOP("Words", "Let the fold catch %1.")},
    Worded{"set-binding-seam", QT_TRANSLATE_NOOP("Words", "Sew the binding on with a seam of %1.")},
    Worded{"set-usable", QT_TRANSLATE_NOOP("Words", "Use cloth %1 wide.")},
    Worded{"set-draw-up", QT_TRANSLATE_NOOP("Words", "Reckon with a draw-up of %1.")},
    Worded{"set-margin", QT_TRANSLATE_NOOP("Words", "Leave a margin of %1.")},
    //: framed: a border of sashing all round, then bound
    Worded{"choose-framed", QT_TRANSLATE_NOOP("Words", "Frame the piece with sashing.")},
    Worded{"set-radius", QT_TRANSLATE_NOOP("Words", "Round the corners by %1.")},
    Worded{"set-depth", QT_TRANSLATE_NOOP("Words", "Make the scallops %1 deep.")},
    Worded{"square-corners", QT_TRANSLATE_NOOP("Words", "Leave the corners square.")},
    Worded{"reckon-gap", QT_TRANSLATE_NOOP("Words", "Let the gap be reckoned.")},
    Worded{"reckon-cut-back", QT_TRANSLATE_NOOP("Words", "Let the back sashing's width be reckoned.")},
    Worded{"frame-clear", QT_TRANSLATE_NOOP("Words", "Keep the frame clear of the block before.")},
    Worded{"sew-tails", QT_TRANSLATE_NOOP("Words", "Sew waste tails to both ends.")},
    Worded{"forget-test-block", QT_TRANSLATE_NOOP("Words", "Forget this measuring and measure again.")},
    Worded{"match-edge-seam", QT_TRANSLATE_NOOP("Words", "Sew the binding on with a seam of %1.")},
    Worded{"set-length", QT_TRANSLATE_NOOP("Words", "Make it %1.")},
    Worded{"set-share", QT_TRANSLATE_NOOP("Words", "Make it %1.")},
    Worded{"set-count", QT_TRANSLATE_NOOP("Words", "Make it %1.")},
    Worded{"set-flag", QT_TRANSLATE_NOOP("Words", "Make it %1.")},
    Worded{"set-choice", QT_TRANSLATE_NOOP("Words", "Choose \"%1\".")},
    Worded{"set-word", QT_TRANSLATE_NOOP("Words", "Call it \"%1\".")},
    Worded{"take-away", QT_TRANSLATE_NOOP("Words", "Take it away.")},
};

} // namespace

std::span<const Worded> fileWords()
{
    return faults;
}

std::span<const Worded> kindWords()
{
    return kinds;
}

std::span<const Worded> offerWords()
{
    return remedies;
}

QString sentence(const ReadError &error, System system)
{
    const QString like = system == System::Inch ? QStringLiteral("7 1/2") : QStringLiteral("190");
    switch (error.fault) {
    case ReadFault::Empty:
        return inWords(QT_TRANSLATE_NOOP("Words", "Nothing is entered yet; %1 would be read.")).arg(like);
    case ReadFault::BadFraction:
        return inWords(QT_TRANSLATE_NOOP("Words", "That fraction cannot be; write it as %1.")).arg(like);
    case ReadFault::UnknownUnit:
        return inWords(QT_TRANSLATE_NOOP("Words", "That unit is not known; in, yd, ft, mm, cm and m are."));
    case ReadFault::TwoUnits:
        return inWords(QT_TRANSLATE_NOOP("Words", "There are two units; leave one away."));
    case ReadFault::TooLong:
        return inWords(QT_TRANSLATE_NOOP("Words", "That is longer than any piece here can be."));
    case ReadFault::TooFine:
        return inWords(QT_TRANSLATE_NOOP("Words", "That has more digits than any ruler; %1 would be read."))
            .arg(like);
    case ReadFault::NotAPercent:
        return inWords(QT_TRANSLATE_NOOP("Words", "That is not a percentage; 2 % would be read."));
    case ReadFault::NotANumber:
        break;
    }
    return inWords(QT_TRANSLATE_NOOP("Words", "That is not a length; %1 would be read.")).arg(like);
}

} // namespace matside
