// SPDX-License-Identifier: MIT
.pragma library

// A tape rolled out as far as a figure says. Drawn only: nothing is reckoned from it.

// How much tape is in sight, from mark to mark, and from number to number.
const inches = [[1, 0.125, 1], [3, 0.25, 1], [6, 0.5, 1], [12, 1, 3], [24, 1, 6], [36, 2, 12], [60, 3, 12], [120, 6, 24], [480, 24, 120]];
const millimetres = [[10, 1, 5], [30, 1, 10], [100, 5, 50], [300, 10, 100], [600, 25, 200], [1000, 50, 500], [3000, 100, 1000], [10000, 500, 5000]];

/** What has been typed, as far as it is a number: {whole, num, den} as they are set. */
function reach(shown) {
    const part = shown.num !== "" && Number(shown.den) > 0 ? Number(shown.num) / Number(shown.den) : 0;
    const all = Number(shown.whole === "" ? 0 : shown.whole.replace(",", ".")) + part;
    return isFinite(all) ? all : 0;
}

/** The least stretch that holds so much. */
function stretch(value, metric) {
    const all = metric ? millimetres : inches;
    return all.find(([length]) => value <= length) ?? all[all.length - 1];
}

/** `c`: colours; `mm` px to a millimetre. The tape lies along the foot of w by h, its roll stands at the end. */
function paint(context, c, value, metric, w, h, mm, family) {
    const [length, step, group] = stretch(value, metric);
    const r = h / 2 - 0.3 * mm, high = 0.62 * h, y = h - high, from = 0.6 * mm;
    const k = (w - 2 * r - from) / length, end = from + Math.min(value, length) * k;
    context.fillStyle = c.patchB;
    context.fillRect(from, y, end - from, high);
    context.strokeStyle = c.ink;
    context.lineWidth = 0.3 * mm * c.lineScale;
    context.strokeRect(from, y, end - from, high);
    context.beginPath();
    for (let i = 1; i * step <= Math.min(value, length) + 1e-9; ++i) {
        const major = Math.abs(i * step / group - Math.round(i * step / group)) < 1e-9;
        context.moveTo(from + i * step * k, y);
        context.lineTo(from + i * step * k, y + high * (major ? 0.42 : 0.26));
    }
    context.stroke();
    numbers(context, c, { from: from, k: k, end: end, foot: h - 0.7 * mm, group: group, high: high }, family);
    context.fillStyle = c.ink;
    context.fillRect(0, y - 0.4 * mm, 0.9 * mm, high + 0.4 * mm);
    roll(context, c, end, h - r - 0.15 * mm, r, mm);
}

function numbers(context, c, lie, family) {
    const size = Math.round(lie.high * 0.6);
    context.fillStyle = c.ink;
    context.font = "bold " + size + "px \"" + family + "\"";
    context.textAlign = "right";
    // As many as stand apart.
    let every = lie.group;
    while (every * lie.k < size * 1.7)
        every += lie.group;
    for (let i = every; lie.from + i * lie.k < lie.end; i += every)
        context.fillText(String(i), lie.from + i * lie.k - size * 0.12, lie.foot);
}

/** What is still rolled up, seen from its side. */
function roll(context, c, x, y, r, mm) {
    context.beginPath();
    context.arc(x + r, y, r, 0, 2 * Math.PI);
    context.fillStyle = c.patchB;
    context.fill();
    context.lineWidth = 0.35 * mm * c.lineScale;
    context.stroke();
    context.beginPath();
    for (let i = 0; i <= 60; ++i) {
        const a = i / 60 * 6 * Math.PI + Math.PI / 2, out = r * (0.26 + 0.74 * i / 60);
        i === 0 ? context.moveTo(x + r + out * Math.cos(a), y + out * Math.sin(a)) : context.lineTo(x + r + out * Math.cos(a), y + out * Math.sin(a));
    }
    context.stroke();
    context.beginPath();
    context.arc(x + r, y, 0.2 * r, 0, 2 * Math.PI);
    context.fillStyle = c.ink;
    context.fill();
}

/** How long a mark is of all the tape's width: halves the longest, as on a ruler. */
function reachOf(den) {
    return den <= 2 ? 0.86 : den <= 4 ? 0.66 : den <= 8 ? 0.5 : 0.36;
}

/**
 * A part of one inch, from mark to mark: {from, to, y, high, pitch, shift, marks, at}. Marks of which the keys hang
 * below rise from the lower edge; as far as `at` it is measured off.
 */
function inch(context, c, o, mm) {
    const line = 0.3 * mm * c.lineScale, x = i => (i - o.from) * o.pitch + o.shift;
    const left = o.from === 0 ? x(0) : x(o.from) - 1.4 * mm, right = x(o.from) + o.to * o.pitch + (o.from + o.to > o.marks.length ? 0 : 1.4 * mm);
    const top = o.y, foot = o.y + o.high;
    context.fillStyle = c.patchB;
    context.fillRect(left, top, right - left, o.high);
    context.strokeStyle = c.ink;
    context.lineWidth = line;
    context.strokeRect(left, top, right - left, o.high);
    const last = Math.min(o.from + o.to, o.marks.length);
    for (let i = Math.max(1, o.from); i <= last; ++i) {
        const chosen = i === o.at, long = o.high * reachOf(Number(o.marks[i - 1].den));
        const down = i % 2 === 0;
        context.fillStyle = chosen ? c.accent : c.ink;
        const wide = (chosen ? 0.9 : 0.42) * mm * c.lineScale;
        context.fillRect(x(i) - wide / 2, down ? top : foot - long, wide, long);
    }
    const reached = Math.min(o.at, o.from + o.to);
    if (reached > o.from) {
        context.fillStyle = c.accent;
        context.fillRect(left, o.y + o.high / 2 - 0.5 * mm, x(reached) - left, mm);
    }
    context.fillStyle = c.ink;
    if (o.from === 0)
        context.fillRect(left - 0.5 * mm, top - 0.4 * mm, mm, o.high + 0.8 * mm);
    if (o.from + o.to > o.marks.length)
        context.fillRect(right - 0.25 * mm, top, 0.5 * mm, o.high);
}

/** A strip of tape under keys: {y, w, high, first, last, from, key, gap, keys}; its marks show between the keys. */
function strip(context, c, o, mm) {
    const left = o.first ? 0.8 * mm : 0.4 * mm, right = o.w - 0.4 * mm;
    context.fillStyle = c.patchB;
    context.fillRect(left, o.y, right - left, o.high);
    context.strokeStyle = c.ink;
    context.lineWidth = 0.3 * mm * c.lineScale;
    context.strokeRect(left, o.y, right - left, o.high);
    context.beginPath();
    for (let i = 1; i < o.keys; ++i) {
        const x = o.from + i * (o.key + o.gap) - o.gap / 2;
        context.moveTo(x, o.y);
        context.lineTo(x, o.y + o.high * 0.3);
        context.moveTo(x, o.y + o.high);
        context.lineTo(x, o.y + o.high * 0.84);
    }
    context.stroke();
    context.fillStyle = c.ink;
    if (o.first)
        context.fillRect(0, o.y - 0.3 * mm, 1.1 * mm, o.high + 0.6 * mm);
}
