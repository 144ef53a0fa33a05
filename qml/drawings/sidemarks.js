// SPDX-License-Identifier: MIT
.pragma library

/** Marks how much of the table shows, or hangs over, at both ends ("along") or at both sides ("across"); `g` is a TableLay. */
function paint(context, c, g, side, u) {
    const t = g.table, p = g.piece;
    if (!t || g.mats.length > 0)
        return;
    const along = side === "along";
    const [from, size, inner, inside] = along ? [t.x, t.w, p.x, p.w] : [t.y, t.h, p.y, p.h];
    for (const [a, b] of [[from, inner], [from + size, inner + inside]]) {
        const low = Math.min(a, b), deep = Math.abs(a - b);
        if (deep < u)
            continue;
        const box = along ? [low, Math.min(t.y, p.y), deep, Math.max(t.h, p.h)] : [Math.min(t.x, p.x), low, Math.max(t.w, p.w), deep];
        context.globalAlpha = 0.4;
        context.fillStyle = c.raised;
        context.fillRect(...box);
        context.globalAlpha = 1;
        context.strokeStyle = c.accent;
        context.lineWidth = 5 * u * c.lineScale;
        context.strokeRect(...box);
        // Measures from edge to edge, clear of the figure in the middle.
        for (const at of [0.22, 0.78])
            arrow(context, c, along, low, low + deep, along ? box[1] + at * box[3] : box[0] + at * box[2], u);
    }
}

function arrow(context, c, along, from, to, at, u) {
    const head = Math.min(13 * u, (to - from) * 0.4), place = (a, b) => along ? [a, b] : [b, a];
    context.strokeStyle = c.accent;
    context.lineWidth = 4 * u * c.lineScale;
    context.beginPath();
    context.moveTo(...place(from, at));
    context.lineTo(...place(to, at));
    for (const [end, back] of [[from, head], [to, -head]])
        for (const side of [-0.7, 0.7]) {
            context.moveTo(...place(end, at));
            context.lineTo(...place(end + back, at + side * head));
        }
    context.stroke();
}
