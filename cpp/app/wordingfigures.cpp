// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array figures{
    Worded{"strip.width", QT_TRANSLATE_NOOP("Words", "hoop strip, cut")},
    Worded{"strip.perStrip", QT_TRANSLATE_NOOP("Words", "blocks on a strip")},
    Worded{"strip.strips", QT_TRANSLATE_NOOP("Words", "hoop strips")},
    Worded{"strip.gap", QT_TRANSLATE_NOOP("Words", "gap between outlines")},
    //: the first gaps of a strip, wide enough to be cut into sashing
    Worded{"strip.wideGap", QT_TRANSLATE_NOOP("Words", "gap that yields sashing")},
    Worded{"strip.end", QT_TRANSLATE_NOOP("Words", "end margin")},
    Worded{"strip.advance", QT_TRANSLATE_NOOP("Words", "advance")},
    Worded{"strip.remainder", QT_TRANSLATE_NOOP("Words", "left on each strip")},
    Worded{"strip.reach", QT_TRANSLATE_NOOP("Words", "frame’s reach")},
    Worded{"block.sent.along", QT_TRANSLATE_NOOP("Words", "size sent, along")},
    Worded{"block.sent.across", QT_TRANSLATE_NOOP("Words", "size sent, across")},
    Worded{"block.trimmed.along", QT_TRANSLATE_NOOP("Words", "trimmed block, along")},
    Worded{"block.trimmed.across", QT_TRANSLATE_NOOP("Words", "trimmed block, across")},
    Worded{"sashing.cutFront", QT_TRANSLATE_NOOP("Words", "front sashing, cut")},
    Worded{"sashing.cutBack", QT_TRANSLATE_NOOP("Words", "back sashing, cut")},
    Worded{"sashing.expected", QT_TRANSLATE_NOOP("Words", "allowances will meet within")},
    Worded{"sashing.shorts.count", QT_TRANSLATE_NOOP("Words", "short sashings a face")},
    Worded{"sashing.shorts.length", QT_TRANSLATE_NOOP("Words", "short sashing")},
    //: a short sashing as it is cut, with its spare
    Worded{"sashing.shorts.cut", QT_TRANSLATE_NOOP("Words", "short sashing, cut")},
    Worded{"sashing.longs.count", QT_TRANSLATE_NOOP("Words", "long sashings a face")},
    Worded{"sashing.longs.length", QT_TRANSLATE_NOOP("Words", "long sashing")},
    //: a long sashing as it is cut, with its spare
    Worded{"sashing.longs.cut", QT_TRANSLATE_NOOP("Words", "long sashing, cut")},
    Worded{"fold.under", QT_TRANSLATE_NOOP("Words", "fold under")},
    Worded{"fold.catchShown", QT_TRANSLATE_NOOP("Words", "which catches")},
    Worded{"size.raw.along", QT_TRANSLATE_NOOP("Words", "raw, along")},
    Worded{"size.raw.across", QT_TRANSLATE_NOOP("Words", "raw, across")},
    Worded{"size.finished.along", QT_TRANSLATE_NOOP("Words", "finished, along")},
    Worded{"size.finished.across", QT_TRANSLATE_NOOP("Words", "finished, across")},
    //: frame: a strip of sashing all round the piece, under the binding
    Worded{"frame.width", QT_TRANSLATE_NOOP("Words", "frame, as seen")},
    Worded{"frame.cut", QT_TRANSLATE_NOOP("Words", "frame strip, cut")},
    Worded{"frame.filler", QT_TRANSLATE_NOOP("Words", "batting in the frame")},
    Worded{"frame.sides", QT_TRANSLATE_NOOP("Words", "frame, left and right")},
    Worded{"frame.ends", QT_TRANSLATE_NOOP("Words", "frame, top and bottom")},
    Worded{"binding.cut", QT_TRANSLATE_NOOP("Words", "binding, cut")},
    Worded{"binding.length", QT_TRANSLATE_NOOP("Words", "binding, length")},
    Worded{"binding.strips", QT_TRANSLATE_NOOP("Words", "binding strips")},
    //: bias: cloth cut slantwise; one continuous strip is cut from a square
    Worded{"binding.square", QT_TRANSLATE_NOOP("Words", "square for the bias")},
    Worded{"table.reveal.along", QT_TRANSLATE_NOOP("Words", "table showing, along")},
    Worded{"table.reveal.across", QT_TRANSLATE_NOOP("Words", "table showing, across")},
    Worded{"table.corner", QT_TRANSLATE_NOOP("Words", "table showing at the corner")},
    Worded{"table.leafIn.along", QT_TRANSLATE_NOOP("Words", "table showing, leaf in")},
    Worded{"table.leafIn.corner", QT_TRANSLATE_NOOP("Words", "leaf in: at the corner")},
    Worded{"table.leafOut.along", QT_TRANSLATE_NOOP("Words", "table showing, leaf out")},
    Worded{"table.leafOut.corner", QT_TRANSLATE_NOOP("Words", "leaf out: at the corner")},
    Worded{"binding.width", QT_TRANSLATE_NOOP("Words", "binding, exact")},
    Worded{"sashing.finished", QT_TRANSLATE_NOOP("Words", "sashing, as seen")},
    //: batting laid between the two allowances under a wide sashing
    Worded{"sashing.filler", QT_TRANSLATE_NOOP("Words", "batting in the sashings")},
    Worded{"sashing.allowanceGap", QT_TRANSLATE_NOOP("Words", "gap on paper")},
    Worded{"size.outline.along", QT_TRANSLATE_NOOP("Words", "outlines, along")},
    Worded{"size.outline.across", QT_TRANSLATE_NOOP("Words", "outlines, across")},
    Worded{"strip.used", QT_TRANSLATE_NOOP("Words", "used of the strip")},
    Worded{"strip.starts", QT_TRANSLATE_NOOP("Words", "start on the strip")},
    Worded{"strip.centres", QT_TRANSLATE_NOOP("Words", "centre on the strip")},
    Worded{"strip.drawn", QT_TRANSLATE_NOOP("Words", "start on drawn-in cloth")},
    Worded{"sashing.marks", QT_TRANSLATE_NOOP("Words", "match mark")},
};

constexpr std::array terms{
    Worded{"outline", QT_TRANSLATE_NOOP("Words", "outline")},
    Worded{"drawUp", QT_TRANSLATE_NOOP("Words", "draw-up")},
    Worded{"allowance", QT_TRANSLATE_NOOP("Words", "allowance")},
    Worded{"hoop", QT_TRANSLATE_NOOP("Words", "hoop, outside")},
    Worded{"margin", QT_TRANSLATE_NOOP("Words", "margin")},
    Worded{"sent", QT_TRANSLATE_NOOP("Words", "size sent")},
    Worded{"seam", QT_TRANSLATE_NOOP("Words", "seam")},
    Worded{"fray", QT_TRANSLATE_NOOP("Words", "kept past the seam")},
    Worded{"sliver", QT_TRANSLATE_NOOP("Words", "sliver")},
    Worded{"reach", QT_TRANSLATE_NOOP("Words", "frame’s reach")},
    Worded{"widest", QT_TRANSLATE_NOOP("Words", "widest sashing strip")},
    Worded{"wideGap", QT_TRANSLATE_NOOP("Words", "gap that yields sashing")},
    Worded{"wider", QT_TRANSLATE_NOOP("Words", "wider gaps before it")},
    Worded{"truing", QT_TRANSLATE_NOOP("Words", "lost in truing")},
    Worded{"eighth", QT_TRANSLATE_NOOP("Words", "rounded up to")},
    Worded{"tail", QT_TRANSLATE_NOOP("Words", "tail")},
    Worded{"gap", QT_TRANSLATE_NOOP("Words", "gap")},
    Worded{"end", QT_TRANSLATE_NOOP("Words", "end margin")},
    Worded{"usable", QT_TRANSLATE_NOOP("Words", "usable length")},
    Worded{"perStrip", QT_TRANSLATE_NOOP("Words", "blocks on a strip")},
    Worded{"used", QT_TRANSLATE_NOOP("Words", "used")},
    Worded{"columns", QT_TRANSLATE_NOOP("Words", "columns")},
    Worded{"rows", QT_TRANSLATE_NOOP("Words", "rows")},
    Worded{"spare", QT_TRANSLATE_NOOP("Words", "spare")},
    //: spare blocks that all mats of a set share
    Worded{"spareInAll", QT_TRANSLATE_NOOP("Words", "spare for all")},
    Worded{"kits", QT_TRANSLATE_NOOP("Words", "kits")},
    Worded{"before", QT_TRANSLATE_NOOP("Words", "places before it")},
    Worded{"start", QT_TRANSLATE_NOOP("Words", "start")},
    Worded{"finished", QT_TRANSLATE_NOOP("Words", "sashing, as seen")},
    Worded{"cutFront", QT_TRANSLATE_NOOP("Words", "front strip")},
    Worded{"cutBack", QT_TRANSLATE_NOOP("Words", "back strip")},
    Worded{"sewn", QT_TRANSLATE_NOOP("Words", "seam as sewn")},
    Worded{"between", QT_TRANSLATE_NOOP("Words", "between the seams")},
    Worded{"turn", QT_TRANSLATE_NOOP("Words", "turn over the bulk")},
    Worded{"catch", QT_TRANSLATE_NOOP("Words", "catch")},
    Worded{"leastFold", QT_TRANSLATE_NOOP("Words", "least fold")},
    Worded{"cutStep", QT_TRANSLATE_NOOP("Words", "rounded up to")},
    Worded{"allowanceGap", QT_TRANSLATE_NOOP("Words", "gap on paper")},
    Worded{"bulk", QT_TRANSLATE_NOOP("Words", "taken by the bulk")},
    Worded{"trimmed", QT_TRANSLATE_NOOP("Words", "trimmed block")},
    Worded{"shortLength", QT_TRANSLATE_NOOP("Words", "short sashing")},
    Worded{"longLength", QT_TRANSLATE_NOOP("Words", "long sashing")},
    Worded{"join", QT_TRANSLATE_NOOP("Words", "number of the join")},
    Worded{"fold", QT_TRANSLATE_NOOP("Words", "fold under")},
    Worded{"outlines", QT_TRANSLATE_NOOP("Words", "outlines")},
    Worded{"outside", QT_TRANSLATE_NOOP("Words", "cloth kept outside")},
    Worded{"edgeSeam", QT_TRANSLATE_NOOP("Words", "binding’s seam")},
    Worded{"loft", QT_TRANSLATE_NOOP("Words", "batting’s thickness")},
    Worded{"reachBack", QT_TRANSLATE_NOOP("Words", "reach on the back")},
    Worded{"turns", QT_TRANSLATE_NOOP("Words", "for turns")},
    Worded{"width", QT_TRANSLATE_NOOP("Words", "exact width")},
    Worded{"bindingStep", QT_TRANSLATE_NOOP("Words", "rounded up to")},
    Worded{"along", QT_TRANSLATE_NOOP("Words", "along")},
    Worded{"across", QT_TRANSLATE_NOOP("Words", "across")},
    Worded{"cut", QT_TRANSLATE_NOOP("Words", "binding, cut")},
    Worded{"slack", QT_TRANSLATE_NOOP("Words", "to spare")},
    Worded{"table", QT_TRANSLATE_NOOP("Words", "table")},
    //: the board laid in to make a table longer
    Worded{"leaf", QT_TRANSLATE_NOOP("Words", "leaf")},
    Worded{"size", QT_TRANSLATE_NOOP("Words", "finished size")},
    Worded{"length", QT_TRANSLATE_NOOP("Words", "binding, length")},
    //: arc: the curved length of one scallop
    Worded{"arcAlong", QT_TRANSLATE_NOOP("Words", "one arc along")},
    Worded{"arcAcross", QT_TRANSLATE_NOOP("Words", "one arc across")},
    Worded{"radius", QT_TRANSLATE_NOOP("Words", "corners’ radius")},
    Worded{"tubeSeams", QT_TRANSLATE_NOOP("Words", "for the seams")},
    Worded{"wholeStep", QT_TRANSLATE_NOOP("Words", "rounded up to")},
    Worded{"rowsMean", QT_TRANSLATE_NOOP("Words", "mean of the measured rows")},
};

} // namespace

std::span<const Worded> figureWords()
{
    return figures;
}

std::span<const Worded> termWords()
{
    return terms;
}

} // namespace matside
