// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "pieces.js" as Pieces
.import "swatches.js" as Swatches

// What is to be taken at the shop, as slips that hang from a line: cloth in its own colour and print, and what is
// no cloth as the thing itself on its card.

const things = { thread: spool, needles: packet };

/**
 * A slip of w by h: cloth printed as `kind` in its colour, or the card of "thread" or "needles", of which `shown`
 * px stay free above what is written. `pens` as Printing.dyed has them, `line` the width of the outline.
 */
function paint(context, c, kind, colour, pens, w, h, shown, line, u) {
    const thing = things[kind], edge = line / 2, tooth = 6.5 * u;
    if (thing) {
        context.fillStyle = c.sashing;
        context.fillRect(edge, edge, w - line, h - line);
    } else {
        const dyed = Printing.dyed(c, { slip: { print: kind, colour: colour } }, pens, false);
        Printing.clothShape(context, dyed, "slip", 0, 0, w, h, 1.15 * u, () => Swatches.pinked(context, edge, edge, w - line, h - line, 2 * tooth, tooth));
    }
    context.beginPath();
    if (thing)
        context.rect(edge, edge, w - line, h - line);
    else
        Swatches.pinked(context, edge, edge, w - line, h - line, 2 * tooth, tooth);
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.lineJoin = "round";
    context.stroke();
    if (!thing)
        return;
    const k = Math.min(w / 130, shown / 64);
    context.save();
    context.translate((w - 100 * k) / 2, (shown - 48 * k) / 2 + 3 * k);
    context.scale(k, k);
    thing(context, c);
    context.restore();
}

/** The line the slips hang from, from edge to edge of one place, and its pegs. */
function hung(context, c, w, h, u) {
    context.strokeStyle = c.ink;
    context.lineWidth = 2.6 * u * c.lineScale;
    context.beginPath();
    context.moveTo(0, h * 0.22);
    context.quadraticCurveTo(w / 2, h * 0.5, w, h * 0.22);
    context.stroke();
    Pieces.pegs(context, c, [w * 0.2, w * 0.8], h, 1.5 * u);
}

/** A spool of thread on its side of 100 by 48, its end hanging loose. */
function spool(context, c) {
    const pen = (width, colour) => {
        context.strokeStyle = colour;
        context.lineWidth = width * c.lineScale;
    };
    context.lineJoin = "round";
    for (const x of [14, 76]) {
        context.fillStyle = c.table;
        context.fillRect(x, 2, 10, 44);
        pen(2, c.ink);
        context.strokeRect(x, 2, 10, 44);
    }
    context.fillStyle = c.accent;
    context.fillRect(24, 7, 52, 34);
    pen(1.4, c.raised);
    context.beginPath();
    for (let x = 27; x < 76; x += 4.6) {
        context.moveTo(x, 7);
        context.lineTo(x + 3, 41);
    }
    context.stroke();
    pen(2, c.ink);
    context.strokeRect(24, 7, 52, 34);
    pen(2.4, c.accent);
    context.beginPath();
    context.moveTo(70, 41);
    context.bezierCurveTo(72, 56, 92, 36, 100, 46);
    context.stroke();
}

/** Needles stuck into a fold of their packet. */
function packet(context, c) {
    context.fillStyle = c.raised;
    context.fillRect(6, 16, 88, 20);
    context.strokeStyle = c.ink;
    context.lineWidth = 1.8 * c.lineScale;
    context.strokeRect(6, 16, 88, 20);
    for (let i = 0; i < 5; ++i) {
        const x = 18 + i * 16;
        // The butt they are held by, the blade to its point; where the fold covers it, it is not seen.
        Printing.strokeLine(context, x, -4, x, 12, c.ink, 4.6 * c.lineScale);
        Printing.strokeLine(context, x, 12, x, 20, c.ink, 2.4 * c.lineScale);
        Printing.strokeLine(context, x, 32, x, 46, c.ink, 2.4 * c.lineScale);
        context.beginPath();
        context.moveTo(x - 1.2 * c.lineScale, 45);
        context.lineTo(x + 1.2 * c.lineScale, 45);
        context.lineTo(x, 53);
        context.closePath();
        context.fillStyle = c.ink;
        context.fill();
        Printing.strokeLine(context, x, 38, x, 42, c.raised, 1.1);
    }
}
