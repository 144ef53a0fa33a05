// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// What lies on the table, in small: cloth with its edges, stitches, tapes, the cutter. `c` is a colour set.

/** Size of one unit of the prints on such a sketch. */
const grain = 0.8;

function pen(context, c, width, colour) {
    context.strokeStyle = colour ?? c.ink;
    context.lineWidth = width * c.lineScale;
}

/** A path through [x, y], closed or open. */
function trace(context, points, closed) {
    points.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
    if (closed)
        context.closePath();
}

function line(context, c, points, width, colour) {
    pen(context, c, width, colour);
    context.beginPath();
    trace(context, points, false);
    context.stroke();
}

/** A piece of cloth with its edge. */
function cloth(context, c, role, points, edge) {
    const xs = points.map(p => p[0]), ys = points.map(p => p[1]);
    const x = Math.min(...xs), y = Math.min(...ys);
    Printing.clothShape(context, c, role, x, y, Math.max(...xs) - x, Math.max(...ys) - y, c.grain ?? grain, () => trace(context, points, true));
    pen(context, c, edge ?? 2.4);
    context.beginPath();
    trace(context, points, true);
    context.stroke();
}

function box(x, y, w, h) {
    return [[x, y], [x + w, y], [x + w, y + h], [x, y + h]];
}

function solid(context, c, points, fill, edge) {
    context.beginPath();
    trace(context, points, true);
    context.fillStyle = fill;
    context.fill();
    if (edge > 0) {
        pen(context, c, edge);
        context.stroke();
    }
}

/** Raw edge: points from one end to the other, swinging to both sides of the line. */
function ragged(x1, y1, x2, y2, teeth, swing) {
    const points = [], span = Math.hypot(x2 - x1, y2 - y1), nx = -(y2 - y1) / span, ny = (x2 - x1) / span;
    for (let i = 0; i <= teeth; ++i) {
        const t = i / teeth, away = i % 2 === 0 ? 0 : swing * (1 + (i * 7) % 3) / 3 * (i % 4 === 1 ? 1 : -1);
        points.push([x1 + (x2 - x1) * t + nx * away, y1 + (y2 - y1) * t + ny * away]);
    }
    return points;
}

function stitches(context, c, points, colour) {
    context.setLineDash([2.6, 1.5]);
    line(context, c, points, 2.6, colour ?? c.stitched);
    Printing.solid(context);
}

function planned(context, c, points) {
    context.setLineDash([1.4, 2]);
    line(context, c, points, 2.2, c.inkSoft);
    Printing.solid(context);
}

/** A block stitched on its cloth. */
function block(context, c, x, y, side) {
    cloth(context, c, "front", box(x, y, side, side));
    const a = side * 0.16;
    stitches(context, c, [...box(x + a, y + a, side - 2 * a, side - 2 * a), [x + a, y + a]]);
}

function disc(context, x, y, r, fill) {
    context.beginPath();
    context.arc(x, y, r, 0, 2 * Math.PI);
    context.fillStyle = fill;
    context.fill();
}

function circle(context, c, x, y, r, width, colour) {
    context.beginPath();
    context.arc(x, y, r, 0, 2 * Math.PI);
    pen(context, c, width, colour);
    context.stroke();
}

/** Look here. */
function ring(context, c, x, y, r) {
    circle(context, c, x, y, r, 4, c.stop);
}

/** A measure with its marks on its upper edge: a ruler, or a tape. */
function measure(context, c, x, y, w, h, body) {
    solid(context, c, box(x, y, w, h), body, 2.2);
    context.beginPath();
    for (let i = 1, at = x + 8; at < x + w - 2; ++i, at += 8) {
        context.moveTo(at, y);
        context.lineTo(at, y + h * (i % 4 === 0 ? 0.62 : 0.34));
    }
    pen(context, c, 1.8);
    context.stroke();
}

/** An arrow from one place to the other. */
function arrow(context, c, x1, y1, x2, y2, colour) {
    const a = Math.atan2(y2 - y1, x2 - x1), head = 10;
    const wing = by => [x2 - head * Math.cos(a + by), y2 - head * Math.sin(a + by)];
    line(context, c, [[x1, y1], [x2, y2]], 3.4, colour);
    line(context, c, [wing(0.6), [x2, y2], wing(-0.6)], 3.4, colour);
}

/** The round cutter lying on the cloth, its wheel at x, y, the handle at so many radians. */
function cutter(context, c, x, y, angle) {
    context.save();
    context.translate(x, y);
    context.rotate(angle);
    solid(context, c, [[4, -5], [18, -9], [62, -8], [66, 0], [62, 8], [18, 9], [4, 5]], c.ink, 0);
    disc(context, 0, 0, 13, c.blade);
    disc(context, 0, 0, 3.4, c.raised);
    context.restore();
}
