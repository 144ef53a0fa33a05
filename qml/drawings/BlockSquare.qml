// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "printing.js" as Printing

/** One place of the piece: a stitched block, or the empty place of one, within its half of the sashings. */
PrintCanvas {
    id: root

    property real between: Theme.mm(3)
    property bool made: true
    /** It lies in the piece, sashings round it; else it lies loose. */
    property bool sewn: true

    mirrored: false
    shows: [root.made, root.sewn, root.between]
    Accessible.ignored: true
    onPrinting: context => {
        const c = DyedColors.forWork, u = unit, a = between / 2, side = width - between;
        if (sewn)
            Printing.clothRect(context, c, "sashing", 0, 0, width, height, u);
        if (made) {
            Printing.clothRect(context, c, "front", a, a, side, side, u);
            Printing.roleRect(context, "stitched", a + side * 0.1, a + side * 0.1, side * 0.8, side * 0.8, c.stitched, 1.8 * u * c.lineScale);
        } else {
            context.fillStyle = c.raised;
            context.fillRect(a, a, side, side);
        }
        for (const [x1, y1, x2, y2] of [[a, a, a + side, a], [a + side, a, a + side, a + side], [a + side, a + side, a, a + side], [a, a + side, a, a]])
            if (made)
                Printing.strokeLine(context, x1, y1, x2, y2, c.ink, 2 * u * c.lineScale);
            else
                Printing.roleLine(context, "planned", x1, y1, x2, y2, c.inkSoft, 1.8 * u * c.lineScale);
    }
}
