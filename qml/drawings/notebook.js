// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A maker's notebook: its sewn leaves, a label as it is sewn on the back of a piece, a snip pinned to the page.
// `c` is a colour set, `mm` one millimetre in px, `u` one unit of the prints.

/** The leaf with what lies under it, sewn to its cover along the left with a thick thread. */
function leaf(context, c, w, h, mm) {
    const line = 0.35 * mm * c.lineScale, back = 5 * mm, under = 1.3 * mm;
    context.fillStyle = c.binding;
    context.fillRect(0, 0, back + 2 * mm, h);
    for (const by of [0, 1, 2]) {
        context.fillStyle = by < 2 ? c.paper : c.raised;
        context.fillRect(back, (by === 2 ? 0.6 : 0.3) * mm, w - back - (2 - by) * under * 0.5 - 0.6 * mm, h - (3 - by) * under * 0.5 - mm);
        context.strokeStyle = c.ink;
        context.lineWidth = line;
        context.strokeRect(back, (by === 2 ? 0.6 : 0.3) * mm, w - back - (2 - by) * under * 0.5 - 0.6 * mm, h - (3 - by) * under * 0.5 - mm);
    }
    const seam = back + 3 * mm;
    for (const [width, colour] of [[1.5, c.ink], [0.9, c.accent]]) {
        context.lineCap = "round";
        context.strokeStyle = colour;
        context.lineWidth = width * mm * c.lineScale;
        context.beginPath();
        for (let y = 4 * mm; y < h - 8 * mm; y += 11 * mm) {
            context.moveTo(seam, y);
            context.lineTo(seam, y + 7 * mm);
        }
        context.stroke();
    }
    context.lineCap = "butt";
}

/** A label of cloth, its edge turned under and felled down with small slanting stitches. */
function label(context, c, w, h, mm) {
    const a = 1.4 * mm, line = 0.35 * mm * c.lineScale;
    context.fillStyle = c.paper;
    context.fillRect(a, a, w - 2 * a, h - 2 * a);
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.strokeRect(a, a, w - 2 * a, h - 2 * a);
    context.strokeStyle = c.stitched;
    context.lineWidth = 0.45 * mm * c.lineScale;
    context.lineCap = "round";
    context.beginPath();
    const step = 3 * mm, out = 0.8 * mm;
    for (let x = a + step / 2; x < w - a - out; x += step)
        for (const y of [a, h - a]) {
            context.moveTo(x, y - out);
            context.lineTo(x + out, y + out);
        }
    for (let y = a + step; y < h - a - out; y += step)
        for (const x of [a, w - a]) {
            context.moveTo(x - out, y);
            context.lineTo(x + out, y + out);
        }
    context.stroke();
    context.lineCap = "butt";
}

/** A snip of the cloth of a role, pinked all round, with the pin that holds it. */
function snip(context, c, role, w, h, mm, u) {
    const tooth = 0.8 * mm, x1 = tooth, y1 = 2 * mm, x2 = w - tooth, y2 = h - tooth;
    const across = Math.max(3, Math.round((x2 - x1) / (1.6 * mm))), down = Math.max(3, Math.round((y2 - y1) / (1.6 * mm)));
    const trace = () => {
        const dx = (x2 - x1) / across, dy = (y2 - y1) / down;
        context.moveTo(x1, y1);
        for (let i = 0; i < across; ++i) {
            context.lineTo(x1 + (i + 0.5) * dx, y1 - tooth);
            context.lineTo(x1 + (i + 1) * dx, y1);
        }
        for (let i = 0; i < down; ++i) {
            context.lineTo(x2 + tooth, y1 + (i + 0.5) * dy);
            context.lineTo(x2, y1 + (i + 1) * dy);
        }
        for (let i = across; i > 0; --i) {
            context.lineTo(x1 + (i - 0.5) * dx, y2 + tooth);
            context.lineTo(x1 + (i - 1) * dx, y2);
        }
        for (let i = down; i > 0; --i) {
            context.lineTo(x1 - tooth, y1 + (i - 0.5) * dy);
            context.lineTo(x1, y1 + (i - 1) * dy);
        }
        context.closePath();
    };
    Printing.clothShape(context, c, role, 0, 0, w, h, u, trace);
    context.beginPath();
    trace();
    context.strokeStyle = c.ink;
    context.lineWidth = 0.3 * mm * c.lineScale;
    context.stroke();
}
