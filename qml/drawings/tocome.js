// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "tables.js" as Tables
.import "wishes.js" as Wishes

// A table with what is only wanted on it: bare cloth in dots, and on each mat of a set its plate.

/** `g` is a TableLay. */
function paint(context, c, g, u) {
    if (g.table)
        Tables.table(context, c, g, u);
    if (g.mats.length === 0)
        cloth(context, c, g.piece.x, g.piece.y, g.piece.w, g.piece.h, u);
    for (const mat of g.mats) {
        context.save();
        context.translate(mat.x, mat.y);
        context.rotate(mat.turn * Math.PI / 180);
        cloth(context, c, -g.piece.w / 2, -g.piece.h / 2, g.piece.w, g.piece.h, u);
        // A plate of ten inches.
        Wishes.plate(context, c, 0, 0, Math.min(127 * g.k, g.piece.h * 0.46, g.piece.w * 0.34));
        context.restore();
    }
}

function cloth(context, c, x, y, w, h, u) {
    Printing.clothRect(context, c, "front", x, y, w, h, u * 0.6);
    Printing.roleRect(context, "planned", x, y, w, h, c.ink, 2.4 * u * c.lineScale);
}
