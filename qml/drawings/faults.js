// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// What can be amiss with a stitched block, seen close on its cloth, on a field of 150 by 84. `c` is a colour set.

const wide = 150, high = 84;

const scenes = { pleat: pleat, thread: thread, patch: patch, mark: mark, look: look };

/** Fills w by h with the cloth, and paints on it what is amiss. */
function paint(context, c, scene, w, h, u) {
    const draws = scenes[scene] ?? look, cloth = scene === "pleat" ? "back" : "front";
    // A low picture loses a little of its head and foot.
    const k = Math.min(w / wide, 1.14 * h / high), x = (w - wide * k) / 2, y = (h - high * k) / 2;
    Printing.clothRect(context, c, cloth, 0, 0, w, h, u);
    context.save();
    context.translate(x, y);
    context.scale(k, k);
    context.lineJoin = "round";
    // How far the cloth reaches to both sides of the field.
    draws(context, Printing.upon(c, cloth), { left: -x / k, right: wide + x / k, top: -y / k, foot: high + y / k });
    context.restore();
}

function pen(context, c, width, colour) {
    context.strokeStyle = colour ?? c.ink;
    context.lineWidth = width * c.lineScale;
}

/** Machine stitches from place to place. */
function stitches(context, c, width, places) {
    pen(context, c, width, c.stitched);
    context.lineCap = "butt";
    context.setLineDash(Printing.patterns.stitched);
    context.beginPath();
    places.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
    context.stroke();
    Printing.solid(context);
}

/** A fold of the back cloth, caught and sewn down by the rows that cross it. */
function pleat(context, c, field) {
    const tip = 138, trace = () => {
        context.moveTo(field.left - 2, 22);
        context.bezierCurveTo(40, 20, 90, 30, tip, 56);
        context.bezierCurveTo(96, 54, 44, 58, field.left - 2, 60);
        context.closePath();
    };
    // Its shadow on the cloth below it.
    context.save();
    context.translate(0, 6);
    context.globalAlpha = 0.38;
    context.beginPath();
    trace();
    context.fillStyle = c.ink;
    context.fill();
    context.restore();
    Printing.clothShape(context, c, "back", field.left - 2, 16, tip - field.left + 4, 46, 0.42, trace);
    context.save();
    context.beginPath();
    trace();
    context.clip();
    context.globalAlpha = 0.22;
    context.fillStyle = c.ink;
    context.beginPath();
    context.moveTo(field.left - 2, 22);
    context.bezierCurveTo(40, 20, 90, 30, tip, 56);
    context.bezierCurveTo(94, 38, 44, 34, field.left - 2, 36);
    context.closePath();
    context.fill();
    context.restore();
    pen(context, c, 2.6);
    context.beginPath();
    trace();
    context.stroke();
    for (let x = 24 - 42 * Math.ceil((24 - field.left) / 42); x < field.right; x += 42)
        if (x < tip - 20)
            stitches(context, c, 3, [[x, field.top], [x, 24 + (x > 60 ? 6 : 0)], [x + 8, 57], [x, 62], [x, field.foot]]);
        else
            stitches(context, c, 3, [[x, field.top], [x, field.foot]]);
}

/** A row that loops, and a row whose thread has broken. */
function thread(context, c, field) {
    stitches(context, c, 3.2, [[field.left, 32], [42, 32]]);
    stitches(context, c, 3.2, [[114, 32], [field.right, 32]]);
    pen(context, c, 2.6, c.stitched);
    context.lineCap = "round";
    context.beginPath();
    context.moveTo(42, 32);
    for (const [x, up] of [[42, 25], [60, 17], [78, 24], [96, 15]]) {
        context.bezierCurveTo(x + 24, 32 - up * 0.2, x + 12, 32 - up * 1.3, x + 6, 32 - up * 0.5);
        context.bezierCurveTo(x + 4, 28, x + 8, 33, x + 18, 32);
    }
    context.stroke();
    stitches(context, c, 3.2, [[field.left, 60], [58, 60]]);
    stitches(context, c, 3.2, [[104, 60], [field.right, 60]]);
    pen(context, c, 2.6, c.stitched);
    context.beginPath();
    context.moveTo(58, 60);
    context.bezierCurveTo(68, 58, 76, 68, 70, 73);
    context.bezierCurveTo(63, 78, 54, 72, 46, 76);
    context.moveTo(104, 60);
    context.bezierCurveTo(94, 60, 92, 46, 84, 47);
    context.bezierCurveTo(78, 48, 80, 55, 86, 53);
    context.stroke();
    // Both ends split into their plies, and the holes that were left.
    pen(context, c, 1.4, c.stitched);
    context.beginPath();
    for (const [x, y, a, b] of [[46, 76, -8, -1], [46, 76, -6, 4], [86, 53, 7, 0], [86, 53, 5, 4]]) {
        context.moveTo(x, y);
        context.lineTo(x + a, y + b);
    }
    context.stroke();
    context.lineCap = "butt";
    context.fillStyle = c.ink;
    for (const x of [72, 81, 90]) {
        context.beginPath();
        context.arc(x, 60.5, 1.5, 0, 2 * Math.PI);
        context.fill();
    }
}

/** Close stitches over an edge: side by side, across it. */
function satin(context, c, x1, y1, x2, y2, reach) {
    const along = Math.hypot(x2 - x1, y2 - y1), dx = (x2 - x1) / along, dy = (y2 - y1) / along;
    pen(context, c, 1.5, c.stitched);
    context.beginPath();
    for (let at = 0; at <= along; at += 2.7) {
        context.moveTo(x1 + at * dx - reach * dy, y1 + at * dy + reach * dx);
        context.lineTo(x1 + (at + 1.2) * dx + reach * dy, y1 + (at + 1.2) * dy - reach * dx);
    }
    context.stroke();
}

/** A patch whose stitching has missed one edge: it lies bare and frays. */
function patch(context, c, field) {
    const x = 28, y = 14, w = 84, h = field.foot - y + 4;
    Printing.clothShape(context, c, "patchA", x, y, w + 14, h, 0.6, () => {
        context.moveTo(x, y);
        context.lineTo(x + w + 4, y);
        context.lineTo(x + w + 12, y + h);
        context.lineTo(x, y + h);
        context.closePath();
    });
    pen(context, c, 2);
    context.beginPath();
    context.moveTo(x + w + 4, y);
    context.lineTo(x + w + 12, y + h);
    context.stroke();
    pen(context, c, 1.5, c.patchAMark);
    context.beginPath();
    for (let i = 0, at = y + 3; at < y + h; ++i, at += 4.2) {
        const edge = x + w + 4 + (at - y) / h * 8;
        context.moveTo(edge, at);
        context.quadraticCurveTo(edge + 6, at - 2, edge + 9 + (i % 3) * 3, at + (i % 2 === 0 ? 3 : -3));
    }
    context.stroke();
    satin(context, c, x, field.foot, x, y, 5);
    satin(context, c, x, y, x + w - 16, y, 5);
    satin(context, c, x + w - 16, y, x + w - 16, field.foot, 5);
}

/** The frame's pressed corner in the cloth, and a stain. */
function mark(context, c, field) {
    for (const [off, width, alpha] of [[0, 11, 0.3], [-6.5, 1.8, 1], [6.5, 1.8, 1]]) {
        context.globalAlpha = alpha;
        pen(context, c, width);
        context.beginPath();
        context.moveTo(28 + off, field.foot);
        context.lineTo(28 + off, 44);
        context.quadraticCurveTo(28 + off, 18 + off, 54, 18 + off);
        context.lineTo(field.right, 18 + off);
        context.stroke();
    }
    context.globalAlpha = 1;
    // Creases across what the frame has pressed.
    pen(context, c, 1.5);
    context.beginPath();
    for (let x = 62; x < field.right; x += 13) {
        context.moveTo(x, 13);
        context.lineTo(x + 4, 23);
    }
    for (let y = 52; y < field.foot; y += 13) {
        context.moveTo(23, y);
        context.lineTo(33, y + 4);
    }
    context.stroke();
    const blot = () => {
        context.beginPath();
        context.moveTo(64, 58);
        context.bezierCurveTo(60, 42, 78, 34, 92, 38);
        context.bezierCurveTo(106, 30, 124, 38, 120, 52);
        context.bezierCurveTo(130, 62, 116, 76, 104, 72);
        context.bezierCurveTo(94, 82, 78, 78, 76, 70);
        context.bezierCurveTo(68, 72, 62, 66, 64, 58);
        context.closePath();
    };
    const drop = (x, y, r) => {
        context.beginPath();
        context.arc(x, y, r, 0, 2 * Math.PI);
    };
    for (const trace of [blot, () => drop(132, 72, 5), () => drop(139, 60, 2.6)]) {
        trace();
        context.globalAlpha = 0.5;
        context.fillStyle = c.caution;
        context.fill();
        context.globalAlpha = 1;
        pen(context, c, 2.6, c.caution);
        context.stroke();
    }
}

/** A glass held over the stitched line, which it shows larger. */
function look(context, c, field) {
    stitches(context, c, 3, [[field.left, 62], [104, 62], [104, field.top]]);
    const x = 70, y = 40, r = 33;
    context.lineCap = "round";
    Printing.strokeLine(context, x + 26, y + 26, x + 62, y + 62, c.ink, 13 * c.lineScale);
    Printing.strokeLine(context, x + 30, y + 30, x + 62, y + 62, c.table, 13 * c.lineScale - 5);
    context.lineCap = "butt";
    const glass = () => context.arc(x, y, r, 0, 2 * Math.PI);
    // One clip at a time: two within each other are not cut to both.
    Printing.clothShape(context, c, "front", x - r, y - r, 2 * r, 2 * r, 1.1, glass);
    context.save();
    context.beginPath();
    glass();
    context.clip();
    stitches(context, c, 7, [[x - r, y + 14], [x + 14, y + 14], [x + 14, y - r]]);
    context.restore();
    context.beginPath();
    glass();
    pen(context, c, 8);
    context.stroke();
    pen(context, c, 3, c.raised);
    context.stroke();
    // A gleam on the glass.
    pen(context, c, 3, c.raised);
    context.lineCap = "round";
    context.beginPath();
    context.arc(x, y, r - 9, 1.1 * Math.PI, 1.38 * Math.PI);
    context.stroke();
    context.lineCap = "butt";
}
