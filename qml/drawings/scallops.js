// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// One scallop close to, with its chord, its depth and its radius. Px.

/** Where it lies in w by h under `top`: its chord is as wide as leaves `side` px for the depth beyond it. */
function lay(way, depthMm, w, h, top, side, air) {
    const deep = depthMm > 0 ? depthMm : 1;
    const k = Math.max(0.001, Math.min((w - side - 2 * air) / Math.max(1, 1.32 * way.chordMm), (h - top - air) / (2 * deep)));
    const q = way.chordMm * k, d = deep * k, r = way.radiusMm * k;
    const x1 = air + 0.16 * q + Math.max(0, w - side - 2 * air - 1.32 * q) / 2, mid = x1 + q / 2;
    // The centre may lie far below the sheet: the radius then runs out of it.
    const centre = top + r, foot = Math.min(h - air, centre);
    const half = Math.asin(Math.min(1, q / (2 * r))), at = Math.min(half * 0.62, 0.62);
    return { x1: x1, x2: x1 + q, mid: mid, crown: top, level: top + d, q: q, d: d, r: r, half: half, centre: centre,
             ex: mid - r * Math.sin(at), ey: centre - r * Math.cos(at), foot: foot,
             whole: centre <= h - air, at: at, h: h };
}

/** A place on the radius, `part` of the way from its foot on the sheet up to the arc. */
function onRadius(g, part) {
    const y = g.foot + (g.ey - g.foot) * part;
    return { x: g.mid - (g.centre - y) * Math.tan(g.at), y: y };
}

function paint(context, c, g, seam, mm, u) {
    const up = -Math.PI / 2, more = Math.min(g.half, 0.16 * g.q / g.r);
    const arcs = () => {
        // A little of the scallop at either side, so that the inside points are seen.
        context.arc(g.mid - g.q, g.centre, g.r, up + g.half - more, up + g.half, false);
        context.arc(g.mid, g.centre, g.r, up - g.half, up + g.half, false);
        context.arc(g.mid + g.q, g.centre, g.r, up - g.half, up - g.half + more, false);
    };
    const trace = () => {
        arcs();
        context.lineTo(g.mid + g.q + g.r * Math.sin(more - g.half), g.h);
        context.lineTo(g.mid - g.q - g.r * Math.sin(more - g.half), g.h);
        context.closePath();
    };
    Printing.clothShape(context, c, "front", 0, 0, g.x2 + g.q, g.h, u, trace);
    context.save();
    context.beginPath();
    trace();
    context.clip();
    context.beginPath();
    arcs();
    context.strokeStyle = c.binding;
    context.lineWidth = 2 * Math.max(seam, 1.6 * mm);
    context.lineJoin = "round";
    context.stroke();
    context.restore();
    context.beginPath();
    arcs();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.6 * u * c.lineScale;
    context.lineJoin = "round";
    context.stroke();
    measures(context, c, g, mm, u);
}

function measures(context, c, g, mm, u) {
    const line = (x1, y1, x2, y2, width = 3) => Printing.strokeLine(context, x1, y1, x2, y2, c.accent, width * u * c.lineScale);
    // The chord, over the crown.
    const y = g.crown - 2.6 * mm;
    for (const x of [g.x1, g.x2]) {
        line(x, y - 1.6 * mm, x, y + 1.6 * mm);
        Printing.roleLine(context, "planned", x, y, x, g.level, c.accent, 2 * u * c.lineScale);
    }
    line(g.x1, y, g.x2, y);
    // The depth, beyond the far end.
    const x = g.x2 + 0.16 * g.q + 2.4 * mm;
    for (const level of [g.crown, g.level]) {
        Printing.roleLine(context, "planned", level === g.crown ? g.mid : g.x2, level, x, level, c.accent, 2 * u * c.lineScale);
        line(x - 1.4 * mm, level, x + 1.4 * mm, level);
    }
    line(x, g.crown, x, g.level);
    // The radius, from its centre where that lies on the sheet.
    const from = onRadius(g, 0);
    line(from.x, from.y, g.ex, g.ey);
    const bx = Math.sin(g.at), by = Math.cos(g.at);
    for (const side of [-1, 1])
        line(g.ex + (bx * 2 - side * by * 1.3) * mm, g.ey + (by * 2 + side * bx * 1.3) * mm, g.ex, g.ey);
    if (g.whole) {
        line(g.mid - 1.6 * mm, g.centre, g.mid + 1.6 * mm, g.centre);
        line(g.mid, g.centre - 1.6 * mm, g.mid, g.centre + 1.6 * mm);
    }
}
