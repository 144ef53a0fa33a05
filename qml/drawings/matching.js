// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A long sashing between two rows of joined blocks, its match marks at the middles of the short sashings.

/**
 * A strip of a row from y on, `high` px: its blocks' cloth and short sashings. `g` {x, span, marks: px of the sashings'
 * middles, sashing, outside: px}. The stitches of its blocks lie `outside` px off the edge that is sewn: the lower one
 * where `above`, else the upper.
 */
function row(context, c, g, y, high, above, u) {
    const edges = [g.x];
    for (const m of g.marks)
        edges.push(m - g.sashing / 2, m + g.sashing / 2);
    edges.push(g.x + g.span);
    for (let i = 0; i + 1 < edges.length; ++i)
        Printing.clothRect(context, c, i % 2 === 0 ? "front" : "sashing", edges[i], y, edges[i + 1] - edges[i], high, u);
    const seam = above ? y + high - g.outside : y + g.outside, far = above ? y : y + high;
    for (let i = 0; i + 1 < edges.length; i += 2) {
        // The short sashings are sewn on the outline; at the raw ends it lies as far inside as along the row.
        const left = i === 0 ? edges[i] + g.outside : edges[i], right = i + 2 === edges.length ? edges[i + 1] - g.outside : edges[i + 1];
        for (const [x1, y1, x2, y2] of [[left, seam, right, seam], [left, seam, left, far], [right, seam, right, far]])
            Printing.roleLine(context, "stitched", x1, y1, x2, y2, c.stitched, 2.2 * u * c.lineScale);
    }
    // Where it is sewn, and its raw ends; the far side runs on.
    const sewn = above ? y + high : y;
    for (const [x1, y1, x2, y2] of [[g.x, sewn, g.x + g.span, sewn], [g.x, y, g.x, y + high], [g.x + g.span, y, g.x + g.span, y + high]])
        Printing.strokeLine(context, x1, y1, x2, y2, c.ink, 2.4 * u * c.lineScale);
    for (const m of g.marks)
        Printing.roleLine(context, "planned", m, y, m, y + high, c.accent, 2.4 * u * c.lineScale);
}

/** The long sashing itself. */
function sashing(context, c, g, y, high, u) {
    Printing.clothRect(context, c, "sashing", g.x, y, g.span, high, u);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.strokeRect(g.x, y, g.span, high);
}
