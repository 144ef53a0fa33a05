// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A room where a class sews, from above: a table along it, machines on the table and stools before them.

/** As many machines as the table has room for, {count, each, more}: `each` the room of one, `more` that some are left out. */
function along(machines, width, least, most) {
    const fits = Math.max(1, Math.floor(width / least)), count = Math.min(machines, fits);
    return { count: count, each: Math.min(most, width / count), more: machines > fits };
}

function disc(context, x, y, r, fill, stroke, line) {
    context.beginPath();
    context.arc(x, y, r, 0, 2 * Math.PI);
    context.fillStyle = fill;
    context.fill();
    context.strokeStyle = stroke;
    context.lineWidth = line;
    context.stroke();
}

/** A machine from above: bed, arm over it, wheel at its end, a spool on top; `s` is its width. */
function machine(context, c, x, y, s, inHand, u) {
    const line = (inHand ? 4 : 2) * u * c.lineScale, edge = inHand ? c.accent : c.ink;
    const box = (fill, a, b, w, h) => {
        context.fillStyle = fill;
        context.fillRect(x + a * s, y + b * s, w * s, h * s);
        context.strokeStyle = edge;
        context.lineWidth = line;
        context.strokeRect(x + a * s, y + b * s, w * s, h * s);
    };
    box(c.raised, 0, 0.2, 0.92, 0.32);
    box(c.raised, 0.66, 0, 0.26, 0.42);
    box(c.raised, 0.02, 0, 0.66, 0.16);
    box(c.hoop, 0.92, 0.05, 0.08, 0.24);
    disc(context, x + 0.79 * s, y + 0.2 * s, 0.075 * s, c.accent, edge, line / 2);
    disc(context, x + 0.14 * s, y + 0.34 * s, 0.035 * s, c.ink, edge, line / 2);
}

/** A stool from above; `full` for whoever stands by, a grown up. */
function stool(context, c, x, y, r, full, inHand, u) {
    const line = (inHand ? 4 : 2.2) * u * c.lineScale, edge = inHand ? c.accent : c.ink;
    disc(context, x, y, r, full ? edge : c.raised, edge, line);
    if (!full)
        disc(context, x, y, r * 0.62, c.raised, edge, line / 2);
}

/** All of it in `w` by `h`: {machines, young}; `held` is "machines" or "young" where that is in hand. */
function paint(context, c, room, w, h, held, u) {
    const deep = h * 0.56, line = 2 * u * c.lineScale;
    Printing.clothRect(context, c, "table", line / 2, line / 2, w - line, deep, u);
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.strokeRect(line / 2, line / 2, w - line, deep);
    const lies = along(room.machines, w, 52 * u, 170 * u);
    const s = Math.min(lies.each * 0.72, deep * 1.36), from = (w - lies.each * lies.count) / 2;
    const most = Math.min((h - deep) * 0.42, lies.each * (room.young ? 0.2 : 0.3)), y = deep + line + (h - deep) * 0.5;
    for (let i = 0; i < lies.count; ++i) {
        const x = from + (i + 0.5) * lies.each;
        if (lies.more && i === lies.count - 1) {
            for (const a of [-1, 0, 1])
                disc(context, x + a * 14 * u, deep / 2, 4 * u, c.ink, c.ink, u);
            continue;
        }
        machine(context, c, x - s / 2, (deep - s * 0.52) / 2, s, held === "machines", u);
        if (!room.young) {
            stool(context, c, x, y, most, false, held === "young", u);
            continue;
        }
        // The learner's stool, a small one, and beside it the grown up's.
        stool(context, c, x - most, y, most * 0.72, false, held === "young", u);
        stool(context, c, x + most * 0.72, y, most, true, held === "young", u);
    }
}
