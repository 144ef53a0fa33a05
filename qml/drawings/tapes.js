// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing

// A tape measure laid along what is measured: its metal ends stand at the raw ends.

/**
 * From x, y at an angle, `length` px long and `high` px wide, its marks along the edge that lies at the cloth.
 * `step` px from mark to mark, every `group`th longer. `held`: the one in hand.
 */
function lay(context, c, x, y, angle, length, high, step, group, held, u) {
    context.save();
    context.translate(x, y);
    context.rotate(angle);
    context.fillStyle = c.patchB;
    context.fillRect(0, 0, length, high);
    context.strokeStyle = held ? c.accent : c.ink;
    context.lineWidth = (held ? 5 : 2) * u * c.lineScale;
    context.strokeRect(0, 0, length, high);
    context.strokeStyle = c.ink;
    context.lineWidth = 1.6 * u * c.lineScale;
    context.beginPath();
    for (let i = 1, at = step; at < length - u && step > 2 * u; ++i, at = i * step) {
        context.moveTo(at, 0);
        context.lineTo(at, high * (i % group === 0 ? 0.6 : 0.3));
    }
    context.stroke();
    context.fillStyle = held ? c.accent : c.ink;
    const metal = 9 * u;
    context.fillRect(0, -5 * u, metal, high + 10 * u);
    context.fillRect(length - metal, -5 * u, metal, high + 10 * u);
    context.restore();
}

/** Where the six tapes lie round a piece at x, y, w by h px: the sides clockwise from the top, then both diagonals. */
function round(x, y, w, h, high, air) {
    const slant = Math.atan2(h, w), across = Math.hypot(w, h), half = high / 2;
    const onto = (px, py, angle) => [px + half * Math.sin(angle), py - half * Math.cos(angle)];
    const down = onto(x, y, slant), up = onto(x, y + h, -slant);
    return [
        { x: x + w, y: y - air, angle: Math.PI, length: w },
        { x: x + w + air, y: y + h, angle: -Math.PI / 2, length: h },
        { x: x, y: y + h + air, angle: 0, length: w },
        { x: x - air, y: y, angle: Math.PI / 2, length: h },
        { x: down[0], y: down[1], angle: slant, length: across },
        { x: up[0], y: up[1], angle: -slant, length: across }
    ];
}

/** The middle of the plate with a reading's figure, on the tape it was read on. */
function plateAt(index, x, y, w, h, reach, lift, pw) {
    // Beside each other where the piece is wide enough, else below each other.
    const beside = w * 0.4 > pw;
    return [[x + w / 2, y - lift], [x + w + reach, y + h / 2], [x + w / 2, y + h + lift], [x - reach, y + h / 2],
            [x + w * 0.28, y + h * 0.28], beside ? [x + w * 0.72, y + h * 0.28] : [x + w * 0.28, y + h * 0.72]][index];
}
