// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// The lengths of a sum laid end to end, to one scale. `lie`: {x, k}, where the scale begins and px to all of it.

const cloths = ["front", "back", "sashing", "patchA", "batting"];

/** Each term has a cloth of its own; a root has none. */
function clothOf(piece) {
    return piece.rest || piece.term < 0 ? "waste" : cloths[piece.term % cloths.length];
}

/** One piece of cloth; what is taken off lies hatched, with its cut. */
function piece(context, c, p, lie, y, h, pale, u) {
    const x = lie.x + p.at * lie.k, w = Math.max(p.share * lie.k, 1.5 * u);
    const line = (pale ? 1.4 : 2.2) * u * c.lineScale;
    if (p.less || p.rest) {
        context.fillStyle = c.raised;
        context.fillRect(x, y, w, h);
    }
    Printing.clothRect(context, c, p.less ? "waste" : clothOf(p), x, y, w, h, u);
    if (pale) {
        context.globalAlpha = 0.55;
        context.fillStyle = c.raised;
        context.fillRect(x, y, w, h);
        context.globalAlpha = 1;
    }
    if (p.less || p.rest || pale) {
        Printing.roleRect(context, "planned", x + line / 2, y + line / 2, Math.max(0, w - line), h - line, c.ink, line);
        if (p.less)
            Printing.strokeLine(context, x, y - 1.2 * u, x, y + h + 1.2 * u, c.blade, 4 * u * c.lineScale);
        return;
    }
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.strokeRect(x + line / 2, y + line / 2, Math.max(0, w - line), h - line);
}

/** One way of reckoning: its pieces, what is taken off over them; parted where it is, and as often as it is laid. */
function way(context, c, laid, at, lie, y, h, u) {
    const own = laid.ways[at], often = Math.min(own.times, 60);
    for (let turn = 0; turn < often; ++turn) {
        const shifted = { x: lie.x + turn * own.share * lie.k, k: lie.k };
        for (const p of own.pieces)
            piece(context, c, p, shifted, y, h, !own.counts, u);
        if (own.times > 1)
            Printing.strokeLine(context, shifted.x + own.share * lie.k, y - 3 * u, shifted.x + own.share * lie.k, y + h + 3 * u, c.ink, 4 * u * c.lineScale);
    }
    for (let i = 1; i < laid.parts && own.counts; ++i) {
        const x = lie.x + (laid.zero + (own.share - laid.zero) * i / laid.parts) * lie.k;
        Printing.strokeLine(context, x, y - 3 * u, x, y + h + 3 * u, c.accent, 5 * u * c.lineScale);
    }
}

const inches = [[3.175, 8], [6.35, 4], [12.7, 2], [25.4, 12], [152.4, 2], [304.8, 3], [914.4, 5]];
const millimetres = [[1, 10], [5, 2], [10, 10], [50, 2], [100, 10], [500, 2], [1000, 5]];

/** The total, as a tape beside what was laid. */
function tape(context, c, laid, metric, lie, y, h, u) {
    const from = lie.x + Math.min(laid.zero, laid.total) * lie.k, w = Math.abs(laid.total - laid.zero) * lie.k;
    context.fillStyle = c.patchB;
    context.fillRect(from, y, w, h);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.2 * u * c.lineScale;
    context.strokeRect(from, y, w, h);
    const all = metric ? millimetres : inches, px = lie.k / laid.mm;
    const [step, group] = all.find(([mm]) => mm * px > 9 * u) ?? all[all.length - 1];
    context.lineWidth = 1.6 * u * c.lineScale;
    context.beginPath();
    for (let i = 1; i * step * px < w - u; ++i) {
        context.moveTo(from + i * step * px, y);
        context.lineTo(from + i * step * px, y + h * (i % group === 0 ? 0.7 : 0.36));
    }
    context.stroke();
    context.fillStyle = c.ink;
    const metal = Math.min(6 * u, w / 2);
    context.fillRect(from - metal / 2, y - 4 * u, metal, h + 8 * u);
    context.fillRect(from + w - metal / 2, y - 4 * u, metal, h + 8 * u);
}

/** Every way, and the tape; plumb lines show what they come to. `high`: of one, `air` between them. */
function paint(context, c, laid, metric, lie, high, air, u) {
    const rows = laid.ways.length, foot = rows * (high + air);
    const ends = laid.kind === "often" ? [] : laid.ways.filter(own => own.counts).map(own => own.share);
    for (const share of [laid.zero].concat(laid.kind === "part" ? [laid.total] : ends))
        Printing.roleLine(context, "planned", lie.x + share * lie.k, 0, lie.x + share * lie.k, foot + (laid.kind === "often" ? -air : high), c.ink, 1.6 * u * c.lineScale);
    for (let i = 0; i < rows; ++i)
        way(context, c, laid, i, lie, i * (high + air) + 3 * u, high, u);
    if (laid.kind !== "often")
        tape(context, c, laid, metric, lie, foot + 4 * u, high, u);
}
