// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "tablelay.js" as TableLay

// Paints the table as boards and the piece on it: sashing, blocks with their stitched outlines, edge.

function paint(context, c, g, back, motif, u) {
    if (g.table)
        table(context, c, g, u);
    if (g.mats.length === 0)
        piece(context, c, g, back, motif, u);
    const middle = { x: g.piece.x + g.piece.w / 2, y: g.piece.y + g.piece.h / 2 };
    for (const mat of g.mats) {
        context.save();
        context.translate(mat.x, mat.y);
        context.rotate(mat.turn * Math.PI / 180);
        context.translate(-middle.x, -middle.y);
        piece(context, c, g, back, motif, u);
        context.restore();
    }
}

/** The piece, or one of a set of mats. */
function piece(context, c, g, back, motif, u) {
    const p = g.piece;
    const cloth = back ? "back" : "front";
    const between = g.sashing > 0 ? back && c.sashingBack ? "sashingBack" : "sashing" : cloth;
    // Marks at half size: the cloth is far away here.
    Printing.clothRect(context, c, between, p.x, p.y, p.w, p.h, u * 0.5);
    const on = Printing.upon(c, cloth);
    if (motif.length === 0 && TableLay.blockWidth(g) <= 40 * u)
        manySmall(context, on, g, cloth, u);
    else
        oneByOne(context, on, g, cloth, motif, u);
    edge(context, c, g, u);
}

/** Blocks too small for marks and outlines of their own: ink and cloth laid on in two passes, nothing stroked. */
function manySmall(context, c, g, cloth, u) {
    const half = 0.6 * u * c.lineScale;
    context.fillStyle = c.ink;
    TableLay.fill(g, context, half);
    context.fillStyle = c[cloth];
    TableLay.fill(g, context, -half);
}

function oneByOne(context, c, g, cloth, motif, u) {
    for (const b of TableLay.blocks(g)) {
        context.fillStyle = c[cloth];
        context.fillRect(b.x, b.y, b.w, b.h);
        if (b.w > 40 * u && b.h > 40 * u)
            Printing.clothRect(context, c, cloth, b.x, b.y, b.w, b.h, u * 0.55);
        context.strokeStyle = c.ink;
        context.lineWidth = 1.2 * u * c.lineScale;
        context.strokeRect(b.x, b.y, b.w, b.h);
        if (b.w > 90 * u && b.h > 90 * u)
            outline(context, c, b, u);
        for (const shape of motif)
            patch(context, c, b, shape, u);
    }
}

function table(context, c, g, u) {
    const t = g.table;
    const trace = () => {
        const r = t.h / 2;
        if (g.round && g.leaf > 0) { // two half rounds and the leaf between them
            context.moveTo(t.x + r, t.y);
            context.lineTo(t.x + t.w - r, t.y);
            context.arc(t.x + t.w - r, t.y + r, r, -Math.PI / 2, Math.PI / 2, false);
            context.lineTo(t.x + r, t.y + t.h);
            context.arc(t.x + r, t.y + r, r, Math.PI / 2, Math.PI * 1.5, false);
        } else if (g.round) {
            context.ellipse(t.x, t.y, t.w, t.h);
        } else {
            context.rect(t.x, t.y, t.w, t.h);
        }
    };
    Printing.clothShape(context, c, "table", t.x, t.y, t.w, t.h, u, trace);
    context.beginPath();
    trace();
    context.strokeStyle = c.ink;
    context.lineWidth = 4 * u * c.lineScale;
    context.stroke();
    // The leaf's two joints.
    for (const x of g.leaf > 0 ? [t.x + (t.w - g.leaf) / 2, t.x + (t.w + g.leaf) / 2] : [])
        Printing.strokeLine(context, x, t.y, x, t.y + t.h, c.ink, 2 * u * c.lineScale);
}

/** The stitched outline, and an echo inside it where there is room. */
function outline(context, c, b, u) {
    const o = b.outline;
    const inset = Math.max(0, (o.w - b.w) / 2 + 4 * u, (o.h - b.h) / 2 + 4 * u);
    const w = o.w - 2 * inset, h = o.h - 2 * inset;
    if (w < 8 * u || h < 8 * u)
        return;
    Printing.roleRect(context, "stitched", o.x + inset, o.y + inset, w, h, c.stitched, 1.6 * u * c.lineScale);
    const further = Math.max(5 * u, Math.min(w, h) * 0.07);
    if (w > 110 * u && h > 110 * u)
        Printing.roleRect(context, "echo", o.x + inset + further, o.y + inset + further, w - 2 * further, h - 2 * further,
                          c.echo, 1.1 * u * c.lineScale);
}

/** A patch: {role, points: [[x, y], …]}, points from 0 to 1 of the outline's width and height. */
function patch(context, c, b, shape, u) {
    const o = b.outline;
    const trace = () => {
        shape.points.forEach(([x, y], i) => {
            if (i === 0)
                context.moveTo(o.x + x * o.w, o.y + y * o.h);
            else
                context.lineTo(o.x + x * o.w, o.y + y * o.h);
        });
        context.closePath();
    };
    context.beginPath();
    trace();
    context.fillStyle = c[shape.role] ?? c.patchA;
    context.fill();
    context.strokeStyle = c.ink;
    context.lineWidth = 1.3 * u * c.lineScale;
    context.lineJoin = "round";
    context.stroke();
    context.lineJoin = "miter";
}

/** The binding: a solid band inside the piece's edge, mitred at the corners. */
function edge(context, c, g, u) {
    const p = g.piece;
    const width = Math.max(3.4 * u, Math.min(g.edge, Math.min(p.w, p.h) * 0.08));
    context.strokeStyle = c.binding;
    context.lineWidth = width;
    context.strokeRect(p.x + width / 2, p.y + width / 2, p.w - width, p.h - width);
    const line = c.pens?.binding;
    if (line) {
        // It may be of one cloth with what it binds: a line on either side tells it from that.
        context.strokeStyle = line;
        context.lineWidth = 1.2 * u * c.lineScale;
        context.strokeRect(p.x, p.y, p.w, p.h);
        context.strokeRect(p.x + width, p.y + width, p.w - 2 * width, p.h - 2 * width);
    }
    if (width < 6 * u)
        return;
    for (const [x, y, dx, dy] of [[p.x, p.y, 1, 1], [p.x + p.w, p.y, -1, 1], [p.x + p.w, p.y + p.h, -1, -1], [p.x, p.y + p.h, 1, -1]])
        Printing.strokeLine(context, x, y, x + dx * width, y + dy * width, line ?? c.raised, 1.1 * u * c.lineScale);
}
