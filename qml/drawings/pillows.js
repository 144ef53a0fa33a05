// SPDX-License-Identifier: MIT
.pragma library
.import "edges.js" as Edges
.import "printing.js" as Printing

// The piece as the front of a pillow, seen from the back. `c` is a colour set, `mm` one millimetre in px, `u` one
// unit of the prints, g {x, y, w, h, s}: where it lies and how many px a millimetre of it takes.

/** A filled pillow: between its corners the sides draw in. */
function plump(context, x, y, w, h) {
    const a = 0.05 * w, b = 0.05 * h;
    context.moveTo(x, y);
    context.quadraticCurveTo(x + w / 2, y + b, x + w, y);
    context.quadraticCurveTo(x + w - a, y + h / 2, x + w, y + h);
    context.quadraticCurveTo(x + w / 2, y + h - b, x, y + h);
    context.quadraticCurveTo(x + a, y + h / 2, x, y);
    context.closePath();
}

/** How its edge runs: as the piece's own, or plump between square corners. */
function edge(context, view, g) {
    const cut = Edges.scalloping(view, g), r = Math.min(view.radiusMm * g.s, g.w / 2, g.h / 2);
    if (cut || r > 0)
        Edges.outline(context, g.x, g.y, g.w, g.h, r, cut);
    else
        plump(context, g.x, g.y, g.w, g.h);
}

/** The lens between the two hems: `x` its middle, from y down h, so far open. */
function opening(context, x, y, h, wide) {
    context.moveTo(x, y);
    context.bezierCurveTo(x - wide, y + 0.28 * h, x - wide, y + 0.72 * h, x, y + h);
    context.bezierCurveTo(x + wide * 0.5, y + 0.72 * h, x + wide * 0.5, y + 0.28 * h, x, y);
    context.closePath();
}

/** Two back pieces, the left over the right; between their hems the pillow, and an arrow to where it goes in. */
function back(context, c, view, g, mm, u) {
    const line = 0.42 * mm * c.lineScale, x = g.x + 0.5 * g.w;
    context.lineJoin = "round";
    Printing.clothShape(context, c, "back", g.x, g.y, g.w, g.h, u, () => edge(context, view, g));
    context.save();
    context.beginPath();
    edge(context, view, g);
    context.clip();
    // The under piece's hem, where it lies below the upper one.
    const lap = 0.09 * g.w;
    Printing.roleLine(context, "fold", x - lap, g.y, x - lap, g.y + g.h, c.ink, line);
    const wide = Math.min(0.16 * g.w, 0.4 * g.h), top = g.y + 0.14 * g.h, high = 0.72 * g.h;
    for (const [y1, y2] of [[g.y, top], [top + high, g.y + g.h]])
        Printing.strokeLine(context, x, y1, x, y2, c.ink, 1.6 * line);
    Printing.clothShape(context, c, "batting", x - wide, top, 1.6 * wide, high, u, () => opening(context, x, top, high, wide));
    // The pillow's own round in it.
    context.save();
    context.beginPath();
    opening(context, x, top, high, wide);
    context.clip();
    for (const by of [0.32, 0.64]) {
        context.beginPath();
        context.moveTo(x - wide * 0.8 + by * wide, top);
        context.quadraticCurveTo(x - wide * 1.3 + by * wide, top + high / 2, x - wide * 0.8 + by * wide, top + high);
        context.strokeStyle = c.battingMark;
        context.lineWidth = line;
        context.stroke();
    }
    context.restore();
    context.beginPath();
    opening(context, x, top, high, wide);
    context.strokeStyle = c.ink;
    context.lineWidth = 1.6 * line;
    context.stroke();
    // Both hems, sewn a finger's width from their folds.
    const hem = 0.035 * g.w;
    for (const side of [-1, 1]) {
        const bow = side < 0 ? wide : 0.5 * wide;
        context.beginPath();
        context.moveTo(x + side * hem, g.y);
        context.lineTo(x + side * hem, top);
        context.bezierCurveTo(x + side * (bow + hem), top + 0.28 * high, x + side * (bow + hem), top + 0.72 * high, x + side * hem, top + high);
        context.lineTo(x + side * hem, g.y + g.h);
        context.setLineDash([2.6, 1.5]);
        context.strokeStyle = c.stitched;
        context.lineWidth = 0.36 * mm * c.lineScale;
        context.stroke();
        Printing.solid(context);
    }
    if (view.seamMm > 0) {
        context.beginPath();
        edge(context, view, g);
        context.strokeStyle = c.binding;
        context.lineWidth = 2 * Math.max(view.seamMm * g.s, 1.4 * mm);
        context.stroke();
    }
    context.restore();
    context.beginPath();
    edge(context, view, g);
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.stroke();
    label(context, c, view, g, mm);
    arrow(context, c, g.x + 0.8 * g.w, g.y + 0.26 * g.h, x + 0.04 * g.w, g.y + 0.47 * g.h, mm);
}

/** The label at the lower right, clear of what a curve cuts off, sewn round, with what was written on it. */
function label(context, c, view, g, mm) {
    const off = Math.max(0.37 * Math.min(view.radiusMm * g.s, g.w / 2, g.h / 2), 0.08 * g.h + view.depthMm * g.s);
    const w = Math.max(6 * mm, 0.17 * g.w), h = Math.max(4 * mm, 0.17 * g.h), x = g.x + g.w - off - w, y = g.y + g.h - off - h;
    context.fillStyle = c.raised;
    context.fillRect(x, y, w, h);
    Printing.roleRect(context, "stitched", x, y, w, h, c.stitched, 0.4 * mm * c.lineScale);
    for (const [t, part] of [[0.3, 0.7], [0.52, 0.5], [0.74, 0.62]])
        Printing.strokeLine(context, x + 0.14 * w, y + t * h, x + (0.14 + part) * w, y + t * h, c.inkSoft, 0.35 * mm * c.lineScale);
}

/** Bowed, from where it begins to its head. */
function arrow(context, c, x1, y1, x2, y2, mm) {
    for (const [width, colour] of [[2.4, c.raised], [1.1, c.accent]]) {
        context.strokeStyle = colour;
        context.lineWidth = width * mm * c.lineScale;
        context.lineCap = "round";
        context.beginPath();
        context.moveTo(x1, y1);
        context.quadraticCurveTo((x1 + x2) / 2 + 2 * mm, y1 - 2 * mm, x2, y2);
        context.moveTo(x2 + 4.6 * mm, y2 - 0.6 * mm);
        context.lineTo(x2, y2);
        context.lineTo(x2 + 1.4 * mm, y2 - 4.6 * mm);
        context.stroke();
    }
    context.lineCap = "butt";
}
