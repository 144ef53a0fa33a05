// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "tapes.js" as Tapes

// A block by the four corners of its outer stitches, px on the sheet, top left first, clockwise.

/** The corners, in widths from the middle, laid round a middle at so many px to the width. */
function placed(corners, x, y, k) {
    return corners.map(p => ({ x: x + p.x * k, y: y + p.y * k }));
}

/** How many px a width may have, that none of the corners lies further off the middle than so many px. */
function fit(corners, halfWidth, halfHeight) {
    const far = key => Math.max(0.01, ...corners.map(p => Math.abs(p[key])));
    return Math.max(0, Math.min(halfWidth / far("x"), halfHeight / far("y")));
}

/** One outline lies on the other: then there is nothing to tell of the planned one. */
function same(corners, planned) {
    return corners.length !== 4 || corners.every((p, i) => Math.abs(p.x - planned[i].x) + Math.abs(p.y - planned[i].y) < 0.004);
}

function cloth(context, c, corners, u) {
    const xs = corners.map(p => p.x), ys = corners.map(p => p.y), x = Math.min(...xs), y = Math.min(...ys);
    Printing.clothShape(context, c, "front", x, y, Math.max(...xs) - x, Math.max(...ys) - y, u, () => {
        corners.forEach((p, i) => i === 0 ? context.moveTo(p.x, p.y) : context.lineTo(p.x, p.y));
        context.closePath();
    });
}

function stitches(context, c, corners, u) {
    corners.forEach((p, i) => {
        const q = corners[(i + 1) % 4];
        Printing.roleLine(context, "stitched", p.x, p.y, q.x, q.y, c.stitched, 4 * u * c.lineScale);
    });
}

/** A row of beads, each on a ground of paper: seen on cloth, on a tape and by lamp. */
function beads(context, c, p, q, u) {
    const length = Math.hypot(q.x - p.x, q.y - p.y), r = 2.5 * u * Math.sqrt(c.lineScale), count = Math.max(1, Math.round(length / (4.2 * r)));
    for (const [radius, colour] of [[r * 1.6, c.paper], [r, c.blade]]) {
        context.fillStyle = colour;
        for (let i = 0; i <= count; ++i) {
            const x = p.x + (q.x - p.x) * i / count, y = p.y + (q.y - p.y) * i / count;
            context.beginPath();
            context.ellipse(x - radius, y - radius, 2 * radius, 2 * radius);
            context.fill();
        }
    }
}

/** How far a point lies off the line through two others. */
function off(p, a, b) {
    return Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.max(1, Math.hypot(b.x - a.x, b.y - a.y));
}

/** The outline as planned, where it does not lie along the block's own. */
function plan(context, c, corners, planned, u) {
    planned.forEach((p, i) => {
        const j = (i + 1) % 4, q = planned[j], a = corners[i], b = corners[j];
        if (!a || !b || off(p, a, b) + off(q, a, b) > 4 * u)
            beads(context, c, p, q, u);
    });
}

/** From where to where each of the six is read: the sides clockwise from the top, the cloth at the tape's marks; then both diagonals. */
function ends(corners) {
    return [[1, 0], [2, 1], [3, 2], [0, 3], [0, 2], [3, 1]].map(([from, to]) => [corners[from], corners[to]]);
}

/** The six tapes as tapes.js lays them, `high` px wide, those of the sides `air` px off the stitches. */
function tapes(corners, high, air) {
    return ends(corners).map(([p, q], i) => {
        const angle = Math.atan2(q.y - p.y, q.x - p.x), off = i < 4 ? air : -high / 2;
        return { x: p.x - off * Math.sin(angle), y: p.y + off * Math.cos(angle), angle: angle, length: Math.hypot(q.x - p.x, q.y - p.y) };
    });
}

/** The middle of the plate with a reading's figure: above and below `lift` px off the stitches, beside them `reach` px. */
function plateAt(index, corners, reach, lift, plate) {
    if (corners.length !== 4)
        return [0, 0];
    const [p, q] = ends(corners)[index], share = t => [p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t];
    const [x, y] = share(0.5);
    if (index < 4)
        return [[x, y - lift], [x + reach, y], [x, y + lift], [x - reach, y]][index];
    // Beside each other where the block is wide enough, else below each other.
    const beside = (corners[1].x - corners[0].x) * 0.42 > plate;
    return index === 4 ? share(0.29) : share(beside ? 0.71 : 0.29);
}

/** The same where the block is low: those of a side and of the diagonal that begins over it stand beside it, so far apart. */
function plateBeside(index, corners, reach, out, apart) {
    if (index === 0 || index === 2 || corners.length !== 4)
        return plateAt(index, corners, reach, reach, 0);
    const right = index === 1 || index === 5, [from, to] = right ? [corners[1], corners[2]] : [corners[0], corners[3]];
    const x = right ? Math.max(from.x, to.x) + out : Math.min(from.x, to.x) - out;
    return index > 3 ? [x, from.y] : [x, from.y + Math.max(apart, (to.y - from.y) * 0.6)];
}

/**
 * A block, or what `ground` draws, with the tapes on it: `view` {ground, corners, planned, shaped, readings, held, high, air, markMm, group}. A tape
 * carries the marks it was read at; one not yet read lies blank.
 */
function taped(context, c, view, u) {
    if (view.ground)
        view.ground(c);
    else
        cloth(context, c, view.corners, u);
    if (view.shaped && !view.ground)
        stitches(context, c, view.corners, u);
    const lie = tapes(view.corners, view.high, view.air), order = [0, 1, 2, 3, 4, 5].filter(i => i !== view.held).concat(view.held);
    for (const i of order) {
        const at = lie[i], reading = view.readings[i];
        const step = reading && reading.taken && reading.mm > 0 ? at.length * view.markMm / reading.mm : 0;
        Tapes.lay(context, c, at.x, at.y, at.angle, at.length, view.high, step, view.group, i === view.held, u);
    }
    plan(context, c, view.shaped ? view.corners : [], view.planned, u);
}
