// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A finished join in section: block A, sashing, block B, the front above. Millimetres across, cloth drawn
// thicker than it is.

/** Pixels to one millimetre of the join. `sewn` is the width of the seam's own words, which stand left of it. */
function scale(view, width, mm, sewn) {
    const beyond = Math.max(view.allowanceMm, 8);
    const run = view.finishedMm + 2 * beyond + view.catchMm;
    const beside = 2 * (width / 2 - 5 * mm - sewn) / view.finishedMm;
    return Math.max(0.8 * mm, Math.min((width - 8 * mm) / run, 5 * mm, beside));
}

// `named` is the width of the catch's own words: without room for them right of the fold they stand left of the
// seam, and the fold under is told a row farther down. `noted` is the height of the words at the head, on which
// no cloth lies; `under`, if given, is kept free below for other words than those.
function lay(view, width, height, mm, scale, named, noted, under) {
    const narrow = width / 2 + (view.finishedMm / 2 + view.catchMm) * scale + 4 * mm + named > width;
    const foldRow = under > 0 ? under : narrow ? 19 * mm : 14 * mm;
    // The words beside the measures take 20 mm and the row of the fold; the join 10.3 cloths.
    // Those at the head stand clear of the cloth, and a little less so before the lowest would run out.
    const least = noted - 2.4 * mm, spare = height - 7.5 * mm - foldRow - 10.3 * 1.6 * mm;
    const head = Math.max(12.5 * mm, least, Math.min(noted - 0.8 * mm, spare));
    const cloth = Math.max(1.6 * mm, Math.min(4.4 * mm, (height - 7.5 * mm - head - foldRow) / 10.3));
    const batting = Math.max(4 * mm, Math.min(12 * mm, 2.5 * cloth));
    const above = batting / 2 + 4.2 * cloth + head, below = batting / 2 + 3.6 * cloth + foldRow + 7.5 * mm;
    const middle = above + Math.max(0, height - above - below) / 2;
    const seamA = width / 2 - view.finishedMm * scale / 2, seamB = width / 2 + view.finishedMm * scale / 2;
    return { scale, narrow, foldRow, cloth, batting, middle, seamA, seamB,
             edgeA: seamA + view.allowanceMm * scale, edgeB: seamB - view.allowanceMm * scale,
             // What a test join's edges leave between them: the one edge, and where the other or the batting laid in ends.
             gapA: seamB - (view.allowanceMm + (view.gapMm ?? 0)) * scale, gapB: seamB - view.allowanceMm * scale,
             middleX: width / 2,
             stripA: seamA + view.seamMm * scale, // the strips' own raw edge: the seam is counted from it
             top: middle - batting / 2 - cloth, foot: middle + batting / 2 + cloth };
}

/** A folded ribbon of cloth from x1 to x2 with its round end at `round` ("left", "right", "both" or ""). */
function ribbon(context, c, role, x1, x2, y, h, ends, u) {
    const r = h / 2;
    const trace = () => {
        context.moveTo(x1 + (ends.left ? r : 0), y);
        context.lineTo(x2 - (ends.right ? r : 0), y);
        if (ends.right)
            context.arc(x2 - r, y + r, r, -Math.PI / 2, Math.PI / 2, false);
        else
            context.lineTo(x2, y + h);
        context.lineTo(x1 + (ends.left ? r : 0), y + h);
        if (ends.left)
            context.arc(x1 + r, y + r, r, Math.PI / 2, -Math.PI / 2, false);
        context.closePath();
    };
    Printing.clothShape(context, c, role, x1, y, x2 - x1, h, u, trace);
    context.beginPath();
    trace();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.stroke();
}

function seam(context, c, x, y1, y2, u) {
    Printing.strokeLine(context, x, y1, x, y2, c.seam, 4 * u * c.lineScale);
    for (let y = y1 + 5 * u; y < y2; y += 11 * u)
        Printing.strokeLine(context, x - 7 * u, y, x + 7 * u, y, c.seam, 2.6 * u * c.lineScale);
}

function block(context, c, g, x1, x2, backed, u) {
    const w = x2 - x1, parts = [["front", g.top, g.cloth], ["batting", g.top + g.cloth, g.batting]];
    if (backed)
        parts.push(["back", g.top + g.cloth + g.batting, g.cloth]);
    for (const [role, y, h] of parts) {
        Printing.clothRect(context, c, role, x1, y, w, h, u);
        context.strokeStyle = c.ink;
        context.lineWidth = 2.2 * u * c.lineScale;
        context.strokeRect(x1, y, w, h);
    }
}

/** No cloth lies in a gap; where two edges lie over each other there is one cloth too many: both are hatched. */
function parting(context, c, view, g, u) {
    const x = Math.min(g.gapA, g.gapB), w = Math.abs(g.gapB - g.gapA), y = g.top, h = g.foot - g.top;
    context.save();
    context.beginPath();
    context.rect(x, y, w, h);
    context.clip();
    context.globalAlpha = view.gapMm < 0 ? 0.34 : 1;
    context.fillStyle = view.gapMm < 0 ? c.ink : c.paper;
    context.fillRect(x, y, w, h);
    context.globalAlpha = 1;
    context.strokeStyle = c.stop;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.beginPath();
    for (let a = x - h; a < x + w; a += 13 * u) {
        context.moveTo(a, y + h);
        context.lineTo(a + h, y);
        if (view.gapMm < 0) {
            context.moveTo(a, y);
            context.lineTo(a + h, y + h);
        }
    }
    context.stroke();
    context.restore();
    for (const edge of [x, x + w])
        Printing.strokeLine(context, edge, y, edge, y + h, c.stop, 4 * u * c.lineScale);
}

/** Arrows from outside at both ends: there is seldom room between them. */
function measureGap(context, c, g, y, mm, u) {
    const x1 = Math.min(g.gapA, g.gapB), x2 = Math.max(g.gapA, g.gapB), wing = 1.5 * mm;
    for (const [x, out] of [[x1, -1], [x2, 1]]) {
        Printing.strokeLine(context, x, y, x + out * 5.5 * mm, y, c.stop, 3 * u * c.lineScale);
        Printing.strokeLine(context, x, y, x + out * wing, y - wing, c.stop, 3 * u * c.lineScale);
        Printing.strokeLine(context, x, y, x + out * wing, y + wing, c.stop, 3 * u * c.lineScale);
    }
}

function paint(context, c, view, g, width, u) {
    const backed = view.backed;
    const gap = 3 * u; // the two edges are told apart
    const fillTo = view.tested ? g.gapA : g.edgeB;
    if (view.filled && fillTo - g.edgeA > 2 * gap)
        Printing.clothRect(context, c, "batting", g.edgeA + gap, g.top + g.cloth / 2, fillTo - g.edgeA - 2 * gap, g.batting + g.cloth, u);
    block(context, c, g, -20 * u, g.edgeA - gap / 2, backed, u);
    block(context, c, g, Math.max(g.edgeB, g.edgeA) + gap / 2, width + 20 * u, backed, u);
    if (view.tested && view.gapMm !== 0)
        parting(context, c, view, g, u);
    // Front strip: two folds lie over the blocks' allowances; where those are pared, they are pared with them.
    const thick = g.cloth * 0.9, over = 5 * u;
    ribbon(context, c, "sashing", g.seamA - thick / 2, g.seamB + thick / 2, g.top - 2 * thick - over, thick, { left: true, right: true }, u);
    const inA = Math.min(g.stripA, g.middleX), inB = Math.max(g.seamA + g.seamB - g.stripA, g.middleX);
    ribbon(context, c, "sashing", g.seamA - thick / 2, inA - gap / 2, g.top - thick - over / 2, thick, { left: true }, u);
    ribbon(context, c, "sashing", inB + gap / 2, g.seamB + thick / 2, g.top - thick - over / 2, thick, { right: true }, u);
    let foot = g.foot;
    if (backed) {
        const under = c.sashingBack ? "sashingBack" : "back";
        const fold = g.seamB + view.catchMm * g.scale, turned = fold - view.foldMm * g.scale;
        ribbon(context, c, under, g.seamA - thick / 2, inA - gap / 2, g.foot + over / 2, thick, { left: true }, u);
        if (view.doubled) {
            // Two cloths from the first seam to the fold that is ready made.
            ribbon(context, c, under, g.seamA - thick / 2, fold, g.foot + over + thick, 1.4 * thick, { left: true, right: true }, u);
            Printing.strokeLine(context, g.seamA, g.foot + over + 1.7 * thick, fold - thick, g.foot + over + 1.7 * thick, c.ink, 2 * u * c.lineScale);
        } else {
            ribbon(context, c, under, turned, fold, g.foot + over / 2, thick, { right: true }, u);
            ribbon(context, c, under, g.seamA - thick / 2, fold, g.foot + over + thick, thick, { left: true, right: true }, u);
        }
        foot = g.foot + over + 2 * thick;
        Printing.roleLine(context, "stitched", g.seamB + Math.min(view.catchMm * g.scale * 0.5, 10 * u), g.top - over, g.seamB + Math.min(view.catchMm * g.scale * 0.5, 10 * u), foot + 4 * u, c.stitched, 4 * u * c.lineScale);
    }
    seam(context, c, g.seamA, g.top - thick - over, backed ? g.foot + thick + over : g.foot, u);
    seam(context, c, g.seamB, g.top - thick - over, g.foot, u);
}
