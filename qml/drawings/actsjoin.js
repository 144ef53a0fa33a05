// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing
.import "sections.js" as Sections
.import "acttools.js" as Tool

// Acts at a join: the ditch and the fold behind it, the seams of a row, the joins about a block.

const acts = {
    "ripper-ditch": ripperDitch,
    "fold-under": foldUnder,
    "ditch": ditch,
    "by-hand": byHand,
    "feel": feel,
    "ease": ease,
    "pin-ends": pinEnds,
    "row-long": (context, c) => row(context, c, 1),
    "row-short": (context, c) => row(context, c, -1),
    "measure-sashing": measureSashing,
    "one-sashing": oneSashing,
    "four-joins": fourJoins,
    "sewn-again": sewnAgain
};

/** A join seen from the front: the sashing above, the block below, the ditch between them at y. */
function join(context, c, y) {
    Lay.cloth(context, c, "front", Lay.box(-4, y, 208, 104 - y));
    Lay.cloth(context, c, "sashing", Lay.box(-4, 12, 208, y - 12));
    Lay.cloth(context, c, "front", Lay.box(-4, -4, 208, 16));
    Lay.stitches(context, c, [[0, y + 22], [200, y + 22]]);
    Lay.line(context, c, [[-4, y], [204, y]], 4.4);
}

/** The stitches in the ditch are taken out past where they missed, to both sides. */
function ripperDitch(context, c) {
    join(context, c, 54);
    const y = 54;
    Lay.line(context, c, [[-4, y], [204, y]], 6, c.raised);
    Lay.line(context, c, [[-4, y + 4], [204, y + 4]], 2);
    for (const [x1, x2] of [[2, 48], [152, 200]])
        Tool.stitchesOneByOne(context, c, x1, x2, y, 9);
    for (let x = 50; x < 150; x += 9)
        Lay.disc(context, x, y, 1.6, c.ink);
    for (const [x1, x2] of [[48, 74], [126, 152]])
        Tool.across(context, c, x1, x2, 32, c.accent);
    context.setLineDash([1.6, 1.2]);
    Lay.line(context, c, [[74, 26], [74, 66]], 2.4, c.stop);
    Lay.line(context, c, [[126, 26], [126, 66]], 2.4, c.stop);
    Printing.solid(context);
    Tool.ripper(context, c, 100, 56, 0.4);
}

/** The far seam in section, the back below: the strip comes over, passes the seam, and turns under. */
function foldUnder(context, c) {
    const scale = 5, seamB = 118, seamA = seamB - 25.4 * scale, edge = seamB - 12.7 * scale;
    const g = { scale, cloth: 9, batting: 20, seamA, seamB, edgeA: edge, edgeB: edge, gapA: edge, gapB: edge, middleX: edge, stripA: edge,
                top: 22, foot: 60 };
    const view = { backed: true, doubled: false, filled: false, tested: false, finishedMm: 25.4, allowanceMm: 12.7, catchMm: 4, foldMm: 8, gapMm: 0 };
    Sections.paint(context, c, view, g, 200, 0.9);
    const fold = seamB + 4 * scale;
    Tool.across(context, c, fold - 8 * scale, fold, 90, c.accent);
    Lay.line(context, c, [[fold, 62], [fold, 94]], 2.4, c.fold);
    Tool.bowed(context, c, 190, 82, 152, 68, 14, c.fold);
}

/** From the front: pins lie along the ditch, heads to the machine; the needle goes in the ditch. */
function ditch(context, c) {
    join(context, c, 60);
    Tool.stitchesOneByOne(context, c, 2, 56, 60, 9);
    for (const x of [86, 146])
        Tool.pin(context, c, x, 60, x + 44, 60);
    Tool.foot(context, c, 58, 60);
}

/** From the back: the folded edge is caught to the block by hand. */
function byHand(context, c) {
    Lay.cloth(context, c, "back", Lay.box(-4, 44, 208, 60));
    Lay.cloth(context, c, Tool.backStrip(c), Lay.box(-4, 10, 208, 42));
    Lay.cloth(context, c, "back", Lay.box(-4, -4, 208, 14));
    Lay.line(context, c, [[-4, 52], [204, 52]], 4, c.fold);
    for (let x = 12; x < 96; x += 12) {
        Lay.line(context, c, [[x, 52], [x, 60]], 2.6, c.seam);
        Lay.line(context, c, [[x, 46], [x + 12, 46]], 2.6, c.seam);
        Lay.line(context, c, [[x + 12, 46], [x + 12, 52]], 2.6, c.seam);
    }
    Tool.needle(context, c, 100, 58, 0.42, [[196, 92], [176, 24]]);
}

/** Every other join on the back is gone over. */
function feel(context, c) {
    Lay.cloth(context, c, "back", Lay.box(-4, 8, 208, 84));
    for (const x of [30, 92, 154]) {
        Lay.cloth(context, c, Tool.backStrip(c), Lay.box(x, 8, 24, 84), 1.8);
        Lay.line(context, c, [[x + 24, 8], [x + 24, 92]], 3.6, c.fold);
        Lay.stitches(context, c, [[x + 20, 8], [x + 20, 92]]);
        Tool.arrow(context, c, x + 24, 22, x + 24, 78);
    }
}

function rowOf(context, c, y, high, places) {
    places.forEach(([x, w], i) => Lay.cloth(context, c, i % 2 === 0 ? "front" : "sashing", Lay.box(x, y, w, high), 1.8));
}

/** The row is a little longer than the long sashing: pins hold the ends and each mark, the rest is eased. */
function ease(context, c) {
    Lay.cloth(context, c, "sashing", Lay.box(8, 14, 184, 26));
    rowOf(context, c, 44, 46, [[8, 48], [56, 18], [74, 52], [126, 18], [144, 48]]);
    for (const x of [65, 135])
        Lay.line(context, c, [[x, 32], [x, 40]], 3, c.accent);
    Lay.pen(context, c, 3, c.accent);
    for (const [x1, x2] of [[14, 60], [70, 130], [140, 186]]) {
        context.beginPath();
        for (let i = 0; i <= 12; ++i) {
            const x = x1 + (x2 - x1) * i / 12, y = 44 + 4 * Math.sin(i * Math.PI / 1.5);
            if (i === 0)
                context.moveTo(x, y);
            else
                context.lineTo(x, y);
        }
        context.stroke();
    }
    for (const x of [10, 65, 135, 190])
        Tool.pin(context, c, x, 62, x, 28);
}

function pinEnds(context, c) {
    Lay.cloth(context, c, "sashing", Lay.box(8, 14, 184, 26));
    rowOf(context, c, 40, 50, [[8, 48], [56, 18], [74, 52], [126, 18], [144, 48]]);
    for (const x of [65, 135])
        Lay.line(context, c, [[x, 30], [x, 50]], 3.4, c.accent);
    for (const x of [12, 65, 135, 188])
        Tool.pin(context, c, x, 64, x, 26);
    for (const x of [12, 188])
        Lay.ring(context, c, x, 44, 11);
}

/** The row on the tape: past its mark, or short of it. */
function row(context, c, by) {
    const end = by > 0 ? 186 : 150, w = (end - 8 - 2 * 16) / 3;
    rowOf(context, c, 10, 50, [[8, w], [8 + w, 16], [24 + w, w], [24 + 2 * w, 16], [40 + 2 * w, w]]);
    Lay.measure(context, c, 8, 66, 188, 26, c.patchB);
    Lay.solid(context, c, Lay.box(0, 63, 9, 32), c.ink, 0);
    context.setLineDash([2, 1.2]);
    Lay.line(context, c, [[168, 4], [168, 84]], 3, c.accent);
    Printing.solid(context);
    Lay.line(context, c, [[end, 54], [end, 84]], 3.4, c.stop);
}

function measureSashing(context, c) {
    rowOf(context, c, 8, 52, [[-4, 66], [62, 76], [138, 70]]);
    Lay.measure(context, c, 62, 66, 134, 26, c.patchB);
    Lay.solid(context, c, Lay.box(53, 63, 9, 32), c.ink, 0);
    for (const x of [62, 138])
        Lay.line(context, c, [[x, 54], [x, 84]], 3.4, c.accent);
}

/** Of three sashings one is too narrow: its two seams alone. */
function oneSashing(context, c) {
    rowOf(context, c, 14, 72, [[-4, 38], [34, 20], [54, 36], [90, 11], [101, 36], [137, 20], [157, 50]]);
    for (const x of [90, 101]) {
        context.setLineDash([1.6, 1.4]);
        Lay.line(context, c, [[x, 14], [x, 86]], 3, c.stop);
        Printing.solid(context);
    }
    Tool.ripper(context, c, 102, 56, 0.3);
}

/** Nine places about one block; `seams` draws the four joins of the middle one. */
function about(context, c, middle, seams) {
    for (const x of [14, 76, 138])
        for (const [y, h] of [[-22, 44], [30, 44], [82, 44]])
            if (x !== 76 || y !== 30 || middle)
                Lay.cloth(context, c, "front", Lay.box(x, y, 52, h), 1.8);
    for (const x of [66, 128])
        Lay.cloth(context, c, "sashing", Lay.box(x, -4, 10, 108), 1.4);
    for (const y of [22, 74])
        Lay.cloth(context, c, "sashing", Lay.box(14, y, 176, 8), 1.4);
    seams([[76, 30, 76, 74], [128, 30, 128, 74], [76, 30, 128, 30], [76, 74, 128, 74]]);
}

function fourJoins(context, c) {
    about(context, c, true, lines => {
        context.setLineDash([1.6, 1.4]);
        for (const [x1, y1, x2, y2] of lines)
            Lay.line(context, c, [[x1, y1], [x2, y2]], 3.6, c.stop);
        Printing.solid(context);
    });
    Tool.ripper(context, c, 124, 66, 0.3);
}

function sewnAgain(context, c) {
    about(context, c, true, lines => {
        for (const [x1, y1, x2, y2] of lines) {
            Lay.line(context, c, [[x1, y1], [x2, y2]], 3.6, c.seam);
            for (let t = 0.1; t < 1; t += 0.16) {
                const x = x1 + (x2 - x1) * t, y = y1 + (y2 - y1) * t, up = x1 === x2;
                Lay.line(context, c, [[x - (up ? 4 : 0), y - (up ? 0 : 4)], [x + (up ? 4 : 0), y + (up ? 0 : 4)]], 2, c.seam);
            }
        }
    });
    Lay.stitches(context, c, [...Lay.box(84, 37, 36, 30), [84, 37]]);
}
