// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// What a choice does, as a small picture on a field of 150 by 100. `c` is a colour set.

const wide = 150, high = 100;

const scenes = {
    "light": light,
    "label": label,
    "hand-right": mat,
    "hand-left": (context, c) => {
        context.translate(wide, 0);
        context.scale(-1, 1);
        mat(context, c);
    },
    "slides": (context, c) => sheet(context, c, true),
    "stands": (context, c) => sheet(context, c, false),
    "aloud-off": (context, c) => mouth(context, c, 75, 50, 44, false),
    "aloud-asked": asked,
    "aloud-each": each,
    "pedal-on": (context, c) => pedal(context, c, true),
    "pedal-off": (context, c) => pedal(context, c, false),
    "helper-off": (context, c, family) => screen(context, c, 42, 22, 66, 50, "7", family),
    "helper-on": helper
};

/** Fits the field into w by h, fills all of it with `ground` and paints the scene. */
function paint(context, c, scene, w, h, family) {
    const draws = scenes[scene];
    if (!draws)
        return;
    context.fillStyle = scene.startsWith("light") ? c.paper : c.raised;
    context.fillRect(0, 0, w, h);
    const k = Math.min(w / wide, h / high);
    context.save();
    context.translate((w - wide * k) / 2, (h - high * k) / 2);
    context.scale(k, k);
    context.lineJoin = "round";
    draws(context, c, family);
    context.restore();
}

function pen(context, c, width, colour) {
    context.strokeStyle = colour ?? c.ink;
    context.lineWidth = width * c.lineScale;
}

/** A figure on a screen in small, in the house's letters. */
function figure(context, c, text, x, y, size, family) {
    context.fillStyle = c.ink;
    context.font = "bold " + Math.round(size) + "px \"" + family + "\"";
    context.textAlign = "center";
    context.fillText(text, x, y + size * 0.375); // on its foot line
}

function box(context, c, x, y, w, h, fill, line) {
    context.fillStyle = fill;
    context.fillRect(x, y, w, h);
    pen(context, c, line);
    context.strokeRect(x, y, w, h);
}

/** A ruler on end: a tint with its graduations at the edge the blade follows. */
function ruler(context, c, x, y, w, h) {
    context.globalAlpha = Math.min(1, 2.4 * c.rulerAlpha);
    context.fillStyle = c.rulerBody;
    context.fillRect(x, y, w, h);
    context.globalAlpha = 1;
    pen(context, c, 1.4, c.rulerMark);
    context.strokeRect(x, y, w, h);
    context.beginPath();
    for (let i = 1, at = y + h - 6; at > y; ++i, at -= 6) {
        const long = i % 4 === 0 ? 12 : 6;
        context.moveTo(x + w, at);
        context.lineTo(x + w - long, at);
        context.moveTo(x, at);
        context.lineTo(x + long / 2, at);
    }
    context.stroke();
}

/** The same cut in whatever light: cloth, ruler, blade; the figure is set over it. */
function light(context, c) {
    Printing.clothRect(context, c, "front", -40, 64, 158, 90, 0.55);
    Printing.clothRect(context, c, "waste", 118, 64, 90, 90, 0.55);
    Printing.strokeLine(context, -40, 64, 200, 64, c.ink, 1.6 * c.lineScale);
    ruler(context, c, 82, 22, 36, 100);
    Printing.strokeLine(context, 118, 120, 118, 10, c.blade, 4 * c.lineScale);
    pen(context, c, 3, c.blade);
    context.beginPath();
    for (const y of [76, 50, 24]) {
        context.moveTo(112, y + 7);
        context.lineTo(118, y);
        context.lineTo(124, y + 7);
    }
    context.stroke();
}

/** A woven label, sewn down at both ends: the number on it is set over it. */
function label(context, c) {
    box(context, c, 6, 16, 138, 68, c.sashing, 2);
    pen(context, c, 3, c.binding);
    context.beginPath();
    for (const y of [25, 75]) {
        context.moveTo(7, y);
        context.lineTo(143, y);
    }
    context.stroke();
    pen(context, c, 2.4, c.stitched);
    context.setLineDash([2.4, 1.6]);
    context.beginPath();
    for (const x of [11, 139]) {
        context.moveTo(x, 29);
        context.lineTo(x, 71);
    }
    context.stroke();
    Printing.solid(context);
}

/** The mat with the cloth on it, the ruler on the cloth and the blade at the right of the ruler. */
function mat(context, c) {
    box(context, c, 3, 3, 144, 94, c.batting, 2.6);
    pen(context, c, 0.8, c.line);
    context.beginPath();
    for (let x = 15; x < 147; x += 12) {
        context.moveTo(x, 4);
        context.lineTo(x, 96);
    }
    for (let y = 13; y < 97; y += 12) {
        context.moveTo(4, y);
        context.lineTo(146, y);
    }
    context.stroke();
    Printing.clothRect(context, c, "front", 12, 24, 88, 54, 0.6);
    pen(context, c, 1.8);
    context.strokeRect(12, 24, 88, 54);
    ruler(context, c, 58, 8, 36, 84);
    Printing.blade(context, c, 94, 95, 8, 48, 0.4);
}

/** Lines of print from `x` on: of each how far down and how long. */
function printed(context, x, lines) {
    context.beginPath();
    for (const [y, length] of lines) {
        context.moveTo(x, y);
        context.lineTo(x + length, y);
    }
    context.stroke();
}

/** A sheet lying over the page: it has come up from below, or it is simply there. */
function sheet(context, c, slides) {
    box(context, c, 8, 4, 134, 92, c.paper, 4);
    pen(context, c, 3, c.line);
    printed(context, 20, [[20, 28], [32, 20], [44, 28]]);
    if (slides) {
        for (const [y, dots] of [[66, [2, 2.4]], [80, [1, 3]]]) {
            context.fillStyle = c.paper;
            context.fillRect(62, y, 68, 94 - y);
            pen(context, c, 1.8, c.inkSoft);
            context.setLineDash(dots);
            context.beginPath();
            context.moveTo(62, 94);
            context.lineTo(62, y);
            context.lineTo(130, y);
            context.lineTo(130, 94);
            context.stroke();
            Printing.solid(context);
        }
        pen(context, c, 5, c.accent);
        context.beginPath();
        context.moveTo(36, 88);
        context.lineTo(36, 62);
        context.moveTo(27, 72);
        context.lineTo(36, 62);
        context.lineTo(45, 72);
        context.stroke();
    }
    const top = slides ? 12 : 26;
    box(context, c, 62, top, 68, 48, c.front, 3);
    pen(context, c, 3);
    context.beginPath();
    for (const y of [14, 25, 36]) {
        context.moveTo(72, top + y);
        context.lineTo(y === 36 ? 100 : 120, top + y);
    }
    context.stroke();
    if (!slides)
        for (const x of [68, 124])
            pin(context, c, x, top + 2, 5);
}

/** A pin from the front: its head. */
function pin(context, c, x, y, r) {
    context.beginPath();
    context.arc(x, y, r, 0, 2 * Math.PI);
    context.fillStyle = c.blade;
    context.fill();
    pen(context, c, 1.6);
    context.stroke();
}

/** Lips, r to each side of their middle. */
function mouth(context, c, x, y, r, open) {
    const down = (open ? 1.1 : 0.66) * r;
    context.beginPath();
    context.moveTo(x - r, y);
    context.bezierCurveTo(x - 0.6 * r, y - 0.5 * r, x - 0.2 * r, y - 0.72 * r, x, y - 0.42 * r);
    context.bezierCurveTo(x + 0.2 * r, y - 0.72 * r, x + 0.6 * r, y - 0.5 * r, x + r, y);
    context.bezierCurveTo(x + 0.6 * r, y + down, x - 0.6 * r, y + down, x - r, y);
    context.closePath();
    context.fillStyle = c.patchA;
    context.fill();
    pen(context, c, 2.4);
    context.stroke();
    context.beginPath();
    context.moveTo(x - (open ? 0.66 : 0.94) * r, y);
    if (open) {
        context.quadraticCurveTo(x, y - 0.34 * r, x + 0.66 * r, y);
        context.quadraticCurveTo(x, y + 1.02 * r, x - 0.66 * r, y);
        context.fillStyle = c.ink;
        context.fill();
    } else {
        context.bezierCurveTo(x - 0.3 * r, y - 0.08 * r, x - 0.2 * r, y + 0.14 * r, x, y + 0.06 * r);
        context.bezierCurveTo(x + 0.2 * r, y + 0.14 * r, x + 0.3 * r, y - 0.08 * r, x + 0.94 * r, y);
        context.stroke();
    }
}

function waves(context, c, x, y, count, step) {
    pen(context, c, 3.4, c.accent);
    context.beginPath();
    for (let i = 1; i <= count; ++i) {
        const r = i * step;
        context.moveTo(x + r * Math.cos(0.7), y - r * Math.sin(0.7));
        context.arc(x, y, r, -0.7, 0.7, false);
    }
    context.stroke();
}

/** A press, and then the voice. */
function asked(context, c) {
    box(context, c, 6, 30, 48, 30, c.paper, 3);
    context.lineCap = "round";
    Printing.strokeLine(context, 32, 56, 42, 120, c.ink, 24 * c.lineScale);
    Printing.strokeLine(context, 32, 56, 42, 120, c.patchB, 24 * c.lineScale - 5);
    pen(context, c, 2);
    context.strokeRect(27.5, 49, 8, 6);
    context.lineCap = "butt";
    mouth(context, c, 90, 48, 26, true);
    waves(context, c, 102, 50, 3, 14);
}

/** A stair of steps, and the voice at each. */
function each(context, c) {
    for (const [x, y] of [[8, 72], [54, 52], [100, 32]]) {
        box(context, c, x, y, 46, 100 - y, c.front, 2.4);
        mouth(context, c, x + 15, y - 15, 13, true);
        waves(context, c, x + 19, y - 14, 2, 11);
    }
}

/** A foot on the pedal: a cord leads to the page and turns it, or hangs loose beside it. */
function pedal(context, c, turns) {
    pen(context, c, 3);
    context.beginPath();
    context.moveTo(104, 88);
    if (turns)
        context.bezierCurveTo(124, 98, 128, 84, 126, 62);
    else
        context.bezierCurveTo(112, 88, 116, 94, 122, 94);
    context.stroke();
    if (!turns) {
        context.fillStyle = c.ink;
        context.fillRect(121, 90, 10, 8);
        context.fillRect(131, 91.5, 5, 1.8);
        context.fillRect(131, 95, 5, 1.8);
    }
    box(context, c, 104, 12, 40, 50, c.paper, 2.6);
    pen(context, c, 2.4, c.inkSoft);
    printed(context, 111, [[24, 26], [33, 26], [42, 15]]);
    if (turns)
        leaf(context, c);
    context.beginPath();
    for (const [i, [x, y]] of [[6, 96], [108, 96], [108, 82], [100, 78], [6, 90]].entries())
        i === 0 ? context.moveTo(x, y) : context.lineTo(x, y);
    context.closePath();
    context.fillStyle = c.hoop;
    context.fill();
    foot(context, c);
}

/** The leaf in the air while the page is turned, and where it goes. */
function leaf(context, c) {
    context.beginPath();
    context.moveTo(104, 12);
    context.bezierCurveTo(112, 0, 126, 2, 132, 8);
    context.lineTo(132, 54);
    context.bezierCurveTo(126, 48, 112, 48, 104, 62);
    context.closePath();
    context.fillStyle = c.front;
    context.fill();
    pen(context, c, 2.4);
    context.stroke();
    pen(context, c, 4, c.accent);
    context.beginPath();
    context.moveTo(98, 30);
    context.lineTo(82, 30);
    context.moveTo(90, 22);
    context.lineTo(82, 30);
    context.lineTo(90, 38);
    context.stroke();
}

function foot(context, c) {
    context.beginPath();
    context.moveTo(18, 4);
    context.lineTo(46, 4);
    context.bezierCurveTo(45, 22, 46, 36, 52, 46);
    context.bezierCurveTo(64, 54, 86, 56, 94, 66);
    context.bezierCurveTo(98, 72, 94, 77, 88, 78);
    context.lineTo(22, 87);
    context.bezierCurveTo(12, 88, 12, 76, 15, 66);
    context.bezierCurveTo(18, 50, 18, 30, 18, 4);
    context.closePath();
    context.fillStyle = c.back;
    context.fill();
    pen(context, c, 2.6);
    context.stroke();
    // A stocking's rib.
    pen(context, c, 1.8, c.backMark);
    context.beginPath();
    for (const y of [12, 19]) {
        context.moveTo(20, y);
        context.lineTo(44, y);
    }
    context.stroke();
}

/** A screen with a figure on it. */
function screen(context, c, x, y, w, h, text, family) {
    box(context, c, x, y, w, h, c.paper, 4);
    figure(context, c, text, x + w / 2, y + h / 2, h * 0.78, family);
}

/** The tablet, and the same figure large before those who look on. */
function helper(context, c, family) {
    screen(context, c, 56, 5, 88, 62, "7", family);
    screen(context, c, 8, 54, 40, 30, "7", family);
    context.fillStyle = c.ink;
    for (const x of [68, 100, 132]) {
        context.beginPath();
        context.arc(x, 81, 8, 0, 2 * Math.PI);
        context.fill();
        context.beginPath();
        context.arc(x, 103, 13, Math.PI, 2 * Math.PI);
        context.fill();
    }
}
