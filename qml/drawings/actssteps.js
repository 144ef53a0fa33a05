// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "acttools.js" as Tool
.import "actsframe.js" as Frame
.import "actsmending.js" as Mending

// What a step does, named as the step is, where no drawing to scale shows it.

const acts = {
    "layer": layer,
    "measure-test": Mending.acts["measure-outline"],
    "trim-patches": trimPatches,
    "press-block": pressBlock,
    "trim-block": Mending.acts["trim-line"],
    "join-long": Frame.acts["strips-joined"],
    "lay-backing": layBacking,
    "bag-out": bagOut,
    "cut-done": cutDone,
    "trim-done": trimDone
};

/** The back lies there, the batting on it; the front is rolled out over both. */
function layer(context, c) {
    Lay.cloth(context, c, "back", Lay.box(4, 8, 192, 84));
    Lay.cloth(context, c, "batting", Lay.box(4, 16, 164, 68));
    Lay.cloth(context, c, "front", Lay.box(4, 20, 92, 60));
    Lay.cloth(context, c, "front", Lay.box(92, 15, 17, 70), 2.6);
    for (const x of [97, 103])
        Lay.line(context, c, [[x, 16], [x, 84]], 1.4);
    context.beginPath();
    context.ellipse(92, 8, 17, 14);
    context.fillStyle = c.raised;
    context.fill();
    Lay.pen(context, c, 2.4);
    context.stroke();
    Lay.circle(context, c, 100.5, 15, 3, 1.6);
    Tool.arrow(context, c, 116, 50, 154, 50);
}

/** What stands out past a patch's stitches is cut away close to them, the scissors flat. */
function trimPatches(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    Lay.cloth(context, c, "patchB", Lay.box(20, 24, 56, 52));
    Lay.stitches(context, c, [...Lay.box(25, 29, 46, 42), [25, 29]]);
    Lay.cloth(context, c, "patchA", [[90, 12], [178, 12], [178, 64], [130, 64], [130, 74], [90, 74]]);
    Lay.stitches(context, c, [...Lay.box(101, 24, 64, 35), [101, 24]]);
    // The snippet comes off beneath.
    Lay.cloth(context, c, "patchA", [[120, 79], [84, 83], [86, 91], [122, 87]], 1.8);
    Tool.scissors(context, c, 154, 68, Math.PI - 0.1, 0.2);
}

/** The block in section under the iron, which is lifted and set down, not pushed. */
function pressBlock(context, c) {
    Lay.solid(context, c, Lay.box(0, 88, 200, 10), c.table, 2.4);
    Tool.layers(context, c, 12, 188, 68, [["front", 5], ["batting", 10], ["back", 5]]);
    Tool.iron(context, c, 16, 66);
    Tool.bowed(context, c, 112, 30, 160, 62, 30);
    Tool.steam(context, c, 170, 62);
}

function rows(context, c, x, y, w, h) {
    Lay.cloth(context, c, "front", Lay.box(x, y, w, h));
    for (const at of [1, 2, 3])
        Lay.line(context, c, [[x + w * at / 4, y], [x + w * at / 4, y + h]], 1.6);
    Lay.line(context, c, [[x, y + h / 2], [x + w, y + h / 2]], 1.6);
}

/** The rows lie on the larger backing, pinned through both all round. */
function layBacking(context, c) {
    Lay.cloth(context, c, "back", Lay.box(10, 3, 180, 94));
    rows(context, c, 34, 18, 132, 64);
    for (const x of [56, 100, 144])
        for (const [y1, y2] of [[10, 30], [90, 70]])
            Tool.pin(context, c, x, y1, x, y2);
    for (const [x1, x2] of [[24, 46], [176, 154]])
        Tool.pin(context, c, x1, 50, x2, 50);
}

/** Sewn round with a way left open; out through that, and the way closed. */
function bagOut(context, c) {
    Lay.cloth(context, c, "back", Lay.box(6, 10, 84, 80));
    Lay.stitches(context, c, [[34, 80], [16, 80], [16, 20], [80, 20], [80, 80], [62, 80]], c.seam);
    for (const x of [34, 62])
        Lay.line(context, c, [[x, 74], [x, 88]], 3, c.accent);
    Tool.arrow(context, c, 48, 58, 48, 98);
    Tool.arrow(context, c, 92, 50, 108, 50);
    rows(context, c, 114, 10, 80, 80);
    for (let x = 142; x < 168; x += 6)
        Lay.line(context, c, [[x, 86], [x + 3, 93]], 2.2, c.seam);
}

function pile(context, c, role, x, y, w, h, count) {
    for (let at = count - 1; at >= 0; --at)
        Lay.cloth(context, c, role, Lay.box(x + 3.4 * at, y + 3.4 * (count - 1 - at), w, h), 1.8);
}

/** All that is cut, laid up in piles. */
function cutDone(context, c) {
    pile(context, c, "front", 6, 6, 118, 22, 4);
    pile(context, c, "sashing", 6, 50, 118, 8, 4);
    pile(context, c, "sashing", 6, 78, 50, 8, 3);
    pile(context, c, "batting", 74, 76, 54, 12, 3);
    Tool.tick(context, c, 168, 52, 1.5);
}

/** The trimmed blocks on one another. */
function trimDone(context, c) {
    for (let at = 4; at >= 0; --at)
        Lay.cloth(context, c, "front", Lay.box(34 + 5 * at, 22 - 5 * at + 5, 70, 70), 2);
    Lay.stitches(context, c, [...Lay.box(44, 37, 50, 50), [44, 37]]);
    Tool.tick(context, c, 160, 52, 1.5);
}
