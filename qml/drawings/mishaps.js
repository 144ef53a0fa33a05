// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing

// What can go wrong, each as it lies on the table, on a field of 200 by 100. `c` is a colour set.

const wide = 200, high = 100;

const scenes = {
    "too-narrow": crooked,
    "spoiled": scorched,
    "cloth-ran-out": ranOut,
    "cloth-narrower": narrower,
    "done-already": done,
    "thread-ran-out": emptySpool,
    "pleat-or-hole": pleat,
    "patch-wrong": patchAskew,
    "power-failed": noPower,
    "strip-torn": torn,
    "will-not-fit": willNotFit,
    "cut-into": cutInto,
    "size-off": sizeOff,
    "sewn-wrong": unpicked,
    "fold-missed": foldMissed,
    "block-gone": blockGone,
    "changed-mind": turnedBack,
    "sides-disagree": sidesDisagree
};

function draws(kind) {
    return scenes[kind] !== undefined;
}

/** Fits the field into w by h and paints the mishap of that name. */
function paint(context, c, kind, w, h) {
    if (!draws(kind))
        return;
    const k = Math.min(w / wide, h / high);
    context.save();
    context.translate((w - wide * k) / 2, (h - high * k) / 2);
    context.scale(k, k);
    context.lineJoin = "round";
    scenes[kind](context, c);
    context.restore();
}

/** The ruler lies straight on the strip; the strip's edge runs away from it. */
function crooked(context, c) {
    Lay.cloth(context, c, "front", [[6, 12], [194, 12], [194, 40], [6, 68]]);
    Lay.solid(context, c, [[6, 68], [194, 40], [194, 68]], c.raised, 0);
    context.beginPath();
    context.globalAlpha = 0.35;
    Lay.solid(context, c, [[6, 68], [194, 40], [194, 68]], c.stop, 0);
    context.globalAlpha = 1;
    Lay.line(context, c, [[6, 68], [194, 40]], 4, c.blade);
    context.globalAlpha = Math.min(1, 2.4 * c.rulerAlpha);
    Lay.solid(context, c, Lay.box(2, 68, 196, 26), c.rulerBody, 0);
    context.globalAlpha = 1;
    Lay.measure(context, c, 2, 68, 196, 26, "transparent");
}

/** The mark the iron left on the cloth. */
function scorched(context, c) {
    Lay.cloth(context, c, "front", Lay.box(14, 6, 172, 88));
    const sole = () => {
        context.moveTo(46, 30);
        context.bezierCurveTo(80, 14, 126, 20, 160, 52);
        context.bezierCurveTo(130, 78, 82, 88, 46, 74);
        context.closePath();
    };
    context.beginPath();
    sole();
    context.fillStyle = c.echo;
    context.globalAlpha = 0.72;
    context.fill();
    context.globalAlpha = 1;
    Lay.pen(context, c, 4, c.ink);
    context.stroke();
    for (const [x, y] of [[60, 42], [60, 63], [80, 37], [80, 68], [102, 39], [102, 66], [122, 46], [122, 60]])
        Lay.disc(context, x, y, 3.6, c.raised);
}

/** The roll is bare, and the last of the cloth ends short of where it should reach. */
function ranOut(context, c) {
    Lay.planned(context, c, [[112, 18], [194, 18], [194, 82], [112, 82]]);
    Lay.cloth(context, c, "front", [[26, 18], ...Lay.ragged(118, 18, 118, 82, 10, 7), [26, 82]]);
    for (const y of [2, 84])
        Lay.solid(context, c, Lay.box(13, y, 14, 14), c.ink, 0);
    Lay.solid(context, c, Lay.box(8, 10, 24, 80), c.table, 2.6);
    Lay.line(context, c, [[15, 12], [15, 88]], 1.6, c.tableMark);
    Lay.line(context, c, [[24, 12], [24, 88]], 1.6, c.tableMark);
    Lay.arrow(context, c, 188, 50, 134, 50, c.stop);
}

/** Both selvages stand inside of where they were to be. */
function narrower(context, c) {
    for (const x of [14, 186])
        Lay.planned(context, c, [[x, 4], [x, 96]]);
    Lay.cloth(context, c, "front", [...Lay.ragged(54, 6, 146, 6, 12, 4), ...Lay.ragged(146, 94, 54, 94, 12, 4)]);
    for (const [x, out] of [[54, -1], [146, 1]]) {
        Lay.line(context, c, [[x, 6], [x, 94]], 4);
        context.beginPath();
        for (let y = 11; y < 94; y += 7) {
            context.moveTo(x, y);
            context.lineTo(x + out * 7, y);
        }
        Lay.pen(context, c, 1.8);
        context.stroke();
        for (let y = 14; y < 92; y += 14)
            Lay.disc(context, x - out * 6, y, 1.9, c.ink);
    }
    Lay.arrow(context, c, 17, 50, 43, 50, c.stop);
    Lay.arrow(context, c, 183, 50, 157, 50, c.stop);
}

/** The block lies there with a tick on it, the scissors are laid down closed. */
function done(context, c) {
    Lay.block(context, c, 10, 6, 88);
    Lay.line(context, c, [[28, 52], [48, 74], [86, 20]], 13, c.raised);
    Lay.line(context, c, [[28, 52], [48, 74], [86, 20]], 8, c.accent);
    context.save();
    context.translate(152, 50);
    context.rotate(0.5);
    Lay.solid(context, c, [[-3.4, 6], [-4.4, -34], [0, -48], [4.4, -34], [3.4, 6]], c.batting, 2.4);
    Lay.line(context, c, [[0, -46], [0, 2]], 1.6);
    for (const side of [-1, 1]) {
        Lay.line(context, c, [[0, 0], [side * 9, 20]], 6);
        context.beginPath();
        context.ellipse(side * 13 - 9, 18, 18, 28);
        Lay.pen(context, c, 6);
        context.stroke();
    }
    Lay.disc(context, 0, 2, 3.6, c.raised);
    Lay.circle(context, c, 0, 2, 3.6, 1.8);
    context.restore();
}

/** A bare spool, and a line of stitches that stops. */
function emptySpool(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 66, 192, 30));
    Lay.stitches(context, c, [[4, 81], [112, 81]]);
    Lay.planned(context, c, [[122, 81], [196, 81]]);
    Lay.solid(context, c, Lay.box(36, 14, 30, 36), c.patchB, 2.4);
    for (const y of [4, 46])
        Lay.solid(context, c, [[26, y], [76, y], [72, y + 11], [30, y + 11]], c.table, 2.6);
    Lay.pen(context, c, 3, c.seam);
    context.beginPath();
    context.moveTo(36, 34);
    context.bezierCurveTo(46, 40, 60, 40, 66, 34);
    context.bezierCurveTo(82, 26, 86, 52, 100, 44);
    context.stroke();
    Lay.disc(context, 148, 32, 27, c.batting);
    Lay.circle(context, c, 148, 32, 27, 2.8);
    Lay.disc(context, 148, 32, 7, c.ink);
    for (let i = 0; i < 6; ++i)
        Lay.disc(context, 148 + 17 * Math.cos(i * Math.PI / 3), 32 + 17 * Math.sin(i * Math.PI / 3), 3.6, c.inkSoft);
}

/** A pleat stitched in, a hole, a needle in two. */
function pleat(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    Lay.solid(context, c, [[24, 7], [48, 7], [40, 93], [28, 93]], c.frontMark, 2.4);
    Lay.cloth(context, c, "front", [[32, 7], [52, 7], [44, 93], [34, 93]], 1.8);
    Lay.stitches(context, c, [[5, 66], [78, 66]]);
    const hole = [[88, 36], [97, 29], [106, 34], [116, 32], [119, 45], [128, 54], [116, 62], [112, 72], [100, 66], [90, 70], [91, 57], [82, 50]];
    Lay.solid(context, c, hole, c.table, 3);
    for (const [x, y, a, b] of [[90, 44, 98, 48], [119, 40, 108, 44], [110, 68, 107, 58], [94, 63, 101, 58]])
        Lay.line(context, c, [[x, y], [a, b]], 1.8);
    Lay.solid(context, c, [[146, 8], [162, 8], [161, 42], [156, 51], [153, 44], [147, 48]], c.raised, 2.6);
    Lay.solid(context, c, [[166, 58], [172, 53], [175, 61], [181, 56], [178, 78], [172, 92]], c.raised, 2.6);
    Lay.line(context, c, [[154, 13], [154, 34]], 2.4);
}

/** One patch lies askew of its place, the other place is bare. */
function patchAskew(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    Lay.planned(context, c, [...Lay.box(28, 24, 54, 52), [28, 24]]);
    Lay.cloth(context, c, "patchA", [[30, 30], [84, 16], [96, 66], [42, 80]]);
    Lay.planned(context, c, [...Lay.box(122, 24, 52, 52), [122, 24]]);
    Lay.line(context, c, [[138, 40], [158, 60]], 5, c.stop);
    Lay.line(context, c, [[158, 40], [138, 60]], 5, c.stop);
}

/** The hoop stands with its block half stitched; the plug is out. */
function noPower(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 18, 108, 64));
    Lay.pen(context, c, 9, c.hoop);
    context.strokeRect(20, 10, 76, 80);
    Lay.stitches(context, c, [[58, 72], [36, 72], [36, 28], [80, 28], [80, 46]]);
    Lay.planned(context, c, [[80, 52], [80, 72], [62, 72]]);
    const bolt = [[164, 4], [130, 54], [152, 54], [142, 96], [182, 40], [158, 40], [178, 4]];
    Lay.solid(context, c, bolt, c.patchB, 3.2);
    Lay.line(context, c, [[120, 88], [196, 14]], 11, c.raised);
    Lay.line(context, c, [[120, 88], [196, 14]], 6, c.stop);
}

/** The strip in two, with a ragged gap and threads. */
function torn(context, c) {
    const left = Lay.ragged(92, 14, 82, 86, 9, 9), right = Lay.ragged(122, 14, 112, 86, 9, 9);
    Lay.cloth(context, c, "front", [[2, 14], ...left, [2, 86]]);
    Lay.cloth(context, c, "front", [[198, 86], ...right.slice().reverse(), [198, 14]]);
    for (const i of [1, 3, 5, 7]) {
        Lay.line(context, c, [left[i], [left[i][0] + 8, left[i][1] + 4]], 1.8);
        Lay.line(context, c, [right[i], [right[i][0] - 8, right[i][1] + 3]], 1.8);
    }
    Lay.stitches(context, c, [...Lay.box(20, 30, 40, 40), [20, 30]]);
    Lay.stitches(context, c, [...Lay.box(140, 30, 40, 40), [140, 30]]);
}

/** The last block would stand out past the strip's end. */
function willNotFit(context, c) {
    Lay.cloth(context, c, "front", [[2, 14], ...Lay.ragged(146, 14, 146, 86, 8, 3), [2, 86]]);
    for (const x of [8, 64])
        Lay.stitches(context, c, [...Lay.box(x, 26, 48, 48), [x, 26]]);
    context.globalAlpha = 0.35;
    Lay.solid(context, c, Lay.box(147, 26, 31, 48), c.stop, 0);
    context.globalAlpha = 1;
    context.setLineDash([2.2, 1.2]);
    Lay.line(context, c, [...Lay.box(120, 26, 58, 48), [120, 26]], 3, c.stop);
    Printing.solid(context);
}

/** The blade ran in across the stitched outline. */
function cutInto(context, c) {
    Lay.cloth(context, c, "front", [[10, 6], [144, 6], [144, 44], [78, 62], [144, 54], [144, 94], [10, 94]]);
    Lay.stitches(context, c, [[126, 47], [126, 22], [28, 22], [28, 78], [126, 78], [126, 57]]);
    Lay.line(context, c, [[144, 44], [78, 62], [144, 54]], 3.4, c.blade);
    Lay.cutter(context, c, 130, 51, -0.22);
}

/** The tape says that the block does not reach its mark. */
function sizeOff(context, c) {
    Lay.block(context, c, 20, 4, 66);
    Lay.cloth(context, c, "front", Lay.box(20, 4, 112, 58));
    Lay.stitches(context, c, [...Lay.box(30, 14, 92, 38), [30, 14]]);
    Lay.planned(context, c, [[132, 4], [166, 4], [166, 62], [132, 62]]);
    Lay.measure(context, c, 20, 70, 176, 24, c.patchB);
    Lay.solid(context, c, Lay.box(12, 68, 9, 28), c.ink, 0);
    Lay.line(context, c, [[132, 56], [132, 82]], 3.4, c.stop);
    Lay.line(context, c, [[166, 56], [166, 82]], 3.4, c.stop);
    Lay.arrow(context, c, 134, 33, 162, 33, c.stop);
}

/** A seam that wanders, and the ripper in it. */
function unpicked(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 4, 130, 46));
    Lay.cloth(context, c, "back", Lay.box(4, 50, 130, 46));
    Lay.pen(context, c, 3.6, c.stop);
    context.setLineDash([2, 1.2]);
    context.beginPath();
    context.moveTo(4, 44);
    context.bezierCurveTo(34, 36, 46, 72, 70, 66);
    context.bezierCurveTo(90, 60, 96, 40, 106, 46);
    context.stroke();
    Printing.solid(context);
    context.save();
    context.translate(104, 48);
    context.rotate(0.34);
    Lay.solid(context, c, [[0, -1.6], [30, -5], [34, -12], [16, -14], [34, -17], [44, -6], [44, 5], [30, 5]], c.batting, 2.2);
    Lay.disc(context, 15, -14, 4.6, c.stop);
    Lay.solid(context, c, [[44, -9], [92, -10], [97, 0], [92, 10], [44, 9]], c.accent, 2.2);
    context.restore();
}

/** From the back: the stitching runs past the folded edge instead of on it. */
function foldMissed(context, c) {
    Lay.cloth(context, c, "back", Lay.box(4, 6, 192, 88));
    const strip = () => {
        context.moveTo(4, 6);
        context.lineTo(196, 6);
        context.lineTo(196, 64);
        context.bezierCurveTo(160, 66, 140, 36, 102, 36);
        context.bezierCurveTo(64, 36, 44, 66, 4, 64);
        context.closePath();
    };
    Printing.clothShape(context, c, "sashing", 4, 6, 192, 60, Lay.grain, strip);
    Lay.pen(context, c, 3.6, c.fold);
    context.beginPath();
    strip();
    context.stroke();
    Lay.stitches(context, c, [[4, 54], [196, 54]]);
    Lay.ring(context, c, 102, 48, 26);
}

/** A place in the rows is empty. */
function blockGone(context, c) {
    for (const x of [4, 140]) {
        Lay.cloth(context, c, "front", Lay.box(x, 22, 56, 56));
        Lay.stitches(context, c, [...Lay.box(x + 9, 31, 38, 38), [x + 9, 31]]);
    }
    for (const x of [4, 72, 140])
        for (const [y, edge] of [[0, 14], [86, 100]])
            Lay.cloth(context, c, "front", Lay.box(x, y, 56, edge - y), 1.8);
    context.setLineDash([2.2, 1.6]);
    Lay.line(context, c, [...Lay.box(72, 22, 56, 56), [72, 22]], 3, c.stop);
    Printing.solid(context);
    Lay.line(context, c, [[88, 38], [112, 62]], 4.4, c.stop);
    Lay.line(context, c, [[112, 38], [88, 62]], 4.4, c.stop);
}

/** The thread turns round and goes back where it came from. */
function turnedBack(context, c) {
    Lay.cloth(context, c, "front", Lay.box(4, 6, 192, 88));
    context.setLineDash([3, 1.4]);
    Lay.pen(context, c, 4, c.seam);
    context.beginPath();
    context.moveTo(14, 30);
    context.lineTo(140, 30);
    context.bezierCurveTo(184, 30, 184, 72, 140, 72);
    context.lineTo(92, 72);
    context.stroke();
    Printing.solid(context);
    Lay.solid(context, c, [[22, 72], [84, 67.5], [94, 69], [94, 75], [84, 76.5]], c.raised, 2.4);
    Lay.line(context, c, [[80, 72], [90, 72]], 2.2);
}

/** The block under the ruler: the line lies on the stitches at one end only. */
function sidesDisagree(context, c) {
    Lay.cloth(context, c, "front", [[26, 6], [176, 14], [170, 90], [20, 94]]);
    Lay.stitches(context, c, [[44, 24], [156, 26], [150, 76], [40, 78], [44, 24]]);
    context.globalAlpha = Math.min(1, 2.4 * c.rulerAlpha);
    Lay.solid(context, c, Lay.box(84, 0, 74, 100), c.rulerBody, 0);
    context.globalAlpha = 1;
    Lay.line(context, c, [...Lay.box(84, 0, 74, 100), [84, 0]], 2.4, c.rulerMark);
    Lay.line(context, c, [[140, 0], [140, 100]], 4, c.accent);
    Lay.ring(context, c, 140, 26, 14);
    Lay.ring(context, c, 140, 76, 14);
}
