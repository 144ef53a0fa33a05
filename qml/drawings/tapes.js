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
