// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A price as one strip of cloth, cut apart where one part of it ends and the next begins. It lies along x; the
// caller turns the sheet, since it hangs.

/** The outline of a piece: pinked where it was cut from its neighbour. */
function trace(context, x, y, w, h, pinkedLeft, pinkedRight, tooth) {
    const teeth = Math.max(2, Math.round(h / (2 * tooth))), deep = Math.min(tooth, w / 4);
    context.moveTo(x, y);
    context.lineTo(x + w, y);
    for (let i = 1; i <= 2 * teeth; ++i)
        context.lineTo(x + w - (pinkedRight && i % 2 ? deep : 0), y + h * i / (2 * teeth));
    for (let i = 2 * teeth; i >= 0; --i)
        context.lineTo(x + (pinkedLeft && i % 2 ? deep : 0), y + h * i / (2 * teeth));
    context.closePath();
}

/** Hours are rows of stitches. */
function stitches(context, c, x, y, w, h, u) {
    const line = 2.6 * u * c.lineScale;
    for (let b = y + 8 * u; b < y + h; b += 14 * u)
        Printing.roleLine(context, "stitched", x, b, x + w, b, c.stitched, line);
}

/** Thread as it lies on its spool. */
function wound(context, c, x, y, w, h, u) {
    context.strokeStyle = c.echo;
    context.lineWidth = 1.6 * u * c.lineScale;
    context.beginPath();
    for (let a = x - 6 * u; a < x + w + 6 * u; a += 6 * u) {
        context.moveTo(a, y);
        context.lineTo(a + 4 * u, y + h);
    }
    context.stroke();
}

/** A margin is coins laid row by row. */
function coins(context, c, x, y, w, h, u) {
    context.strokeStyle = c.seam;
    context.lineWidth = 1.8 * u * c.lineScale;
    context.beginPath();
    for (let j = 0, b = y + 10 * u; b < y + h + 8 * u; ++j, b += 17 * u)
        for (let a = x + (j % 2 ? 20 : 10) * u; a < x + w + 8 * u; a += 20 * u) {
            context.moveTo(a + 5.5 * u, b);
            context.arc(a, b, 5.5 * u, 0, 2 * Math.PI);
        }
    context.stroke();
}

const marks = { work: stitches, sundries: wound, margin: coins };

function filling(context, c, part, x, y, w, h, run, u) {
    if (part.key === "overhead")
        return Printing.clothRect(context, c, "waste", x, y, w, h, u);
    if (part.key === "cloth") {
        for (const cloth of part.cloths) {
            Printing.clothRect(context, c, cloth.print, x + cloth.from * run, y, cloth.share * run, h, u);
            if (cloth.from > 0)
                Printing.strokeLine(context, x + cloth.from * run, y, x + cloth.from * run, y + h, c.ink, 1.2 * u * c.lineScale);
        }
        return;
    }
    context.fillStyle = part.key === "sundries" ? c.batting : c.raised;
    context.fillRect(x, y, w, h);
    marks[part.key]?.(context, c, x, y, w, h, u);
}

/** One part of the price; one that is nothing is a dotted sliver where it would lie. */
function piece(context, c, part, first, last, y, h, run, u) {
    const slit = 3 * u, sliver = 24 * u;
    if (!(part.share > 0)) {
        const at = Math.max(0, Math.min(run - sliver, part.from * run - sliver / 2));
        context.fillStyle = c.paper;
        context.fillRect(at, y, sliver, h);
        return Printing.roleRect(context, "planned", at, y, sliver, h, c.ink, 2.4 * u * c.lineScale);
    }
    const x = part.from * run + (first ? 0 : slit), w = Math.max(2 * u, part.share * run - (first ? 0 : slit) - (last ? 0 : slit));
    const outline = () => trace(context, x, y, w, h, !first, !last, 6 * u);
    context.save();
    context.beginPath();
    outline();
    context.clip();
    filling(context, c, part, x, y, w, h, run, u);
    context.restore();
    context.beginPath();
    outline();
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.stroke();
}

/** A tape along it, its marks hanging from the edge that lies at the cloth. */
function tape(context, c, marksOnIt, depth, run, u) {
    context.fillStyle = c.raised;
    context.fillRect(0, 0, run, depth);
    context.strokeStyle = c.ink;
    context.lineWidth = 1.6 * u * c.lineScale;
    context.strokeRect(0, 0, run, depth);
    context.beginPath();
    for (const mark of marksOnIt) {
        context.moveTo(mark.share * run, depth);
        context.lineTo(mark.share * run, depth - (mark.says !== "" ? 16 : 8) * u);
    }
    context.stroke();
}

/** What is in hand stands out: its piece is outlined, and the tape beside it is marked. */
function inHand(context, c, part, deep, run, u) {
    const sliver = 24 * u, line = 5 * u * c.lineScale;
    const [x, w] = part.share > 0 ? [part.from * run, Math.max(2 * u, part.share * run)]
                                  : [Math.max(0, Math.min(run - sliver, part.from * run - sliver / 2)), sliver];
    context.fillStyle = c.accent;
    context.fillRect(x, deep.tape - 6 * u, w, 6 * u);
    context.strokeStyle = c.accent;
    context.lineWidth = line;
    context.strokeRect(Math.min(x + line / 2, run - line), deep.tape, Math.max(1, w - line), deep.foot - deep.tape);
}

/** What is given away at a lower price: it is pale, and dotted as what is not there. */
function givenAway(context, c, share, deep, run, u) {
    if (!(share < 1))
        return;
    const x = share * run, w = run - x, h = deep.foot - deep.tape;
    context.globalAlpha = 0.72;
    context.fillStyle = c.paper;
    context.fillRect(x, deep.tape, w, h);
    context.globalAlpha = 1;
    Printing.roleRect(context, "planned", x, deep.tape, w, h, c.ink, 2.4 * u * c.lineScale);
}

/** A line from each part to where its label stands; each turns on a level of its own, so that none meet. */
function leaders(context, c, parts, places, foot, end, run, held, u) {
    parts.forEach((part, i) => {
        const own = held >= 0 && part.amount === held;
        const from = part.from * run, room = Math.min(14 * u, part.share * run / 2);
        const at = part.share > 0 ? Math.max(from + room, Math.min(from + part.share * run - room, places[i]))
                                  : Math.min(run - 12 * u, from);
        const level = (i + 1) / (parts.length + 1);
        const turn = foot + (end - foot) * (places[i] < at ? level : 1 - level);
        context.strokeStyle = own ? c.accent : c.ink;
        context.lineWidth = (own ? 4 : 1.8) * u * c.lineScale;
        context.beginPath();
        context.moveTo(at, foot - 10 * u);
        context.lineTo(at, turn);
        context.lineTo(places[i], turn);
        context.lineTo(places[i], end);
        context.stroke();
        context.beginPath();
        context.arc(at, foot - 10 * u, (own ? 5 : 3.4) * u, 0, 2 * Math.PI);
        context.fillStyle = own ? c.accent : c.ink;
        context.fill();
    });
}

/** All of it: tape, cloth and leaders, `deep` = {tape, foot, end} px from the tape's outer edge; `held` the amount in hand. */
function paint(context, c, parts, marksOnIt, places, deep, run, held, asked, u) {
    tape(context, c, marksOnIt, deep.tape, run, u);
    // What is nothing lies over its neighbours.
    for (const shown of [true, false])
        parts.forEach((part, i) => {
            if (part.share > 0 === shown)
                piece(context, c, part, part.from < 0.0001, part.from + part.share > 0.9999, deep.tape, deep.foot - deep.tape, run, u);
        });
    givenAway(context, c, asked, deep, run, u);
    for (const part of parts)
        if (held >= 0 && part.amount === held)
            inHand(context, c, part, deep, run, u);
    leaders(context, c, parts, places, deep.foot, deep.end, run, held, u);
}

/** The amount of the part that lies there, `share` along the strip; -1 where none can be taken in hand. */
function partAt(parts, share) {
    for (const part of parts)
        if (share >= part.from && share < part.from + part.share)
            return part.amount;
    return -1;
}

/** A tag of card, {x, y, w, h, eyeLast}, on a thread wound round the strip at `y` from `outer` to `inner`. */
function tag(context, c, at, outer, inner, y, solid, u) {
    const cut = 26 * u, line = 2.4 * u * c.lineScale, eyeX = at.eyeLast ? at.x + at.w - 36 * u : at.x + 36 * u, eyeY = at.y + at.h / 2;
    const corners = [[cut, 0], [at.w, 0], [at.w, at.h], [cut, at.h], [0, at.h - cut], [0, cut]];
    context.beginPath();
    corners.forEach(([a, b], i) => {
        const x = at.eyeLast ? at.x + at.w - a : at.x + a;
        if (i === 0)
            context.moveTo(x, at.y + b);
        else
            context.lineTo(x, at.y + b);
    });
    context.closePath();
    context.fillStyle = solid ? c.ink : c.raised;
    context.fill();
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.stroke();
    for (const [r, colour] of [[16, solid ? c.raised : c.ink], [13, solid ? c.ink : c.raised], [7, solid ? c.raised : c.paper]]) {
        context.beginPath();
        context.arc(eyeX, eyeY, r * u, 0, 2 * Math.PI);
        context.fillStyle = colour;
        context.fill();
    }
    // Wound twice, knotted at the outer edge, doubled through the eye; lined with paper where it lies on a dark card.
    const knot = Math.max(4 * u, y - 3 * u), wide = 3.4 * u * c.lineScale;
    for (const [colour, width] of [[c.raised, wide + 3 * u], [c.accent, wide]]) {
        context.strokeStyle = colour;
        context.lineWidth = width;
        context.lineCap = "round";
        context.beginPath();
        context.moveTo(inner, knot - 1 * u);
        context.lineTo(outer, knot);
        const drop = at.eyeLast ? [outer + 18 * u, knot + 30 * u, eyeX + 34 * u, eyeY - 10 * u] : [outer + 14 * u, knot + 34 * u, eyeX - 46 * u, eyeY + 8 * u];
        if (knot > at.y + at.h && !at.eyeLast) {
            // The tag lies higher: up along the strip, beside what stands under it.
            for (const off of [-2.5 * u, 2.5 * u]) {
                const way = (outer + at.x) / 2 + off, foot = at.y + at.h;
                context.moveTo(outer, knot);
                context.bezierCurveTo(way, knot, way, knot - 10 * u, way, knot - 30 * u);
                context.lineTo(way, Math.min(foot, knot - 30 * u));
                context.bezierCurveTo(way, eyeY + 10 * u, eyeX - 20 * u, eyeY + off, eyeX, eyeY);
            }
        } else {
            context.moveTo(outer, knot);
            context.bezierCurveTo(...drop, eyeX, eyeY);
            context.moveTo(outer, knot);
            context.bezierCurveTo(drop[0] + 10 * u, drop[1] - 22 * u, drop[2] + 6 * u, drop[3] - 24 * u, eyeX, eyeY);
        }
        context.stroke();
        context.lineCap = "butt";
    }
    context.beginPath();
    context.arc(outer, knot, 6 * u, 0, 2 * Math.PI);
    context.fillStyle = c.accent;
    context.fill();
}
