// SPDX-License-Identifier: MIT
.pragma library

// The table and what lies on it, millimetres of cloth to pixels of the sheet, centred on each other.

/**
 * `mm` px to the millimetre. Where a figure cannot stand on what shows of the table, paper is kept free for it.
 * Not `figured`: what shows of it is not written. `mats`: [] for one piece, else where each of a set lies: [{x, y, turn}], mm from the table's middle, degrees.
 */
function lay(t, width, height, mm, mats = [], figured = true) {
    const marked = figured && mats.length === 0;
    const hasTable = t.shape === "rect" || t.shape === "round";
    const along = Math.max(1, t.finishedAlongMm, hasTable ? t.tableAlongMm : 0);
    const across = Math.max(1, t.finishedAcrossMm, hasTable ? t.tableAcrossMm : 0);
    const scale = (beside, over) => Math.max(0.001, Math.min((width - 2 * beside) / along, (height - 2 * over) / across));
    // What a figure takes of bare wood: more with each digit, and when it has a fraction.
    const needs = (figure, plain, stacked) => ((figure?.num ?? "") !== "" ? stacked : plain) * mm;
    const digits = figure => 4.2 + 4.2 * Math.max(1, (figure?.whole ?? "").length + ((figure?.lean ?? "") !== "" ? 1 : 0));
    // Mats lie at the edge and no figure stands between them.
    const hangsBeside = hasTable && t.tableAlongMm < t.finishedAlongMm, hangsOver = hasTable && t.tableAcrossMm < t.finishedAcrossMm;
    let beside = marked && hangsBeside ? 31 : 4, over = marked && hangsOver ? 11.5 : 4;
    // A plain figure may stand smaller before paper is taken from the drawing for it.
    const least = figure => (figure?.num ?? "") !== "" ? 1 : 0.7;
    // What stands beside makes the drawing smaller, and the wood over it; so it is looked at twice.
    for (let look = 0; look < 2 && hasTable && marked; ++look) {
        const now = scale(beside * mm, over * mm);
        const need = needs(t.revealAlong, digits(t.revealAlong), 17) * least(t.revealAlong);
        if (beside === 4 && (t.tableAlongMm - t.finishedAlongMm) / 2 * now < need)
            beside = Math.min(19, need / mm + 2);
        if (over === 4 && (t.tableAcrossMm - t.finishedAcrossMm) / 2 * now < needs(t.revealAcross, 7.6, 11) * least(t.revealAcross))
            over = 11.5;
    }
    const k = scale(beside * mm, over * mm);
    // All of them as small as the one that has the least wood, which keeps some air about it.
    const share = (figure, wood, plain, stacked, air) => {
        const need = needs(figure, plain, stacked), room = wood * k;
        return room < need * least(figure) ? 1 : Math.min(1, (room - air * mm) / (need - air * mm));
    };
    // In steps: under a dragging finger no lettering is cut anew for a hair.
    const figure = !hasTable || !marked ? 1
        : inSteps(Math.min(share(t.revealAlong, (t.tableAlongMm - t.finishedAlongMm) / 2, digits(t.revealAlong), 17, 2.2),
                             share(t.revealAcross, (t.tableAcrossMm - t.finishedAcrossMm) / 2, 7.6, 11, 1.2)));
    const box = (a, b) => ({ x: (width - a * k) / 2, y: (height - b * k) / 2, w: a * k, h: b * k });
    return {
        k, figure, beside: beside * mm, over: over * mm, hasTable, round: t.shape === "round", leaf: hasTable ? Math.max(0, t.leafMm ?? 0) * k : 0,
        table: hasTable ? box(t.tableAlongMm, t.tableAcrossMm) : null,
        mats: mats.map(m => ({ x: width / 2 + m.x * k, y: height / 2 + m.y * k, turn: m.turn })),
        piece: box(Math.max(1, t.finishedAlongMm), Math.max(1, t.finishedAcrossMm)),
        columns: Math.max(1, t.columns), rows: Math.max(1, t.rows),
        sashing: Math.max(0, t.sashingMm) * k, edge: Math.max(0, t.edgeMm) * k,
        outlineAlong: t.outlineAlongMm * k, outlineAcross: t.outlineAcrossMm * k
    };
}

/** Down to a twentieth. */
function inSteps(share) {
    return Math.floor(20 * share + 1e-6) / 20;
}

/** The width of a block between its stitched sides. */
function blockWidth(g) {
    return Math.max(1, g.outlineAlong);
}

/** Fills every block between its stitched sides, grown by so much on each side. */
function fill(g, context, grown) {
    const p = g.piece, w = blockWidth(g) + 2 * grown, h = Math.max(1, g.outlineAcross) + 2 * grown;
    for (let j = 0; j < g.rows; ++j) {
        const y = p.y + g.edge + j * (g.outlineAcross + g.sashing) - grown;
        for (let i = 0; i < g.columns; ++i)
            context.fillRect(p.x + g.edge + i * (g.outlineAlong + g.sashing) - grown, y, w, h);
    }
}

/** Each block between its stitched sides, where it really lies, row by row. */
function blocks(g) {
    const out = [], p = g.piece, w = blockWidth(g), h = Math.max(1, g.outlineAcross);
    for (let j = 0; j < g.rows; ++j)
        for (let i = 0; i < g.columns; ++i) {
            const x = p.x + g.edge + i * (g.outlineAlong + g.sashing), y = p.y + g.edge + j * (g.outlineAcross + g.sashing);
            out.push({ x, y, w, h, outline: { x, y, w, h } });
        }
    return out;
}
