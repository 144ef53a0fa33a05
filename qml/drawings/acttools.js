// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "printing.js" as Printing

// What the hands take up in the vignettes: ripper, needle, iron, machine, pins, tape; and the signs beside them.

/** What the back's sashing is printed as. */
function backStrip(c) {
    return c.sashingBack ? "sashingBack" : "back";
}

function turned(context, x, y, angle, draw) {
    context.save();
    context.translate(x, y);
    context.rotate(angle);
    draw();
    context.restore();
}

/** The ripper, the fork at x, y, the handle at so many radians; its little ball lies on the cloth's side. */
function ripper(context, c, x, y, angle) {
    turned(context, x, y, angle, () => {
        Lay.solid(context, c, [[-4, -2], [14, -3], [22, -9], [6, -12], [20, -15], [32, -5], [32, 5], [14, 3]], c.raised, 2.2);
        Lay.disc(context, 5, -12, 3.8, c.stop);
        Lay.solid(context, c, [[32, -8], [74, -9], [79, 0], [74, 9], [32, 8]], c.accent, 2.2);
    });
}

/** Scissors, the pivot at x, y, their points at so many radians, opened so far. */
function scissors(context, c, x, y, angle, open) {
    for (const side of [-1, 1])
        turned(context, x, y, angle + side * open, () => {
            Lay.solid(context, c, [[-6, -3], [30, -4.4 * side - 1], [44, -side], [30, side], [-6, 3]], c.batting, 2.2);
            Lay.line(context, c, [[0, 0], [-20, -side * 2]], 5);
            context.beginPath();
            context.ellipse(-44, -side * 8 - 7, 26, 14);
            Lay.pen(context, c, 5);
            context.stroke();
        });
    Lay.disc(context, x, y, 3.6, c.raised);
    Lay.circle(context, c, x, y, 3.6, 1.8);
}

/** A hand needle, the point at x, y; its thread runs from the eye through `thread`, [x, y] each. */
function needle(context, c, x, y, angle, thread) {
    turned(context, x, y, angle, () => {
        Lay.solid(context, c, [[0, 0], [44, -3.4], [56, -2.6], [56, 2.6], [44, 3.4]], c.raised, 2.2);
        Lay.line(context, c, [[45, 0], [53, 0]], 1.6);
    });
    if (!thread)
        return;
    Lay.pen(context, c, 2.6, c.seam);
    context.beginPath();
    context.moveTo(x + 49 * Math.cos(angle), y + 49 * Math.sin(angle));
    context.quadraticCurveTo(...thread[0], ...thread[1]);
    context.stroke();
}

/** The machine's foot on the cloth with its needle at x, y, seen from above and before. */
function foot(context, c, x, y) {
    for (const side of [-1, 1])
        Lay.solid(context, c, [[x + side * 4, y + 6], [x + side * 12, y + 6], [x + side * 12, y - 20], [x + side * 4, y - 20]], c.raised, 2);
    Lay.solid(context, c, Lay.box(x - 12, y - 25, 24, 7), c.raised, 2);
    Lay.solid(context, c, Lay.box(x - 4.6, y - 56, 9.2, 20), c.ink, 0);
    Lay.line(context, c, [[x, y - 37], [x, y]], 3, c.ink);
}

/** The iron from the side, its sole from x to x + 92 on y. */
function iron(context, c, x, y) {
    context.beginPath();
    context.moveTo(x, y - 9);
    context.bezierCurveTo(x + 24, y - 36, x + 50, y - 42, x + 92, y - 42);
    context.lineTo(x + 92, y - 9);
    context.closePath();
    context.fillStyle = c.accent;
    context.fill();
    Lay.pen(context, c, 2.6);
    context.stroke();
    Lay.solid(context, c, [[x - 4, y], [x, y - 9], [x + 92, y - 9], [x + 92, y]], c.raised, 2.6);
    context.beginPath();
    context.moveTo(x + 34, y - 36);
    context.bezierCurveTo(x + 34, y - 66, x + 60, y - 62, x + 88, y - 62);
    context.lineTo(x + 88, y - 42);
    Lay.pen(context, c, 8, c.ink);
    context.stroke();
}

function steam(context, c, x, y) {
    Lay.pen(context, c, 2.4, c.inkSoft);
    for (const at of [0, 12, 24]) {
        context.beginPath();
        context.moveTo(x + at, y);
        context.bezierCurveTo(x + at - 8, y - 8, x + at + 8, y - 14, x + at, y - 22);
        context.stroke();
    }
}

function pin(context, c, x1, y1, x2, y2) {
    Lay.line(context, c, [[x1, y1], [x2, y2]], 4.6, c.raised);
    Lay.line(context, c, [[x1, y1], [x2, y2]], 2, c.ink);
    Lay.disc(context, x1, y1, 5.4, c.ink);
    Lay.disc(context, x1, y1, 3.8, c.blade);
}

/** A measure between two places on a level, its ends marked. */
function across(context, c, x1, x2, y, colour) {
    for (const x of [x1, x2])
        Lay.line(context, c, [[x, y - 7], [x, y + 7]], 2.6, colour);
    Lay.line(context, c, [[x1, y], [x2, y]], 2.2, colour);
}

function upright(context, c, x, y1, y2, colour) {
    for (const y of [y1, y2])
        Lay.line(context, c, [[x - 7, y], [x + 7, y]], 2.6, colour);
    Lay.line(context, c, [[x, y1], [x, y2]], 2.2, colour);
}

function tick(context, c, x, y, k) {
    const way = [[x - 15 * k, y], [x - 4 * k, y + 12 * k], [x + 17 * k, y - 15 * k]];
    Lay.line(context, c, way, 12 * k, c.raised);
    Lay.line(context, c, way, 7 * k, c.accent);
}

function cross(context, c, x, y, k) {
    for (const [width, colour] of [[12, c.raised], [6.4, c.stop]])
        for (const side of [-1, 1])
            Lay.line(context, c, [[x - side * 14 * k, y - 14 * k], [x + side * 14 * k, y + 14 * k]], width * k, colour);
}

/** Bowed from one place to another, over (bow) so much; a head at its end. */
function bowed(context, c, x1, y1, x2, y2, bow, colour) {
    const mx = (x1 + x2) / 2, my = (y1 + y2) / 2 - bow, a = Math.atan2(y2 - my, x2 - mx);
    for (const [width, own] of [[8, c.raised], [4, colour ?? c.accent]]) {
        Lay.pen(context, c, width, own);
        context.lineCap = "round";
        context.beginPath();
        context.moveTo(x1, y1);
        context.quadraticCurveTo(mx, my, x2, y2);
        context.moveTo(x2 - 11 * Math.cos(a - 0.6), y2 - 11 * Math.sin(a - 0.6));
        context.lineTo(x2, y2);
        context.lineTo(x2 - 11 * Math.cos(a + 0.6), y2 - 11 * Math.sin(a + 0.6));
        context.stroke();
        context.lineCap = "butt";
    }
}

function arrow(context, c, x1, y1, x2, y2, colour) {
    bowed(context, c, x1, y1, x2, y2, 0, colour);
}

/** A seam seen from above, each stitch long enough to be told apart; those in `gone` are cut. */
function stitchesOneByOne(context, c, x1, x2, y, pitch, gone) {
    let i = 0;
    for (let x = x1; x + pitch * 0.7 <= x2; x += pitch, ++i)
        if (!gone || !gone(i))
            Lay.line(context, c, [[x, y], [x + pitch * 0.7, y]], 4, c.stitched);
    return i;
}

/** A glass ruler over what lies there. */
function ruler(context, c, x, y, w, h) {
    context.globalAlpha = Math.min(1, 2.4 * c.rulerAlpha);
    Lay.solid(context, c, Lay.box(x, y, w, h), c.rulerBody, 0);
    context.globalAlpha = 1;
    Lay.measure(context, c, x, y, w, h, "transparent");
}

/** Layers in section from x1 to x2: [role, height] from above; gives where the last one ends. */
function layers(context, c, x1, x2, y, list) {
    for (const [role, h] of list) {
        Lay.cloth(context, c, role, Lay.box(x1, y, x2 - x1, h), 1.8);
        y += h;
    }
    return y;
}


/** The seam in section, laddered, from y1 down to y2. */
function seam(context, c, x, y1, y2) {
    Lay.line(context, c, [[x, y1], [x, y2]], 3.6, c.seam);
    for (let y = y1 + 5; y < y2 - 2; y += 8)
        Lay.line(context, c, [[x - 5, y], [x + 5, y]], 2.2, c.seam);
}

/** Stippling: one line that wanders over the place and never crosses itself. */
function stippling(context, c, x, y, w, h, rows) {
    Lay.pen(context, c, 2, c.stitched);
    const step = h / rows;
    context.beginPath();
    context.moveTo(x, y + step / 2);
    for (let row = 0; row < rows; ++row) {
        const to = row % 2 === 0, from = y + (row + 0.5) * step, count = 4, run = w / count;
        for (let i = 0; i < count; ++i) {
            const a = to ? x + i * run : x + w - i * run, b = to ? a + run : a - run;
            context.bezierCurveTo(a + (b - a) * 0.3, from - step * 0.42, a + (b - a) * 0.7, from + step * 0.42, b, from);
        }
        if (row + 1 < rows)
            context.bezierCurveTo(to ? x + w + 7 : x - 7, from, to ? x + w + 7 : x - 7, from + step, to ? x + w : x, from + step);
    }
    context.stroke();
}
