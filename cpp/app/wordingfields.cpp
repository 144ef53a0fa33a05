// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>

#include <array>

namespace matside {

namespace {

constexpr std::array fields{
    Worded{"/table", QT_TRANSLATE_NOOP("Words", "table")},
    Worded{"/table/length", QT_TRANSLATE_NOOP("Words", "length")},
    Worded{"/table/width", QT_TRANSLATE_NOOP("Words", "width")},
    Worded{"/table/diameter", QT_TRANSLATE_NOOP("Words", "across")},
    //: a leaf is the board laid into a table to lengthen it
    Worded{"/table/leaf", QT_TRANSLATE_NOOP("Words", "a leaf adds")},
    Worded{"/table/leafIn", QT_TRANSLATE_NOOP("Words", "fitted with the leaf")},
    Worded{"/blocks/columns", QT_TRANSLATE_NOOP("Words", "columns")},
    Worded{"/blocks/rows", QT_TRANSLATE_NOOP("Words", "rows")},
    Worded{"/blocks/width", QT_TRANSLATE_NOOP("Words", "block along")},
    Worded{"/blocks/height", QT_TRANSLATE_NOOP("Words", "block across")},
    Worded{"/blocks/spare", QT_TRANSLATE_NOOP("Words", "spare blocks")},
    //: spare blocks that all mats of a set share
    Worded{"/blocks/spareInAll", QT_TRANSLATE_NOOP("Words", "spare blocks for all")},
    Worded{"/build", QT_TRANSLATE_NOOP("Words", "made")},
    Worded{"/cleanBack", QT_TRANSLATE_NOOP("Words", "clean back")},
    Worded{"/kits", QT_TRANSLATE_NOOP("Words", "kits")},
    //: place mats: how many are made
    Worded{"mats", QT_TRANSLATE_NOOP("Words", "place mats")},
    Worded{"/seam", QT_TRANSLATE_NOOP("Words", "seam")},
    Worded{"/loft", QT_TRANSLATE_NOOP("Words", "batting’s thickness")},
    Worded{"/drawUp/along", QT_TRANSLATE_NOOP("Words", "draw-up along")},
    Worded{"/drawUp/across", QT_TRANSLATE_NOOP("Words", "draw-up across")},
    Worded{"/sashing/finished", QT_TRANSLATE_NOOP("Words", "sashing, as seen")},
    Worded{"/sashing/cutBack", QT_TRANSLATE_NOOP("Words", "back strip, cut")},
    Worded{"/sashing/allowance", QT_TRANSLATE_NOOP("Words", "block’s allowance")},
    Worded{"/fold/catch", QT_TRANSLATE_NOOP("Words", "catch")},
    //: the back strip folded lengthwise before it is sewn on, so that nothing is turned under
    Worded{"/fold/doubled", QT_TRANSLATE_NOOP("Words", "back strip doubled")},
    Worded{"/fold/turn", QT_TRANSLATE_NOOP("Words", "turn over the bulk")},
    Worded{"/hoop/kind", QT_TRANSLATE_NOOP("Words", "kind")},
    Worded{"/hoop/outside/0", QT_TRANSLATE_NOOP("Words", "outside, along")},
    Worded{"/hoop/outside/1", QT_TRANSLATE_NOOP("Words", "outside, across")},
    Worded{"/hoop/field/0", QT_TRANSLATE_NOOP("Words", "field, along")},
    Worded{"/hoop/field/1", QT_TRANSLATE_NOOP("Words", "field, across")},
    Worded{"/hoop/opening/0", QT_TRANSLATE_NOOP("Words", "opening, along")},
    Worded{"/hoop/opening/1", QT_TRANSLATE_NOOP("Words", "opening, across")},
    Worded{"/strip/usable", QT_TRANSLATE_NOOP("Words", "usable length")},
    Worded{"/strip/gap", QT_TRANSLATE_NOOP("Words", "gap between outlines")},
    Worded{"/strip/margin", QT_TRANSLATE_NOOP("Words", "margin past the hoop")},
    Worded{"/strip/placing", QT_TRANSLATE_NOOP("Words", "placing by eye, within")},
    Worded{"/strip/sliver", QT_TRANSLATE_NOOP("Words", "sliver cut away")},
    Worded{"/strip/tail", QT_TRANSLATE_NOOP("Words", "tail past the frame")},
    Worded{"/strip/tails", QT_TRANSLATE_NOOP("Words", "waste tails sewn on")},
    Worded{"/strip/frameMayOverlap", QT_TRANSLATE_NOOP("Words", "frame may lie on the last block")},
    //: one line of decorative stitching down the middle of every sashing
    Worded{"/thread/sashingLine", QT_TRANSLATE_NOOP("Words", "line down the sashings")},
    Worded{"/strip/harvest", QT_TRANSLATE_NOOP("Words", "gaps give the sashing")},
    Worded{"/edge/kind", QT_TRANSLATE_NOOP("Words", "edge")},
    Worded{"/edge/outside", QT_TRANSLATE_NOOP("Words", "cloth kept outside")},
    Worded{"/edge/seam", QT_TRANSLATE_NOOP("Words", "binding’s seam")},
    Worded{"/edge/binding", QT_TRANSLATE_NOOP("Words", "binding")},
    Worded{"/edge/sewn", QT_TRANSLATE_NOOP("Words", "sewn on the back")},
    Worded{"/edge/corner/kind", QT_TRANSLATE_NOOP("Words", "corners")},
    Worded{"/edge/corner/radius", QT_TRANSLATE_NOOP("Words", "corners’ radius")},
    //: scallop: one of the round lobes an edge can be cut into
    Worded{"/edge/corner/depth", QT_TRANSLATE_NOOP("Words", "scallops’ depth")},
    Worded{"/edge/corner/along", QT_TRANSLATE_NOOP("Words", "scallops along")},
    Worded{"/edge/corner/across", QT_TRANSLATE_NOOP("Words", "scallops across")},
    Worded{"/slack", QT_TRANSLATE_NOOP("Words", "to spare")},
    Worded{"/cloths/head", QT_TRANSLATE_NOOP("Words", "cloth")},
    Worded{"/cloths/name", QT_TRANSLATE_NOOP("Words", "name")},
    Worded{"/cloths/role", QT_TRANSLATE_NOOP("Words", "part it plays")},
    Worded{"/cloths/usable", QT_TRANSLATE_NOOP("Words", "usable width")},
    Worded{"/cloths/soldBy", QT_TRANSLATE_NOOP("Words", "sold by the")},
    Worded{"/cloths/price/yard", QT_TRANSLATE_NOOP("Words", "price of a yard")},
    Worded{"/cloths/price/metre", QT_TRANSLATE_NOOP("Words", "price of a metre")},
    Worded{"/cloths/colour", QT_TRANSLATE_NOOP("Words", "colour")},
    Worded{"/cloths/directional", QT_TRANSLATE_NOOP("Words", "its pattern has an up")},
    Worded{"/cloths/away", QT_TRANSLATE_NOOP("Words", "Take this cloth away")},
    Worded{"/cloths/more", QT_TRANSLATE_NOOP("Words", "Add a cloth")},
    Worded{"/rulers/head", QT_TRANSLATE_NOOP("Words", "ruler")},
    Worded{"/rulers/name", QT_TRANSLATE_NOOP("Words", "name")},
    Worded{"/rulers/finest", QT_TRANSLATE_NOOP("Words", "its finest mark")},
    Worded{"/rulers/away", QT_TRANSLATE_NOOP("Words", "Take this ruler away")},
    Worded{"/rulers/more", QT_TRANSLATE_NOOP("Words", "Add a ruler")},
    Worded{"/rulers/length", QT_TRANSLATE_NOOP("Words", "length")},
    Worded{"/rulers/width", QT_TRANSLATE_NOOP("Words", "width")},
    Worded{"/finest", QT_TRANSLATE_NOOP("Words", "finest mark")},
    Worded{"group:table", QT_TRANSLATE_NOOP("Words", "The table")},
    Worded{"group:blocks", QT_TRANSLATE_NOOP("Words", "The blocks")},
    Worded{"group:seam", QT_TRANSLATE_NOOP("Words", "Seam and draw-up")},
    Worded{"group:sashing", QT_TRANSLATE_NOOP("Words", "Sashing and fold")},
    Worded{"group:hoop", QT_TRANSLATE_NOOP("Words", "The hoop")},
    Worded{"group:strip", QT_TRANSLATE_NOOP("Words", "The hoop strip")},
    Worded{"group:edge", QT_TRANSLATE_NOOP("Words", "The edge")},
    Worded{"group:cloths", QT_TRANSLATE_NOOP("Words", "The cloths")},
    Worded{"group:rulers", QT_TRANSLATE_NOOP("Words", "Your rulers")},
};

constexpr std::array choices{
    Worded{"none", QT_TRANSLATE_NOOP("Words", "no table")},
    Worded{"rect", QT_TRANSLATE_NOOP("Words", "four-sided")},
    Worded{"leaf-out", QT_TRANSLATE_NOOP("Words", "out")},
    Worded{"leaf-in", QT_TRANSLATE_NOOP("Words", "in")},
    Worded{"round", QT_TRANSLATE_NOOP("Words", "round")},
    Worded{"reversible", QT_TRANSLATE_NOOP("Words", "reversible")},
    Worded{"clean-back", QT_TRANSLATE_NOOP("Words", "with one clean back")},
    Worded{"layered", QT_TRANSLATE_NOOP("Words", "layered and bound")},
    Worded{"bagged", QT_TRANSLATE_NOOP("Words", "bagged out")},
    Worded{"bound", QT_TRANSLATE_NOOP("Words", "bound")},
    Worded{"framed", QT_TRANSLATE_NOOP("Words", "framed")},
    Worded{"square", QT_TRANSLATE_NOOP("Words", "square")},
    Worded{"rounded", QT_TRANSLATE_NOOP("Words", "rounded, on bias")},
    Worded{"circle", QT_TRANSLATE_NOOP("Words", "circle or round ends, on bias")},
    //: the edge cut into round lobes
    Worded{"scalloped", QT_TRANSLATE_NOOP("Words", "scalloped, on bias")},
    Worded{"double", QT_TRANSLATE_NOOP("Words", "double fold")},
    Worded{"single", QT_TRANSLATE_NOOP("Words", "single fold")},
    Worded{"hand", QT_TRANSLATE_NOOP("Words", "by hand")},
    Worded{"machine", QT_TRANSLATE_NOOP("Words", "by machine")},
    Worded{"ring", QT_TRANSLATE_NOOP("Words", "two rings")},
    Worded{"magnetic", QT_TRANSLATE_NOOP("Words", "magnetic frame")},
    Worded{"front", QT_TRANSLATE_NOOP("Words", "front")},
    Worded{"back", QT_TRANSLATE_NOOP("Words", "back")},
    Worded{"batting", QT_TRANSLATE_NOOP("Words", "batting")},
    Worded{"patch", QT_TRANSLATE_NOOP("Words", "patch")},
    Worded{"web", QT_TRANSLATE_NOOP("Words", "web")},
    Worded{"sashing-front", QT_TRANSLATE_NOOP("Words", "sashing, front")},
    Worded{"sashing-back", QT_TRANSLATE_NOOP("Words", "sashing, back")},
    Worded{"binding", QT_TRANSLATE_NOOP("Words", "binding")},
    Worded{"1/8 yd", QT_TRANSLATE_NOOP("Words", "1/8 yd")},
    Worded{"1/4 yd", QT_TRANSLATE_NOOP("Words", "1/4 yd")},
    Worded{"1/2 yd", QT_TRANSLATE_NOOP("Words", "1/2 yd")},
    Worded{"1 yd", QT_TRANSLATE_NOOP("Words", "1 yd")},
    Worded{"10 cm", QT_TRANSLATE_NOOP("Words", "10 cm")},
    Worded{"25 cm", QT_TRANSLATE_NOOP("Words", "25 cm")},
    Worded{"50 cm", QT_TRANSLATE_NOOP("Words", "50 cm")},
    Worded{"1 m", QT_TRANSLATE_NOOP("Words", "1 m")},
    Worded{"#f4f1e8", QT_TRANSLATE_NOOP("Words", "undyed")},
    Worded{"#c9bda2", QT_TRANSLATE_NOOP("Words", "oat")},
    Worded{"#d8a13a", QT_TRANSLATE_NOOP("Words", "ochre")},
    Worded{"#b5543a", QT_TRANSLATE_NOOP("Words", "rust")},
    Worded{"#8c2f39", QT_TRANSLATE_NOOP("Words", "madder")},
    Worded{"#6b4a6e", QT_TRANSLATE_NOOP("Words", "plum")},
    Worded{"#4a6480", QT_TRANSLATE_NOOP("Words", "blue")},
    Worded{"#27535a", QT_TRANSLATE_NOOP("Words", "teal")},
    Worded{"#7f8f5a", QT_TRANSLATE_NOOP("Words", "sage")},
    Worded{"#8a7a66", QT_TRANSLATE_NOOP("Words", "bark")},
    Worded{"#9a9a96", QT_TRANSLATE_NOOP("Words", "grey")},
    Worded{"#3a3733", QT_TRANSLATE_NOOP("Words", "soot")},
    Worded{"true", QT_TRANSLATE_NOOP("Words", "yes")},
    Worded{"false", QT_TRANSLATE_NOOP("Words", "no")},
};

constexpr std::array commands{
    Worded{"create", QT_TRANSLATE_NOOP("Words", "new project")},
    Worded{"demo", QT_TRANSLATE_NOOP("Words", "demo")},
    Worded{"make-again", QT_TRANSLATE_NOOP("Words", "make again")},
    Worded{"metric-copy", QT_TRANSLATE_NOOP("Words", "copy in millimetres")},
    //: a project taken out of a share file
    Worded{"bring-in", QT_TRANSLATE_NOOP("Words", "bring in")},
    //: the work of another tablet put together with what is here
    Worded{"merge", QT_TRANSLATE_NOOP("Words", "two tablets together")},
    Worded{"rename", QT_TRANSLATE_NOOP("Words", "renaming")},
    Worded{"put-away", QT_TRANSLATE_NOOP("Words", "putting away")},
    Worded{"bring-back", QT_TRANSLATE_NOOP("Words", "bringing back")},
    Worded{"throw-away", QT_TRANSLATE_NOOP("Words", "throwing away")},
    Worded{"edit", QT_TRANSLATE_NOOP("Words", "change")},
    //: layout: how many blocks across and down, their size and the sashing between them
    Worded{"take-layout", QT_TRANSLATE_NOOP("Words", "layout taken")},
    Worded{"add-cloth", QT_TRANSLATE_NOOP("Words", "cloth added")},
    Worded{"add-ruler", QT_TRANSLATE_NOOP("Words", "ruler added")},
    Worded{"take-cloth-away", QT_TRANSLATE_NOOP("Words", "cloth taken away")},
    Worded{"take-ruler-away", QT_TRANSLATE_NOOP("Words", "ruler taken away")},
    Worded{"cloth-colour", QT_TRANSLATE_NOOP("Words", "colour of a cloth")},
    Worded{"patch-order", QT_TRANSLATE_NOOP("Words", "order of the patches")},
    Worded{"offer", QT_TRANSLATE_NOOP("Words", "remedy")},
    Worded{"drag", QT_TRANSLATE_NOOP("Words", "drag")},
    Worded{"done", QT_TRANSLATE_NOOP("Words", "done")},
    //: one of a block's four sides was cut
    Worded{"side-cut", QT_TRANSLATE_NOOP("Words", "side cut")},
    Worded{"spoiled", QT_TRANSLATE_NOOP("Words", "spoiled")},
    Worded{"trial", QT_TRANSLATE_NOOP("Words", "trial")},
    Worded{"put-off", QT_TRANSLATE_NOOP("Words", "trial put off")},
    Worded{"take-trial-back", QT_TRANSLATE_NOOP("Words", "trial taken back")},
    Worded{"wrong", QT_TRANSLATE_NOOP("Words", "something went wrong")},
    Worded{"draw-up", QT_TRANSLATE_NOOP("Words", "draw-up taken")},
    Worded{"measured", QT_TRANSLATE_NOOP("Words", "measured")},
    Worded{"common-size", QT_TRANSLATE_NOOP("Words", "common size taken")},
    Worded{"bought", QT_TRANSLATE_NOOP("Words", "ticked as bought")},
    Worded{"class", QT_TRANSLATE_NOOP("Words", "kits of the class changed")},
    Worded{"owned", QT_TRANSLATE_NOOP("Words", "cloth you have changed")},
    Worded{"packages", QT_TRANSLATE_NOOP("Words", "batting’s packages changed")},
    Worded{"re-zero", QT_TRANSLATE_NOOP("Words", "last outline measured")},
    Worded{"hoop", QT_TRANSLATE_NOOP("Words", "hoop chosen")},
    Worded{"test-join", QT_TRANSLATE_NOOP("Words", "sashing strips changed")},
    Worded{"pins", QT_TRANSLATE_NOOP("Words", "pins counted")},
    Worded{"swap", QT_TRANSLATE_NOOP("Words", "blocks changed places")},
    Worded{"log", QT_TRANSLATE_NOOP("Words", "block logged")},
};

} // namespace

std::span<const Worded> fieldWords()
{
    return fields;
}

std::span<const Worded> choiceWords()
{
    return choices;
}

std::span<const Worded> commandWords()
{
    return commands;
}

} // namespace matside
