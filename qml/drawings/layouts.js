// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// One cloth and how it is cut: it lies along the drawing, its length to the right, its width upright.

/**
 * Where it lies: `room` = {width, height, before, foot, scaleLength, scaleWidth}; before it stands what tells its
 * width and the roll, below it what tells its length.
 */
function lay(room, roll, air) {
    const k = Math.min((room.width - room.before - air) / room.scaleLength,
                       (room.height - room.foot - 2 * air) / room.scaleWidth);
    return k > 0 ? { k: k, x: room.before, y: air, roll: roll } : null;
}

/** The woven edges, with the holes of the pins that held the cloth. */
function selvages(context, c, x, y, run, wide, u) {
    const deep = 5 * u;
    for (const top of [y - deep, y + wide]) {
        context.fillStyle = c.raised;
        context.fillRect(x, top, run, deep);
        context.strokeStyle = c.ink;
        context.lineWidth = 1.2 * u * c.lineScale;
        context.strokeRect(x, top, run, deep);
        context.fillStyle = c.ink;
        context.beginPath();
        for (let a = x + 7 * u; a < x + run - 3 * u; a += 14 * u) {
            context.moveTo(a + 1.1 * u, top + deep / 2);
            context.arc(a, top + deep / 2, 1.1 * u, 0, 2 * Math.PI);
        }
        context.fill();
    }
}

/** What is still on the roll, before the cloth; its core stands out above and below. */
function roll(context, c, role, x, y, deep, wide, u) {
    const line = 2.6 * u * c.lineScale, core = deep * 0.34;
    context.fillStyle = c.table;
    context.fillRect(x + (deep - core) / 2, y - 9 * u, core, wide + 18 * u);
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.strokeRect(x + (deep - core) / 2, y - 9 * u, core, wide + 18 * u);
    Printing.clothRect(context, c, role, x, y, deep, wide, u * 0.7);
    context.strokeRect(x, y, deep, wide);
    // The windings, closer to the core.
    for (const at of [0.16, 0.34, 0.58])
        Printing.strokeLine(context, x + deep * at, y, x + deep * at, y + wide, c.ink, 1.1 * u * c.lineScale);
}

/** The folds of a package that was opened. */
function folds(context, c, x, y, run, wide, u) {
    const line = 2 * u * c.lineScale;
    for (const at of [1 / 3, 2 / 3])
        Printing.roleLine(context, "fold", x + run * at, y, x + run * at, y + wide, c.fold, line);
    Printing.roleLine(context, "fold", x, y + wide / 2, x + run, y + wide / 2, c.fold, line);
}

function strips(context, c, all, role, x0, y0, k, u) {
    const fill = (x, y, w, h) => {
        Printing.clothRect(context, c, role, x, y, w, h, u * 0.7);
        context.strokeStyle = c.ink;
        context.lineWidth = 1.2 * u * c.lineScale;
        context.strokeRect(x, y, w, h);
    };
    let x = x0 + all.reduce((most, strip) => Math.max(most, strip.run ?? 0), 0) * k, beside = y0;
    for (const strip of all) {
        const w = strip.mm * k, runs = (strip.run ?? 0) > 0;
        for (let i = 0; i < Math.min(strip.repeats, 400); ++i) {
            let at = runs ? x0 : y0;
            for (const piece of strip.pieces)
                for (let j = 0; j < Math.min(piece.count, 200); ++j) {
                    const h = piece.mm * k, deep = Math.min(w, (piece.along ?? strip.mm) * k);
                    if (!piece.gap && runs)
                        fill(at, beside, h, deep);
                    else if (!piece.gap)
                        fill(x, at, deep, h);
                    at += h;
                }
            if (runs)
                beside += w;
            else
                x += w;
        }
    }
}

/** A measure upright beside the cloth; `gap` is kept free for its figure. */
function upright(context, c, x, y1, y2, gap, u) {
    const width = 2 * u * c.lineScale, middle = (y1 + y2) / 2;
    for (const y of [y1, y2])
        Printing.strokeLine(context, x - 9 * u, y, x + 9 * u, y, c.ink, width);
    if (y2 - y1 <= gap)
        return;
    Printing.strokeLine(context, x, y1, x, middle - gap / 2, c.ink, width);
    Printing.strokeLine(context, x, middle + gap / 2, x, y2, c.ink, width);
}

/** `cloth` = {role, strips, run, wide, kind} with kind "cloth", "roll", "package" or "remnant". */
function paint(context, c, lie, cloth, u) {
    const run = cloth.run * lie.k, wide = cloth.wide * lie.k, x = lie.x, y = lie.y;
    Printing.clothRect(context, c, cloth.kind === "remnant" ? cloth.role : "waste", x, y, run, wide, u);
    strips(context, c, cloth.strips, cloth.role, x, y, lie.k, u);
    if (cloth.kind === "package")
        folds(context, c, x, y, run, wide, u);
    else
        selvages(context, c, x, y, run, wide, u);
    if (lie.roll > 0)
        roll(context, c, cloth.role, x - lie.roll, y - 5 * u, lie.roll, wide + 10 * u, u);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.6 * u * c.lineScale;
    context.strokeRect(x, y, run, wide);
}
