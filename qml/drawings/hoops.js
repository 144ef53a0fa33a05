// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A hoop seen from above: its frame, the field the needle reaches, and the block in it.

/** Where all of it lies, `largestMm` being the longest side of any hoop; px. The block lies in the field's near corner. */
function lay(view, largestMm, w, h) {
    const k = Math.min(w, h) / Math.max(1, largestMm), mid = w / 2, across = h / 2;
    const box = size => ({ x: mid - size.alongMm * k / 2, y: across - size.acrossMm * k / 2, w: size.alongMm * k, h: size.acrossMm * k });
    const field = box(view.field), block = box(view.sent);
    const fits = block.w <= field.w && block.h <= field.h;
    if (fits) {
        block.x = field.x;
        block.y = field.y + field.h - block.h;
    }
    return { outside: box(view.outside), opening: box(view.opening), field: field, block: block, fits: fits, across: view.across };
}

function paint(context, c, g, u) {
    const o = g.outside, i = g.opening;
    context.fillStyle = c.hoop;
    for (const [x, y, w, h] of [[o.x, o.y, o.w, i.y - o.y], [o.x, i.y + i.h, o.w, o.y + o.h - i.y - i.h],
                                [o.x, i.y, i.x - o.x, i.h], [i.x + i.w, i.y, o.x + o.w - i.x - i.w, i.h]])
        context.fillRect(x, y, Math.max(w, 2 * u), Math.max(h, 2 * u));
    Printing.clothRect(context, c, "front", i.x, i.y, i.w, i.h, u);
    // The field is bare paper in the opening: what the needle reaches.
    context.fillStyle = c.raised;
    context.fillRect(g.field.x, g.field.y, g.field.w, g.field.h);
    Printing.roleRect(context, "fold", g.field.x, g.field.y, g.field.w, g.field.h, c.ink, 1.8 * u * c.lineScale);
    const b = g.block;
    Printing.clothRect(context, c, "front", b.x, b.y, b.w, b.h, u);
    Printing.roleRect(context, "stitched", b.x, b.y, b.w, b.h, g.fits ? c.stitched : c.stop, 3 * u * c.lineScale);
    if (!g.fits)
        for (const [y1, y2] of [[b.y, b.y + b.h], [b.y + b.h, b.y]])
            Printing.strokeLine(context, b.x, y1, b.x + b.w, y2, c.stop, 2.6 * u * c.lineScale);
}

/** What the block leaves of the field, measured: an arrow from the one to the other, and a line that leads to its figure. */
function spare(context, c, g, w, u) {
    const f = g.field, b = g.block, line = (x1, y1, x2, y2, width = 3) => Printing.strokeLine(context, x1, y1, x2, y2, c.accent, width * u * c.lineScale);
    const level = g.across ? (f.y + b.y) / 2 : b.y + Math.min(b.h * 0.25, 30 * u);
    const x = g.across ? b.x + b.w * 0.72 : 0;
    if (g.across) {
        for (const y of [f.y, b.y])
            line(x - 9 * u, y, x + 9 * u, y);
        line(x, f.y, x, b.y);
        line(x, level, w, level, 1.8);
    } else {
        const right = f.x + f.w;
        for (const at of [b.x + b.w, right])
            line(at, level - 9 * u, at, level + 9 * u);
        line(b.x + b.w, level, right, level);
        line(right, level, w, level, 1.8);
    }
    return level;
}

/** A hoop nobody has measured yet. */
function unknown(context, c, w, h, u) {
    const s = Math.min(w, h) * 0.84;
    Printing.roleRect(context, "planned", (w - s) / 2, (h - s) / 2, s, s, c.ink, 2.6 * u * c.lineScale);
    const t = s * 0.74;
    Printing.roleRect(context, "planned", (w - t) / 2, (h - t) / 2, t, t, c.inkSoft, 2 * u * c.lineScale);
}
