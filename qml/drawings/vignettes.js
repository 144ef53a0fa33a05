// SPDX-License-Identifier: MIT
.pragma library
.import "laying.js" as Lay
.import "actscloth.js" as Cloth
.import "actsmending.js" as Mending
.import "actsjoin.js" as Join
.import "actsedge.js" as Edge
.import "actsframe.js" as Frame
.import "actssteps.js" as Steps

// One act each, as it lies on the table, on a field of 200 by 100. `c` is a colour set.

const wide = 200, high = 100;
const acts = Object.assign({}, Cloth.acts, Mending.acts, Join.acts, Edge.acts, Frame.acts, Steps.acts);

function draws(kind) {
    return acts[kind] !== undefined;
}

/** Fits the field into w by h and paints the act of that name; drawn large its lines and prints stay fine. `u` is one unit of the prints. */
function paint(context, c, kind, w, h, u) {
    if (!draws(kind))
        return;
    const k = Math.min(w / wide, h / high), fine = Math.min(1, 1.7 * u / k);
    context.save();
    context.translate((w - wide * k) / 2, (h - high * k) / 2);
    context.scale(k, k);
    context.lineJoin = "round";
    context.beginPath();
    context.rect(0, 0, wide, high);
    context.clip();
    acts[kind](context, Object.assign({}, c, { lineScale: c.lineScale * fine, grain: Lay.grain * fine }));
    context.restore();
}
