// SPDX-License-Identifier: MIT
.pragma library
.import "pieces.js" as Pieces
.import "printing.js" as Printing
.import "tablelay.js" as TableLay
.import "tables.js" as Tables

// A piece pegged to a line, as it would come out: mats of a set one behind the other.

/** The line across, sagging a little under what hangs on it; `at` is how far down it is tied. */
function line(context, c, w, at, u) {
    context.beginPath();
    context.moveTo(0, at - 3 * u);
    context.quadraticCurveTo(w / 2, at + 3 * u, w, at - 3 * u);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.6 * u * c.lineScale;
    context.stroke();
}

/**
 * The piece of `view` in w by h, `k` px to the millimetre at the most, from the line `drop` down: how it lies, for
 * painting. `behind`: so many more hang behind it.
 */
function lie(view, w, h, k, drop, behind, u) {
    const step = 7 * u, deep = Math.min(2, behind) * step;
    const scale = Math.min(k, (w - 8 * u - 2 * deep) / view.finishedAlongMm, (h - drop - 3 * u - deep) / view.finishedAcrossMm);
    const pw = view.finishedAlongMm * scale, ph = view.finishedAcrossMm * scale;
    const g = TableLay.lay(Object.assign({}, plain(view), { shape: "none" }), pw, ph, 0);
    return { g, x: (w - pw - deep) / 2, y: drop, w: pw, h: ph, step: step };
}

function plain(view) {
    const names = ["finishedAlongMm", "finishedAcrossMm", "columns", "rows", "sashingMm", "edgeMm", "outlineAlongMm", "outlineAcrossMm"];
    const out = {};
    for (const name of names)
        out[name] = view[name];
    return out;
}

function paint(context, c, l, back, behind, u) {
    for (let i = Math.min(2, behind); i > 0; --i) {
        Printing.clothRect(context, c, back ? "back" : "front", l.x + i * l.step, l.y + i * l.step, l.w, l.h, u * 0.5);
        context.strokeStyle = c.ink;
        context.lineWidth = 1.6 * u * c.lineScale;
        context.strokeRect(l.x + i * l.step, l.y + i * l.step, l.w, l.h);
    }
    context.save();
    context.translate(l.x, l.y);
    Tables.piece(context, c, l.g, back, [], u * 0.6);
    context.restore();
    const inset = Math.min(l.w * 0.16, 40 * u);
    context.save();
    context.translate(0, Math.max(0, l.y - 11 * u));
    Pieces.pegs(context, c, [l.x + inset, l.x + l.w - inset], 24 * u, u);
    context.restore();
}
