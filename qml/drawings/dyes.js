// SPDX-License-Identifier: MIT
.pragma library
.import "printing.js" as Printing
.import "swatches.js" as Swatches

// One cloth in many dyes: a dyer's card of them, a fan of those next to the one in hand.

/** The cord as it lies on cloth of any colour. */
function cord(context, c, x1, x2, y, u) {
    Printing.strokeLine(context, x1, y, x2, y, c.raised, 6 * u);
    Printing.strokeLine(context, x1, y, x2, y, c.ink, 3 * u * c.lineScale);
}

/** A knot before the first snip and behind the last, its ends hanging. */
function knot(context, c, x, y, side, u) {
    Printing.strokeLine(context, x, y, x + side * 4 * u, y + 15 * u, c.ink, 2.4 * u * c.lineScale);
    Printing.strokeLine(context, x, y, x - side * 3 * u, y + 13 * u, c.ink, 2.4 * u * c.lineScale);
    context.beginPath();
    context.arc(x, y, 4.4 * u, 0, 2 * Math.PI);
    context.fillStyle = c.ink;
    context.fill();
}

function card(context, c, pens, print, colours, across, w, h, rim, u) {
    context.fillStyle = c.raised;
    context.fillRect(0, 0, w, h);
    context.strokeStyle = c.ink;
    context.lineWidth = 2.4 * u * c.lineScale;
    context.strokeRect(u, u, w - 2 * u, h - 2 * u);
    const rows = Math.ceil(colours.length / across), cw = (w - 2 * rim) / across, ch = (h - 2 * rim) / Math.max(1, rows);
    for (let row = 0; row < rows; ++row) {
        const y = rim + row * ch, hung = y + 11 * u, here = Math.min(across, colours.length - row * across);
        for (let i = 0; i < here; ++i)
            Swatches.snip(context, Swatches.dyed(c, pens, print, colours[row * across + i]), rim + i * cw, y, cw, ch - 1.5 * u, u, 1.6 * u * c.lineScale);
        // Through two holes of each: it runs in front from one snip to the next.
        const hole = Math.min(16 * u, cw * 0.22);
        for (let i = 0; i <= here; ++i)
            cord(context, c, i === 0 ? rim * 0.5 : rim + i * cw - hole, i === here ? w - rim * 0.5 : rim + i * cw + hole, hung, u);
        for (let i = 0; i < here; ++i)
            for (const x of [rim + i * cw + hole, rim + (i + 1) * cw - hole]) {
                context.beginPath();
                context.arc(x, hung, 3.4 * u, 0, 2 * Math.PI);
                context.fillStyle = c.ink;
                context.fill();
            }
        knot(context, c, rim * 0.5, hung, -1, u);
        knot(context, c, rim + here * cw + rim * 0.5, hung, 1, u);
    }
}

/** Five dyes with this one in the middle, going from less to more. */
function about(colour, what) {
    const dye = Qt.darker(colour, 1), hue = Math.max(0, dye.hslHue), all = [];
    const within = value => Math.max(0, Math.min(1, value));
    for (let i = -2; i <= 2; ++i) {
        const h = what === "hue" ? (hue + i * 0.09 + 1) % 1 : hue;
        const s = what === "strength" ? within(dye.hslSaturation + i * 0.3) : dye.hslSaturation;
        const l = what === "lightness" ? within(dye.hslLightness + i * 0.13) : dye.hslLightness;
        all.push(i === 0 ? colour : String(Qt.hsla(h, s, l, 1)));
    }
    return all;
}

/** Snips turned about one rivet, the middle one uppermost and farthest out. */
function fan(context, c, pens, print, colours, w, h, u) {
    const long = h * 1.02, wide = h * 0.56, pivot = h * 1.12;
    for (const i of [0, 4, 1, 3, 2]) {
        context.save();
        context.translate(w / 2, pivot);
        context.rotate((i - 2) * 0.44);
        Swatches.snip(context, Swatches.dyed(c, pens, print, colours[i]), -wide / 2, -long * (i === 2 ? 1.08 : 1), wide, long, u * 0.8, (i === 2 ? 3.4 : 1.6) * u * c.lineScale);
        context.restore();
    }
}
