// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// The bound edge in section: the piece comes from one side, its raw edge is wrapped. Lengths along are to scale,
// cloth is drawn thicker than it is.

/** `mm` is as large as the sheet has room for. */
function lay(view, width, height, mm) {
    const scale = Math.min(5 * mm, (width * 0.46) / Math.max(view.seamMm, 4));
    const cloth = 2.6 * mm, batting = 7 * mm, strip = (view.folded ? 9 : 4.5) * mm;
    const edge = Math.min(width - 12 * mm - (view.folded ? 7 : 4) * mm, width * 0.5 + view.seamMm * scale * 0.7), middle = height * 0.54;
    const seam = edge - view.seamMm * scale;
    return { scale, cloth, batting, edge, middle, seam, reach: seam - view.reachMm * scale,
             top: middle - batting / 2 - cloth, foot: middle + batting / 2 + cloth, below: middle + batting / 2 + cloth + strip + 3.4 * mm,
             above: middle - batting / 2 - cloth - (view.folded ? 10 : 7.6) * mm };
}

/** One layer of the strip from its fold at the seam, out, round the edge and back. */
function layer(context, c, g, out, fromX, toX, u) {
    const top = g.top - out, foot = g.foot + out, round = g.edge + out;
    const r = Math.min(out + 4 * u, (foot - top) / 2);
    context.beginPath();
    context.moveTo(fromX, top);
    context.lineTo(round - r, top);
    context.arc(round - r, top + r, r, -Math.PI / 2, 0, false);
    context.lineTo(round, foot - r);
    context.arc(round - r, foot - r, r, 0, Math.PI / 2, false);
    context.lineTo(toX, foot);
    for (const [colour, width] of [[c.ink, 15], [c.binding, 10]]) {
        context.strokeStyle = colour;
        context.lineWidth = width * u;
        context.stroke();
    }
}

function paint(context, c, view, g, mm, u) {
    for (const [role, y, h] of [["front", g.top, g.cloth], ["batting", g.top + g.cloth, g.batting], ["back", g.foot - g.cloth, g.cloth]]) {
        Printing.clothRect(context, c, role, -20 * u, y, g.edge + 20 * u, h, u);
        context.strokeStyle = c.ink;
        context.lineWidth = 2.2 * u * c.lineScale;
        context.strokeRect(-20 * u, y, g.edge + 20 * u, h);
    }
    // Sewn raw edges to raw edge on the front, turned over the seam and wrapped.
    const thick = 2.6 * mm;
    for (let i = view.folded ? 2 : 1; i >= 1; --i) {
        const y = g.top - thick * 0.5 - (i - 1) * thick * 0.9;
        Printing.strokeLine(context, g.seam, y, g.edge, y, c.ink, 15 * u);
        Printing.strokeLine(context, g.seam, y, g.edge, y, c.binding, 10 * u);
    }
    const first = (view.folded ? 2.4 : 1.5) * thick;
    layer(context, c, g, first, g.seam, g.reach, u);
    if (view.folded)
        layer(context, c, g, first + thick * 0.95, g.seam, g.reach, u);
    Printing.strokeLine(context, g.seam, g.top - first - thick * (view.folded ? 1.4 : 0.4), g.seam, g.foot, c.seam, 4 * u * c.lineScale);
    for (let y = g.top - first; y < g.foot; y += 11 * u)
        Printing.strokeLine(context, g.seam - 7 * u, y, g.seam + 7 * u, y, c.seam, 2.6 * u * c.lineScale);
    Printing.strokeLine(context, g.seam, g.above - 3 * mm, g.seam, g.top - first - thick, c.ink, 1.4 * u);
    Printing.strokeLine(context, g.edge, g.above - 3 * mm, g.edge, g.top, c.ink, 1.4 * u);
    Printing.measure(context, c, g.seam, g.edge, g.above, 0, u);
    if (!view.byHand)
        Printing.roleLine(context, "stitched", g.seam, g.top - first, g.seam, g.foot + first + thick, c.stitched, 4 * u * c.lineScale);
    // How far the fold lies past the seam, on the back.
    for (const x of [g.reach, g.seam])
        Printing.strokeLine(context, x, g.foot + 1.5 * mm, x, g.below + 2 * mm, c.ink, 1.4 * u);
    Printing.strokeLine(context, g.reach, g.below, g.seam, g.below, c.ink, 2.4 * u * c.lineScale);
}

/** The strip opened out, from raw edge to raw edge: how wide it is cut, and where it is pressed in half. */
function strip(context, c, view, s, mm, u) {
    Printing.clothRect(context, c, "binding", s.x, s.y, s.w, s.h, u);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.2 * u * c.lineScale;
    context.strokeRect(s.x, s.y, s.w, s.h);
    Printing.measure(context, c, s.x, s.x + s.w, s.y - 3 * mm, 0, u);
    if (!view.folded)
        return;
    for (const [colour, width] of [[c.raised, 6], [c.fold, 3]])
        Printing.roleLine(context, "fold", s.x + s.w / 2, s.y, s.x + s.w / 2, s.y + s.h, colour, width * u * c.lineScale);
    Printing.measure(context, c, s.x, s.x + s.w / 2, s.y + s.h + 3 * mm, 0, u);
}
