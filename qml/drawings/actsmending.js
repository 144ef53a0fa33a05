// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing
.import "acttools.js" as Tool

// Acts at one seam, one patch, one side of a block: what is unpicked, pressed, sewn again, patched or trimmed.

const acts = {
    "ripper-seam": ripperSeam,
    "draw-thread": drawThread,
    "press": press,
    "sew-deep": sewDeep,
    "pick-back": pickBack,
    "stipple": stipple,
    "bobbin": bobbin,
    "pleat-small": (context, c) => pleat(context, c, false),
    "pleat-long": (context, c) => pleat(context, c, true),
    "needle-pieces": needlePieces,
    "ripper-patch": ripperPatch,
    "peel": peel,
    "pressed": pressed,
    "hoop-stays": hoopStays,
    "stop": stop,
    "by-line": byLine,
    "too-little": tooLittle,
    "scrap": scrap,
    "zigzag": zigzag,
    "outer": outer,
    "test-join": testJoin,
    "trim-line": trimLine,
    "measure-outline": measureOutline
};

/** The seam on the bobbin's side, near: every third stitch is cut through. */
function ripperSeam(context, c) {
    Lay.cloth(context, c, "back", Lay.box(4, 6, 192, 88));
    Lay.line(context, c, [[4, 24], [196, 24]], 2.4);
    const pitch = 16, third = i => i % 3 === 1;
    Tool.stitchesOneByOne(context, c, 10, 196, 52, pitch, third);
    for (let i = 1; i < 12; i += 3)
        for (const [from, to] of [[0, 3], [0.7 * pitch - 3, 0.7 * pitch]])
            Lay.line(context, c, [[10 + i * pitch + from, 52], [10 + i * pitch + to, 52 + (from === 0 ? -4 : 4)]], 2.4, c.stop);
    Tool.ripper(context, c, 124, 54, 0.42);
}

/** From the other side the thread comes out in one length; the bits are brushed off. */
function drawThread(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 30, 192, 64));
    for (let x = 12; x < 190; x += 16)
        for (const by of [0, 9])
            Lay.disc(context, x + by, 66, 1.7, c.ink);
    Lay.pen(context, c, 3.4, c.seam);
    context.beginPath();
    context.moveTo(108, 66);
    context.bezierCurveTo(116, 34, 138, 62, 150, 28);
    context.bezierCurveTo(156, 12, 168, 14, 176, 8);
    context.stroke();
    Tool.arrow(context, c, 160, 34, 188, 12);
    for (const [x, y] of [[26, 78], [40, 84], [52, 76], [66, 83]])
        Lay.line(context, c, [[x, y], [x + 6, y - 3]], 2.6, c.seam);
    // The brush, its hairs to the bits.
    Lay.solid(context, c, [[58, 6], [72, 12], [54, 48], [42, 42]], c.table, 2.2);
    for (let i = 0; i < 5; ++i)
        Lay.line(context, c, [[43 + i * 2.8, 43 + i * 1.4], [34 + i * 4.4, 64 + i * 1.8]], 2.4);
}

/** The iron on the seam, the cloth flat. */
function press(context, c) {
    Lay.cloth(context, c, "front", [[4, 76], [196, 76], [196, 92], [4, 92]]);
    Lay.line(context, c, [[60, 76], [60, 92]], 3.4, c.seam);
    Tool.iron(context, c, 74, 74);
    Tool.steam(context, c, 36, 66);
}

/** Two cloths, raw edges level; so far inside of them the needle goes. */
function sewDeep(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 34, 192, 62));
    Lay.cloth(context, c, "sashing", [[4, 34], [120, 34], [120, 90], [4, 90]], 2);
    Lay.line(context, c, [[4, 34], [196, 34]], 4);
    Lay.stitches(context, c, [[4, 62], [78, 62]]);
    Lay.planned(context, c, [[84, 62], [194, 62]]);
    Tool.foot(context, c, 78, 62);
    Tool.upright(context, c, 156, 34, 62, c.accent);
}

/** The line of stitches, and its end picked back an inch. */
function pickBack(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 10, 192, 84));
    Lay.stitches(context, c, [[4, 60], [84, 60]]);
    Lay.planned(context, c, [[90, 60], [140, 60]]);
    Tool.across(context, c, 86, 140, 80);
    Tool.needle(context, c, 88, 58, -0.6, [[150, 2], [186, 26]]);
    Tool.bowed(context, c, 136, 50, 100, 52, 10);
}

/** Two lines of stippling lie over each other for a little. */
function stipple(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    Tool.stippling(context, c, 20, 12, 160, 76, 4);
    Lay.ring(context, c, 100, 50, 20);
}

function bobbin(context, c) {
    for (const [x, full] of [[54, false], [146, true]]) {
        Lay.disc(context, x, 50, 34, full ? c.seam : c.batting);
        for (let r = 16; full && r < 34; r += 5)
            Lay.circle(context, c, x, 50, r, 1.4, c.raised);
        Lay.circle(context, c, x, 50, 34, 3);
        Lay.disc(context, x, 50, 11, c.batting);
        Lay.circle(context, c, x, 50, 11, 2.4);
        Lay.disc(context, x, 50, 4, c.ink);
    }
    Tool.arrow(context, c, 90, 50, 110, 50);
}

/** A pleat stitched in on the back: a short one with its measure, or one across the block beside a hole. */
function pleat(context, c, long) {
    Lay.cloth(context, c, "back", Lay.box(4, 6, 192, 88));
    const y1 = long ? 7 : 30, y2 = long ? 93 : 54, x = long ? 40 : 70;
    Lay.solid(context, c, [[x, y1], [x + 14, y1], [x + 10, y2], [x + 4, y2]], c.ink, 0);
    Lay.cloth(context, c, "back", [[x + 6, y1], [x + 22, y1], [x + 16, y2], [x + 8, y2]], 2);
    Lay.stitches(context, c, [[5, 42], [194, 42]]);
    if (!long) {
        Tool.upright(context, c, 112, y1, y2);
        Tool.tick(context, c, 156, 68, 1);
        return;
    }
    const hole = [[96, 56], [106, 50], [118, 54], [126, 64], [118, 78], [104, 80], [92, 70]];
    Lay.solid(context, c, hole, c.table, 3);
    Tool.cross(context, c, 164, 50, 1.3);
}

/** The point, the middle and the shank of it: all three are there. */
function needlePieces(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 44, 192, 50));
    const parts = [[[36, 14], [52, 14], [51, 40], [46, 46], [43, 42], [37, 45]], [[92, 58], [99, 54], [104, 60], [103, 84], [96, 80], [92, 84]],
                   [[146, 52], [153, 56], [150, 76], [147, 82]]];
    for (const part of parts)
        Lay.solid(context, c, part, c.raised, 2.6);
    for (const [x, y] of [[44, 28], [98, 69], [149, 66]])
        Lay.ring(context, c, x, y, 22);
}

function patch(context, c, points) {
    Lay.cloth(context, c, "patchA", points);
}

/** The patch, one side of its stitches cut out already. */
function ripperPatch(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    patch(context, c, Lay.box(40, 16, 76, 68));
    Lay.stitches(context, c, [[110, 22], [46, 22], [46, 78], [86, 78]]);
    Lay.planned(context, c, [[92, 78], [110, 78], [110, 28]]);
    Tool.ripper(context, c, 92, 80, -0.16);
}

/** The wrong one comes off, the right one lies in its place. */
function peel(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    Lay.planned(context, c, [...Lay.box(106, 18, 72, 64), [106, 18]]);
    Lay.cloth(context, c, "patchB", Lay.box(110, 22, 64, 56));
    Lay.stitches(context, c, [...Lay.box(115, 27, 54, 46), [115, 27]]);
    patch(context, c, [[14, 20], [74, 20], [74, 48], [44, 80], [14, 80]]);
    Lay.solid(context, c, [[74, 48], [44, 80], [42, 50]], c.raised, 2.4);
    Tool.bowed(context, c, 58, 68, 30, 34, 18);
}

/** The iron was on it: the web holds, and the block is given up. */
function pressed(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 76, 192, 16));
    Lay.cloth(context, c, "patchA", Lay.box(56, 68, 80, 8), 2);
    Tool.iron(context, c, 52, 66);
    Tool.cross(context, c, 174, 34, 1.2);
}

function hoopStays(context, c) {
    Lay.cloth(context, c, "front", Lay.box(14, 18, 172, 64));
    Lay.pen(context, c, 9, c.hoop);
    context.strokeRect(56, 8, 88, 84);
    for (const [x, y] of [[56, 8], [144, 8], [56, 92], [144, 92], [100, 8], [100, 92]])
        Lay.disc(context, x, y, 2, c.hoopMark);
    Lay.stitches(context, c, [[100, 72], [74, 72], [74, 28], [126, 28], [126, 46]]);
    Lay.planned(context, c, [[126, 52], [126, 72], [106, 72]]);
}

/** The outline up to where it stopped: there the needle goes in again. */
function stop(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    Lay.stitches(context, c, [[150, 84], [30, 84], [30, 30], [92, 30]]);
    Lay.planned(context, c, [[98, 30], [170, 30], [170, 84], [156, 84]]);
    Lay.circle(context, c, 95, 30, 15, 4.4, c.accent);
    Tool.arrow(context, c, 114, 30, 142, 30);
    Lay.line(context, c, [[95, 6], [95, 30]], 3);
}

/** The raw edge wanders; the needle follows the stitched outline. */
function byLine(context, c) {
    Lay.cloth(context, c, "front", [[4, 96], [4, 40], ...Lay.ragged(4, 34, 196, 26, 9, 8), [196, 96]]);
    Lay.stitches(context, c, [[4, 66], [196, 66]]);
    Lay.line(context, c, [[4, 66], [96, 66]], 4.4, c.seam);
    for (let x = 8; x < 94; x += 8)
        Lay.line(context, c, [[x, 61], [x, 71]], 2.2, c.seam);
    Tool.foot(context, c, 96, 66);
}

/** Between the stitched outline and the raw edge there is too little. */
function tooLittle(context, c) {
    Lay.cloth(context, c, "front", [[4, 6], [150, 6], [150, 34], [116, 50], [150, 62], [150, 94], [4, 94]]);
    Lay.stitches(context, c, [[4, 22], [104, 22], [104, 78], [4, 78]]);
    Lay.line(context, c, [[150, 34], [116, 50], [150, 62]], 3.4, c.blade);
    Tool.across(context, c, 104, 116, 50, c.stop);
    Lay.ring(context, c, 110, 50, 26);
}

/** Into the notch a scrap of the three layers: their edges meet and do not overlap. */
function scrap(context, c) {
    Lay.cloth(context, c, "front", [[4, 6], [130, 6], [130, 26], [92, 50], [130, 74], [130, 94], [4, 94]]);
    Lay.stitches(context, c, [[4, 16], [80, 16], [80, 84], [4, 84]]);
    const piece = [[136, 26], [174, 26], [174, 74], [136, 74], [98, 50]];
    for (const [role, by] of [["back", 8], ["batting", 4], ["front", 0]])
        Lay.cloth(context, c, role, piece.map(([x, y]) => [x + by + 6, y + by]), 2);
    Tool.arrow(context, c, 196, 50, 160, 50);
}

/** Over the two edges in zigzag, then the ruler and the blade. */
function zigzag(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 116, 88));
    Lay.cloth(context, c, "front", Lay.box(62, 32, 70, 38), 2);
    const way = [];
    for (let i = 0; i <= 8; ++i)
        way.push([56 + (i % 2) * 12, 32 + i * 4.75]);
    for (let i = 0; i <= 8; ++i)
        way.push([62 + i * 7, 70 + (i % 2 === 0 ? -5 : 5)]);
    Lay.line(context, c, way, 2.4, c.seam);
    Lay.line(context, c, Array.from({ length: 9 }, (_, i) => [62 + i * 7, 32 + (i % 2 === 0 ? 5 : -5)]), 2.4, c.seam);
    Lay.line(context, c, [[120, 0], [120, 100]], 4, c.blade);
    Lay.cutter(context, c, 120, 80, -0.5);
    Tool.arrow(context, c, 150, 44, 150, 14, c.blade);
}

/** The hurt side comes to the outer edge, where the binding covers it. */
function outer(context, c) {
    for (const x of [4, 76])
        Lay.cloth(context, c, "front", Lay.box(x, 22, 64, 72));
    Lay.cloth(context, c, "sashing", Lay.box(68, 22, 8, 72), 1.4);
    Lay.solid(context, c, Lay.box(140, 22, 18, 72), c.binding, 2.2);
    Lay.line(context, c, [[140, 46], [130, 54], [140, 62]], 3, c.blade);
    Lay.stitches(context, c, [...Lay.box(84, 32, 42, 52), [84, 32]]);
    Tool.bowed(context, c, 100, 20, 152, 18, 14);
}

/** Two pieces of it with a sashing between. */
function testJoin(context, c) {
    for (const x of [10, 118])
        Lay.cloth(context, c, "front", Lay.box(x, 14, 72, 72));
    Lay.cloth(context, c, "sashing", Lay.box(82, 14, 36, 72));
    for (const x of [82, 118]) {
        Lay.line(context, c, [[x, 14], [x, 86]], 3.4, c.seam);
        for (let y = 20; y < 84; y += 8)
            Lay.line(context, c, [[x - 4, y], [x + 4, y]], 2, c.seam);
    }
}

/** The ruler's line on the stitched outline, and the blade along its edge. */
function trimLine(context, c) {
    Lay.cloth(context, c, "front", Lay.box(10, 8, 150, 86));
    Lay.stitches(context, c, [[10, 24], [104, 24], [104, 80], [10, 80]]);
    Tool.ruler(context, c, 56, 2, 78, 96);
    Lay.line(context, c, [[104, 2], [104, 98]], 3.6, c.accent);
    for (const y of [28, 76])
        Lay.circle(context, c, 104, y, 8, 3.4, c.accent);
    Lay.line(context, c, [[134, 0], [134, 100]], 4, c.blade);
    Lay.cutter(context, c, 134, 70, 0.4);
}

function measureOutline(context, c) {
    Lay.cloth(context, c, "front", Lay.box(20, 2, 160, 66));
    Lay.stitches(context, c, [...Lay.box(40, 12, 120, 46), [40, 12]]);
    Lay.measure(context, c, 40, 72, 156, 24, c.patchB);
    Lay.solid(context, c, Lay.box(31, 70, 9, 28), c.ink, 0);
    for (const x of [40, 160])
        Lay.line(context, c, [[x, 56], [x, 84]], 3.4, c.accent);
}
