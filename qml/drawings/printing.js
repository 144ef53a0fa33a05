// SPDX-License-Identifier: MIT
.pragma library

// Flat tones and sparse marks, painted on a 2D context. `c` is a colour set, `u` the size of one
// unit of the marks in px (about 0.17 mm), so that prints keep their size on every screen.

function dash(context, width, lengths) {
    // The context counts dashes in widths of the line.
    context.setLineDash(lengths.map(l => l / width));
}

function solid(context) {
    context.setLineDash([]);
}

function strokeLine(context, x1, y1, x2, y2, colour, width) {
    context.strokeStyle = colour;
    context.lineWidth = width;
    context.beginPath();
    context.moveTo(x1, y1);
    context.lineTo(x2, y2);
    context.stroke();
}

const patterns = { stitched: [2.6, 1.3], planned: [1, 2.6], echo: [5, 2.5, 1, 2.5], fold: [6.4, 2, 1.4, 2, 1.4, 2] };

/** A dashed line of a role: "stitched", "planned", "echo" or "fold". */
function roleLine(context, role, x1, y1, x2, y2, colour, width) {
    context.lineCap = "butt";
    context.setLineDash(patterns[role]);
    strokeLine(context, x1, y1, x2, y2, colour, width);
    solid(context);
}

function roleRect(context, role, x, y, w, h, colour, width) {
    roleLine(context, role, x, y, x + w, y, colour, width);
    roleLine(context, role, x + w, y, x + w, y + h, colour, width);
    roleLine(context, role, x + w, y + h, x, y + h, colour, width);
    roleLine(context, role, x, y + h, x, y, colour, width);
}

function sprig(p, a, b) {
    p.along(a, b, 11);
    p.along(a + 16, b + 7, 5);
    p.along(a + 3, b + 14, 8);
    p.up(a + 25, b - 2, 5);
    p.up(a + 22, b + 16, 4);
    p.up(a - 4, b + 6, 4);
}

function fork(p, a, b) {
    p.line(a, b + 6, a, b + 1);
    p.line(a, b + 2, a - 4, b - 2);
    p.line(a, b + 2, a + 4, b - 2);
}

// Each mark is drawn into one path over the whole area: a half-drop repeat of w by h units. There are thousands
// of them in a drawing, so they make no lists of their own.
const prints = {
    front: {
        w: 60, h: 44, line: 0.9,
        mark: (p, x, y) => {
            sprig(p, x + 6, y + 4);
            sprig(p, x + 36, y + 26);
        }
    },
    back: {
        w: 30, h: 34, line: 1.6,
        mark: (p, x, y) => {
            fork(p, x + 8, y + 7);
            fork(p, x + 23, y + 24);
        }
    },
    sashing: {
        w: 16, h: 16, line: 1.1,
        mark: (p, x, y) => {
            p.along(x + 2, y + 4, 4);
            p.up(x + 4, y + 2, 4);
            p.along(x + 10, y + 12, 4);
            p.up(x + 12, y + 10, 4);
        }
    },
    batting: {
        w: 40, h: 20, line: 1.2,
        mark: (p, x, y) => {
            p.wave(x, y + 5, -7);
            p.wave(x, y + 15, 7);
        }
    },
    patchB: {
        w: 22, h: 12, line: 1.4,
        mark: (p, x, y) => {
            p.along(x + 2, y + 3, 9);
            p.along(x + 13, y + 9, 9);
        }
    }
};

const hatches = { patchA: { step: 9, line: 1.5 }, waste: { step: 12, line: 1.6 } };

function pen(context, u) {
    return {
        line: (a, b, c, d) => {
            context.moveTo(a * u, b * u);
            context.lineTo(c * u, d * u);
        },
        along: (a, b, length) => {
            context.moveTo(a * u, b * u);
            context.lineTo((a + length) * u, b * u);
        },
        up: (a, b, length) => {
            context.moveTo(a * u, b * u);
            context.lineTo(a * u, (b + length) * u);
        },
        wave: (a, b, swing) => {
            context.moveTo(a * u, b * u);
            context.quadraticCurveTo((a + 10) * u, (b + swing) * u, (a + 20) * u, b * u);
            context.quadraticCurveTo((a + 30) * u, (b - swing) * u, (a + 40) * u, b * u);
        }
    };
}

/** How light a colour looks, 0 to 1. */
function lightness(colour) {
    return 0.3 * colour.r + 0.59 * colour.g + 0.11 * colour.b;
}

/** `colour` with so much of `other` in it that it is no darker, or with `under` no lighter, than `limit`. */
function drawnTo(colour, other, limit, under) {
    const from = lightness(colour), to = lightness(other);
    if (under ? from <= limit : from >= limit)
        return colour;
    const part = (limit - from) / (to - from);
    return Qt.rgba(colour.r + part * (other.r - colour.r), colour.g + part * (other.g - colour.g), colour.b + part * (other.b - colour.b), 1);
}

/**
 * The colours of a set with the cloths of a piece in them: `cloths` gives of a role {print, colour}, the role its
 * cloth is printed as and its colour, "" for the tone of that print. `pens` is the ink on a light and on a dark
 * cloth, {dark, light}. `forWork`: lines in the colours of the set must stand out from every cloth.
 */
function dyed(c, cloths, pens, forWork) {
    const own = { prints: {}, pens: {} };
    for (const key in c)
        own[key] = c[key];
    const inkIsDark = lightness(c.ink) < 0.5;
    for (const role in cloths) {
        const colour = cloths[role].colour, print = cloths[role].print === "patch" ? "patchA" : cloths[role].print;
        own.prints[role] = print;
        if (colour === "") {
            own[role] = c[print];
            own[role + "Mark"] = c[print + "Mark"];
            if (print !== role)
                own.pens[role] = lightness(c[print]) > 0.5 ? pens.dark : pens.light;
            continue;
        }
        const cloth = Qt.darker(colour, 1), pen = lightness(cloth) > 0.5 ? pens.dark : pens.light;
        own[role] = !forWork ? cloth : inkIsDark ? drawnTo(cloth, pens.light, 0.6, false) : drawnTo(cloth, pens.dark, 0.35, true);
        own[role + "Mark"] = Qt.tint(own[role], Qt.rgba(pen.r, pen.g, pen.b, 0.5));
        if (!forWork)
            own.pens[role] = pen;
    }
    return own;
}

/** The colours for what is drawn upon a cloth: its ink stands out from it. */
function upon(c, role) {
    const pen = c.pens?.[role];
    return pen ? Object.assign({}, c, { ink: pen, stitched: pen, echo: pen }) : c;
}

/** Prints the marks of a role over the rectangle; the caller has clipped to the shape. */
function marks(context, c, role, x, y, w, h, u) {
    const name = c.prints?.[role] ?? role;
    const hatch = hatches[name];
    const print = prints[name];
    if (!hatch && !print)
        return;
    context.strokeStyle = c[role + "Mark"];
    context.lineCap = "round";
    context.beginPath();
    if (hatch) {
        context.lineWidth = hatch.line * u * c.lineScale;
        const step = hatch.step * u;
        for (let a = x - h; a < x + w; a += step) {
            context.moveTo(a, y + h);
            context.lineTo(a + h, y);
        }
    } else {
        context.lineWidth = print.line * u * c.lineScale;
        const p = pen(context, u);
        // The print is tied to the sheet, not to the piece: neighbours of one cloth match.
        for (let b = Math.floor(y / u / print.h) * print.h; b < (y + h) / u + 4; b += print.h)
            for (let a = Math.floor(x / u / print.w) * print.w; a < (x + w) / u + 4; a += print.w)
                print.mark(p, a, b);
    }
    context.stroke();
    context.lineCap = "butt";
}

/** The tone of a role; "rest" is the front cloth at 42 % on whatever lies beneath. */
function tone(c, role) {
    return role === "rest" ? c.front : c[role] ?? c.front;
}

function clothRect(context, c, role, x, y, w, h, u) {
    clothShape(context, c, role, x, y, w, h, u, () => context.rect(x, y, w, h));
}

/** Cloth in any outline: `trace` adds the outline to the path, the rectangle bounds it. */
function clothShape(context, c, role, x, y, w, h, u, trace) {
    if (w <= 0 || h <= 0)
        return;
    const name = role === "patch" ? "patchA" : role;
    context.save();
    context.beginPath();
    trace();
    context.clip();
    context.globalAlpha = name === "rest" ? 0.42 : 1;
    context.fillStyle = tone(c, name);
    context.fillRect(x, y, w, h);
    context.globalAlpha = 1;
    if (name === "table")
        boards(context, c, x, y, w, h, u);
    else
        marks(context, c, name, x, y, w, h, u);
    context.restore();
}

/** Boards along the longer side, each with a little grain; the same grain every time. */
function boards(context, c, x, y, w, h, u) {
    const along = w >= h;
    const length = along ? w : h, depth = along ? h : w;
    const count = Math.max(2, Math.min(7, Math.round(depth / (76 * u))));
    let seed = 5;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    context.strokeStyle = c.tableMark;
    context.lineCap = "round";
    const at = (a, b) => along ? [x + a, y + b] : [x + b, y + a];
    for (let i = 0; i < count; ++i) {
        const from = i * depth / count, to = (i + 1) * depth / count;
        if (i > 0) {
            const [x1, y1] = at(0, from), [x2, y2] = at(length, from);
            strokeLine(context, x1, y1, x2, y2, c.tableMark, 1.8 * u * c.lineScale);
        }
        const strokes = Math.round(7 * length / (630 * u));
        for (let j = 0; j < strokes; ++j) {
            const b = from + 6 * u + random() * Math.max(0, to - from - 12 * u);
            const a = random() * length * 0.8;
            const end = Math.min(a + (40 + random() * 150) * u, length - 3 * u);
            const sway = (random() - 0.5) * 7 * u;
            context.lineWidth = (0.8 + random() * 0.7) * u * c.lineScale;
            context.beginPath();
            context.moveTo(...at(a, b));
            const p = at(a + (end - a) * 0.3, b + sway), q = at(a + (end - a) * 0.6, b - sway), r = at(end, b);
            context.bezierCurveTo(p[0], p[1], q[0], q[1], r[0], r[1]);
            context.stroke();
        }
    }
    context.lineCap = "butt";
}

/** A ring: look here before you cut. */
function ring(context, c, x, y, u) {
    context.beginPath();
    context.arc(x, y, 10 * u, 0, 2 * Math.PI);
    context.fillStyle = c.raised;
    context.fill();
    context.strokeStyle = c.accent;
    context.lineWidth = 4 * u * c.lineScale;
    context.stroke();
}

/** The blade's path from foot to head: chevrons point away from the body, the cutter stands at its foot. */
function blade(context, c, x, foot, head, cutterY, u) {
    strokeLine(context, x, foot, x, head, c.blade, 6 * u * c.lineScale);
    context.lineWidth = 3.5 * u * c.lineScale;
    context.beginPath();
    for (let y = cutterY - 74 * u; y > head + 24 * u; y -= 56 * u) {
        context.moveTo(x - 10 * u, y + 11 * u);
        context.lineTo(x, y);
        context.lineTo(x + 10 * u, y + 11 * u);
    }
    context.stroke();
    context.fillStyle = c.ink;
    context.beginPath();
    [[30, 28], [46, 12], [112, 102], [116, 118], [100, 122], [88, 114]].forEach(([a, b], i) => {
        if (i === 0)
            context.moveTo(x + a * u, cutterY + b * u);
        else
            context.lineTo(x + a * u, cutterY + b * u);
    });
    context.closePath();
    context.fill();
    for (const [radius, colour] of [[25, c.blade], [6.5, c.paper]]) {
        context.beginPath();
        context.arc(x + 28 * u, cutterY, radius * u, 0, 2 * Math.PI);
        context.fillStyle = colour;
        context.fill();
    }
}

/** A measure between two places on a level: a tick at both ends, and a gap in the line for the figure. */
function measure(context, c, x1, x2, y, gap, u) {
    const width = 2.4 * u * c.lineScale;
    const middle = (x1 + x2) / 2;
    strokeLine(context, x1, y - 13 * u, x1, y + 13 * u, c.ink, width);
    strokeLine(context, x2, y - 13 * u, x2, y + 13 * u, c.ink, width);
    if (gap <= 0) {
        strokeLine(context, x1, y, x2, y, c.ink, 2 * u * c.lineScale);
        return;
    }
    strokeLine(context, x1, y, middle - gap / 2, y, c.ink, 2 * u * c.lineScale);
    strokeLine(context, middle + gap / 2, y, x2, y, c.ink, 2 * u * c.lineScale);
}
