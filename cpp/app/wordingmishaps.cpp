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

} // namespace

std::span<const Worded> mishapWords()
{
    return mishaps;
}

std::span<const Worded> askedWords()
{
    return asked;
}

} // namespace matside
