// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// What marks a place on the cloth: chalk, and a thread from a pin. Px.

/** A flat piece of chalk, its hollow back up and its two worn edges meeting in a point at the foot. */
function outline(context, w, h, a) {
    context.beginPath();
    context.moveTo(a, h * 0.26);
    context.quadraticCurveTo(a, a, w * 0.1, a);
    context.quadraticCurveTo(w / 2, h * 0.16, w * 0.9, a);
    context.quadraticCurveTo(w - a, a, w - a, h * 0.26);
    context.quadraticCurveTo(w * 0.78, h * 0.72, w / 2, h - a);
    context.quadraticCurveTo(w * 0.22, h * 0.72, a, h * 0.26);
    context.closePath();
}

function chalk(context, c, held, w, h, u) {
    const line = 3 * u * c.lineScale, body = held ? c.raised : c.action, pen = held ? c.accent : c.actionInk;
    context.lineJoin = "round";
    outline(context, w, h, line);
    context.fillStyle = body;
    context.fill();
    context.strokeStyle = c.raised;
    context.lineWidth = 2 * line;
    context.stroke();
    context.strokeStyle = c.accent;
    context.lineWidth = line;
    context.stroke();
    // Worn by rubbing: short strokes that run to the point.
    context.strokeStyle = pen;
    context.lineWidth = 2 * u * c.lineScale;
    context.beginPath();
    for (const [x1, y1, x2, y2] of [[0.5, 0.34, 0.5, 0.74], [0.37, 0.32, 0.45, 0.6], [0.63, 0.32, 0.55, 0.6], [0.25, 0.28, 0.35, 0.45], [0.75, 0.28, 0.65, 0.45]]) {
        context.moveTo(x1 * w, y1 * h);
        context.lineTo(x2 * w, y2 * h);
    }
    context.stroke();
}

function thread(context, c, w, h, head, u) {
    const x = w / 2, width = 4 * u * c.lineScale;
    // A halo parts the stitches from the print of the cloth.
    for (const [colour, wide] of [[c.raised, width + 3 * u], [c.accent, width]]) {
        context.setLineDash([13 * u / wide, 5 * u / wide]);
        context.lineCap = "butt";
        Printing.strokeLine(context, x, head, x, h, colour, wide);
        Printing.solid(context);
    }
    context.beginPath();
    context.arc(x, head / 2, head / 2 - u, 0, 2 * Math.PI);
    context.fillStyle = c.blade;
    context.fill();
    context.strokeStyle = c.raised;
    context.lineWidth = 2 * u;
    context.stroke();
}

// The layers of a strip as they are laid up.

/** Where the strip lies in w by h with its length measured under it and its width at the near end. */
function layStrip(view, w, h, mm, near, foot) {
    const k = Math.max(0.001, Math.min((w - near - 2 * mm) / Math.max(1, view.lengthMm), (h - foot - mm) / Math.max(1, view.widthMm)));
    const wide = view.lengthMm * k, high = view.widthMm * k;
    const x = near + Math.max(0, w - near - 2 * mm - wide) / 2, y = Math.max(0, h - foot - mm - high) / 2 + mm;
    return { x: x, y: y, w: wide, h: high, batting: x + wide * 0.7, front: x + wide * 0.36 };
}

function framed(context, c, x, y, w, h, u) {
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.lineJoin = "miter";
    context.strokeRect(x, y, w, h);
}

/** Its wrong side is pale. */
function wrongSide(context, c, role, x, y, w, h, u) {
    Printing.clothRect(context, c, role, x, y, w, h, u);
    context.globalAlpha = 0.6;
    context.fillStyle = c.raised;
    context.fillRect(x, y, w, h);
    context.globalAlpha = 1;
    framed(context, c, x, y, w, h, u);
}

/** The backing's corner turned over shows its right side. */
function turned(context, c, right, foot, t, u) {
    context.fillStyle = c.paper;
    context.fillRect(right - t, foot - t, t + 2 * u, t + 2 * u);
    const trace = () => {
        [[right, foot - t], [right - t, foot], [right - t, foot - t]].forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
        context.closePath();
    };
    Printing.clothShape(context, c, "back", right - t, foot - t, t, t, u, trace);
    context.beginPath();
    trace();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.lineJoin = "round";
    context.stroke();
}

function layers(context, c, g, mm, u) {
    const step = Math.min(1.2 * mm, g.h * 0.06), roll = Math.min(6 * mm, g.w * 0.06);
    wrongSide(context, c, "back", g.x, g.y, g.w, g.h, u);
    turned(context, c, g.x + g.w, g.y + g.h, Math.min(g.h * 0.4, g.w * 0.16), u);
    Printing.clothRect(context, c, "batting", g.x, g.y + step, g.batting - g.x, g.h - 2 * step, u);
    framed(context, c, g.x, g.y + step, g.batting - g.x, g.h - 2 * step, u);
    Printing.clothRect(context, c, "front", g.x, g.y + 2 * step, g.front - g.x, g.h - 4 * step, u);
    framed(context, c, g.x, g.y + 2 * step, g.front - g.x, g.h - 4 * step, u);
    // Rolled with its right side in: the roll shows the wrong one.
    wrongSide(context, c, "front", g.front - roll / 2, g.y + step, roll, g.h - 2 * step, u);
    for (const at of [0.35, 0.68])
        Printing.strokeLine(context, g.front + (at - 0.5) * roll, g.y + step, g.front + (at - 0.5) * roll, g.y + g.h - step, c.ink, 1.4 * u * c.lineScale);
    const from = g.front + roll, to = Math.min(g.batting - 2 * mm, from + 13 * mm), mid = g.y + g.h * 0.72;
    Printing.strokeLine(context, from, mid, to, mid, c.ink, 3.4 * u * c.lineScale);
    for (const side of [-1, 1])
        Printing.strokeLine(context, to - 2.4 * mm, mid + side * 1.8 * mm, to, mid, c.ink, 3.4 * u * c.lineScale);
}

/** Length under it, with a gap for its figure, and width at the near end. */
function sizes(context, c, g, gap, gapAcross, mm, u) {
    const x = g.x - 4 * mm, mid = g.y + g.h / 2;
    Printing.measure(context, c, g.x, g.x + g.w, g.y + g.h + 5.5 * mm, gap, u);
    for (const at of [g.y, g.y + g.h])
        Printing.strokeLine(context, x - 13 * u, at, x + 13 * u, at, c.ink, 2.4 * u * c.lineScale);
    for (const [y1, y2] of [[g.y, mid - gapAcross / 2], [mid + gapAcross / 2, g.y + g.h]])
        if (y2 > y1)
            Printing.strokeLine(context, x, y1, x, y2, c.ink, 2 * u * c.lineScale);
}
