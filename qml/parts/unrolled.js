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
    for (let i = lie.group; lie.from + i * lie.k < lie.end; i += lie.group)
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
