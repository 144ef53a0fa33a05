// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing
.import "acttools.js" as Tool

// Acts at the edge of the piece: squaring, binding, its corners and joins, and what is mended there.

const acts = {
    "square-opposite": squareOpposite,
    "bind": bind,
    "six": six,
    "trim-four": trimFour,
    "ripper-binding": ripperBinding,
    "corner-anew": cornerDown,
    "binding-hand": bindingHand,
    "notch": (context, c) => notch(context, c, false),
    "notch-filled": (context, c) => notch(context, c, true),
    "joins-clear": (context, c) => joins(context, c, true),
    "joins-near": (context, c) => joins(context, c, false),
    "lay-before": layBefore,
    "leave-open": leaveOpen,
    "crown": crown,
    "ease-crown": easeCrown,
    "inside-point": insidePoint,
    "corner-stop": cornerStop,
    "corner-up": cornerUp,
    "corner-down": cornerDown,
    "overlap": overlap,
    "wheel": wheel
};

/** The whole piece in little: two rows of three. */
function piece(context, c, x, y, w, h) {
    Lay.cloth(context, c, "front", Lay.box(x, y, w, h));
    for (const at of [1, 2])
        Lay.line(context, c, [[x + w * at / 3, y], [x + w * at / 3, y + h]], 1.6);
    Lay.line(context, c, [[x, y + h / 2], [x + w, y + h / 2]], 1.6);
}

/** The short side is as it is; the one across from it is cut to it. */
function squareOpposite(context, c) {
    piece(context, c, 20, 14, 150, 72);
    context.globalAlpha = 0.4;
    Lay.solid(context, c, Lay.box(158, 14, 12, 72), c.stop, 0);
    context.globalAlpha = 1;
    Lay.line(context, c, [[158, 4], [158, 96]], 4, c.blade);
    Lay.cutter(context, c, 158, 66, -0.4);
    Lay.line(context, c, [[20, 4], [20, 96]], 4, c.accent);
}

/** The bound corner, mitred. */
function bind(context, c) {
    Lay.cloth(context, c, "front", Lay.box(28, 22, 180, 90));
    Lay.solid(context, c, [[28, 22], [208, 22], [208, 40], [46, 40], [46, 108], [28, 108]], c.binding, 2.4);
    Lay.line(context, c, [[28, 22], [46, 40]], 2.4, c.raised);
    Lay.stitches(context, c, [[200, 56], [62, 56], [62, 104]]);
}

/** Six tapes: four sides, two diagonals. */
function six(context, c) {
    piece(context, c, 36, 20, 128, 60);
    for (const way of [[[36, 20], [164, 80]], [[164, 20], [36, 80]]]) {
        Lay.line(context, c, way, 6, c.raised);
        Lay.line(context, c, way, 3, c.accent);
    }
    for (const y of [8, 92])
        Tool.across(context, c, 36, 164, y, c.accent);
    for (const x of [22, 178])
        Tool.upright(context, c, x, 20, 80, c.accent);
}

/** As much off every side. */
function trimFour(context, c) {
    piece(context, c, 26, 8, 148, 84);
    const x1 = 38, x2 = 162, y1 = 20, y2 = 80;
    context.globalAlpha = 0.4;
    for (const box of [[26, 8, 148, 12], [26, 80, 148, 12], [26, 20, 12, 60], [162, 20, 12, 60]])
        Lay.solid(context, c, Lay.box(...box), c.stop, 0);
    context.globalAlpha = 1;
    for (const way of [[[x1, 2], [x1, 98]], [[x2, 2], [x2, 98]], [[14, y1], [186, y1]], [[14, y2], [186, y2]]])
        Lay.line(context, c, way, 3.4, c.blade);
}

/** The strip comes off its seam from the corner on. */
function ripperBinding(context, c) {
    Lay.cloth(context, c, "front", Lay.box(-4, 34, 208, 70));
    Lay.solid(context, c, Lay.box(-4, 34, 92, 20), c.binding, 2.4);
    Lay.solid(context, c, [[88, 34], [128, 20], [204, 2], [204, 20], [132, 40], [88, 54]], c.binding, 2.4);
    Tool.stitchesOneByOne(context, c, 2, 90, 54, 9);
    for (let x = 96; x < 196; x += 9)
        Lay.disc(context, x, 54, 1.7, c.ink);
    Tool.ripper(context, c, 108, 56, 0.42);
}

/** On the back: the binding is drawn over its seam and closed by hand. */
function bindingHand(context, c) {
    Lay.cloth(context, c, "back", Lay.box(-4, 30, 208, 74));
    Lay.line(context, c, [[-4, 52], [204, 52]], 2.4, c.seam);
    Lay.solid(context, c, [[-4, 14], [204, 14], [204, 58], [140, 58], [112, 44], [88, 44], [60, 58], [-4, 58]], c.binding, 2.6);
    Tool.arrow(context, c, 100, 26, 100, 60);
    for (let x = 6; x < 56; x += 10)
        Lay.line(context, c, [[x, 54], [x + 4, 62]], 2.4, c.seam);
    Tool.needle(context, c, 64, 66, 0.3, [[180, 96], [182, 66]]);
}

/** A notch in the raw edge beneath the binding, empty or filled with batting. */
function notch(context, c, filled) {
    Lay.cloth(context, c, "front", [[-4, 24], [76, 24], [100, 44], [124, 24], [204, 24], [204, 104], [-4, 104]]);
    if (filled)
        Lay.cloth(context, c, "batting", [[76, 22], [124, 22], [100, 43]], 2);
    else
        Lay.line(context, c, [[76, 24], [100, 44], [124, 24]], 3.4, c.blade);
    context.setLineDash([2.4, 1.4]);
    Lay.line(context, c, [[-4, 56], [204, 56]], 3, c.binding);
    Lay.line(context, c, [[-4, 14], [204, 14]], 3, c.binding);
    Printing.solid(context);
    Lay.solid(context, c, Lay.box(-4, 14, 64, 42), c.binding, 2.4);
    Lay.stitches(context, c, [[0, 78], [200, 78]]);
    if (!filled)
        Tool.upright(context, c, 146, 24, 44, c.accent);
}

/** The edge with its binding; joins in the middle of a block, or nearer to a corner than one would. */
function joins(context, c, clear) {
    Lay.cloth(context, c, "front", Lay.box(20, -4, 160, 76));
    for (const x of [66, 120])
        Lay.cloth(context, c, "sashing", Lay.box(x, -4, 14, 76), 1.6);
    Lay.solid(context, c, Lay.box(20, 72, 160, 20), c.binding, 2.4);
    for (const x of clear ? [36, 92, 148] : [60, 160]) {
        Lay.line(context, c, [[x, 91], [x + 18, 73]], 5, c.raised);
        Lay.line(context, c, [[x, 91], [x + 18, 73]], 2.6, c.seam);
    }
    if (clear)
        for (const x of [73, 127])
            Lay.ring(context, c, x, 72, 12);
    else
        Lay.ring(context, c, 168, 82, 17);
}

/** The lower edge of the piece, and the strip laid along it, raw edges level. */
function edgeWithStrip(context, c, from, to) {
    Lay.cloth(context, c, "front", Lay.box(-4, -4, 208, 84));
    Lay.solid(context, c, [[from, 48], [to, 48], [to, 80], [from, 80]], c.binding, 2.4);
}

function closing(context, c, x) {
    Lay.line(context, c, [[x, 20], [x, 92]], 2.6, c.accent);
    Lay.disc(context, x, 80, 7, c.raised);
    Lay.circle(context, c, x, 80, 7, 3.6, c.accent);
}

/** The strip begins before the place at which it is closed. */
function layBefore(context, c) {
    edgeWithStrip(context, c, 40, 204);
    closing(context, c, 116);
    Lay.line(context, c, [[40, 20], [40, 48]], 2.2);
    Tool.across(context, c, 40, 116, 28);
}

/** On both sides of that place the seam stays open. */
function leaveOpen(context, c) {
    Lay.cloth(context, c, "front", Lay.box(-4, -4, 208, 84));
    Lay.solid(context, c, [[-4, 48], [132, 36], [132, 68], [60, 78], [-4, 80]], c.binding, 2.4);
    Lay.solid(context, c, [[204, 48], [86, 40], [86, 72], [150, 80], [204, 80]], c.binding, 2.4);
    for (const [x1, x2] of [[-2, 34], [168, 204]])
        Lay.line(context, c, [[x1, 68], [x2, 68]], 4, c.raised);
    for (const [x1, x2] of [[0, 34], [168, 204]])
        Tool.stitchesOneByOne(context, c, x1, x2, 68, 9);
    closing(context, c, 101);
    for (const [x1, x2] of [[34, 101], [101, 168]])
        Tool.across(context, c, x1, x2, 20);
}

function scallops(context, c) {
    const trace = () => {
        context.moveTo(-4, -4);
        context.lineTo(204, -4);
        context.lineTo(204, 46);
        context.bezierCurveTo(176, 46, 176, 80, 146, 46);
        context.bezierCurveTo(132, 92, 68, 92, 54, 46);
        context.bezierCurveTo(24, 80, 24, 46, -4, 46);
    };
    Printing.clothShape(context, c, "front", -4, -4, 208, 104, Lay.grain, trace);
    Lay.pen(context, c, 2.6);
    context.beginPath();
    trace();
    context.stroke();
}

function along(context, c, width, colour, from, to) {
    Lay.pen(context, c, width, colour);
    context.beginPath();
    for (let i = 0; i <= 20; ++i) {
        const t = from + (to - from) * i / 20, s = 1 - t;
        const x = s * s * s * 54 + 3 * s * s * t * 68 + 3 * s * t * t * 132 + t * t * t * 146;
        const y = s * s * s * 46 + 3 * s * s * t * 92 + 3 * s * t * t * 92 + t * t * t * 46;
        if (i === 0)
            context.moveTo(x, y - 5);
        else
            context.lineTo(x, y - 5);
    }
    context.stroke();
}

function crown(context, c) {
    scallops(context, c);
    along(context, c, 13, c.ink, 0.5, 1);
    along(context, c, 9, c.binding, 0.5, 1);
    Lay.circle(context, c, 100, 76, 13, 4.4, c.accent);
    Tool.arrow(context, c, 100, 20, 100, 58);
}

function easeCrown(context, c) {
    scallops(context, c);
    along(context, c, 13, c.ink, 0, 1);
    along(context, c, 9, c.binding, 0, 1);
    context.setLineDash([1.6, 1]);
    along(context, c, 2.6, c.raised, 0, 1);
    Printing.solid(context);
    Tool.bowed(context, c, 66, 46, 134, 46, -26);
}

function insidePoint(context, c) {
    Lay.cloth(context, c, "front", [[-4, -4], [204, -4], [204, 30], [148, 84], [100, 40], [52, 84], [-4, 30]]);
    Lay.line(context, c, [[-4, 22], [52, 76], [100, 32]], 12, c.ink);
    Lay.line(context, c, [[-4, 22], [52, 76], [100, 32]], 8, c.binding);
    Tool.foot(context, c, 100, 34);
    Tool.bowed(context, c, 112, 70, 158, 60, 24);
}

/** The corner of the piece, its edges to the top and to the right; the strip along the top, its seam sewn. */
function corner(context, c, top) {
    Lay.cloth(context, c, "front", Lay.box(-4, top, 154, 104 - top));
}

/** The seam stops its own depth before the next edge. */
function cornerStop(context, c) {
    corner(context, c, 36);
    Lay.solid(context, c, Lay.box(-4, 36, 200, 34), c.binding, 2.4);
    Lay.line(context, c, [[150, 36], [150, 100]], 2.6);
    Lay.line(context, c, [[-4, 50], [136, 50]], 5, c.raised);
    Tool.stitchesOneByOne(context, c, 0, 138, 50, 9);
    for (const x of [136, 150])
        Lay.line(context, c, [[x, 50], [x, 92]], 2.2);
    Tool.across(context, c, 136, 150, 86, c.accent);
    Tool.foot(context, c, 136, 50);
}

/** Turned up, so that its raw edge runs on in the line of the next side. */
function cornerUp(context, c) {
    corner(context, c, 52);
    Lay.solid(context, c, [[-4, 52], [150, 52], [116, 86], [-4, 86]], c.binding, 2.4);
    Lay.solid(context, c, [[150, 52], [116, 86], [116, -4], [150, -4]], c.binding, 2.4);
    Lay.line(context, c, [[150, 52], [116, 86]], 4, c.raised);
    context.setLineDash([3, 1.2, 0.8, 1.2]);
    Lay.line(context, c, [[150, 52], [116, 86]], 2.6, c.fold);
    Printing.solid(context);
    Lay.line(context, c, [[150, 52], [150, 104]], 2.6);
    Tool.bowed(context, c, 180, 76, 164, 20, -14);
}

/** Down again: the fold is level with the edge sewn, the raw edge with the next. */
function cornerDown(context, c) {
    corner(context, c, 24);
    Lay.solid(context, c, Lay.box(-4, 24, 130, 34), c.binding, 2.4);
    Lay.solid(context, c, Lay.box(116, 24, 34, 84), c.binding, 2.4);
    Lay.line(context, c, [[116, 24], [150, 24]], 4.4, c.raised);
    Lay.line(context, c, [[116, 24], [150, 24]], 2.6, c.fold);
    context.setLineDash([1.4, 1.4]);
    Lay.line(context, c, [[150, 24], [118, 56]], 2.6, c.raised);
    Printing.solid(context);
    Tool.bowed(context, c, 176, 10, 168, 84, -20);
}

/** The two ends crossed, right sides together, sewn from corner to corner. */
function overlap(context, c) {
    Lay.solid(context, c, Lay.box(12, 30, 110, 40), c.binding, 2.4);
    context.globalAlpha = 0.86;
    Lay.solid(context, c, Lay.box(82, 30, 40, 74), c.binding, 0);
    context.globalAlpha = 1;
    Lay.line(context, c, [...Lay.box(82, 30, 40, 74), [82, 30]], 2.4);
    Lay.line(context, c, [[82, 30], [122, 70]], 5.4, c.raised);
    context.setLineDash([1.8, 1]);
    Lay.line(context, c, [[82, 30], [122, 70]], 3, c.seam);
    Printing.solid(context);
    Tool.across(context, c, 82, 122, 16, c.accent);
    Tool.upright(context, c, 144, 30, 70, c.accent);
}

/** The hand wheel at the machine's end, turned; the needle stands over the thick place. */
function wheel(context, c) {
    Lay.solid(context, c, [[34, 10], [148, 10], [148, 84], [116, 84], [116, 40], [70, 40], [64, 54], [34, 54]], c.raised, 2.6);
    Lay.solid(context, c, Lay.box(148, 18, 16, 38), c.accent, 2.6);
    for (let y = 23; y < 54; y += 6)
        Lay.line(context, c, [[150, y], [162, y]], 1.6, c.raised);
    Tool.bowed(context, c, 174, 14, 174, 60, -18);
    Lay.line(context, c, [[50, 54], [50, 76]], 3.4);
    Lay.cloth(context, c, "front", [[4, 84], [28, 84], [36, 74], [66, 74], [74, 84], [196, 84], [196, 96], [4, 96]]);
}
