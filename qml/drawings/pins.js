// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// The pins of a piece: stuck through its edge, and back in the cushion. `c` is a colour set, `mm` one millimetre
// in px, `u` one unit of the prints.

/** So close two pins still stand apart, mm. */
const closest = 3.6;

/** One pin from its head to its point; between `dives` and `rises`, shares of its length, it runs under the cloth. */
function pin(context, c, head, point, mm, colour, dives, rises) {
    const at = t => [head[0] + (point[0] - head[0]) * t, head[1] + (point[1] - head[1]) * t];
    for (const [width, stroke] of [[1.3, c.raised], [0.55, c.ink]])
        for (const [from, to] of [[0, dives], [rises, 1]])
            if (from < to)
                Printing.strokeLine(context, ...at(from), ...at(to), stroke, width * mm * c.lineScale);
    for (const [r, fill] of [[1.55, c.raised], [1.25, colour]]) {
        context.beginPath();
        context.arc(head[0], head[1], r * mm, 0, 2 * Math.PI);
        context.fillStyle = fill;
        context.fill();
    }
    context.beginPath();
    context.arc(head[0], head[1], 1.25 * mm, 0, 2 * Math.PI);
    context.strokeStyle = c.ink;
    context.lineWidth = 0.25 * mm * c.lineScale;
    context.stroke();
}

/** The place of a pin that is not there: a bare round, and where it would go in. */
function gone(context, c, head, point, mm, colour) {
    for (const [dashes, width, stroke] of [[[], 1.3, c.raised], [[1.2, 1.2], 0.5, colour]]) {
        context.setLineDash(dashes);
        Printing.strokeLine(context, ...head, ...point, stroke, width * mm * c.lineScale);
    }
    Printing.solid(context);
    for (const [r, fill] of [[1.9, colour], [1.3, c.raised]]) {
        context.beginPath();
        context.arc(head[0], head[1], r * mm, 0, 2 * Math.PI);
        context.fillStyle = fill;
        context.fill();
    }
}

/** Look here: round a head. */
function ring(context, c, at, mm) {
    for (const [width, colour] of [[1.5, c.raised], [0.8, c.stop]]) {
        context.beginPath();
        context.arc(at[0], at[1], 2.5 * mm, 0, 2 * Math.PI);
        context.strokeStyle = colour;
        context.lineWidth = width * mm * c.lineScale;
        context.stroke();
    }
}

/** A corner of the bound piece: its outline's stitches, its mitre; it runs on to the right and below. */
function corner(context, c, x, y, w, h, mm, u) {
    const band = 3 * mm, line = 0.4 * mm * c.lineScale;
    Printing.clothRect(context, c, "front", x, y, w - x, h - y, u);
    context.fillStyle = c.binding;
    context.fillRect(x, y, w - x, band);
    context.fillRect(x, y, band, h - y);
    Printing.strokeLine(context, x, y, x + band, y + band, c.raised, line);
    for (const [x1, y1, x2, y2] of [[x, y, w, y], [x, y, x, h], [x + band, y + band, w, y + band], [x + band, y + band, x + band, h]])
        Printing.strokeLine(context, x1, y1, x2, y2, c.ink, line);
    const inset = band + 3.4 * mm;
    Printing.roleLine(context, "stitched", x + inset, y + inset, w, y + inset, c.stitched, line);
    Printing.roleLine(context, "stitched", x + inset, y + inset, x + inset, h, c.stitched, line);
}

/** Pins through the edge, one beside the other. Those drawn out again have left their two holes; those still in it are ringed once drawing has begun. */
function inEdge(context, c, count, out, w, h, mm, u) {
    const x = 1.2 * mm, y = Math.max(5.4 * mm, 0.26 * h), first = x + 9 * mm, air = 7 * mm;
    corner(context, c, x, y, w, h, mm, u);
    const most = Math.max(1, Math.floor((w - first - air) / (closest * mm)));
    const shown = Math.min(most, count), still = Math.min(shown, Math.max(0, count - out));
    const pitch = Math.min(9 * mm, (w - first - air) / Math.max(1, shown));
    const rings = [];
    for (let i = 0; i < shown; ++i) {
        const lean = (i % 3 - 1) * 0.7 * mm, at = first + (i + 0.5) * pitch;
        const head = [at + lean, 3.4 * mm], point = [at - lean, Math.min(h - 1.5 * mm, y + 15 * mm)], span = point[1] - head[1];
        const dives = (y + 3.8 * mm - head[1]) / span, rises = dives + (1 - dives) * 0.55;
        // The last ones drawn out stood where the others still do: those lie together, so that they are found.
        if (i >= shown - still) {
            pin(context, c, head, point, mm, c.blade, dives, rises);
            if (out > 0)
                rings.push(head);
            continue;
        }
        context.setLineDash([1, 2]);
        Printing.strokeLine(context, ...head, ...point, c.inkSoft, 0.3 * mm * c.lineScale);
        Printing.solid(context);
        for (const t of [dives, rises]) {
            context.beginPath();
            context.arc(head[0] + (point[0] - head[0]) * t, head[1] + span * t, 0.5 * mm, 0, 2 * Math.PI);
            context.fillStyle = c.ink;
            context.fill();
        }
    }
    for (const at of rings)
        ring(context, c, at, mm);
}

function dome(context, x, y, rx, ry) {
    const k = 0.5523;
    context.moveTo(x - rx, y);
    context.bezierCurveTo(x - rx, y - ry * k, x - rx * k, y - ry, x, y - ry);
    context.bezierCurveTo(x + rx * k, y - ry, x + rx, y - ry * k, x + rx, y);
    context.closePath();
}

/** A stuffed half ball of cloth, sewn of gores, on its turned foot; its middle at x, its foot down to y. */
function cushion(context, c, x, y, rx, ry, mm, u) {
    const line = 0.45 * mm * c.lineScale, foot = Math.max(2.2 * mm, 0.2 * ry), top = y - foot;
    Printing.clothShape(context, c, "patchA", x - rx, top - ry, 2 * rx, ry, u, () => dome(context, x, top, rx, ry));
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.beginPath();
    dome(context, x, top, rx, ry);
    context.stroke();
    // The seams between the gores, up to the tuft in the middle.
    for (const side of [-0.62, -0.22, 0.22, 0.62]) {
        context.beginPath();
        context.moveTo(x, top - ry);
        context.quadraticCurveTo(x + side * rx * 1.15, top - ry * 0.72, x + side * rx, top);
        context.stroke();
    }
    for (const [wide, deep, role] of [[1.05, foot, "table"], [1.12, foot * 0.42, "table"]]) {
        Printing.clothRect(context, c, role, x - rx * wide, top, 2 * rx * wide, deep, u);
        context.strokeRect(x - rx * wide, top, 2 * rx * wide, deep);
    }
    return top;
}

/** Places in the cushion's rows, the hindmost first: {head, point, row}. */
function places(x, top, rx, ry, count, length, mm) {
    const rows = [1, 0.68, 0.36].map(share => ({ share: share, most: Math.max(1, Math.floor((rx + ry) * 1.25 * share / (closest * mm))) }));
    const list = [];
    let left = count;
    for (const row of rows) {
        const here = Math.min(left, row.most);
        left -= here;
        for (let i = 0; i < here; ++i) {
            const part = here === 1 ? 0.5 : (i + 0.5) / here, a = Math.PI * (0.9 - 0.8 * part);
            const root = [x + rx * row.share * Math.cos(a), top - ry * row.share * Math.sin(a)];
            const lean = Math.atan2(Math.sin(a) / ry, Math.cos(a) / rx), reach = length * (i % 2 === 0 ? 1 : 0.78);
            list.push({ point: [root[0] - mm * Math.cos(lean), root[1] + mm * Math.sin(lean)],
                        head: [root[0] + reach * Math.cos(lean), root[1] - reach * Math.sin(lean)] });
        }
    }
    return list;
}

/** The cushion with the pins that came back, and the bare places of those that did not. */
function inCushion(context, c, count, put, w, h, mm, u) {
    const length = Math.min(9 * mm, 0.3 * h), ry = Math.max(mm, (h - length - 3 * mm) * 0.8), rx = Math.min(w / 2 - 8 * mm, Math.max(ry * 1.9, 17 * mm));
    const top = cushion(context, c, w / 2, h - 0.6 * mm, rx, ry, mm, u);
    const all = places(w / 2, top, rx, ry, Math.max(count, put), length, mm);
    const bare = Math.min(all.length, Math.max(0, count - put)), over = Math.min(all.length, Math.max(0, put - count));
    const rings = [];
    all.forEach((place, i) => {
        if (i >= all.length - bare)
            gone(context, c, place.head, place.point, mm, put > 0 ? c.stop : c.ink);
        else
            pin(context, c, place.head, place.point, mm, c.blade, 1, 1);
        if (i >= all.length - over)
            rings.push(place.head);
    });
    for (const at of rings)
        ring(context, c, at, mm);
}
