// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// Kits for a class: cloths folded and laid on each other, tied with a ribbon.

/**
 * Where each bundle stands on the boards of a shelf: side by side on one board or, where there may be `boards`, two,
 * or one of each kind where they are too many. Below a board's top `under` is left, under one that nothing is written
 * at only `bare`.
 */
function lay(bundles, width, height, boards, least, most, under, bare) {
    const count = bundles.reduce((sum, bundle) => sum + bundle.count, 0);
    const across = Math.max(1, Math.floor(width / least));
    const each = count <= boards * across;
    const all = [];
    for (const bundle of bundles)
        for (let i = 0; i < (each ? bundle.count : 1); ++i)
            all.push({ kind: bundle.kind, times: each ? 1 : bundle.count });
    const rows = boards > 1 && each && count > Math.max(5, width / (most * 0.7)) ? 2 : 1;
    const columns = Math.max(1, Math.ceil(all.length / rows));
    const first = all.slice(0, columns).some(bundle => bundle.kind === "yours") ? under : bare;
    const high = rows > 1 ? (height - first - under) / 2 : height - under, w = Math.min(most, width / columns), h = Math.min(w * 0.95, high);
    return all.map((bundle, i) => ({
        kind: bundle.kind, times: bundle.times,
        x: each ? (i % columns) * w : i * width / columns, y: (i < columns && rows > 1 ? high : height - under) - h, w: w, h: h
    }));
}

/** The boards the bundles stand on; under those of the kind in hand the edge is marked. */
function boards(context, c, lies, width, deep, held, u) {
    const feet = [...new Set(lies.map(lie => lie.y + lie.h))], line = 2 * u * c.lineScale;
    for (const foot of feet) {
        Printing.clothRect(context, c, "table", 0, foot, width, deep, u);
        Printing.strokeLine(context, 0, foot + line / 2, width, foot + line / 2, c.ink, line);
        Printing.strokeLine(context, 0, foot + deep - line / 2, width, foot + deep - line / 2, c.ink, line);
    }
    context.fillStyle = c.accent;
    for (const lie of lies)
        if (lie.kind === held)
            context.fillRect(Math.floor(lie.x), lie.y + lie.h, Math.ceil(lie.x + lie.w) - Math.floor(lie.x), deep);
}

/** A folded cloth from its front: the fold at the left, the edges of its layers at the right. */
function folded(context, x, y, w, h) {
    const r = h * 0.5;
    context.moveTo(x + w, y);
    context.lineTo(x + r, y);
    context.quadraticCurveTo(x, y, x, y + h / 2);
    context.quadraticCurveTo(x, y + h, x + r, y + h);
    context.lineTo(x + w, y + h);
    context.closePath();
}

function bow(context, x, y, size) {
    for (const side of [-1, 1]) {
        context.moveTo(x, y);
        context.quadraticCurveTo(x + side * size * 0.5, y - size * 1.15, x + side * size * 1.15, y - size * 0.62);
        context.quadraticCurveTo(x + side * size * 1.2, y - size * 0.05, x, y);
    }
}

/** A label that hangs from the knot. */
function tag(context, c, x, y, size, u) {
    context.beginPath();
    context.moveTo(x, y);
    context.lineTo(x + size * 0.5, y - size * 0.5);
    context.lineTo(x + size * 2, y - size * 0.5);
    context.lineTo(x + size * 2, y + size * 0.5);
    context.lineTo(x + size * 0.5, y + size * 0.5);
    context.closePath();
    context.fillStyle = c.ink;
    context.fill();
    context.strokeStyle = c.paper;
    context.lineWidth = 2 * u;
    context.stroke();
    context.beginPath();
    context.arc(x + size * 0.5, y, size * 0.17, 0, 2 * Math.PI);
    context.fillStyle = c.paper;
    context.fill();
}

/** One bundle; `planned` ones are dotted. */
function bundle(context, c, lie, colours, planned, u) {
    const w = lie.w * 0.84, x = lie.x + (lie.w - w) / 2, top = lie.y + lie.h * 0.3, foot = lie.y + lie.h * 0.98;
    const layers = Math.max(3, Math.min(6, colours.length)), h = (foot - top) / layers;
    const middle = x + w * 0.46, size = Math.min(lie.h * 0.2, w * 0.22), band = Math.max(3 * u, w * 0.085);
    const line = (planned ? 2.2 : 1.8) * u * c.lineScale;
    context.lineWidth = line;
    context.strokeStyle = planned ? c.inkSoft : c.ink;
    context.setLineDash(planned ? [1.2, 2.2] : []);
    for (let i = 0; i < layers; ++i) {
        context.beginPath();
        folded(context, x + (i % 2) * w * 0.02, top + i * h, w - (i % 2) * w * 0.04, h);
        context.fillStyle = planned ? c.paper : colours[i] ?? colours[0] ?? c.front;
        context.fill();
        context.stroke();
        if (planned)
            continue;
        context.beginPath();
        context.moveTo(x + w * 0.12, top + (i + 0.5) * h);
        context.lineTo(x + w * 0.94, top + (i + 0.5) * h);
        context.lineWidth = 0.8 * u * c.lineScale;
        context.stroke();
        context.lineWidth = line;
    }
    context.fillStyle = c.paper;
    context.beginPath();
    context.rect(middle - band / 2, top, band, foot - top);
    context.fill();
    context.stroke();
    context.beginPath();
    bow(context, middle, top, size);
    context.fill();
    context.stroke();
    context.setLineDash([]);
    if (lie.kind === "yours")
        tag(context, c, middle, top + h * layers / 2, Math.min(h * 1.7, w * 0.25), u);
}
