// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "edges.js" as Edges

// The corners a piece can have, as small pictures: its bound edge with a block or two, on a field 150 by 100.

const scenes = {
    "corner-square": { columns: 2, rows: 2 },
    "corner-rounded": { columns: 2, rows: 2, radius: 26 },
    "corner-circle": { columns: 2, rows: 2, radius: 46, square: true },
    "corner-ends": { columns: 3, rows: 2, radius: 46 },
    "corner-scalloped": { columns: 2, rows: 2, depth: 9, along: 5, across: 3 }
};

function has(scene) {
    return scenes[scene] !== undefined;
}

/** Fills w by h with paper and paints the piece with that edge in its middle. */
function paint(context, c, scene, w, h) {
    const kind = scenes[scene], k = Math.min(w / 150, h / 100);
    context.fillStyle = c.raised;
    context.fillRect(0, 0, w, h);
    context.save();
    context.translate(w / 2, h / 2);
    context.scale(k, k);
    const high = 92, wide = kind.square ? high : 138, outside = 9, sashing = 5;
    const view = {
        alongMm: wide, acrossMm: high, columns: kind.columns, rows: kind.rows, sashingMm: sashing, outsideMm: outside,
        blockAlongMm: (wide - 2 * outside - (kind.columns - 1) * sashing) / kind.columns,
        blockAcrossMm: (high - 2 * outside - (kind.rows - 1) * sashing) / kind.rows,
        seamMm: 7, radiusMm: kind.radius ?? 0, bitesMm: 0, framed: false,
        depthMm: kind.depth ?? 0, scallopsAlong: kind.along ?? 0, scallopsAcross: kind.across ?? 0
    };
    Edges.piece(context, c, view, { x: -wide / 2, y: -high / 2, w: wide, h: high, s: 1 }, true, 0.9);
    context.restore();
}
