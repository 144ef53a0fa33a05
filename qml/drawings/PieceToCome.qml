// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pieces.js" as Pieces
import "printing.js" as Printing

/** A piece that is not planned yet, on its pegs already: nine blocks in dots on bare cloth, a ring on the one that comes first. */
PrintCanvas {
    id: root

    Accessible.ignored: true

    onPrinting: context => {
        const c = Theme.colors, u = unit;
        const gap = Math.min(width, height) * 0.02, drop = 2.6 * 5.87 * u;
        const side = Math.max(0, Math.min(width - 16 * 5.87 * u, height - drop - 5.87 * u));
        const block = (side - 4 * gap) / 3;
        const x0 = (width - side) / 2, y0 = drop;
        if (block <= 0)
            return;
        Printing.clothRect(context, c, "front", x0, y0, side, side, u);
        context.strokeStyle = c.ink;
        context.lineWidth = 2.4 * u * c.lineScale;
        context.lineCap = "round";
        Printing.dash(context, context.lineWidth, [0.1 * u, 8 * u]);
        context.strokeRect(x0, y0, side, side);
        for (let row = 0; row < 3; ++row)
            for (let column = 0; column < 3; ++column)
                context.strokeRect(x0 + gap + column * (block + gap), y0 + gap + row * (block + gap), block, block);
        Printing.solid(context);
        context.lineCap = "butt";
        Printing.ring(context, c, x0 + gap, y0 + gap, u);
        Pieces.pegs(context, c, [x0 + side * 0.2, x0 + side * 0.8], drop + 2.4 * 5.87 * u, u);
    }
}
