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

/** The middle of a side's plate: above and below `lift` px off the stitches, beside them `reach` px, and so far that it stands no more than that in the block. */
function sidePlate(index, corners, reach, lift, wide) {
    const [p, q] = ends(corners)[index], x = (p.x + q.x) / 2, y = (p.y + q.y) / 2, out = Math.max(reach, wide / 2 - reach / 2);
    return [[x, y - lift], [x + out, y], [x, y + lift], [x - out, y]][index];
}

/** A place on each diagonal, by the share of its length: beside each other, then below each other; a single one in the middle first. */
function places(count) {
    const shares = [0.29, 0.25, 0.33, 0.21, 0.17, 0.38];
    if (count === 1)
        return [[0.5, 0.5], ...shares.map(t => [t, t])];
    return [...shares.map(t => [t, 1 - t]), ...shares.map(t => [t, t])];
}

/**
 * Where the six plates stand, by their middles: the sides' at their sides, each diagonal's on its own diagonal, none over another. `view`
 * {wides, high, reach, lift, out, needed}: without room for both diagonals' the one that is not `needed` is null; where both are, they
 * stand beside the block at the corners their diagonals begin at, `out` px off, with the sides' farther down.
 */
function plates(corners, view) {
    if (corners.length !== 4)
        return [null, null, null, null, null, null];
    const sides = [0, 1, 2, 3].map(i => sidePlate(i, corners, view.reach, view.lift, view.wides[i]));
    const clear = (a, i, b, j) => Math.abs(a[0] - b[0]) >= (view.wides[i] + view.wides[j]) / 2 || Math.abs(a[1] - b[1]) >= view.high;
    const share = (i, t) => {
        const [p, q] = ends(corners)[i];
        return [p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t];
    };
    const wanted = [4, 5].filter(i => view.needed[i]);
    for (const shown of [[4, 5], wanted]) {
        for (const [t4, t5] of places(shown.length)) {
            const at = [...sides, shown.includes(4) ? share(4, t4) : null, shown.includes(5) ? share(5, t5) : null];
            if (shown.every(i => at.every((b, j) => j === i || b === null || clear(at[i], i, b, j))))
                return at;
        }
    }
    return [sides[0], beside(1, corners, view), sides[2], beside(3, corners, view), ...[4, 5].map(i => view.needed[i] ? beside(i, corners, view) : null)];
}

function beside(index, corners, view) {
    const right = index === 1 || index === 5, [from, to] = right ? [corners[1], corners[2]] : [corners[0], corners[3]];
    const off = view.out + view.wides[index] / 2, x = right ? Math.max(from.x, to.x) + off : Math.min(from.x, to.x) - off;
    return index > 3 ? [x, from.y] : [x, from.y + Math.max(view.high + view.reach / 4, (to.y - from.y) * 0.6)];
}

/**
 * A block, or what `ground` draws, with the tapes on it: `view` {ground, corners, planned, shaped, readings, held, high, air, markMm, group, plates}. A tape
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
    // A diagonal's plate that stands beside the block is tied to its tape.
    for (const i of [4, 5]) {
        const plate = view.plates[i], [p, q] = i === 4 ? [view.corners[0], view.corners[2]] : [view.corners[1], view.corners[3]];
        if (plate && off({ x: plate[0], y: plate[1] }, p, q) > 4 * u)
            Printing.strokeLine(context, plate[0], plate[1], p.x + (q.x - p.x) * 0.14, p.y + (q.y - p.y) * 0.14, c.ink, 3 * u * c.lineScale);
    }
    plan(context, c, view.shaped ? view.corners : [], view.planned, u);
}
