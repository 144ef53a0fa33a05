// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// Cloth folded in layers, seen from its front: the folds at the left, the edges at the right.

/** One layer: added to the path. */
function layer(context, x, y, w, h) {
    const r = Math.min(h / 2, w / 3);
    context.moveTo(x + w, y);
    context.lineTo(x + r, y);
    context.quadraticCurveTo(x, y, x, y + h / 2);
    context.quadraticCurveTo(x, y + h, x + r, y + h);
    context.lineTo(x + w, y + h);
    context.closePath();
}

/** So many layers of a cloth, {c, role} as Swatches.dyed() gives it, in w by h; `planned` ones are dotted. */
function pile(context, cloth, x, y, w, h, layers, planned, line, u) {
    const deep = h / layers;
    for (let i = 0; i < layers; ++i) {
        // No two lie quite alike.
        const from = x + (i % 2) * 2.5 * u + line / 2, wide = w - (i % 2) * 4 * u - line, top = y + i * deep + line / 2, high = deep - line * 0.4;
        const trace = () => layer(context, from, top, wide, high);
        if (!planned)
            Printing.clothShape(context, cloth.c, cloth.role, from, top, wide, high, u, trace);
        context.beginPath();
        trace();
        context.strokeStyle = planned ? cloth.c.inkSoft : cloth.c.ink;
        context.lineWidth = line;
        context.setLineDash(planned ? [1.2, 2.2] : []);
        context.stroke();
        context.setLineDash([]);
    }
}
