// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "sketches.js" as Sketches

// The place where the tablet stands: a wall with a window, a lamp and a screen, a shelf, the cutting table, the pedal under it.

/** The wall's shelves and the table: `shelves` [y, …] the width across, `tables` [{x, y, w, h}, …] joined to one. */
function room(context, c, w, shelves, tables, u) {
    const line = 2.4 * u * c.lineScale, deep = 15 * u;
    for (const y of shelves) {
        Printing.clothRect(context, c, "table", 0, y, w, deep, u);
        Printing.strokeLine(context, 0, y, w, y, c.ink, line);
        Printing.strokeLine(context, 0, y + deep, w, y + deep, c.ink, line);
    }
    for (const t of tables)
        Printing.clothRect(context, c, "table", t.x, t.y, t.w, t.h, u);
    // One board: its outline goes round all of it.
    context.strokeStyle = c.ink;
    context.lineWidth = 4 * u * c.lineScale;
    context.beginPath();
    outline(context, tables);
    context.closePath();
    context.stroke();
}

/** Round rectangles that lie below each other, ranged left, the last perhaps narrower. */
function outline(context, tables) {
    if (tables.length === 0)
        return;
    const first = tables[0], last = tables[tables.length - 1];
    context.moveTo(first.x, first.y);
    context.lineTo(first.x + first.w, first.y);
    for (const t of tables) {
        context.lineTo(t.x + t.w, t.y);
        context.lineTo(t.x + t.w, t.y + t.h);
    }
    context.lineTo(last.x, last.y + last.h);
}

/** What is set, each drawn as it is set, in its own box on a field of 150 by 100. */
const things = {
    "language": (context, c, state, family) => tablet(context, c, state.words, family),
    "light": (context, c, state) => light(context, c, state.value),
    "aloud": (context, c, state) => aloud(context, c, state.value),
    "helper": (context, c, state, family) => {
        if (state.value)
            Sketches.helper(context, c, family);
        else
            Sketches.screen(context, c, 42, 22, 66, 50, "", family);
    },
    "hand": (context, c, state) => {
        if (state.value) {
            context.translate(150, 0);
            context.scale(-1, 1);
        }
        Sketches.mat(context, c);
    },
    "movement": (context, c, state) => Sketches.sheet(context, c, !state.value),
    "card": (context, c) => card(context, c),
    "pedal": (context, c, state) => Sketches.pedal(context, c, state.value)
};

/** Fits the field of one thing into a box; what stands stands on the box's foot. */
function thing(context, c, name, state, box, family) {
    const k = Math.min(box.w / 150, box.h / 100);
    context.save();
    context.translate(box.x + (box.w - 150 * k) / 2, box.y + box.h - 100 * k);
    context.scale(k, k);
    context.lineJoin = "round";
    things[name](context, c, state, family);
    context.restore();
}

/** The tablet on its stand, what is written on it in the language that is set. */
function tablet(context, c, words, family) {
    context.fillStyle = c.hoop;
    context.beginPath();
    context.moveTo(52, 100);
    context.lineTo(62, 84);
    context.lineTo(88, 84);
    context.lineTo(98, 100);
    context.closePath();
    context.fill();
    context.fillStyle = c.hoop;
    context.fillRect(6, 2, 138, 86);
    context.fillStyle = c.paper;
    context.fillRect(13, 9, 124, 72);
    Printing.clothRect(context, c, "front", 13, 54, 62, 27, 0.5);
    Sketches.ruler(context, c, 52, 14, 24, 67);
    Printing.strokeLine(context, 76, 80, 76, 14, c.blade, 3.4 * c.lineScale);
    context.fillStyle = c.ink;
    context.font = "bold " + Math.round(words.length > 7 ? 13 : 15) + "px \"" + family + "\"";
    context.textAlign = "center";
    context.fillText(words, 107, 40);
    Sketches.pen(context, c, 2.6);
    Sketches.printed(context, 84, [[52, 44], [62, 36]]);
    context.fillStyle = c.action;
    context.fillRect(84, 69, 46, 9);
}

/** A window and a lamp: the sun is in the one, or the other burns; for the strongest contrast both, black on white. */
function light(context, c, set) {
    const night = set === "lamp", panes = set === "contrast" ? ["#000000", "#ffffff", "#ffffff", "#000000"] : Array(4).fill(night ? c.ink : c.raised);
    [[8, 8], [42, 8], [8, 50], [42, 50]].forEach(([x, y], i) => {
        context.fillStyle = night ? c.back : panes[i];
        context.fillRect(x, y, 34, 42);
    });
    Sketches.pen(context, c, 4);
    context.strokeRect(8, 8, 68, 84);
    Sketches.pen(context, c, 2.6);
    context.beginPath();
    context.moveTo(42, 8);
    context.lineTo(42, 92);
    context.moveTo(8, 50);
    context.lineTo(76, 50);
    context.stroke();
    if (set === "day")
        rays(context, c, 42, 50, 12, 8);
    // The lamp hangs from above; it is out by day.
    Printing.strokeLine(context, 112, 0, 112, 28, c.ink, 3 * c.lineScale);
    context.beginPath();
    context.moveTo(103, 28);
    context.lineTo(121, 28);
    context.lineTo(138, 56);
    context.lineTo(86, 56);
    context.closePath();
    context.fillStyle = c.binding;
    context.fill();
    Sketches.pen(context, c, 2.6);
    context.stroke();
    context.beginPath();
    context.arc(112, 57, 8, 0, Math.PI);
    context.fillStyle = night ? c.caution : c.raised;
    context.fill();
    context.stroke();
    if (!night)
        return;
    Sketches.pen(context, c, 3, c.caution);
    context.beginPath();
    for (const [x, far] of [[-20, -34], [-7, -12], [7, 12], [20, 34]]) {
        context.moveTo(112 + x, 70);
        context.lineTo(112 + far, 94);
    }
    context.stroke();
}

function rays(context, c, x, y, r, count) {
    context.beginPath();
    context.arc(x, y, r, 0, 2 * Math.PI);
    context.fillStyle = c.patchA;
    context.fill();
    Sketches.pen(context, c, 2.4);
    context.stroke();
    Sketches.pen(context, c, 3, c.caution);
    context.beginPath();
    for (let i = 0; i < count; ++i) {
        const a = i * 2 * Math.PI / count + 0.2;
        context.moveTo(x + (r + 5) * Math.cos(a), y + (r + 5) * Math.sin(a));
        context.lineTo(x + (r + 13) * Math.cos(a), y + (r + 13) * Math.sin(a));
    }
    context.stroke();
}

/** The mouth: shut; open, with the finger that asks; or open at each step. */
function aloud(context, c, when) {
    const at = when === "asked" ? 86 : when === "each" ? 44 : 75;
    if (when === "asked")
        Sketches.asked(context, c);
    else
        Sketches.mouth(context, c, at, 52, when === "off" ? 42 : 34, when !== "off");
    if (when === "each")
        Sketches.waves(context, c, at + 18, 54, 4, 18);
}

/** A bank card, and the rule it is as long as. */
function card(context, c) {
    Sketches.box(context, c, 26, 14, 98, 58, c.raised, 3);
    context.fillStyle = c.hoop;
    context.fillRect(26, 24, 98, 11);
    Sketches.box(context, c, 36, 46, 17, 13, c.patchB, 1.8);
    context.fillStyle = c.ink;
    context.fillRect(26, 82, 98, 8);
}
