// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// Hoop strips in small: lain under each other, or with what their gaps yield. Right-handed sheets, px.

/** Threads of the selvage at an end. */
function fringe(context, c, x, top, foot, out, u) {
    Printing.strokeLine(context, x, top, x, foot, c.ink, 2.4 * u * c.lineScale);
    for (let y = top + 3 * u; y < foot; y += 7 * u)
        Printing.strokeLine(context, x, y, x + out * 6 * u, y, c.ink, 1.2 * u * c.lineScale);
}

/** A strip among the others, fitted in: its blocks stitched, in the hoop, still to do. */
function row(context, c, view, w, h, u) {
    const air = 7 * u, k = Math.min((w - 2 * air) / Math.max(1, view.lengthMm), h / Math.max(1, view.widthMm));
    const wide = view.lengthMm * k, high = view.widthMm * k, x0 = air, y0 = (h - high) / 2, mid = h / 2;
    Printing.clothRect(context, c, "front", x0, y0, wide, high, u);
    for (const y of [y0, y0 + high])
        Printing.strokeLine(context, x0, y, x0 + wide, y, c.ink, 2 * u * c.lineScale);
    fringe(context, c, x0, y0, y0 + high, -1, u);
    fringe(context, c, x0 + wide, y0, y0 + high, 1, u);
    const bh = view.blockAcrossMm * k;
    for (const place of view.places) {
        const x = x0 + place.startMm * k, bw = place.alongMm * k, y = mid - bh / 2;
        if (place.state === "stitched")
            quilted(context, c, x, y, bw, bh, u);
        else if (place.state === "next")
            hooped(context, c, x, y, bw, bh, Math.min(y - y0 - u, 9 * u), u);
        else
            Printing.roleRect(context, "planned", x, y, bw, bh, c.stitched, 2 * u * c.lineScale);
    }
}

/** A stitched block in small: its outline, and a line that wanders about in it. */
function quilted(context, c, x, y, w, h, u) {
    context.fillStyle = c.raised;
    context.fillRect(x, y, w, h);
    const lines = Math.max(2, Math.floor(h / (9 * u))), step = h / lines;
    context.strokeStyle = c.echo;
    context.lineWidth = 1.6 * u * c.lineScale;
    context.beginPath();
    for (let i = 0; i < lines; ++i) {
        const at = y + (i + 0.5) * step;
        context.moveTo(x + 3 * u, at);
        context.bezierCurveTo(x + w * 0.35, at - step * 0.9, x + w * 0.65, at + step * 0.9, x + w - 3 * u, at);
    }
    context.stroke();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.6 * u * c.lineScale;
    context.strokeRect(x, y, w, h);
}

/** The block in the hoop: the frame round its dotted outline. */
function hooped(context, c, x, y, w, h, around, u) {
    const bar = Math.max(5 * u, around * 0.55), a = Math.max(bar, around);
    context.strokeStyle = c.hoop;
    context.lineWidth = bar;
    context.lineJoin = "miter";
    context.strokeRect(x - a + bar / 2, y - a + bar / 2, w + 2 * a - bar, h + 2 * a - bar);
    Printing.roleRect(context, "planned", x, y, w, h, c.stitched, 2.6 * u * c.lineScale);
}

/** Where a strip with its gaps starts in a width, and its scale; waste tails have room at both ends. */
function scaleOf(longestMm, w, mm) {
    const air = 4 * mm;
    return { k: (w - 2 * air) / Math.max(1, longestMm), x0: air };
}

/** So much of its width as there is room for; the rest is torn away. */
function layGaps(way, scale, h, mm) {
    const whole = way.widthMm * scale.k, high = Math.min(whole, h);
    return { k: scale.k, x0: scale.x0, wide: way.lengthMm * scale.k, high: high, torn: high < whole - mm, first: (whole - way.acrossMm * scale.k) / 2 };
}

/** The near edge of a strip that goes on: torn. */
function edge(g, u) {
    const points = [[g.x0, 0], [g.x0 + g.wide, 0], [g.x0 + g.wide, g.high]];
    if (g.torn)
        for (let x = g.x0 + g.wide - 9 * u, i = 0; x > g.x0 + 4 * u; x -= 9 * u, ++i)
            points.push([x, g.high - (i % 2 === 0 ? 6 : 0) * u]);
    points.push([g.x0, g.high]);
    return points;
}

function gaps(context, c, way, g, u) {
    const points = edge(g, u);
    const trace = () => {
        points.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
        context.closePath();
    };
    Printing.clothShape(context, c, "front", g.x0, 0, g.wide, g.high, u, trace);
    context.save();
    context.beginPath();
    trace();
    context.clip();
    for (const gap of way.gaps)
        if (gap.yields)
            sashing(context, c, g.x0 + (gap.fromMm + gap.toMm) / 2 * g.k, way.sashMm * g.k, g.high, u);
    for (const start of way.starts)
        Printing.roleRect(context, "planned", g.x0 + start * g.k, g.first, way.alongMm * g.k, way.acrossMm * g.k, c.stitched, 2.6 * u * c.lineScale);
    context.restore();
    context.beginPath();
    trace();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.2 * u * c.lineScale;
    context.lineJoin = "round";
    context.stroke();
    if (way.tails)
        for (const x of [g.x0 - 20 * u, g.x0 + g.wide]) {
            Printing.clothRect(context, c, "waste", x, 0, 20 * u, g.high, u);
            context.strokeStyle = c.ink;
            context.strokeRect(x, 0, 20 * u, g.high);
        }
    for (const start of way.lost)
        givenUp(context, c, g.x0 + start * g.k, g.first, way.alongMm * g.k, Math.min(way.acrossMm * g.k, g.high - g.first), u);
}

/** The piece a gap yields: hatched, and cut out on either side. */
function sashing(context, c, x, w, high, u) {
    Printing.clothRect(context, c, "sashing", x - w / 2, 0, w, high, u);
    context.save();
    context.beginPath();
    context.rect(x - w / 2, 0, w, high);
    context.clip();
    context.beginPath();
    for (let y = -w; y < high + w; y += 11 * u) {
        context.moveTo(x - w / 2, y + w);
        context.lineTo(x + w / 2, y);
    }
    context.strokeStyle = c.ink;
    context.lineWidth = 1.5 * u * c.lineScale;
    context.stroke();
    context.restore();
    for (const at of [x - w / 2, x + w / 2])
        Printing.strokeLine(context, at, 0, at, high, c.blade, 2.6 * u * c.lineScale);
}

/** A block there is no room for any more. */
function givenUp(context, c, x, y, w, h, u) {
    Printing.roleRect(context, "planned", x, y, w, h, c.stop, 2.6 * u * c.lineScale);
    Printing.strokeLine(context, x, y, x + w, y + h, c.stop, 2.6 * u * c.lineScale);
    Printing.strokeLine(context, x, y + h, x + w, y, c.stop, 2.6 * u * c.lineScale);
}

/** A gap's measure under the strip: its two edges brought down, and a line between. */
function gapMeasure(context, c, x1, x2, from, foot, u) {
    for (const x of [x1, x2])
        Printing.strokeLine(context, x, from, x, foot + 5 * u, c.ink, 2 * u * c.lineScale);
    Printing.strokeLine(context, x1, foot, x2, foot, c.ink, 2.6 * u * c.lineScale);
}

/** How many times larger a difference is drawn, so that it is seen and the block still looks like one. */
function times(view) {
    const most = Math.max(view.along, view.across, 0.001);
    return [20, 10, 5, 2].find(n => n * most <= 0.24) ?? 1;
}

/** Where the block as it came lies in the block as it was sent: {x, y, w, h, cw, ch}, both about one middle. */
function layDrawn(view, w, h) {
    const k = Math.min(w / view.alongMm, h / view.acrossMm), n = times(view);
    const sw = view.alongMm * k, sh = view.acrossMm * k;
    return { x: (w - sw) / 2, y: (h - sh) / 2, w: sw, h: sh, cw: sw * (1 - n * view.along), ch: sh * (1 - n * view.across) };
}

/** Drawn in by the stitching: dotted as sent, over it the block as it came, and arrows the way it went. */
function drawnIn(context, c, g, u) {
    const x = g.x + (g.w - g.cw) / 2, y = g.y + (g.h - g.ch) / 2;
    Printing.clothRect(context, c, "front", x, y, g.cw, g.ch, u);
    quiltedWide(context, c, x, y, g.cw, g.ch, u);
    context.strokeStyle = c.ink;
    context.lineWidth = 3.4 * u * c.lineScale;
    context.strokeRect(x, y, g.cw, g.ch);
    Printing.roleRect(context, "planned", g.x, g.y, g.w, g.h, c.accent, 3.4 * u * c.lineScale);
    const mx = g.x + g.w / 2, my = g.y + g.h / 2;
    arrow(context, c, g.x, my, x, my, u);
    arrow(context, c, g.x + g.w, my, x + g.cw, my, u);
    arrow(context, c, mx, g.y, mx, y, u);
    arrow(context, c, mx, g.y + g.h, mx, y + g.ch, u);
}

function quiltedWide(context, c, x, y, w, h, u) {
    context.strokeStyle = c.echo;
    context.lineWidth = 2 * u * c.lineScale;
    const step = 30 * u;
    context.beginPath();
    for (let at = y + step * 0.7, i = 0; at < y + h - step * 0.4; at += step, ++i) {
        context.moveTo(x + 10 * u, at);
        for (let a = x + 10 * u; a + 2 * step < x + w; a += 2 * step)
            context.bezierCurveTo(a + step * 0.6, at - step * 0.8, a + step * 1.4, at + step * 0.8, a + 2 * step, at);
    }
    context.stroke();
}

function arrow(context, c, x1, y1, x2, y2, u) {
    const span = Math.hypot(x2 - x1, y2 - y1);
    if (span < 2 * u)
        return;
    const dx = (x2 - x1) / span, dy = (y2 - y1) / span, wing = Math.min(span, 14 * u);
    Printing.strokeLine(context, x1, y1, x2, y2, c.accent, 3.4 * u * c.lineScale);
    for (const side of [-1, 1])
        Printing.strokeLine(context, x2 - dx * wing + side * dy * wing * 0.6, y2 - dy * wing + side * dx * wing * 0.6, x2, y2, c.accent, 3.4 * u * c.lineScale);
}

/** The line of a key: dotted as sent, or solid. */
function sample(context, c, dotted, w, h, u) {
    if (dotted)
        Printing.roleLine(context, "planned", 0, h / 2, w, h / 2, c.accent, 3.4 * u * c.lineScale);
    else
        Printing.strokeLine(context, 0, h / 2, w, h / 2, c.ink, 3.4 * u * c.lineScale);
}
