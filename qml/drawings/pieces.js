// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "shades.js" as Shades
.import "tablelay.js" as TableLay

// A piece as it hangs on the shelf, to scale and in its own colours: what is stitched of it, and what is to come.

/** `made`: of each place, row by row, whether its block is stitched. `pens`: {dark, light}, the ink on a light and on a dark cloth. */
function paint(context, c, view, face, made, pens, width, height, air, u) {
    const g = TableLay.lay({ shape: "none", finishedAlongMm: view.finishedAlongMm, finishedAcrossMm: view.finishedAcrossMm,
        columns: view.columns, rows: view.rows, sashingMm: view.sashingMm, edgeMm: view.edgeMm,
        outlineAlongMm: view.outlineAlongMm, outlineAcrossMm: view.outlineAcrossMm }, width, height, air / 4);
    const p = g.piece;
    Shades.rect(context, c, face.block, p.x, p.y, p.w, p.h, u);
    if (g.sashing > 0)
        Shades.sashings(context, c, face, g, u);
    const large = TableLay.blockWidth(g) > 10 * u;
    if (large && face.patches.length > 0) {
        // What is not stitched yet is only hinted at.
        context.globalAlpha = 0.3;
        Shades.patches(context, c, face, g, u, i => !made[i]);
        context.globalAlpha = 1;
        Shades.patches(context, c, face, g, u, i => made[i]);
    }
    if (large)
        blocks(context, c, g, made, penFor(face.block, pens), u);
    if (face.bound)
        Shades.binding(context, c, face, g, u);
    corner(context, c, face, p, u);
}

/** The ink that stands out from a cloth. */
function penFor(colour, pens) {
    const part = at => parseInt(colour.slice(at, at + 2), 16) / 255;
    return 0.3 * part(1) + 0.59 * part(3) + 0.11 * part(5) > 0.5 ? pens.dark : pens.light;
}

function blocks(context, c, g, made, pen, u) {
    TableLay.blocks(g).forEach((b, i) => {
        const inset = Math.max(1.5 * u, Math.min(b.w, b.h) * 0.05);
        const x = b.x + inset, y = b.y + inset, w = b.w - 2 * inset, h = b.h - 2 * inset;
        if (w <= 0 || h <= 0)
            return;
        const width = (made[i] ? 1.8 : 1.3) * u * c.lineScale;
        Printing.roleRect(context, made[i] ? "stitched" : "planned", x, y, w, h, pen, width);
        const further = Math.min(w, h) * 0.09;
        if (made[i] && further > 3 * u)
            Printing.roleRect(context, "stitched", x + further, y + further, w - 2 * further, h - 2 * further, pen, 1.2 * u * c.lineScale);
    });
}

/** The edge, and the corner turned up that shows the other face. */
function corner(context, c, face, p, u) {
    const turn = Math.min(p.w, p.h) * 0.18;
    context.clearRect(p.x + p.w - turn, p.y + p.h - turn, turn + 4 * u, turn + 4 * u);
    context.strokeStyle = c.ink;
    context.lineWidth = 1.8 * u * c.lineScale;
    context.lineJoin = "round";
    context.beginPath();
    context.moveTo(p.x + p.w, p.y + p.h - turn);
    context.lineTo(p.x + p.w - turn, p.y + p.h - turn);
    context.lineTo(p.x + p.w - turn, p.y + p.h);
    context.closePath();
    context.fillStyle = face.back;
    context.fill();
    context.stroke();
    context.beginPath();
    context.moveTo(p.x + p.w, p.y + p.h - turn);
    context.lineTo(p.x + p.w, p.y);
    context.lineTo(p.x, p.y);
    context.lineTo(p.x, p.y + p.h);
    context.lineTo(p.x + p.w - turn, p.y + p.h);
    context.stroke();
}

/** A piece that was put away: folded at the pegs, faded, its lower half in front and the upper half behind it. */
function folded(context, c, view, face, made, pens, width, height, air, u) {
    const x = air, y = air, w = width - 2 * air, behind = Math.min(14 * u, 0.14 * height), h = height - 2 * air - behind;
    const line = 1.8 * u * c.lineScale, step = Math.min(10 * u, w * 0.06);
    // Its other half hangs behind, a little lower and to the side.
    context.fillStyle = face.back;
    context.globalAlpha = 0.5;
    context.fillRect(x + step, y + behind, w - step, h);
    context.globalAlpha = 1;
    Printing.roleRect(context, "solid", x + step, y + behind, w - step, h, c.ink, line);
    context.save();
    context.beginPath();
    context.rect(x, y, w - step, h);
    context.clip();
    context.fillStyle = c.paper;
    context.fillRect(x, y, w - step, h);
    // The half in front is the lower one: its edge is whole, and the fold lies at the pegs.
    context.translate(0, -h);
    paint(context, c, view, face, made, pens, width - step, 2 * h + 2 * air, air, u);
    context.translate(0, h);
    context.globalAlpha = 0.5;
    context.fillStyle = c.paper;
    context.fillRect(x, y, w - step, h);
    context.restore();
    Printing.roleRect(context, "solid", x, y, w - step, h, c.ink, line);
}

/** The pegs it hangs by, from the board above down over its edge. */
function pegs(context, c, places, foot, u) {
    for (const x of places) {
        const half = 5 * u;
        context.beginPath();
        context.moveTo(x - half, 0);
        context.lineTo(x + half, 0);
        context.lineTo(x + half * 0.7, foot);
        context.lineTo(x - half * 0.7, foot);
        context.closePath();
        context.fillStyle = c.table;
        context.fill();
        context.strokeStyle = c.ink;
        context.lineWidth = 1.6 * u * c.lineScale;
        context.stroke();
        Printing.strokeLine(context, x, 0.35 * foot, x, foot, c.ink, 1.2 * u * c.lineScale);
    }
}

/** A board seen from the front, or a post: its wood with the grain along it. */
function wood(context, c, w, h, grained, u) {
    const along = w >= h, length = along ? w : h, depth = along ? h : w;
    context.fillStyle = c.table;
    context.fillRect(0, 0, w, h);
    let seed = 7;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    context.strokeStyle = c.tableMark;
    context.lineCap = "round";
    const strokes = grained ? Math.round(length * depth / (900 * u * u)) : 0;
    for (let i = 0; i < strokes; ++i) {
        const at = random() * length, across = depth * (0.2 + 0.6 * random()), end = Math.min(length, at + (30 + 110 * random()) * u);
        context.lineWidth = (0.8 + 0.6 * random()) * u * c.lineScale;
        context.beginPath();
        context.moveTo(along ? at : across, along ? across : at);
        context.lineTo(along ? end : across, along ? across : end);
        context.stroke();
    }
    context.lineCap = "butt";
    const line = 2.4 * u * c.lineScale;
    for (const edge of [line / 2, depth - line / 2])
        Printing.strokeLine(context, along ? 0 : edge, along ? edge : 0, along ? w : edge, along ? edge : h, c.ink, line);
}

/** The thread from the first stitch to the last: sewn so far, a needle, and the holes still to be sewn. */
function thread(context, c, share, w, h, u) {
    const y = h / 2, from = 2 * u, to = w - 2 * u, here = from + share * (to - from);
    context.fillStyle = c.inkSoft;
    for (let x = from; x <= to; x += 7 * u)
        if (x > here) {
            context.beginPath();
            context.arc(x, y, 1.3 * u * c.lineScale, 0, 2 * Math.PI);
            context.fill();
        }
    context.setLineDash([3, 1.2]);
    Printing.strokeLine(context, from, y, here, y, c.ink, 3.2 * u * c.lineScale);
    Printing.solid(context);
    if (share >= 1)
        return;
    const tip = Math.max(from + 28 * u, Math.min(to, here + 20 * u)), eye = tip - 24 * u;
    context.lineCap = "round";
    Printing.strokeLine(context, eye, y - 9 * u, tip, y, c.accent, 2.6 * u * c.lineScale);
    context.lineCap = "butt";
    context.beginPath();
    context.arc(eye, y - 9 * u, 2.6 * u, 0, 2 * Math.PI);
    context.strokeStyle = c.accent;
    context.lineWidth = 1.6 * u * c.lineScale;
    context.stroke();
}
