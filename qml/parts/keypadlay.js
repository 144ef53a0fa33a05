// SPDX-License-Identifier: MIT
.pragma library
.import "fractions.js" as Fractions

// Where the parts of the keypad stand on its sheet, in px. `o`: {width, height, mm, parts (of an inch, 0: no
// marks), decimal, left, leave (the least width of its Cancel), said (how high what is wrong stands in the name's
// place), least (no numeral of a fraction is smaller)}.

const key = 13, gap = 3, margin = 4, tape = 5, target = 20, line = 6.8, name = 2 * line + 0.1;

/** Width of an inch, or of half of one, with keys of that width: marks stand half a key and half a gap apart. */
function inchWidth(last, wide) {
    return (wide * (last + 1) + gap * (last - 1)) / 2;
}

/** The marks in one line, or the two halves below each other: {lines, last}, `last` the last mark of a line. */
function inch(parts, room) {
    const whole = parts < 3 || inchWidth(parts - 1, key) <= room + 0.1;
    return { lines: parts === 0 ? 0 : whole ? 1 : 2, last: whole ? parts - 1 : Math.ceil(parts / 2) };
}

/** Of the digits: a strip of twelve keys, two rows of six, two of five with the other keys apart, three of five. */
function digits(o, form, room) {
    if (form === "wide" && o.parts > 0)
        return { columns: 12, rows: 1, apart: false };
    if (o.parts > 0 && room < 6 * key + 5 * gap - 0.1)
        return { columns: 5, rows: 2, apart: true };
    return o.decimal || room < 6 * key + 5 * gap - 0.1 ? { columns: 5, rows: 3, apart: false } : { columns: 6, rows: 2, apart: false };
}

function rowsHigh(rows) {
    return rows * (key + gap) - gap;
}

/** How high the value stands, with the line under it, at a height of its capitals. */
function value(o, cap) {
    return Fractions.stack(cap * o.mm, true, o.least, o.mm) / o.mm + 2.4;
}

/** The least height of the stack: name, value, marks, digits, buttons below each other; without the value. */
function stackBare(o) {
    const room = o.width / o.mm - 2 * margin, marks = inch(o.parts, room), own = digits(o, "stack", room);
    const inches = marks.lines > 0 ? marks.lines * (2 * key + tape + gap) : 0;
    return name + 1 + gap + inches + rowsHigh(own.rows) + gap + 0.6 + target + 2 * margin;
}

/** Of the value: small where there is no room for more. */
function stackCap(o) {
    return o.width / o.mm < 110 ? 8 : 12;
}

/** As high as the sheet must be at its width; with room for a third line of what is wrong. */
function least(o) {
    return isStrip(o) ? 86 * o.mm : (stackBare(o) + value(o, stackCap(o))) * o.mm;
}
function wanted(o) {
    return isStrip(o) ? least(o) : least(o) + line * o.mm;
}

/** Wide enough for all digits in one strip. */
function isStrip(o) {
    return o.width / o.mm - 2 * margin >= 12 * key + 11 * gap - 0.1;
}

function formOf(o) {
    const w = o.width / o.mm, h = o.height / o.mm;
    if (isStrip(o) && w > h)
        return "wide";
    return w > h && w > 140 && h < stackBare(o) + value(o, 8) ? "flat" : "stack";
}

function rect(x, y, w, h) {
    return { x, y, w, h };
}

/** Title, value and tape over a strip of digits, under it the inch of marks beside the buttons. */
function wide(o, w, h) {
    const room = w - 2 * margin, marks = inch(o.parts, room - 65), own = digits(o, "wide", room - 65);
    const cap = 10, high = value(o, cap), one = 8.8, under = margin + one + 1 + high + gap;
    const asked = marks.lines > 0 ? Math.max(inchWidth(marks.last, key), room * 0.62) : room - 65;
    const buttons = Math.min(room - asked - 4, 65);
    const foot = h - margin;
    const strip = own.rows === 1 ? rowsHigh(1) + Math.max(0, foot - under - key - gap - 2 * key - 9) : foot - under;
    const inchAt = under + strip + gap;
    return {
        form: "wide", cap: cap, own, marks,
        name: rect(0, margin, room, one), value: rect(o.left ? 0 : room - 65, margin + one + 1, 65, high),
        says: rect(o.left ? 71 : 0, margin + one + 1, room - 71, high - 0.6), saysName: false,
        digits: own.rows === 1 ? rect(0, under, room, strip) : rect(o.left ? room - asked : 0, under, asked, strip),
        inch: rect(o.left ? room - asked : 0, inchAt, asked, foot - inchAt), rubs: null,
        buttons: rect(o.left ? 0 : room - buttons, foot - target, buttons, target)
    };
}

/** Low: title and value beside the buttons, the inch under them, and under it the digits beside the tape. */
function flat(o, w, h) {
    const room = w - 2 * margin, marks = inch(o.parts, room), own = digits(o, "flat", 96);
    const buttons = o.leave / o.mm + 6 + 28, cap = 8, high = value(o, cap);
    const head = room - buttons - margin, under = margin + name + 0.6 + high + gap, foot = h - margin;
    const inchHigh = marks.lines > 0 ? foot - under - gap - rowsHigh(own.rows) : 0;
    const digitsAt = marks.lines > 0 ? under + inchHigh + gap : under;
    const digitsWide = own.columns * (key + gap) - gap;
    const left = o.left ? buttons + margin : 0;
    return {
        form: "flat", cap: cap, own, marks,
        name: rect(left, margin, head, name), value: rect(left, margin + name + 0.6, head, high),
        says: rect(o.left ? 0 : digitsWide + 5, digitsAt, room - digitsWide - 5, foot - digitsAt), saysName: o.said / o.mm <= name,
        digits: rect(o.left ? room - digitsWide : 0, digitsAt, digitsWide, foot - digitsAt),
        inch: rect(0, under, room, inchHigh), rubs: null,
        buttons: rect(o.left ? 0 : room - buttons, margin, buttons, target)
    };
}

/** Everything below each other; the keys keep their place from the foot up. */
function stack(o, w, h) {
    const room = w - 2 * margin, marks = inch(o.parts, room), own = digits(o, "stack", room), bare = stackBare(o);
    const cap = Math.max(7, Math.min(stackCap(o), 12));
    const high = value(o, bare + value(o, cap) <= h + 0.1 ? cap : 8);
    const set = bare + value(o, cap) <= h + 0.1 ? cap : 8;
    // What is over goes to a third line of what is wrong, to the keys as far as they take it, and under the value.
    const foot = h - margin - target, over = Math.max(0, h - bare - high), spare = Math.max(0, over - line);
    const grown = Math.min(spare * 0.8, marks.lines * 8 + own.rows * 5);
    const digitsHigh = rowsHigh(own.rows) + (marks.lines > 0 ? grown * 0.4 : grown);
    const digitsAt = foot - gap - 0.6 - digitsHigh;
    const inchHigh = marks.lines > 0 ? marks.lines * (2 * key + tape + gap) - gap + grown * 0.6 : 0;
    const valueAt = margin + Math.max(name, Math.min(name + Math.min(over, line), o.said / o.mm)) + 1, rubs = own.apart ? 2 * key + gap : 0, under = digitsAt - (marks.lines > 0 ? gap + inchHigh : 0) - gap;
    const figure = own.apart ? room - rubs - 4 : Math.min(room * 0.5, 58);
    // Where the other keys stand beside the value the tape lies under it, if there is room.
    const says = own.apart ? rect(0, valueAt + high + 1, room, under - valueAt - high - 1) : rect(figure + 4, valueAt, room - figure - 4, high - 0.6);
    return {
        form: "stack", cap: set, own, marks,
        name: rect(0, margin, room, name), value: rect(0, valueAt, figure, high),
        says, saysName: true,
        digits: rect(0, digitsAt, room, digitsHigh), inch: rect(0, digitsAt - gap - inchHigh, room, inchHigh),
        rubs: own.apart ? rect(room - rubs, valueAt, rubs, key) : null,
        buttons: rect(0, foot, room, target)
    };
}

/** All places, in px. */
function lay(o) {
    const w = o.width / o.mm, h = o.height / o.mm, form = formOf(o);
    const all = form === "wide" ? wide(o, w, h) : form === "flat" ? flat(o, w, h) : stack(o, w, h);
    for (const part of ["name", "value", "says", "digits", "inch", "rubs", "buttons"])
        if (all[part])
            all[part] = Qt.rect((all[part].x + margin) * o.mm, all[part].y * o.mm, Math.max(0, all[part].w) * o.mm, Math.max(0, all[part].h) * o.mm);
    return all;
}
