// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// Paints the picture of a cut from its layout (rulerlay.js): cloth, rulers of glass, line in use, blade.

function paint(context, c, g, role, u) {
    if (g.v.mat)
        mat(context, c, g, u);
    if (g.v.on === "outline")
        block(context, c, g, role, u);
    else
        cloth(context, c, g, role, u);
    if (!g.v.mat) {
        if (g.v.slide)
            slideGhost(context, c, g, u);
        ruler(context, c, g, g.firstLeft, g.butt - g.firstLeft, g.firstTop, u);
        if (g.v.second)
            ruler(context, c, g, g.butt, g.blade - g.butt, g.secondTop, u);
    }
    lineInUse(context, c, g, u);
    const straight = g.v.on === "fold";
    Printing.blade(context, c, g.blade, Math.min(g.height, g.foot + 44 * u), g.head, g.foot - 52 * u, u);
    if (straight || g.v.on === "outline")
        return;
    const pieces = g.v.second ? [[g.line, g.butt, g.gaps[0]], [g.butt, g.blade, g.gaps[1]]] : [[g.edge, g.blade, g.gaps[0]]];
    for (const [a, b, gap] of pieces)
        Printing.measure(context, c, a, b, g.measureY, b - a > gap + g.measureSlack ? gap : 0, u);
}

/** The cloth: what is kept printed full, what stays behind pale. */
function cloth(context, c, g, role, u) {
    const straight = g.v.on === "fold";
    const high = g.foot - g.cutTop;
    const end = Math.min(g.clothEnd, g.width);
    if (straight) {
        Printing.clothRect(context, c, role, 0, g.cutTop, g.blade, high, u);
        ragged(context, c, g, u);
    } else {
        context.fillStyle = c.paper; // cloth hides the mat's lines
        context.fillRect(g.blade, g.cutTop, Math.max(0, end - g.blade), high);
        context.globalAlpha = 0.42;
        context.fillStyle = Printing.tone(c, role === "patch" ? "patchA" : role);
        context.fillRect(g.blade, g.cutTop, Math.max(0, end - g.blade), high);
        context.globalAlpha = 1;
        Printing.clothRect(context, c, role, g.edge, g.cutTop, g.blade - g.edge, high, u);
        Printing.strokeLine(context, g.edge, g.cutTop, g.edge, g.foot, c.ink, 3 * u * c.lineScale);
        if (g.clothEnd < g.width)
            Printing.strokeLine(context, end, g.cutTop, end, g.foot, c.ink, 3 * u * c.lineScale);
    }
    const from = straight ? 0 : g.edge;
    if (g.v.selvages)
        selvage(context, c, from, end, g.cutTop, -1, u);
    else
        Printing.strokeLine(context, from, g.cutTop, end, g.cutTop, c.ink, 3 * u * c.lineScale);
    if (g.v.folded)
        Printing.roleLine(context, "fold", from, g.foot, end, g.foot, c.fold, 5 * u * c.lineScale);
    else if (g.v.selvages)
        selvage(context, c, from, end, g.foot, 1, u);
    else
        Printing.strokeLine(context, from, g.foot, end, g.foot, c.ink, 3 * u * c.lineScale);
}

/** A selvage: fringe outward (`out` -1 is up, 1 is down) and a second line inside. */
function selvage(context, c, from, to, y, out, u) {
    context.strokeStyle = c.ink;
    context.lineWidth = 1.2 * u * c.lineScale;
    context.beginPath();
    for (let a = from + 5 * u; a < to; a += 7 * u) {
        context.moveTo(a, y);
        context.lineTo(a, y + out * 7 * u);
    }
    context.stroke();
    Printing.strokeLine(context, from, y, to, y, c.ink, 3 * u * c.lineScale);
    Printing.strokeLine(context, from, y - out * 9 * u, to, y - out * 9 * u, c.ink, 1.4 * u * c.lineScale);
}

/** The uneven end that is cut away to square the cloth. */
function ragged(context, c, g, u) {
    let seed = 9;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const points = [];
    for (let y = g.cutTop; y < g.foot; y += 13 * u)
        points.push([g.ragged + (random() - 0.35) * 16 * u, y]);
    points.push([g.ragged, g.foot]);
    const trace = () => {
        context.moveTo(g.blade, g.cutTop);
        for (const [x, y] of points)
            context.lineTo(x, y);
        context.lineTo(g.blade, g.foot);
        context.closePath();
    };
    Printing.clothShape(context, c, "waste", g.blade, g.cutTop, g.ragged - g.blade + 20 * u, g.foot - g.cutTop, u, trace);
    context.beginPath();
    trace();
    context.strokeStyle = c.ink;
    context.lineWidth = 1.8 * u * c.lineScale;
    context.stroke();
}

/** A block with its stitched outline under the ruler; what lies beyond the blade falls away. */
function block(context, c, g, role, u) {
    const left = g.outlineLeft - (g.blade - g.line);
    Printing.clothRect(context, c, role, left, g.cutTop, g.blade - left, g.foot - g.cutTop, u);
    Printing.clothRect(context, c, "waste", g.blade, g.cutTop, g.clothEnd - g.blade, g.foot - g.cutTop, u);
    context.strokeStyle = c.ink;
    context.lineWidth = 2 * u * c.lineScale;
    context.strokeRect(left, g.cutTop, g.clothEnd - left, g.foot - g.cutTop);
    const inset = 9 * u;
    Printing.roleRect(context, "echo", g.outlineLeft + inset, g.outlineTop + inset, g.line - g.outlineLeft - 2 * inset,
                      g.outlineFoot - g.outlineTop - 2 * inset, c.echo, 2 * u * c.lineScale);
    Printing.roleRect(context, "stitched", g.outlineLeft, g.outlineTop, g.line - g.outlineLeft,
                      g.outlineFoot - g.outlineTop, c.stitched, 4 * u * c.lineScale);
}

/** A ruler overprints what lies beneath; its graduations count from the blade's side and from its foot. */
function ruler(context, c, g, x, w, top, u) {
    const h = g.base - top, k = g.k;
    context.globalAlpha = c.rulerAlpha;
    context.fillStyle = c.rulerBody;
    context.fillRect(x, top, w, h);
    context.globalAlpha = 1;
    const fine = [], ticks = [];
    const half = k / 2 >= 7 * u ? 2 : 1, quarter = k / 4 >= 6 * u ? 4 : half;
    for (let q = 1; q * k / half < h; ++q) {
        const y = g.base - q * k / half;
        if (q % half === 0)
            fine.push([x, y, x + w, y]);
        else
            ticks.push([x, y, x + 8 * u, y], [x + w - 8 * u, y, x + w, y]);
    }
    for (let q = 1; q * k / quarter < w; ++q) {
        const a = x + w - q * k / quarter, t = (q % 2 ? 6 : 10) * u;
        if (q % quarter === 0)
            fine.push([a, top, a, g.base]);
        else
            ticks.push([a, top, a, top + t], [a, g.base - t, a, g.base]);
    }
    context.strokeStyle = c.rulerMark;
    for (const [lines, width] of [[fine, 0.7], [ticks, 1]]) {
        context.lineWidth = width * u * c.lineScale;
        context.beginPath();
        for (const [a, b, d, e] of lines) {
            context.moveTo(a, b);
            context.lineTo(d, e);
        }
        context.stroke();
    }
    context.lineWidth = 3 * u * c.lineScale;
    context.strokeRect(x, top, w, h);
}

/** Where the fence ruler lies after it has been slid along: dots, for it is yet to come. */
function slideGhost(context, c, g, u) {
    const x = g.v.second ? g.butt : g.firstLeft;
    const high = g.base - (g.v.second ? g.secondTop : g.firstTop);
    const top = Math.max(8 * u, g.cutTop - 0.6 * g.k);
    Printing.roleRect(context, "planned", x, top, g.blade - x, high, c.rulerMark, 2.4 * u * c.lineScale);
    const middle = (x + g.blade) / 2, from = g.v.second ? g.secondTop : g.firstTop;
    const tip = Math.max(top + 30 * u, from - 60 * u);
    Printing.strokeLine(context, middle, from - 8 * u, middle, tip, c.ink, 3 * u * c.lineScale);
    context.beginPath();
    context.moveTo(middle - 10 * u, tip + 12 * u);
    context.lineTo(middle, tip);
    context.lineTo(middle + 10 * u, tip + 12 * u);
    context.stroke();
}

/** The mat's own lines, an inch apart, where no ruler is wide enough; every fifth is heavier. */
function mat(context, c, g, u) {
    for (let i = -Math.ceil(g.edge / g.k) - 1; i * g.k + g.edge < g.width; ++i) {
        const a = g.edge + i * g.k;
        Printing.strokeLine(context, a, 0, a, g.height, c.rulerMark, (i % 5 === 0 ? 1.2 : 0.5) * u * c.lineScale);
    }
    for (let i = -Math.ceil((g.height - g.foot) / g.k); g.foot - i * g.k > 0; ++i) {
        const b = g.foot - i * g.k;
        Printing.strokeLine(context, 0, b, g.width, b, c.rulerMark, (i % 5 === 0 ? 1.2 : 0.5) * u * c.lineScale);
    }
}

/** The line in use and its rings: both ends of what must touch before the cut. */
function lineInUse(context, c, g, u) {
    const width = 6 * u * c.lineScale;
    if (g.v.on === "fold") {
        Printing.strokeLine(context, g.firstLeft, g.foot, g.blade, g.foot, c.accent, width);
        Printing.ring(context, c, g.firstLeft + 14 * u, g.foot, u);
        Printing.ring(context, c, g.blade - 22 * u, g.foot, u);
        return;
    }
    const top = g.v.mat ? g.cutTop : Math.max(0, g.firstTop);
    Printing.strokeLine(context, g.line, top, g.line, g.v.mat ? g.foot : g.base, c.accent, width);
    if (g.v.on === "outline") {
        Printing.roleLine(context, "stitched", g.line, g.outlineTop, g.line, g.outlineFoot, c.raised, 2.6 * u * c.lineScale);
        Printing.ring(context, c, g.line, g.outlineTop, u);
        Printing.ring(context, c, g.line, g.outlineFoot, u);
        return;
    }
    Printing.ring(context, c, g.line, Math.max(top, g.cutTop) + 24 * u, u);
    Printing.ring(context, c, g.line, g.foot, u);
    if (g.blade - g.line > 60 * u)
        Printing.ring(context, c, g.blade - 22 * u, g.foot, u);
}
