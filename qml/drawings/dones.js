// SPDX-License-Identifier: MIT
.pragma library
.import "edges.js" as Edges
.import "laying.js" as Lay
.import "printing.js" as Printing
.import "tablelay.js" as TableLay

// The finished piece on the table it was made at, what was in hand put down beside it. `c` is a colour set with the
// piece's cloths in it, `g` as Edges.piece has it, `mm` one millimetre in px, `u` one unit of the prints.

/** How much of its corner is turned back: none of an edge that curves. */
function turned(view, g) {
    return view.radiusMm > 0 || view.depthMm > 0 ? 0 : 0.3 * Math.min(g.w, g.h);
}

/** The piece without the corner turned back at the lower right. */
function whole(context, view, g, by) {
    const f = turned(view, g);
    Lay.trace(context, [[g.x - by, g.y - by], [g.x + g.w + by, g.y - by], [g.x + g.w + by, g.y + g.h - f + (f > 0 ? -by : by)],
                        [g.x + g.w - f + (f > 0 ? -by : by), g.y + g.h + by], [g.x - by, g.y + g.h + by]], true);
}

/** Everything: the table's boards to every side, the piece with its shadow. */
function paint(context, c, view, face, fit, g, width, height, mm, u) {
    Printing.clothRect(context, c, "table", 0, 0, width, height, u);
    shadow(context, c, view, g, mm);
    context.save();
    context.beginPath();
    whole(context, view, g, 2);
    context.clip();
    Edges.piece(context, Printing.upon(c, "front"), view, g, true, u);
    patches(context, Printing.upon(c, "front"), face, fit, u);
    context.restore();
    if (turned(view, g) > 0)
        corner(context, c, view, g, mm, u);
}

function shadow(context, c, view, g, mm) {
    const lies = Object.assign({}, g, { x: g.x + 1.3 * mm, y: g.y + 1.6 * mm });
    context.save();
    context.globalAlpha = 0.34;
    context.fillStyle = c.tableMark;
    context.beginPath();
    if (turned(view, g) > 0)
        whole(context, view, lies, 0);
    else
        Edges.outline(context, lies.x, lies.y, g.w, g.h, Math.min(view.radiusMm * g.s, g.w / 2, g.h / 2), Edges.scalloping(view, lies));
    context.fill();
    context.restore();
}

/** Of each block its patches, one stacked on the other, stitched round. */
function patches(context, c, face, fit, u) {
    if ((face?.patches?.length ?? 0) === 0 || TableLay.blockWidth(fit) < 8 * u)
        return;
    const lap = 0.9;
    TableLay.blocks(fit).forEach((b, number) => {
        const own = face.patches[face.at[number] ?? 0] ?? [];
        const all = own.reduce((sum, patch) => sum + patch.heightMm * fit.k, 0) * lap;
        if (all <= 0)
            return;
        const part = Math.min(1, b.h * 0.8 / all);
        let foot = b.y + (b.h + all * part) / 2;
        for (const patch of own) {
            const w = Math.min(patch.widthMm * fit.k * part, b.w * 0.84), h = patch.heightMm * fit.k * part;
            context.fillStyle = patch.dye !== "" ? patch.dye : c.patchA;
            context.fillRect(b.x + (b.w - w) / 2, foot - h, w, h);
            context.strokeStyle = c.ink;
            context.lineWidth = 1.6 * u * c.lineScale;
            context.strokeRect(b.x + (b.w - w) / 2, foot - h, w, h);
            foot -= h * lap;
        }
    });
}

/** The corner turned back on the piece: the back's cloth, and the binding's other side. */
function corner(context, c, view, g, mm, u) {
    const f = turned(view, g), x = g.x + g.w - f, y = g.y + g.h - f, b = Math.max(view.seamMm * g.s, view.seamMm > 0 ? 1.2 * mm : 0);
    context.save();
    context.globalAlpha = 0.34;
    Lay.solid(context, c, [[x - 1.2 * mm, y + 0.9 * mm], [g.x + g.w, y], [x, g.y + g.h]], c.tableMark, 0);
    context.restore();
    const shape = () => Lay.trace(context, [[x, y], [g.x + g.w, y], [x, g.y + g.h]], true);
    Printing.clothShape(context, c, "back", x, y, f, f, u, shape);
    if (b > 0) {
        context.fillStyle = c.binding;
        for (const band of [[[x, y], [g.x + g.w, y], [g.x + g.w - b, y + b], [x + b, y + b]], [[x, y], [x + b, y + b], [x + b, g.y + g.h - b], [x, g.y + g.h]]]) {
            context.beginPath();
            Lay.trace(context, band, true);
            context.fill();
        }
        Printing.strokeLine(context, x, y, x + b, y + b, c.raised, 1.6 * u * c.lineScale);
    }
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.lineJoin = "round";
    context.beginPath();
    shape();
    context.stroke();
}
