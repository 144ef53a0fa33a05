// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// The whole piece seen from the front. `g` is where the raw edge lies in px: {x, y, w, h, s}, s px to a
// millimetre. Sides are counted clockwise from the top.

/** The raw edge as a path: its corners rounded by r, or scalloped where `cut` says how. */
function outline(context, x, y, w, h, r, cut) {
    if (cut) {
        scallops(context, x, y, w, h, cut);
        return;
    }
    context.moveTo(x + r, y);
    context.lineTo(x + w - r, y);
    if (r > 0)
        context.arc(x + w - r, y + r, r, -Math.PI / 2, 0, false);
    context.lineTo(x + w, y + h - r);
    if (r > 0)
        context.arc(x + w - r, y + h - r, r, 0, Math.PI / 2, false);
    context.lineTo(x + r, y + h);
    if (r > 0)
        context.arc(x + r, y + h - r, r, Math.PI / 2, Math.PI, false);
    context.lineTo(x, y + r);
    if (r > 0)
        context.arc(x + r, y + r, r, Math.PI, Math.PI * 1.5, false);
    context.closePath();
}

/** How the piece is scalloped, in px: depth, and for each way the chord, the radius and half the angle of an arc. */
function scalloping(view, g) {
    if (!(view.depthMm > 0) || view.scallopsAlong < 1 || view.scallopsAcross < 1)
        return null;
    const d = view.depthMm * g.s;
    const way = (side, count) => {
        const q = (side - 2 * d) / count, r = (q * q / 4 + d * d) / (2 * d);
        return { q: q, r: r, half: Math.asin(Math.min(1, q / (2 * r))), count: count };
    };
    return { d: d, along: way(g.w, view.scallopsAlong), across: way(g.h, view.scallopsAcross) };
}

/** Arcs from inside point to inside point, clockwise from the top left; crowns touch the raw edge. */
function scallops(context, x, y, w, h, cut) {
    const a = cut.along, b = cut.across, d = cut.d;
    context.moveTo(x + d, y + d);
    for (let i = 0; i < a.count; ++i)
        context.arc(x + d + (i + 0.5) * a.q, y + a.r, a.r, -Math.PI / 2 - a.half, -Math.PI / 2 + a.half, false);
    for (let i = 0; i < b.count; ++i)
        context.arc(x + w - b.r, y + d + (i + 0.5) * b.q, b.r, -b.half, b.half, false);
    for (let i = 0; i < a.count; ++i)
        context.arc(x + w - d - (i + 0.5) * a.q, y + h - a.r, a.r, Math.PI / 2 - a.half, Math.PI / 2 + a.half, false);
    for (let i = 0; i < b.count; ++i)
        context.arc(x + b.r, y + h - d - (i + 0.5) * b.q, b.r, Math.PI - b.half, Math.PI + b.half, false);
    context.closePath();
}

/** The edge in the blade's colour where it cuts inside the stitched outline. */
function scallopBites(context, c, view, g, cut, u) {
    const a = view.outsideMm * g.s;
    context.save();
    context.beginPath();
    context.rect(g.x + a, g.y + a, g.w - 2 * a, g.h - 2 * a);
    context.clip();
    context.beginPath();
    scallops(context, g.x, g.y, g.w, g.h, cut);
    context.strokeStyle = c.blade;
    context.lineWidth = 4 * u * c.lineScale;
    context.lineJoin = "round";
    context.stroke();
    context.restore();
}

/** What the four arcs cut off the blocks: inside the stitched outline, outside the arc. */
function bites(context, c, view, g, u) {
    const r = view.radiusMm * g.s, a = view.outsideMm * g.s;
    for (const [cx, cy, sx, sy] of [[g.x, g.y, 1, 1], [g.x + g.w, g.y, -1, 1], [g.x + g.w, g.y + g.h, -1, -1], [g.x, g.y + g.h, 1, -1]]) {
        const mx = cx + sx * r, my = cy + sy * r;
        const off = Math.sqrt(Math.max(0, r * r - (r - a) * (r - a)));
        const trace = () => {
            // From where the arc crosses the outline on one side, round to the other, and back by its corner.
            context.moveTo(cx + sx * a, cy + sy * a);
            context.lineTo(mx - sx * off, cy + sy * a);
            const from = Math.atan2(sy * (a - r), -sx * off), to = Math.atan2(-sy * off, sx * (a - r));
            context.arc(mx, my, r, from, to, sx * sy > 0);
            context.closePath();
        };
        Printing.clothShape(context, c, "waste", cx + (sx > 0 ? 0 : -r), cy + (sy > 0 ? 0 : -r), r, r, u, trace);
        context.beginPath();
        trace();
        context.strokeStyle = c.blade;
        context.lineWidth = 3.2 * u * c.lineScale;
        context.stroke();
    }
}

/** Left and right are sewn first, top and bottom across their ends. */
function frameSeams(context, c, g, a, u) {
    for (const y of [g.y + a, g.y + g.h - a])
        Printing.strokeLine(context, g.x, y, g.x + g.w, y, c.seam, 1.6 * u * c.lineScale);
    for (const x of [g.x + a, g.x + g.w - a])
        Printing.strokeLine(context, x, g.y + a, x, g.y + g.h - a, c.seam, 1.6 * u * c.lineScale);
}

/** The piece: ground, blocks with their stitched outlines, sashings between, and its edge. */
function piece(context, c, view, g, closed, u) {
    const r = closed ? Math.min(view.radiusMm * g.s, g.w / 2, g.h / 2) : 0;
    const cut = closed ? scalloping(view, g) : null;
    const a = view.outsideMm * g.s, f = view.sashingMm * g.s;
    const bw = view.blockAlongMm * g.s, bh = view.blockAcrossMm * g.s;
    const clip = () => outline(context, g.x, g.y, g.w, g.h, r, cut);
    Printing.clothShape(context, c, "sashing", g.x, g.y, g.w, g.h, u, clip);
    context.save();
    context.beginPath();
    clip();
    context.clip();
    const lined = view.columns * view.rows <= 400;
    for (let row = 0; row < view.rows; ++row)
        for (let column = 0; column < view.columns; ++column) {
            const x = g.x + a + column * (bw + f), y = g.y + a + row * (bh + f);
            // The outer allowance is the block's own cloth; of a framed edge it lies under the frame.
            const o = view.framed ? 0 : a;
            const left = column === 0 ? o : 0, top = row === 0 ? o : 0;
            const right = column === view.columns - 1 ? o : 0, foot = row === view.rows - 1 ? o : 0;
            if (lined)
                Printing.clothRect(context, c, "front", x - left, y - top, bw + left + right, bh + top + foot, u);
            else {
                context.fillStyle = c.front;
                context.fillRect(x - left, y - top, bw + left + right, bh + top + foot);
            }
        }
    if (lined)
        for (let row = 0; row < view.rows; ++row)
            for (let column = 0; column < view.columns; ++column)
                Printing.roleRect(context, "stitched", g.x + a + column * (bw + f), g.y + a + row * (bh + f), bw, bh, c.stitched, 2.4 * u * c.lineScale);
    if (view.framed)
        frameSeams(context, c, g, a, u);
    if (cut && view.seamMm > 0) {
        // Half of the line lies outside the clip.
        context.beginPath();
        clip();
        context.strokeStyle = c.binding;
        context.lineWidth = 2 * view.seamMm * g.s;
        context.lineJoin = "round"; // an inside point would grow a spike
        context.stroke();
    } else if (closed && view.seamMm > 0) {
        // The binding covers its seam's width all round.
        const b = view.seamMm * g.s;
        context.beginPath();
        context.fillStyle = c.binding;
        outline(context, g.x, g.y, g.w, g.h, r, null);
        const inner = Math.max(0, r - b);
        context.moveTo(g.x + b + inner, g.y + b);
        if (inner > 0)
            context.arc(g.x + b + inner, g.y + b + inner, inner, Math.PI * 1.5, Math.PI, true);
        context.lineTo(g.x + b, g.y + g.h - b - inner);
        if (inner > 0)
            context.arc(g.x + b + inner, g.y + g.h - b - inner, inner, Math.PI, Math.PI / 2, true);
        context.lineTo(g.x + g.w - b - inner, g.y + g.h - b);
        if (inner > 0)
            context.arc(g.x + g.w - b - inner, g.y + g.h - b - inner, inner, Math.PI / 2, 0, true);
        context.lineTo(g.x + g.w - b, g.y + b + inner);
        if (inner > 0)
            context.arc(g.x + g.w - b - inner, g.y + b + inner, inner, 0, -Math.PI / 2, true);
        context.closePath();
        context.fill();
        if (r === 0)
            for (const [x, y, sx, sy] of [[g.x, g.y, 1, 1], [g.x + g.w, g.y, -1, 1], [g.x + g.w, g.y + g.h, -1, -1], [g.x, g.y + g.h, 1, -1]])
                Printing.strokeLine(context, x, y, x + sx * b, y + sy * b, c.raised, 2.4 * u * c.lineScale);
    }
    context.restore();
    if (closed && r > 0 && view.bitesMm > 0)
        bites(context, c, view, g, u);
    context.beginPath();
    clip();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.lineJoin = cut ? "round" : "miter";
    context.stroke();
    if (cut && view.bitesMm > 0)
        scallopBites(context, c, view, g, cut, u);
}

/** The piece as its four raw corners lie, px, clockwise from the top left: its sashings and blocks as far askew. */
function crooked(context, c, view, corners, u) {
    const [a, b, d, e] = corners;
    const at = (s, t) => ({ x: (a.x * (1 - s) + b.x * s) * (1 - t) + (e.x * (1 - s) + d.x * s) * t, y: (a.y * (1 - s) + b.y * s) * (1 - t) + (e.y * (1 - s) + d.y * s) * t });
    const across = mm => mm / view.alongMm, down = mm => mm / view.acrossMm;
    const shape = (left, top, right, foot) => [at(left, top), at(right, top), at(right, foot), at(left, foot)];
    const trace = points => {
        points.forEach((p, i) => i === 0 ? context.moveTo(p.x, p.y) : context.lineTo(p.x, p.y));
        context.closePath();
    };
    const cloth = (role, points) => {
        const xs = points.map(p => p.x), ys = points.map(p => p.y), x = Math.min(...xs), y = Math.min(...ys);
        Printing.clothShape(context, c, role, x, y, Math.max(...xs) - x, Math.max(...ys) - y, u, () => trace(points));
    };
    cloth("sashing", corners);
    const o = view.outsideMm, edge = view.framed ? 0 : o;
    for (let row = 0; view.columns * view.rows <= 400 && row < view.rows; ++row)
        for (let column = 0; column < view.columns; ++column) {
            const x = o + column * (view.blockAlongMm + view.sashingMm), y = o + row * (view.blockAcrossMm + view.sashingMm);
            const right = x + view.blockAlongMm, foot = y + view.blockAcrossMm;
            cloth("front", shape(across(x - (column === 0 ? edge : 0)), down(y - (row === 0 ? edge : 0)),
                                 across(right + (column === view.columns - 1 ? edge : 0)), down(foot + (row === view.rows - 1 ? edge : 0))));
            const own = shape(across(x), down(y), across(right), down(foot));
            own.forEach((p, i) => Printing.roleLine(context, "stitched", p.x, p.y, own[(i + 1) % 4].x, own[(i + 1) % 4].y, c.stitched, 2.4 * u * c.lineScale));
        }
    context.beginPath();
    trace(corners);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.stroke();
}

/** A curve's measure: from the centre of the first arc out to it, or down from a crown to the inside point beside it. */
function bow(view, x, y, s, w, h) {
    const cut = scalloping(view, { x: x, y: y, w: w, h: h, s: s });
    if (cut) {
        // The inside point nearest the middle of the top.
        const at = x + cut.d + cut.along.q * Math.max(1, Math.floor(cut.along.count / 2));
        return { deep: true, x: at, y: y + cut.d, x1: at, y1: y, reach: cut.along.q / 2 };
    }
    const r = Math.min(view.radiusMm * s, w / 2, h / 2);
    if (!(r > 0))
        return null;
    const out = r * (1 - Math.SQRT1_2);
    return { deep: false, cx: x + r, cy: y + r, x1: x + out, y1: y + out, x: x + r - (r - out) / 2, y: y + r - (r - out) / 2 };
}

/** The same drawn: a radius with its centre and an arrow at the arc; a depth between two levels, its arrows outside. */
function bowed(context, c, b, mm, u) {
    const line = (x1, y1, x2, y2) => Printing.strokeLine(context, x1, y1, x2, y2, c.accent, 3 * u * c.lineScale);
    const wing = 1.6 * mm;
    if (!b.deep) {
        line(b.cx, b.cy, b.x1, b.y1);
        line(b.x1, b.y1, b.x1 + 1.4 * wing, b.y1 + 0.3 * wing);
        line(b.x1, b.y1, b.x1 + 0.3 * wing, b.y1 + 1.4 * wing);
        line(b.cx - wing, b.cy, b.cx + wing, b.cy);
        line(b.cx, b.cy - wing, b.cx, b.cy + wing);
        return;
    }
    for (const [level, out] of [[b.y1, -1], [b.y, 1]]) {
        line(b.x - Math.min(b.reach, 4 * mm), level, b.x + Math.min(b.reach, 4 * mm), level);
        line(b.x, level, b.x, level + out * 4.5 * mm);
        line(b.x, level, b.x - wing, level + out * wing);
        line(b.x, level, b.x + wing, level + out * wing);
    }
}

function diagonals(context, c, g, u) {
    for (const [x1, y1, x2, y2] of [[g.x, g.y, g.x + g.w, g.y + g.h], [g.x + g.w, g.y, g.x, g.y + g.h]])
        Printing.roleLine(context, "planned", x1, y1, x2, y2, c.accent, 3 * u * c.lineScale);
}

/** The corner of a reading's plate: each lies on the line it was read on; side by side the diagonals' have no room on a narrow piece. */
function readingAt(index, x, y, w, h, pw, ph) {
    const beside = w * 0.4 > pw;
    const [dx, dy] = [[0.5, 0], [1, 0.5], [0.5, 1], [0, 0.5], [0.3, 0.3], beside ? [0.7, 0.3] : [0.3, 0.7]][index];
    return [x + w * dx - pw / 2, y + h * dy - ph / 2];
}

function placeOf(join, x, y, s, w, h) {
    const d = join.fromMm * s;
    return join.side === 0 ? [x + d, y, 0, -1] : join.side === 1 ? [x + w, y + d, 1, 0] : join.side === 2 ? [x + d, y + h, 0, 1] : [x, y + d, -1, 0];
}

/** Where a join's tag stands: outside the edge, over its place; beside `other`, {x, y, width, height}, where it would lie on that, or else inside the edge. */
function tagAt(join, x, y, s, w, h, tw, th, air, other) {
    if (!join)
        return [0, 0];
    let [px, py, ox, oy] = placeOf(join, x, y, s, w, h);
    const outside = [px - tw / 2 + ox * (tw / 2 + air), py - th / 2 + oy * (th / 2 + air)];
    const crowded = other && outside[0] < other.x + other.width && other.x < outside[0] + tw
        && outside[1] < other.y + other.height && other.y < outside[1] + th;
    if (!crowded)
        return outside;
    // Along the edge it may stand aside by less than its own half: it still touches its place.
    const after = px > other.x + other.width / 2, aside = after ? other.x + other.width + air : other.x - air - tw;
    if (oy !== 0 && Math.abs(aside - outside[0]) < tw / 2)
        return [aside, outside[1]];
    air *= 2.5;
    [ox, oy] = [-ox, -oy];
    return [px - tw / 2 + ox * (tw / 2 + air), py - th / 2 + oy * (th / 2 + air)];
}

/** From the corner its joins are measured from, along each side to every one of them: the left one, at the sides the upper. */
function reaches(context, c, g, list, mm, u) {
    for (const side of [0, 1, 2, 3]) {
        const on = list.filter(join => join.side === side).map(join => placeOf(join, g.x, g.y, g.s, g.w, g.h));
        if (on.length === 0)
            continue;
        const [zx, zy, ox, oy] = placeOf({ side: side, fromMm: 0 }, g.x, g.y, g.s, g.w, g.h), out = 2 * mm, end = 1.4 * mm;
        const line = (x1, y1, x2, y2) => Printing.strokeLine(context, x1, y1, x2, y2, c.accent, 2.4 * u * c.lineScale);
        for (const [px, py] of [[zx, zy], ...on]) {
            line(zx + ox * out, zy + oy * out, px + ox * out, py + oy * out);
            line(px + ox * (out - end), py + oy * (out - end), px + ox * (out + end), py + oy * (out + end));
        }
    }
}

/** Each join's seam at 45° over the binding; the closing one ringed. */
function joins(context, c, view, g, list, mm, u) {
    const b = Math.max(view.seamMm * g.s, 2.4 * mm);
    list.forEach((join, i) => {
        const [px, py, ox, oy] = placeOf(join, g.x, g.y, g.s, g.w, g.h);
        const mx = px - ox * b / 2, my = py - oy * b / 2;
        const slant = b / 2 + 0.6 * mm;
        // A halo of raised parts the line from the dark binding.
        for (const [colour, width] of [[c.raised, 6.5], [c.seam, 3]])
            Printing.strokeLine(context, mx - slant, my + slant, mx + slant, my - slant, colour, width * u * c.lineScale);
        if (i === 0)
            Printing.ring(context, c, mx, my, u);
    });
}
