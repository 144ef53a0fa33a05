// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// Snips of cloth in their own dye and print, pinked all round, and the tape they are measured by.

/** The colours of a set with one cloth in them, {c, role}: printed as `print` says, in its own `colour`, or in the set's for "". */
function dyed(c, pens, print, colour) {
    const role = print === "patch" ? "patchA" : print;
    return { role, c: colour === "" ? c : Printing.dyed(c, { [role]: { print, colour } }, pens, false) };
}

/** Adds a rectangle to the path whose edge is pinked in teeth about `tooth` long and `deep`. */
function pinked(context, x, y, w, h, tooth, deep) {
    const across = Math.max(2, Math.round((w - 2 * deep) / tooth)), down = Math.max(2, Math.round((h - 2 * deep) / tooth));
    const dx = (w - 2 * deep) / across, dy = (h - 2 * deep) / down, right = x + w, foot = y + h;
    context.moveTo(x + deep, y + deep);
    for (let i = 0; i < across; ++i) {
        context.lineTo(x + deep + (i + 0.5) * dx, y);
        context.lineTo(x + deep + (i + 1) * dx, y + deep);
    }
    for (let i = 0; i < down; ++i) {
        context.lineTo(right, y + deep + (i + 0.5) * dy);
        context.lineTo(right - deep, y + deep + (i + 1) * dy);
    }
    for (let i = across; i > 0; --i) {
        context.lineTo(x + deep + (i - 0.5) * dx, foot);
        context.lineTo(x + deep + (i - 1) * dx, foot - deep);
    }
    for (let i = down; i > 0; --i) {
        context.lineTo(x, y + deep + (i - 0.5) * dy);
        context.lineTo(x + deep, y + deep + (i - 1) * dy);
    }
    context.closePath();
}

/** A snip of `cloth`, as dyed() gives it; `line` is its outline. */
function snip(context, cloth, x, y, w, h, u, line) {
    const trace = () => pinked(context, x + line / 2, y + line / 2, w - line, h - line, 6.4 * u, 4.4 * u);
    Printing.clothShape(context, cloth.c, cloth.role, x, y, w, h, u, trace);
    context.beginPath();
    trace();
    context.strokeStyle = cloth.c.ink;
    context.lineWidth = line;
    context.stroke();
}

/** The least step of the tape's figures, in units, of which one is `unit` px and a figure takes `room`. */
function stepOf(unit, room) {
    for (let ten = 1; ten < 1e6; ten *= 10)
        for (const step of [1, 2, 5])
            if (step * ten * unit >= room)
                return step * ten;
    return 1e6;
}

/**
 * A tape measure from 0 along its upper edge: `run` px long, a unit `unit` px, its figures `cap` high, and where
 * the measure ends, `to`.
 */
function tape(context, c, run, deep, unit, cap, to, family, u) {
    const step = stepOf(unit, 4.2 * cap), line = 1.4 * u * c.lineScale;
    context.fillStyle = c.sashing;
    context.fillRect(0, 0, run, deep);
    context.fillStyle = c.hoop;
    context.fillRect(-9 * u, -2 * u, 9 * u, deep + 4 * u);
    context.strokeStyle = c.ink;
    context.lineWidth = 2 * u * c.lineScale;
    context.strokeRect(0, 0, run, deep);
    context.lineWidth = line;
    context.beginPath();
    const fine = [step / 10, step / 5, step / 2].find(each => each * unit >= 5 * u) ?? step;
    for (let i = 1; i * fine * unit < run - line; ++i) {
        const at = i * fine, whole = Math.abs(at / step - Math.round(at / step)) < 0.001, half = Math.abs(at / step * 2 - Math.round(at / step * 2)) < 0.001;
        context.moveTo(at * unit, 0);
        context.lineTo(at * unit, deep * (whole ? 0.5 : half ? 0.34 : 0.22));
    }
    context.stroke();
    context.fillStyle = c.ink;
    context.font = Math.round(cap / 0.75) + "px \"" + family + "\"";
    context.textAlign = "right";
    for (let i = 1; i * step * unit < run; ++i) {
        const at = i * step * unit;
        // The mark of the measure would strike this figure through.
        if (to < at - 2.4 * cap || to > at)
            context.fillText(String(i * step), at - 3 * u, deep - 5 * u);
    }
    context.strokeStyle = c.accent;
    context.lineWidth = 5 * u * c.lineScale;
    context.beginPath();
    context.moveTo(to, -4 * u);
    context.lineTo(to, deep + 4 * u);
    context.stroke();
}
