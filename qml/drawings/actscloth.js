// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing
.import "acttools.js" as Tool
.import "mishaps.js" as Mishaps

// Acts on cloth and on the list: what is cut again, what is left, what is bought, what stays as it is.

const acts = {
    "narrower": narrower,
    "straighten": straighten,
    "again": again,
    "spare": spare,
    "block-again": blockAgain,
    "along-selvage": alongSelvage,
    "rest-yields": (context, c) => rest(context, c, true),
    "rest-short": (context, c) => rest(context, c, false),
    "good": good,
    "unchanged": unchanged,
    "buy": buy,
    "look": look,
    "strips": strips,
    "fewer": fewer,
    "carry": carry,
    "tail": tail,
    "gap": gap,
    "cut-strip": cutStrip,
    "frayed": frayed,
    "torn": Mishaps.torn
};

/** The strip that is too narrow at one end; a narrower one and patches lie in it. */
function narrower(context, c) {
    Lay.cloth(context, c, "front", [[6, 16], [194, 16], [194, 62], [6, 86]]);
    context.setLineDash([2.2, 1.4]);
    Lay.line(context, c, [[6, 54], [194, 54]], 2.8, c.accent);
    for (const x of [44, 82])
        Lay.line(context, c, [[x, 16], [x, 54]], 2.8, c.accent);
    Printing.solid(context);
    Tool.tick(context, c, 140, 36, 0.8);
}

/** The end is cut straight: the ruler's line on the fold, the blade beside it. */
function straighten(context, c) {
    Lay.cloth(context, c, "front", [[2, 20], ...Lay.ragged(172, 20, 150, 90, 8, 8), [2, 90]]);
    Tool.ruler(context, c, 58, 4, 72, 92);
    Lay.line(context, c, [[130, 2], [130, 98]], 4, c.blade);
    Lay.cutter(context, c, 130, 66, 0.5);
    Tool.arrow(context, c, 146, 40, 146, 12, c.blade);
}

/** The piece as it is to be, and the way back to the start of it. */
function again(context, c) {
    Lay.cloth(context, c, "front", Lay.box(10, 30, 70, 56));
    Tool.cross(context, c, 45, 58, 1.2);
    Lay.planned(context, c, [...Lay.box(120, 30, 70, 56), [120, 30]]);
    Tool.bowed(context, c, 50, 22, 150, 24, 26);
}

/** The spare comes into the empty place. */
function spare(context, c) {
    for (const x of [4, 136])
        Lay.block(context, c, x, 42, 56);
    Lay.planned(context, c, [...Lay.box(70, 42, 56, 56), [70, 42]]);
    Lay.block(context, c, 76, 2, 44);
    Tool.arrow(context, c, 98, 40, 98, 74);
}

/** The block on its strip, stitched anew, the spool of the same thread beside it. */
function blockAgain(context, c) {
    Lay.cloth(context, c, "front", [[2, 14], ...Lay.ragged(150, 14, 150, 90, 8, 3), [2, 90]]);
    Lay.planned(context, c, [...Lay.box(12, 28, 48, 48), [12, 28]]);
    Lay.stitches(context, c, [[128, 66], [128, 28], [80, 28], [80, 76], [110, 76]]);
    Tool.foot(context, c, 112, 76);
    spool(context, c, 164, 34);
}

function spool(context, c, x, y) {
    Lay.solid(context, c, Lay.box(x + 5, y + 6, 22, 42), c.seam, 2.2);
    for (let at = y + 12; at < y + 46; at += 7)
        Lay.line(context, c, [[x + 5, at], [x + 27, at - 3]], 1.6, c.raised);
    for (const at of [y - 2, y + 46])
        Lay.solid(context, c, Lay.box(x, at, 32, 8), c.table, 2.2);
}

/** A cloth between its selvages, and the tape laid along one of them. */
function alongSelvage(context, c) {
    Lay.cloth(context, c, "front", [[8, 8], [178, 8], ...Lay.ragged(178, 8, 178, 66, 8, 4), [8, 66]]);
    for (const y of [8, 66]) {
        Lay.line(context, c, [[8, y], [178, y]], 4);
        for (let x = 14; x < 176; x += 8)
            Lay.line(context, c, [[x, y], [x, y + (y < 30 ? -5 : 5)]], 1.6);
    }
    Lay.measure(context, c, 8, 76, 186, 20, c.patchB);
    Lay.solid(context, c, Lay.box(0, 73, 9, 26), c.ink, 0);
    Lay.line(context, c, [[178, 60], [178, 90]], 3.4, c.accent);
}

/** What is left of a cloth, and the piece that is wanted of it. */
function rest(context, c, yields) {
    Lay.cloth(context, c, "front", [[8, 10], ...Lay.ragged(yields ? 186 : 104, 10, yields ? 186 : 104, 90, 9, 6), [8, 90]]);
    context.setLineDash([2.2, 1.4]);
    Lay.line(context, c, [...Lay.box(8, 28, 132, 44), [8, 28]], 3, yields ? c.accent : c.stop);
    Printing.solid(context);
    if (yields)
        Tool.tick(context, c, 74, 50, 1.1);
    else
        Tool.arrow(context, c, 192, 50, 146, 50, c.stop);
}

/** It stays as it is: a block with a tick. */
function good(context, c) {
    Lay.block(context, c, 54, 4, 92);
    Tool.tick(context, c, 100, 52, 1.7);
}

/** Before and after are alike. */
function unchanged(context, c) {
    for (const x of [8, 128])
        Lay.block(context, c, x, 18, 64);
    for (const y of [44, 58])
        Lay.line(context, c, [[88, y], [112, y]], 5);
}

/** The bolt, and a length cut off it. */
function buy(context, c) {
    Lay.cloth(context, c, "front", [[26, 18], [150, 18], [150, 82], [26, 82]]);
    for (const y of [2, 84])
        Lay.solid(context, c, Lay.box(13, y, 14, 14), c.ink, 0);
    Lay.cloth(context, c, "front", Lay.box(4, 10, 32, 80), 2.6);
    for (const x of [12, 20, 28])
        Lay.line(context, c, [[x, 12], [x, 88]], 1.4);
    context.setLineDash([2.2, 1.4]);
    Lay.line(context, c, [[150, 6], [150, 94]], 3.4, c.blade);
    Printing.solid(context);
    Tool.arrow(context, c, 160, 50, 194, 50);
}

/** A strip that was cut already is looked at. */
function look(context, c) {
    Lay.cloth(context, c, "front", Lay.box(6, 34, 188, 40));
    Lay.disc(context, 112, 50, 29, c.raised);
    context.save();
    context.beginPath();
    context.arc(112, 50, 26, 0, 2 * Math.PI);
    context.clip();
    Printing.clothRect(context, c, "front", 80, 26, 70, 56, 1.6);
    Lay.line(context, c, [[80, 72], [150, 72]], 5);
    context.restore();
    Lay.circle(context, c, 112, 50, 28, 4.6);
    Lay.line(context, c, [[132, 71], [156, 96]], 9);
}

function strips(context, c) {
    [6, 38].forEach(y => Lay.cloth(context, c, "front", Lay.box(10, y, 150, 24)));
    Lay.planned(context, c, [...Lay.box(10, 70, 150, 24), [10, 70]]);
    Lay.line(context, c, [[170, 82], [196, 82]], 5, c.accent);
    Lay.line(context, c, [[183, 69], [183, 95]], 5, c.accent);
}

/** A strip that holds one block fewer. */
function fewer(context, c) {
    Lay.cloth(context, c, "front", Lay.box(2, 18, 196, 64));
    for (const x of [12, 74])
        Lay.stitches(context, c, [...Lay.box(x, 28, 44, 44), [x, 28]]);
    Lay.planned(context, c, [...Lay.box(138, 28, 44, 44), [138, 28]]);
    Tool.cross(context, c, 160, 50, 0.9);
}

/** The block that no longer fits goes to the strip below. */
function carry(context, c) {
    Lay.cloth(context, c, "front", [[2, 2], ...Lay.ragged(126, 2, 126, 46, 6, 3), [2, 46]]);
    Lay.cloth(context, c, "front", Lay.box(2, 54, 196, 44));
    for (const x of [10, 54])
        Lay.stitches(context, c, [...Lay.box(x, 9, 30, 30), [x, 9]]);
    Lay.planned(context, c, [...Lay.box(110, 9, 30, 30), [110, 9]]);
    Lay.stitches(context, c, [...Lay.box(10, 61, 30, 30), [10, 61]]);
    Tool.bowed(context, c, 144, 24, 46, 76, -44);
}

/** A waste strip is sewn to the end, so that the hoop has cloth to hold. */
function tail(context, c) {
    Lay.cloth(context, c, "front", Lay.box(2, 18, 112, 64));
    Lay.cloth(context, c, "waste", Lay.box(114, 18, 60, 64));
    Lay.line(context, c, [[114, 14], [114, 86]], 4, c.seam);
    for (let y = 20; y < 84; y += 8)
        Lay.line(context, c, [[109, y], [119, y]], 2.2, c.seam);
    Lay.stitches(context, c, [...Lay.box(54, 28, 44, 44), [54, 28]]);
    Lay.pen(context, c, 8, c.hoop);
    context.strokeRect(36, 8, 84, 84);
}

/** Two blocks on the strip, nearer together. */
function gap(context, c) {
    Lay.cloth(context, c, "front", Lay.box(2, 12, 196, 60));
    for (const x of [22, 116])
        Lay.stitches(context, c, [...Lay.box(x, 20, 62, 44), [x, 20]]);
    for (const x of [84, 116])
        Lay.line(context, c, [[x, 64], [x, 94]], 2.2);
    Tool.arrow(context, c, 56, 86, 80, 86);
    Tool.arrow(context, c, 144, 86, 120, 86);
}

/** A sashing strip is cut to its width across the cloth, the blade rolled away from the body. */
function cutStrip(context, c) {
    Lay.cloth(context, c, "sashing", Lay.box(4, 6, 192, 88));
    Tool.ruler(context, c, 62, 2, 54, 96);
    Lay.line(context, c, [[62, 2], [62, 98]], 3, c.accent);
    Lay.line(context, c, [[116, 0], [116, 100]], 4, c.blade);
    Lay.cutter(context, c, 116, 70, 0.4);
    Tool.arrow(context, c, 140, 48, 140, 16, c.blade);
}

/** The edge of the strip taken off is looked at: threads out of it. */
function frayed(context, c) {
    Lay.cloth(context, c, "sashing", Lay.box(4, 26, 192, 44));
    Lay.pen(context, c, 2);
    context.beginPath();
    for (let i = 0; i < 9; ++i) {
        const x = 70 + i * 9;
        context.moveTo(x, 70);
        context.bezierCurveTo(x + (i % 2 === 0 ? 6 : -5), 76, x + (i % 3 - 1) * 9, 82, x + (i % 2 === 0 ? -4 : 5), 88);
    }
    context.stroke();
    Lay.ring(context, c, 106, 74, 24);
}
