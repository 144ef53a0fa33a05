// SPDX-License-Identifier: MIT
.pragma library
.import "tablelay.js" as TableLay

// Paints one face of the piece in flat colours: sashing, blocks with their patches, binding.

function paint(context, c, view, face, width, height, u) {
    const g = TableLay.lay({ shape: "none", finishedAlongMm: view.finishedAlongMm, finishedAcrossMm: view.finishedAcrossMm,
        columns: view.columns, rows: view.rows, sashingMm: view.sashingMm, edgeMm: view.edgeMm,
        outlineAlongMm: view.outlineAlongMm, outlineAcrossMm: view.outlineAcrossMm }, width, height, 0);
    const p = g.piece;
    rect(context, c, face.block, p.x, p.y, p.w, p.h, u);
    if (g.sashing > 0)
        sashings(context, c, face, g, u);
    if (face.patches.length > 0 && TableLay.blockWidth(g) > 8 * u)
        patches(context, c, face, g, u);
    if (face.bound)
        binding(context, c, face, g, u);
    context.strokeStyle = c.ink;
    context.lineWidth = 1.2 * u * c.lineScale;
    context.strokeRect(p.x, p.y, p.w, p.h);
}

/** A rectangle of a cloth; of one whose colour is not known, hatched paper. */
function rect(context, c, colour, x, y, w, h, u) {
    context.fillStyle = colour !== "" ? colour : c.raised;
    context.fillRect(x, y, w, h);
    if (colour !== "" || w <= 0 || h <= 0)
        return;
    context.save();
    context.beginPath();
    context.rect(x, y, w, h);
    context.clip();
    context.beginPath();
    for (let at = -h; at < w; at += 7 * u) {
        context.moveTo(x + at, y + h);
        context.lineTo(x + at + h, y);
    }
    context.strokeStyle = c.line;
    context.lineWidth = 1 * u * c.lineScale;
    context.stroke();
    context.restore();
}

function sashings(context, c, face, g, u) {
    const p = g.piece, wide = Math.max(1, g.sashing);
    const after = (count, outline) => g.edge + count * outline + (count - 1) * g.sashing;
    for (let i = 1; i < g.columns; ++i)
        rect(context, c, face.sashing, p.x + after(i, g.outlineAlong), p.y, wide, p.h, u);
    for (let j = 1; j < g.rows; ++j)
        rect(context, c, face.sashing, p.x, p.y + after(j, g.outlineAcross), p.w, wide, u);
}

/**
 * Each block's patches stacked from its foot up, the lowest first, each lying a little on the one beneath.
 * `wanted` says of a block by its number whether its own are painted.
 */
function patches(context, c, face, g, u, wanted = () => true) {
    const k = g.k;
    TableLay.blocks(g).forEach((b, number) => {
        if (!wanted(number))
            return;
        const own = face.patches[face.at[number] ?? 0] ?? [];
        const all = own.reduce((sum, patch) => sum + patch.heightMm * k, 0);
        if (all <= 0)
            return;
        const lap = 0.86;
        const fit = Math.min(1, b.h * 0.86 / (all * lap));
        let foot = b.y + (b.h + all * lap * fit) / 2;
        for (const patch of own) {
            const w = Math.min(patch.widthMm * k * fit, b.w * 0.9), h = patch.heightMm * k * fit;
            rect(context, c, patch.colour, b.x + (b.w - w) / 2, foot - h, w, h, u);
            foot -= h * lap;
        }
    });
}

function binding(context, c, face, g, u) {
    const p = g.piece, wide = Math.max(2 * u, Math.min(g.edge, Math.min(p.w, p.h) * 0.08));
    rect(context, c, face.binding, p.x, p.y, p.w, wide, u);
    rect(context, c, face.binding, p.x, p.y + p.h - wide, p.w, wide, u);
    rect(context, c, face.binding, p.x, p.y + wide, wide, p.h - 2 * wide, u);
    rect(context, c, face.binding, p.x + p.w - wide, p.y + wide, wide, p.h - 2 * wide, u);
}
