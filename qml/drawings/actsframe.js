// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing
.import "sections.js" as Sections
.import "acttools.js" as Tool

// The frame sewn on and filled; care and use of the finished piece.

const acts = {
    "frame-sides": (context, c) => frame(context, c, false),
    "frame-ends": (context, c) => frame(context, c, true),
    "frame-flush": flush,
    "strips-joined": stripsJoined,
    "frame-layers": (context, c) => layered(context, c, true),
    "frame-layer": (context, c) => layered(context, c, false),
    "frame-seam": (context, c) => sewn(context, c, true),
    "frame-seam-one": (context, c) => sewn(context, c, false),
    "frame-press": (context, c) => outward(context, c, true, ""),
    "frame-press-one": (context, c) => outward(context, c, false, ""),
    "frame-batting": (context, c) => outward(context, c, true, "laid"),
    "frame-baste": (context, c) => outward(context, c, true, "basted"),
    "candle": candle,
    "marks-out": marksOut,
    "wash": wash,
    "cot": cot,
    "label": label,
    "sleeve": sleeve,
    "pillow": pillow,
    "pillow-in": pillow, // the screen shows the piece itself
    "sell": sell
};

function rows(context, c, x, y, w, h) {
    Lay.cloth(context, c, "front", Lay.box(x, y, w, h));
    for (const at of [1, 2, 3])
        Lay.line(context, c, [[x + w * at / 4, y], [x + w * at / 4, y + h]], 1.6);
    Lay.line(context, c, [[x, y + h / 2], [x + w, y + h / 2]], 1.6);
}

/** The strips of left and right come to the rows; then, with these on, those of top and bottom. */
function frame(context, c, ends) {
    rows(context, c, 50, 26, 100, 48);
    if (!ends) {
        for (const x of [14, 172])
            Lay.cloth(context, c, "sashing", Lay.box(x, 26, 14, 48));
        Tool.arrow(context, c, 30, 50, 46, 50);
        Tool.arrow(context, c, 170, 50, 154, 50);
        return;
    }
    for (const x of [36, 150])
        Lay.cloth(context, c, "sashing", Lay.box(x, 26, 14, 48));
    for (const y of [1, 87])
        Lay.cloth(context, c, "sashing", Lay.box(36, y, 128, 12));
    Tool.arrow(context, c, 100, 14, 100, 25);
    Tool.arrow(context, c, 100, 86, 100, 75);
}

/** The strip stands out past the piece's edge; it is cut level with it. */
function flush(context, c) {
    Lay.cloth(context, c, "front", Lay.box(-4, 44, 114, 60));
    Lay.cloth(context, c, "sashing", Lay.box(-4, 8, 154, 36));
    context.globalAlpha = 0.4;
    Lay.solid(context, c, Lay.box(110, 8, 40, 36), c.stop, 0);
    context.globalAlpha = 1;
    Lay.line(context, c, [[-4, 44], [110, 44]], 3.4, c.seam);
    Lay.line(context, c, [[110, 0], [110, 100]], 4, c.blade);
    Lay.cutter(context, c, 110, 78, 0.1);
    Tool.arrow(context, c, 176, 62, 176, 26, c.blade);
    Tool.across(context, c, 110, 150, 56);
}

/** End to end, the seam pressed open to both sides. */
function stripsJoined(context, c) {
    Lay.cloth(context, c, "sashing", Lay.box(-4, 26, 208, 44));
    Lay.line(context, c, [[100, 26], [100, 70]], 3.4, c.seam);
    for (const [x, by] of [[100, -18], [100, 18]]) {
        context.globalAlpha = 0.75;
        Lay.solid(context, c, [[x, 26], [x + by, 26], [x + by, 70], [x, 70]], c.raised, 1.8);
        context.globalAlpha = 1;
    }
    for (let y = 30; y < 70; y += 7)
        Lay.line(context, c, [[97, y], [103, y]], 2, c.seam);
    Tool.arrow(context, c, 104, 84, 140, 84);
    Tool.arrow(context, c, 96, 84, 60, 84);
}

const level = 150; // where all raw edges lie in these sections
const sandwich = [["front", 8], ["batting", 18], ["back", 8]];

/** In section: the strips come to both faces of the piece, right sides together. */
function layered(context, c, both) {
    Tool.layers(context, c, -4, level, 32, sandwich);
    Lay.cloth(context, c, "sashing", Lay.box(70, 10, level - 70, 8), 1.8);
    Tool.arrow(context, c, 56, 8, 56, 28);
    if (both) {
        Lay.cloth(context, c, Tool.backStrip(c), Lay.box(70, 80, level - 70, 8), 1.8);
        Tool.arrow(context, c, 56, 92, 56, 70);
    }
    context.setLineDash([1.4, 1.4]);
    Lay.line(context, c, [[level, 2], [level, 98]], 2.6, c.accent);
    Printing.solid(context);
}

/** All raw edges level, one seam through them. */
function sewn(context, c, both) {
    const foot = Tool.layers(context, c, -4, level, 34, sandwich);
    Lay.cloth(context, c, "sashing", Lay.box(62, 26, level - 62, 8), 1.8);
    if (both)
        Lay.cloth(context, c, Tool.backStrip(c), Lay.box(62, foot, level - 62, 8), 1.8);
    Tool.seam(context, c, 112, 26, both ? foot + 8 : foot);
    for (const x of [112, level])
        Lay.line(context, c, [[x, 76], [x, 96]], 2.2);
    Tool.across(context, c, 112, level, 90, c.accent);
    Lay.line(context, c, [[112, 2], [112, 26]], 3.4);
}

/** Both strips turned outward over the seam; then batting between them; then their raw edges held together. */
function outward(context, c, both, filled) {
    const seamAt = 82, raw = 116, end = 190, top = 33;
    const foot = Tool.layers(context, c, -4, raw, top, sandwich);
    if (filled !== "")
        Lay.cloth(context, c, "batting", Lay.box(raw + 1, top + 2, end - raw - 1, foot - top - 4), 1.8);
    Sections.ribbon(context, c, "sashing", seamAt - 4, raw, top - 8, 7, { left: true }, 0.8);
    Sections.ribbon(context, c, "sashing", seamAt - 4, end, top - 16, 7, { left: true }, 0.8);
    if (both) {
        Sections.ribbon(context, c, Tool.backStrip(c), seamAt - 4, raw, foot + 1, 7, { left: true }, 0.8);
        Sections.ribbon(context, c, Tool.backStrip(c), seamAt - 4, end, foot + 9, 7, { left: true }, 0.8);
    }
    Tool.seam(context, c, seamAt, top - 8, both ? foot + 8 : foot);
    if (filled === "laid")
        Tool.across(context, c, raw + 1, end, 92, c.accent);
    if (filled === "basted") {
        context.setLineDash([1.6, 1]);
        Lay.line(context, c, [[end - 10, top - 20], [end - 10, foot + 20]], 3.2, c.stitched);
        Printing.solid(context);
    }
    if (filled === "") {
        Tool.bowed(context, c, 52, 14, 128, 8, 6);
        if (both)
            Tool.bowed(context, c, 52, 86, 128, 93, -5);
    }
}

/** The flame, and how far from it the piece lies. */
function candle(context, c) {
    Lay.cloth(context, c, "front", Lay.box(112, 70, 84, 18));
    Lay.solid(context, c, Lay.box(22, 44, 22, 44), c.batting, 2.4);
    Lay.line(context, c, [[33, 44], [33, 36]], 2.4);
    context.beginPath();
    context.moveTo(33, 6);
    context.bezierCurveTo(46, 22, 44, 36, 33, 38);
    context.bezierCurveTo(22, 36, 20, 22, 33, 6);
    context.fillStyle = c.patchA;
    context.fill();
    Lay.pen(context, c, 2.4);
    context.stroke();
    Lay.line(context, c, [[2, 88], [198, 88]], 3.4);
    Tool.across(context, c, 44, 112, 58, c.accent);
    // A hot pan over the piece, crossed out.
    Lay.solid(context, c, [[128, 34], [174, 34], [170, 56], [132, 56]], c.ink, 0);
    Lay.line(context, c, [[174, 38], [192, 34]], 5);
    Tool.cross(context, c, 151, 44, 1.2);
}

function drops(context, c, places) {
    for (const [x, y] of places) {
        context.beginPath();
        context.moveTo(x, y - 10);
        context.bezierCurveTo(x + 8, y, x + 6, y + 7, x, y + 7);
        context.bezierCurveTo(x - 6, y + 7, x - 8, y, x, y - 10);
        context.fillStyle = c.seam;
        context.fill();
    }
}

/** Chalk lines under drops of cold water; the iron waits. */
function marksOut(context, c) {
    Lay.cloth(context, c, "front", Lay.box(6, 34, 108, 60));
    context.setLineDash([2, 1.6]);
    Lay.line(context, c, [[14, 50], [106, 50]], 3, c.inkSoft);
    Printing.solid(context);
    Lay.planned(context, c, [[14, 76], [106, 76]]);
    drops(context, c, [[28, 16], [56, 22], [84, 14], [42, 62], [76, 64]]);
    context.save();
    context.translate(128, 44);
    context.scale(0.66, 0.66);
    Tool.iron(context, c, 0, 66);
    context.restore();
    Tool.cross(context, c, 158, 60, 1.4);
}

/** In cool water; flat to dry; pressed on the back. */
function wash(context, c) {
    Lay.solid(context, c, [[6, 30], [92, 30], [80, 90], [18, 90]], c.batting, 2.6);
    Lay.pen(context, c, 3, c.seam);
    for (const y of [44, 56]) {
        context.beginPath();
        for (let x = 14; x <= 84; x += 2) {
            if (x === 14)
                context.moveTo(x, y);
            else
                context.lineTo(x, y + 3 * Math.sin((x - 14) / 5.6));
        }
        context.stroke();
    }
    Lay.cloth(context, c, "front", [[28, 62], [70, 62], [66, 84], [32, 84]], 2);
    Lay.cloth(context, c, "back", Lay.box(108, 74, 86, 16));
    context.save();
    context.translate(116, 22);
    context.scale(0.74, 0.74);
    Tool.iron(context, c, 0, 68);
    context.restore();
}

/** A cot with its bars, and the little quilt not in it. */
function cot(context, c) {
    Lay.solid(context, c, Lay.box(10, 44, 100, 40), c.raised, 2.6);
    for (let x = 22; x < 110; x += 14)
        Lay.line(context, c, [[x, 44], [x, 84]], 3);
    for (const x of [10, 110])
        Lay.line(context, c, [[x, 18], [x, 96]], 6);
    Lay.line(context, c, [[10, 44], [110, 44]], 5);
    Lay.block(context, c, 140, 32, 52);
    Tool.arrow(context, c, 134, 30, 90, 26, c.stop);
    Tool.cross(context, c, 112, 26, 1);
}

/** On the back at the lower right, sewn round and written on. */
function label(context, c) {
    Lay.cloth(context, c, "back", Lay.box(-4, -4, 196, 96));
    Lay.solid(context, c, Lay.box(-4, 84, 196, 8), c.binding, 1.8);
    Lay.solid(context, c, Lay.box(184, -4, 8, 96), c.binding, 1.8);
    Lay.solid(context, c, Lay.box(84, 26, 88, 48), c.raised, 0);
    Lay.stitches(context, c, [...Lay.box(88, 30, 80, 40), [88, 30]]);
    for (const [y, w] of [[40, 62], [50, 46], [60, 56]])
        Lay.line(context, c, [[96, y], [96 + w, y]], 3, c.inkSoft);
}

/** Along the upper edge of the back, a rod through it. */
function sleeve(context, c) {
    Lay.cloth(context, c, "back", Lay.box(14, 14, 172, 96));
    Lay.cloth(context, c, "sashing", Lay.box(26, 22, 148, 34));
    Lay.stitches(context, c, [[26, 25], [174, 25]]);
    Lay.stitches(context, c, [[26, 53], [174, 53]]);
    for (const [x1, x2] of [[2, 26], [174, 198]])
        Lay.solid(context, c, Lay.box(x1, 35, x2 - x1, 9), c.table, 2.2);
    Lay.planned(context, c, [[28, 39], [172, 39]]);
    Tool.across(context, c, 26, 174, 74);
    Tool.upright(context, c, 158, 22, 56);
}

/** The front, and the two back pieces that will lie over each other, hemmed where they do. */
function pillow(context, c) {
    Lay.cloth(context, c, "front", Lay.box(6, 20, 72, 60));
    Lay.stitches(context, c, [...Lay.box(16, 30, 52, 40), [16, 30]]);
    Lay.cloth(context, c, "back", Lay.box(142, 14, 50, 60));
    Lay.stitches(context, c, [[147, 14], [147, 74]]);
    Lay.cloth(context, c, "back", Lay.box(104, 26, 50, 60));
    Lay.stitches(context, c, [[149, 26], [149, 86]]);
    Tool.arrow(context, c, 84, 50, 100, 50);
}

/** What the piece is sold with: a tag that says what is in it. */
function sell(context, c) {
    Lay.cloth(context, c, "front", Lay.box(10, 24, 92, 68));
    Lay.stitches(context, c, [...Lay.box(22, 36, 68, 44), [22, 36]]);
    Lay.pen(context, c, 2.4);
    context.beginPath();
    context.moveTo(98, 30);
    context.quadraticCurveTo(112, 8, 128, 30);
    context.stroke();
    Lay.solid(context, c, [[122, 30], [140, 16], [194, 16], [194, 78], [140, 78], [122, 64]], c.raised, 2.6);
    Lay.circle(context, c, 132, 34, 3.6, 2);
    for (const [y, w] of [[32, 36], [46, 40], [60, 28]])
        Lay.line(context, c, [[146, y], [146 + w, y]], 3, c.inkSoft);
}
