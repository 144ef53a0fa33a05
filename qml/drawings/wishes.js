// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "sketches.js" as Sketches

// What the piece is wanted to be, as small pictures on a field 100 high and as wide as there is room: the table
// from above or from its side, the mats on it, the ruler. `c` is a colour set, `w` the field's width.

const high = 100;

const scenes = {
    "set-piece": (context, c, w) => {
        const t = board(context, c, w, 186, false);
        quilt(context, c, t.x + 20, t.y + 17, t.w - 40, t.h - 34, 6, 2);
    },
    "set-mats": (context, c, w) => mats(context, c, w, true),
    "set-piece-round": (context, c, w) => {
        const t = board(context, c, w, 96, true);
        quilt(context, c, t.x + 22, t.y + 28, t.w - 44, t.h - 56, 3, 2);
    },
    "set-mats-round": round,
    "mats-sides": (context, c, w) => mats(context, c, w, false),
    "mats-ends": (context, c, w) => mats(context, c, w, true),
    "mat-small": (context, c, w) => setting(context, c, w, 18, 12),
    "mat-large": (context, c, w) => setting(context, c, w, 20, 14),
    "ends-shows": (context, c, w) => standing(context, c, w, 128, false),
    "ends-hangs": (context, c, w) => standing(context, c, w, 128, true),
    "sides-shows": (context, c, w) => standing(context, c, w, 78, false),
    "sides-hangs": (context, c, w) => standing(context, c, w, 78, true),
    "leaf-out": (context, c, w) => leaf(context, c, w, false),
    "leaf-in": (context, c, w) => leaf(context, c, w, true),
    "sizes-few": (context, c, w) => sizes(context, c, w, 4),
    "sizes-all": (context, c, w) => sizes(context, c, w, 1),
    "sashing-kept": (context, c, w) => sashing(context, c, w, 12),
    "sashing-wider": (context, c, w) => sashing(context, c, w, 28),
    "sign-ends": (context, c, w) => sides(context, c, w, true),
    "sign-sides": (context, c, w) => sides(context, c, w, false),
    "sign-along": (context, c, w) => extent(context, c, w, true),
    "sign-across": (context, c, w) => extent(context, c, w, false),
    "sign-mats": (context, c, w) => mats(context, c, w, false),
    "sign-least": (context, c, w) => blockAlone(context, c, w, 34),
    "sign-most": (context, c, w) => blockAlone(context, c, w, 82),
    "sign-blocks": (context, c, w) => quilt(context, c, w / 2 - 58, 10, 116, 80, 3, 2),
    "sign-washing": washing
};

function has(scene) {
    return scenes[scene] !== undefined;
}

/** Fills w by h with paper and paints the scene on it, as high as it goes. */
function paint(context, c, scene, w, h) {
    context.fillStyle = c.raised;
    context.fillRect(0, 0, w, h);
    const k = Math.min(h / high, w / (scene.startsWith("sign") ? 120 : 150));
    context.save();
    context.translate(0, (h - high * k) / 2);
    context.scale(k, k);
    context.lineJoin = "round";
    scenes[scene](context, c, w / k);
    context.restore();
}

/** A table from above, in the middle of the field; where it lies. */
function board(context, c, w, most, isRound) {
    const wide = Math.min(most, w - 8), t = { x: (w - wide) / 2, y: 4, w: wide, h: 92 };
    const trace = () => isRound ? context.ellipse(t.x, t.y, t.w, t.h) : context.rect(t.x, t.y, t.w, t.h);
    Printing.clothShape(context, c, "table", t.x, t.y, t.w, t.h, 0.5, trace);
    context.beginPath();
    trace();
    Sketches.pen(context, c, 3);
    context.stroke();
    return t;
}

/** A quilted piece from above: its blocks, and the binding round them. */
function quilt(context, c, x, y, w, h, columns, rows) {
    Printing.clothRect(context, c, "sashing", x, y, w, h, 0.4);
    const edge = 4, gap = 3, bw = (w - 2 * edge - (columns + 1) * gap) / columns, bh = (h - 2 * edge - (rows + 1) * gap) / rows;
    for (let i = 0; i < columns; ++i)
        for (let j = 0; j < rows; ++j) {
            const bx = x + edge + gap + i * (bw + gap), by = y + edge + gap + j * (bh + gap);
            Printing.clothRect(context, c, "front", bx, by, bw, bh, 0.4);
            Sketches.pen(context, c, 1.2);
            context.strokeRect(bx, by, bw, bh);
            context.setLineDash([2, 1.4]);
            if (bw > 20 && bh > 20)
                context.strokeRect(bx + 5, by + 5, bw - 10, bh - 10);
            Printing.solid(context);
        }
    Sketches.pen(context, c, edge, c.binding);
    context.strokeRect(x + edge / 2, y + edge / 2, w - edge, h - edge);
    Sketches.pen(context, c, 1);
    context.strokeRect(x, y, w, h);
}

/** A plate, its fork at the left and its knife at the right of who sits at the foot of it. */
function plate(context, c, x, y, r) {
    for (const [radius, fill] of [[r, c.raised], [r * 0.64, c.raised]]) {
        context.beginPath();
        context.arc(x, y, radius, 0, 2 * Math.PI);
        context.fillStyle = fill;
        context.fill();
        Sketches.pen(context, c, radius === r ? Math.max(1.4, r * 0.07) : Math.max(0.8, r * 0.04));
        context.stroke();
    }
    const line = Math.max(1.3, r * 0.09), left = x - r * 1.34, right = x + r * 1.34, up = r * 0.86;
    Sketches.pen(context, c, line);
    context.beginPath();
    context.moveTo(left, y - up * 0.2);
    context.lineTo(left, y + up);
    for (const tine of [-1, 0, 1]) {
        context.moveTo(left + tine * r * 0.15, y - up);
        context.lineTo(left + tine * r * 0.15, y - up * 0.4);
        context.lineTo(left, y - up * 0.16);
    }
    context.moveTo(right, y + up * 0.1);
    context.lineTo(right, y + up);
    context.stroke();
    context.beginPath();
    context.moveTo(right - line / 2, y - up);
    context.bezierCurveTo(right + r * 0.3, y - up * 0.8, right + r * 0.26, y, right + line / 2, y + up * 0.16);
    context.lineTo(right - line / 2, y + up * 0.16);
    context.closePath();
    context.fillStyle = c.ink;
    context.fill();
}

/** A mat with its plate, turned to who sits there. */
function place(context, c, x, y, turn) {
    context.save();
    context.translate(x, y);
    context.rotate(turn * Math.PI / 2);
    context.fillStyle = c.front;
    context.fillRect(-21, -14, 42, 28);
    Sketches.pen(context, c, 3, c.binding);
    context.strokeRect(-19.5, -12.5, 39, 25);
    plate(context, c, 0, 0, 9);
    context.restore();
}

/** Mats along both sides of a table; `ends`: one at each end too. */
function mats(context, c, w, ends) {
    const t = board(context, c, w, 186, false);
    const middle = t.x + t.w / 2, out = ends ? 24 : Math.min(42, t.w / 4);
    for (const x of [middle - out, middle + out]) {
        place(context, c, x, t.y + 19, 2);
        place(context, c, x, t.y + t.h - 19, 0);
    }
    if (!ends)
        return;
    place(context, c, t.x + 19, 50, 1);
    place(context, c, t.x + t.w - 19, 50, 3);
}

/** Mats round a round table. */
function round(context, c, w) {
    const t = board(context, c, w, 96, true);
    for (let turn = 0; turn < 4; ++turn) {
        const a = Math.PI / 2 * (turn + 1);
        context.save();
        context.translate(t.x + t.w / 2 + 29 * Math.cos(a), t.y + t.h / 2 + 28 * Math.sin(a));
        context.scale(0.74, 0.74);
        place(context, c, 0, 0, turn);
        context.restore();
    }
}

/** One place laid, all to one scale: a mat of so many inches under a plate of ten; dotted, the other size of mat. */
function setting(context, c, w, along, across) {
    const k = 6.4, x = (w - along * k) / 2, y = (high - across * k) / 2;
    quilt(context, c, x, y, along * k, across * k, 3, 2);
    plate(context, c, w / 2, high / 2, 5 * k);
    if (along >= 20)
        return;
    Sketches.pen(context, c, 1.6, c.inkSoft);
    context.setLineDash([1, 2.6]);
    context.strokeRect((w - 20 * k) / 2, (high - 14 * k) / 2, 20 * k, 14 * k);
    Printing.solid(context);
}

function arrow(context, c, x1, y1, x2, y2) {
    const a = Math.atan2(y2 - y1, x2 - x1);
    Sketches.pen(context, c, 3.4, c.accent);
    context.beginPath();
    context.moveTo(x1, y1);
    context.lineTo(x2, y2);
    for (const [x, y, turn] of [[x2, y2, a], [x1, y1, a + Math.PI]])
        for (const side of [-0.6, 0.6]) {
            context.moveTo(x, y);
            context.lineTo(x - 9 * Math.cos(turn + side), y - 9 * Math.sin(turn + side));
        }
    context.stroke();
}

/** A table from its side, `most` wide, a quilted cloth on it: wood shows beyond its ends, or they hang over. */
function standing(context, c, w, most, hangs) {
    const wide = Math.min(most, w - (hangs ? 60 : 16)), x = (w - wide) / 2, top = 36, thick = 8;
    Sketches.box(context, c, x + 3, top + 9, wide - 6, 8, c.table, 2.4);
    for (const leg of [x + 8, x + wide - 17])
        Sketches.box(context, c, leg, top + 17, 9, 100, c.table, 2.4);
    Sketches.box(context, c, x, top, wide, 9, c.table, 3);
    const inset = hangs ? 0 : wide * 0.23, from = x + inset, to = x + wide - inset;
    for (const [line, colour] of [[thick + 4, c.ink], [thick, c.front]]) {
        Sketches.pen(context, c, line, colour);
        context.beginPath();
        if (hangs) {
            context.moveTo(x - 8, top + 40);
            context.bezierCurveTo(x - 4, top + 24, x - 9, top - thick / 2, x + 6, top - thick / 2);
            context.lineTo(x + wide - 6, top - thick / 2);
            context.bezierCurveTo(x + wide + 9, top - thick / 2, x + wide + 4, top + 24, x + wide + 8, top + 40);
        } else {
            context.moveTo(from, top - thick / 2);
            context.lineTo(to, top - thick / 2);
        }
        context.stroke();
    }
    // Its bound ends, and where it is quilted.
    for (const [a, b] of hangs ? [[x - 8, top + 40], [x + wide + 8, top + 40]] : [[from, top - 4], [to, top - 4]]) {
        context.beginPath();
        context.arc(a, b, 6, 0, 2 * Math.PI);
        context.fillStyle = c.binding;
        context.fill();
        Sketches.pen(context, c, 1.6);
        context.stroke();
    }
    Sketches.pen(context, c, 1.6, c.stitched);
    context.beginPath();
    for (let a = from + 12; a < to - 8; a += 12) {
        context.moveTo(a, top - thick);
        context.lineTo(a, top);
    }
    context.stroke();
    for (const [near, far, side] of [[from, x, -1], [to, x + wide, 1]]) {
        if (hangs)
            arrow(context, c, far + side * 22, top - 6, far + side * 22, top + 46);
        else
            arrow(context, c, near, top - 20, far, top - 20);
        Sketches.pen(context, c, 1.4, c.accent);
        context.beginPath();
        if (!hangs) {
            context.moveTo(far, top - 28);
            context.lineTo(far, top);
        }
        context.stroke();
    }
}

/** A table whose halves meet, its leaf stood beside it; or with the leaf laid in. */
function leaf(context, c, w, isIn) {
    const half = 46, deep = 30, wide = 2 * half + deep + (isIn ? 0 : 12), x = (w - wide) / 2;
    const boardAt = (at, width) => {
        Printing.clothRect(context, c, "table", at, 8, width, 84, 0.5);
        Sketches.pen(context, c, 3);
        context.strokeRect(at, 8, width, 84);
    };
    boardAt(x, half);
    boardAt(x + half + (isIn ? deep : 0), half);
    boardAt(isIn ? x + half : x + 2 * half + 12, deep);
    if (isIn) {
        Sketches.pen(context, c, 4, c.accent);
        context.strokeRect(x + half, 8, deep, 84);
    }
}

/** A block laid to a ruler; dotted, the sizes it may have: at every so many marks. */
function sizes(context, c, w, every) {
    const x = (w - 132) / 2, step = 6, y = 62;
    Printing.clothRect(context, c, "front", x, 6, 78, y - 6, 0.5);
    Sketches.pen(context, c, 2);
    context.strokeRect(x, 6, 78, y - 6);
    context.globalAlpha = Math.min(1, 2.4 * c.rulerAlpha);
    context.fillStyle = c.rulerBody;
    context.fillRect(x - 4, y, 140, 32);
    context.globalAlpha = 1;
    Sketches.pen(context, c, 1.6, c.rulerMark);
    context.strokeRect(x - 4, y, 140, 32);
    context.beginPath();
    for (let i = 0; i * step <= 132; ++i) {
        context.moveTo(x + i * step, y);
        context.lineTo(x + i * step, y + (i % 8 === 0 ? 22 : i % 4 === 0 ? 16 : 8));
    }
    context.stroke();
    Sketches.pen(context, c, 2.6, c.accent);
    for (let i = 9; i <= 21; ++i) {
        if (i % every !== 0)
            continue;
        context.setLineDash([1.4, 1.4]);
        context.beginPath();
        context.moveTo(x + i * step, 6);
        context.lineTo(x + i * step, y);
        context.stroke();
        Printing.solid(context);
        context.beginPath();
        context.moveTo(x + i * step, y);
        context.lineTo(x + i * step, y + (i % 4 === 0 ? 18 : 10));
        context.stroke();
    }
}

/** Two blocks and the strip between them; a wide one is pushed out to both sides. */
function sashing(context, c, w, between) {
    const size = 62, middle = w / 2, y = 19;
    for (const [x, role, width] of [[middle - between / 2 - size, "front", size], [middle + between / 2, "front", size], [middle - between / 2, "sashing", between]]) {
        Printing.clothRect(context, c, role, x, y, width, size, 0.6);
        Sketches.pen(context, c, 2);
        context.strokeRect(x, y, width, size);
        if (role !== "front")
            continue;
        context.setLineDash([2, 1.4]);
        context.strokeRect(x + 9, y + 9, size - 18, size - 18);
        Printing.solid(context);
    }
    if (between > 20)
        arrow(context, c, middle - between / 2 - 8, 10, middle + between / 2 + 8, 10);
    Sketches.pen(context, c, 3, between > 20 ? c.accent : c.ink);
    context.strokeRect(middle - between / 2, y, between, size);
}

/** The piece on its table, and how much wood shows: at both ends, or at both sides. */
function sides(context, c, w, ends) {
    const t = board(context, c, w, 142, false), inset = 26;
    quilt(context, c, t.x + inset, t.y + inset * 0.8, t.w - 2 * inset, t.h - 1.6 * inset, 3, 1);
    const middle = t.x + t.w / 2, deep = inset * 0.8;
    if (ends)
        for (const [a, b] of [[t.x, t.x + inset], [t.x + t.w - inset, t.x + t.w]])
            mark(context, c, a, t.y, b - a, t.h, () => arrow(context, c, a + 3, 50, b - 3, 50));
    else
        for (const [a, b] of [[t.y, t.y + deep], [t.y + t.h - deep, t.y + t.h]])
            mark(context, c, t.x, a, t.w, b - a, () => arrow(context, c, middle, a + 2, middle, b - 2));
}

/** A part of the table that is meant: tinted, with how far it goes. */
function mark(context, c, x, y, w, h, measure) {
    context.globalAlpha = 0.35;
    context.fillStyle = c.raised;
    context.fillRect(x, y, w, h);
    context.globalAlpha = 1;
    Sketches.pen(context, c, 3.4, c.accent);
    context.strokeRect(x, y, w, h);
    measure();
}

/** The piece alone, and which of its sides is meant. */
function extent(context, c, w, along) {
    quilt(context, c, w / 2 - 46, 24, 100, 68, 3, 2);
    if (along)
        arrow(context, c, w / 2 - 46, 12, w / 2 + 54, 12);
    else
        arrow(context, c, w / 2 - 54, 24, w / 2 - 54, 92);
}

/** One block, so large, on a measure. */
function blockAlone(context, c, w, size) {
    const x = w / 2 - size / 2, y = 94 - size;
    Printing.clothRect(context, c, "front", x, y, size, size, 0.5);
    Sketches.pen(context, c, 2.6);
    context.strokeRect(x, y, size, size);
    context.setLineDash([2, 1.4]);
    context.strokeRect(x + 7, y + 7, size - 14, size - 14);
    Printing.solid(context);
    arrow(context, c, x, y - 7, x + size, y - 7);
}

/** A cloth in a tub of water, drawing in. */
function washing(context, c, w) {
    const x = w / 2;
    Printing.clothRect(context, c, "front", x - 34, 6, 68, 60, 0.5);
    Sketches.pen(context, c, 2.4);
    context.strokeRect(x - 34, 6, 68, 60);
    arrow(context, c, x - 22, 24, x + 22, 24);
    context.beginPath();
    context.moveTo(x - 56, 44);
    context.lineTo(x - 46, 96);
    context.lineTo(x + 46, 96);
    context.lineTo(x + 56, 44);
    for (let a = x + 56; a > x - 56; a -= 28) {
        context.quadraticCurveTo(a - 7, 37, a - 14, 44);
        context.quadraticCurveTo(a - 21, 51, a - 28, 44);
    }
    context.closePath();
    context.fillStyle = c.back;
    context.fill();
    Sketches.pen(context, c, 3);
    context.stroke();
    Sketches.pen(context, c, 2, c.backMark);
    context.beginPath();
    for (const y of [60, 74]) {
        context.moveTo(x - 40, y);
        for (let a = x - 40; a < x + 30; a += 20) {
            context.quadraticCurveTo(a + 5, y - 6, a + 10, y);
            context.quadraticCurveTo(a + 15, y + 6, a + 20, y);
        }
    }
    context.stroke();
}
