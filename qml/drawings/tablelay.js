// SPDX-License-Identifier: MIT
.pragma library

// The table and what lies on it, millimetres of cloth to pixels of the sheet, centred on each other.

/** `mm` px to the millimetre. Where a figure cannot stand on what shows of the table, paper is kept free for it. */
function lay(t, width, height, mm) {
    const hasTable = t.shape === "rect" || t.shape === "round";
    const along = Math.max(1, t.finishedAlongMm, hasTable ? t.tableAlongMm : 0);
    const across = Math.max(1, t.finishedAcrossMm, hasTable ? t.tableAcrossMm : 0);
    const scale = (beside, over) => Math.max(0.001, Math.min((width - 2 * beside) / along, (height - 2 * over) / across));
    const narrow = (table, piece, need) => hasTable && (table - piece) / 2 * scale(4 * mm, 4 * mm) < need;
    // What a figure takes of bare wood: more with each digit, and when it has a fraction.
    const needs = (figure, plain, stacked) => ((figure?.num ?? "") !== "" ? stacked : plain) * mm;
    const digits = figure => 2.4 + 4.2 * Math.max(1, (figure?.whole ?? "").length + ((figure?.lean ?? "") !== "" ? 1 : 0));
    const hangsBeside = hasTable && t.tableAlongMm < t.finishedAlongMm, hangsOver = hasTable && t.tableAcrossMm < t.finishedAcrossMm;
    const beside = hangsBeside ? 31 : narrow(t.tableAlongMm, t.finishedAlongMm, needs(t.revealAlong, digits(t.revealAlong), 17)) ? 19 : 4;
    const over = hangsOver || narrow(t.tableAcrossMm, t.finishedAcrossMm, needs(t.revealAcross, 7.6, 11)) ? 11.5 : 4;
    const k = scale(beside * mm, over * mm);
    const box = (a, b) => ({ x: (width - a * k) / 2, y: (height - b * k) / 2, w: a * k, h: b * k });
    return {
        k, hasTable, round: t.shape === "round", leaf: hasTable ? Math.max(0, t.leafMm ?? 0) * k : 0,
        table: hasTable ? box(t.tableAlongMm, t.tableAcrossMm) : null,
        piece: box(Math.max(1, t.finishedAlongMm), Math.max(1, t.finishedAcrossMm)),
        columns: Math.max(1, t.columns), rows: Math.max(1, t.rows),
        sashing: Math.max(0, t.sashingMm) * k, edge: Math.max(0, t.edgeMm) * k,
        outlineAlong: t.outlineAlongMm * k, outlineAcross: t.outlineAcrossMm * k
    };
}

/** What of a block lies under sashing or edge at its near and far side. */
function low(g, i) {
    return i === 0 ? g.edge : g.sashing / 2;
}
function high(g, i, count) {
    return i === count - 1 ? g.edge : g.sashing / 2;
}

/** The width of the visible part of a block that is not at the edge. */
function blockWidth(g) {
    return g.piece.w / g.columns - g.sashing;
}

/** Fills the visible part of every block, grown by so much on each side. */
function fill(g, context, grown) {
    const p = g.piece, cw = p.w / g.columns, ch = p.h / g.rows;
    for (let j = 0; j < g.rows; ++j) {
        const y = p.y + j * ch + low(g, j) - grown;
        const h = Math.max(1, ch - low(g, j) - high(g, j, g.rows)) + 2 * grown;
        for (let i = 0; i < g.columns; ++i)
            context.fillRect(p.x + i * cw + low(g, i) - grown, y, Math.max(1, cw - low(g, i) - high(g, i, g.columns)) + 2 * grown, h);
    }
}

/** The visible part of each block and its stitched outline, row by row. */
function blocks(g) {
    const out = [], p = g.piece, cw = p.w / g.columns, ch = p.h / g.rows;
    for (let j = 0; j < g.rows; ++j) {
        for (let i = 0; i < g.columns; ++i) {
            const x = p.x + i * cw, y = p.y + j * ch;
            const w = Math.max(1, cw - low(g, i) - high(g, i, g.columns));
            const h = Math.max(1, ch - low(g, j) - high(g, j, g.rows));
            const ow = Math.min(g.outlineAlong, cw), oh = Math.min(g.outlineAcross, ch);
            out.push({
                x: x + low(g, i), y: y + low(g, j), w, h,
                outline: { x: x + (cw - ow) / 2, y: y + (ch - oh) / 2, w: ow, h: oh }
            });
        }
    }
    return out;
}
