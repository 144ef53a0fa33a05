// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "printing.js" as Printing

/** How one cloth is cut, to scale: strips across or along it, the pieces of each, and what is left. The selvages lie left and right. */
PrintCanvas {
    id: root

    /**
     * [{mm, repeats, run, pieces: [{mm, along, count, gap}]}]; `along` is less than the strip where a piece is
     * trimmed, `run` the length of strips that lie side by side along the selvage
     */
    property var strips: []
    property real usableMm: 0
    property real lengthMm: 0
    property string clothRole: "front"
    property string accessibleName

    mirrored: false
    shows: [strips, usableMm, lengthMm, clothRole]
    Accessible.name: accessibleName
    onPrinting: context => {
        if (usableMm <= 0 || lengthMm <= 0)
            return;
        // The cloth lies along the drawing: its length to the right, its width upright.
        const c = Theme.colors, u = unit, k = Math.min((width - 4 * u) / lengthMm, (height - 4 * u) / usableMm);
        const run = lengthMm * k, wide = usableMm * k;
        Printing.clothRect(context, c, "waste", 0, 2 * u, run, wide, u);
        const fill = (x, y, w, h) => {
            Printing.clothRect(context, c, clothRole, x, y, w, h, u * 0.7);
            context.strokeStyle = c.ink;
            context.lineWidth = 1.2 * u * c.lineScale;
            context.strokeRect(x, y, w, h);
        };
        let x = strips.reduce((most, strip) => Math.max(most, strip.run ?? 0), 0) * k, beside = 2 * u;
        for (const strip of strips) {
            const w = strip.mm * k, runs = (strip.run ?? 0) > 0;
            for (let i = 0; i < Math.min(strip.repeats, 400); ++i) {
                let at = runs ? 0 : 2 * u;
                for (const piece of strip.pieces)
                    for (let j = 0; j < Math.min(piece.count, 200); ++j) {
                        const h = piece.mm * k, deep = Math.min(w, (piece.along ?? strip.mm) * k);
                        if (!piece.gap && runs)
                            fill(at, beside, h, deep);
                        else if (!piece.gap)
                            fill(x, at, deep, h);
                        at += h;
                    }
                if (runs)
                    beside += w;
                else
                    x += w;
            }
        }
        context.strokeStyle = c.ink;
        context.lineWidth = 2.6 * u * c.lineScale;
        context.strokeRect(0, 2 * u, run, wide);
    }
}
