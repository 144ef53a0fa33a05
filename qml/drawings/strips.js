// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// The hoop strip end to end: millimetres from the zero end to pixels of a right-handed sheet.

/** `label` px for the 0 beside the tape; the words above take `head` px, those beneath `foot` px. */
function lay(view, width, height, mm, label, head, foot) {
    const left = label + 5 * mm, right = 4 * mm, tape = 6 * mm;
    const k = Math.max(0.01, Math.min((width - left - right) / Math.max(view.lengthMm, 1),
                                      (height - head - tape - 1.4 * mm - foot) / Math.max(view.widthMm, 1)));
    const high = view.widthMm * k;
    const spare = Math.max(0, height - head - tape - 1.4 * mm - foot - high);
    const top = head + spare * 0.4;
    const slide = Math.max(0, width - left - right - view.lengthMm * k) / 2;
    return { k, x0: left + slide, x1: left + slide + view.lengthMm * k, top, bottom: top + high, mid: top + high / 2,
             tapeTop: top + high + 1.4 * mm, tape, bw: view.blockAlongMm * k, bh: view.blockAcrossMm * k };
}

/** The place whose block lies nearest to a pixel. */
function nearest(view, lie, x) {
    let best = 0, least = Infinity;
    view.places.forEach((place, i) => {
        const away = Math.abs(lie.x0 + place.centreMm * lie.k - x);
        if (away < least) {
            least = away;
            best = i;
        }
    });
    return best;
}

function paint(context, c, view, g, u) {
    const wide = g.x1 - g.x0, high = g.bottom - g.top;
    Printing.clothRect(context, c, "front", g.x0, g.top, wide, high, u);
    Printing.roleLine(context, "planned", g.x0, g.mid, g.x1, g.mid, c.inkSoft, 1.6 * u * c.lineScale);
    ends(context, c, view, g, u);
    for (const y of [g.top, g.bottom])
        Printing.strokeLine(context, g.x0, y, g.x1, y, c.ink, 2.4 * u * c.lineScale);
    view.places.forEach((place, i) => {
        const x = g.x0 + place.startMm * g.k, centre = g.x0 + place.centreMm * g.k;
        for (const [y, d] of [[g.top, 12], [g.bottom, -12]])
            Printing.strokeLine(context, centre, y, centre, y + d * u, c.ink, 2.4 * u * c.lineScale);
        if (place.stitched)
            made(context, c, view, Object.assign({}, g, { bw: (place.alongMm ?? view.blockAlongMm) * g.k }), x, i, u);
        else
            Printing.roleRect(context, "planned", x, g.mid - g.bh / 2, g.bw, g.bh, c.stitched, (place.next ? 2.6 : 1.7) * u * c.lineScale);
    });
    tape(context, c, view, g, u);
}

/** Selvages at both ends, or the waste tails sewn to them. */
function ends(context, c, view, g, u) {
    for (const [x, out] of [[g.x0, -1], [g.x1, 1]]) {
        Printing.strokeLine(context, x, g.top, x, g.bottom, c.ink, 3 * u * c.lineScale);
        if (view.tails) {
            const w = 14 * u;
            Printing.clothRect(context, c, "waste", out < 0 ? x - w : x, g.top, w, g.bottom - g.top, u);
            Printing.roleLine(context, "stitched", x, g.top, x, g.bottom, c.seam, 2.4 * u * c.lineScale);
            continue;
        }
        for (let y = g.top + 4 * u; y < g.bottom; y += 7 * u)
            Printing.strokeLine(context, x, y, x + out * 7 * u, y, c.ink, 1.2 * u * c.lineScale);
    }
}

/** A stitched block: stippling, its patches, echo and outline. */
function made(context, c, view, g, x, number, u) {
    const y = g.mid - g.bh / 2;
    const patches = patchRects(view, g, x, y);
    context.fillStyle = c.front;
    context.fillRect(x, y, g.bw, g.bh);
    stipple(context, c, x + 7 * u, y + 7 * u, g.bw - 14 * u, g.bh - 14 * u, patches, number, u);
    for (const p of patches) {
        Printing.clothRect(context, c, p.role, p.x, p.y, p.w, p.h, u);
        context.strokeStyle = c.stitched;
        context.lineWidth = 2 * u * c.lineScale;
        context.strokeRect(p.x, p.y, p.w, p.h);
    }
    Printing.roleRect(context, "echo", x + 5 * u, y + 5 * u, g.bw - 10 * u, g.bh - 10 * u, c.echo, 1.4 * u * c.lineScale);
    Printing.roleRect(context, "stitched", x, y, g.bw, g.bh, c.stitched, 2.4 * u * c.lineScale);
}

/** One stitched block off the hoop, with the cloth around it, `around` times as large: its front with the patches, or its back. */
function block(context, c, view, w, h, back, u, around = 1.22) {
    const k = Math.min(w / view.blockAlongMm, h / view.blockAcrossMm) / around;
    const g = { k: k, bw: view.blockAlongMm * k, bh: view.blockAcrossMm * k, mid: h / 2 };
    const x = (w - g.bw) / 2, y = (h - g.bh) / 2;
    Printing.clothRect(context, c, back ? "back" : "front", x - 0.11 * g.bw, y - 0.11 * g.bh, 1.22 * g.bw, 1.22 * g.bh, u);
    if (!back)
        return made(context, c, view, g, x, 0, u);
    for (const p of patchRects(view, g, x, y))
        Printing.roleRect(context, "stitched", p.x, p.y, p.w, p.h, c.stitched, 2 * u * c.lineScale);
    Printing.roleRect(context, "echo", x + 5 * u, y + 5 * u, g.bw - 10 * u, g.bh - 10 * u, c.echo, 1.4 * u * c.lineScale);
    Printing.roleRect(context, "stitched", x, y, g.bw, g.bh, c.stitched, 2.4 * u * c.lineScale);
}

/** The patches' own rectangles, stacked from the foot of the block up, the lowest first. */
function patchRects(view, g, x, y) {
    const all = view.patches.reduce((sum, p) => sum + p.heightMm, 0);
    if (all <= 0)
        return [];
    const fit = Math.min(1, view.blockAcrossMm * 0.84 / all);
    const rects = [];
    let foot = y + g.bh - (g.bh - all * fit * g.k) / 2;
    for (const p of view.patches) {
        const w = Math.min(p.widthMm * fit, view.blockAlongMm * 0.84) * g.k, h = p.heightMm * fit * g.k;
        foot -= h;
        rects.push({ role: p.role, x: x + (g.bw - w) / 2, y: foot, w, h });
    }
    return rects;
}

/** A wandering line that never crosses itself: round the outside of a tree grown on a grid. */
function stipple(context, c, x, y, w, h, keepOut, number, u) {
    const cell = 9 * u, columns = Math.floor(w / cell), rows = Math.floor(h / cell);
    if (columns < 2 || rows < 2 || columns * rows > 4000)
        return;
    let seed = 11 + number * 5;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const open = (i, j) => i >= 0 && j >= 0 && i < columns && j < rows && !keepOut.some(p =>
        x + (i + 1) * cell > p.x - 3 * u && x + i * cell < p.x + p.w + 3 * u && y + (j + 1) * cell > p.y - 3 * u && y + j * cell < p.y + p.h + 3 * u);
    const seen = new Set();
    const sides = [[1, 0], [0, 1], [-1, 0], [0, -1]];
    context.strokeStyle = c.frontMark;
    context.lineWidth = 1.1 * u * c.lineScale;
    context.lineJoin = "round";
    context.beginPath();
    const grow = (i, j) => {
        const stack = [[i, j]];
        seen.add(j * columns + i);
        while (stack.length > 0) {
            const [a, b] = stack[stack.length - 1];
            const next = sides.map(([p, q]) => [a + p, b + q]).filter(([p, q]) => open(p, q) && !seen.has(q * columns + p));
            if (next.length === 0) {
                stack.pop();
                continue;
            }
            const [p, q] = next[Math.floor(random() * next.length)];
            seen.add(q * columns + p);
            const fx = x + (a + 0.5) * cell, fy = y + (b + 0.5) * cell, tx = x + (p + 0.5) * cell, ty = y + (q + 0.5) * cell;
            const sway = (random() - 0.5) * cell * 0.9;
            context.moveTo(fx, fy);
            context.quadraticCurveTo((fx + tx) / 2 + (q === b ? 0 : sway), (fy + ty) / 2 + (q === b ? sway : 0), tx, ty);
            stack.push([p, q]);
        }
    };
    for (let j = 0; j < rows; ++j)
        for (let i = 0; i < columns; ++i)
            if (open(i, j) && !seen.has(j * columns + i))
                grow(i, j);
    context.stroke();
}

/** The tape from the one zero: a black stop, graduations, and a point at every place. */
function tape(context, c, view, g, u) {
    const y = g.tapeTop, h = g.tape;
    context.fillStyle = c.raised;
    context.fillRect(g.x0, y, g.x1 - g.x0, h);
    context.strokeStyle = c.ink;
    context.lineWidth = 2 * u * c.lineScale;
    context.strokeRect(g.x0, y, g.x1 - g.x0, h);
    const step = view.stepMm * g.k;
    for (let i = 1; i * step < g.x1 - g.x0; ++i)
        Printing.strokeLine(context, g.x0 + i * step, y, g.x0 + i * step, y + (i % 5 === 0 ? h : 11 * u), c.ink, (i % 5 === 0 ? 2 : 1.3) * u * c.lineScale);
    context.fillStyle = c.ink;
    context.fillRect(g.x0 - 18 * u, y - 3 * u, 18 * u, h + 6 * u);
    context.fillStyle = c.accent;
    for (const place of view.places) {
        const x = g.x0 + (view.drawnIn ? place.startMm : place.centreMm) * g.k;
        context.beginPath();
        context.moveTo(x, y + h * 0.35);
        context.lineTo(x - 9 * u, y + h - u);
        context.lineTo(x + 9 * u, y + h - u);
        context.closePath();
        context.fill();
    }
}

/** The frame where the hoop lies now: solid with dots, and what it holds. */
function frame(context, c, w, h, bar, u) {
    context.fillStyle = c.hoop;
    for (const [x, y, a, b] of [[0, 0, w, bar], [0, h - bar, w, bar], [0, bar, bar, h - 2 * bar], [w - bar, bar, bar, h - 2 * bar]])
        context.fillRect(x, y, a, b);
    context.fillStyle = c.hoopMark;
    for (let i = 0; i < 7; ++i)
        for (const [x, y] of [[i / 6, 0], [i / 6, 1], [0, i / 6], [1, i / 6]]) {
            context.beginPath();
            context.arc(bar / 2 + x * (w - bar), bar / 2 + y * (h - bar), Math.min(3.2 * u, bar * 0.3), 0, 2 * Math.PI);
            context.fill();
        }
}
