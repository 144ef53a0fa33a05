// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing
import "strips.js" as Strips

/** A block in its place in the piece: its outline in dots while it is to do, cloth with its stitched line once it is made. */
PrintCanvas {
    id: root

    property bool made: false
    property bool lost: false
    /** What a stitched one looks like, as the strip's drawing has it. */
    property var view: null
    /** What the dots are drawn in. */
    property color ink: Theme.colors.ink

    mirrored: false
    shows: [made, lost, view, ink]
    Accessible.ignored: true
    onPrinting: context => {
        const c = Theme.colors, u = unit, air = 2.4 * u;
        if (made && (view?.blockAlongMm ?? 0) > 0) {
            // Its cloth goes to the sashing; the allowance lies under that.
            const dyes = DyedColors.forWork;
            Printing.clothRect(context, dyes, "front", 0, 0, width, height, u);
            Strips.block(context, dyes, view, width, height, false, u, 1.08);
        } else if (made) {
            Printing.clothRect(context, c, "front", 0, 0, width, height, u);
            Printing.roleRect(context, "stitched", 5 * u, 5 * u, width - 10 * u, height - 10 * u, c.stitched, 3 * u * c.lineScale);
        } else {
            Printing.roleRect(context, "planned", air, air, width - 2 * air, height - 2 * air, ink, 2.2 * u * c.lineScale);
        }
        if (lost)
            for (const [y1, y2] of [[height, 0], [0, height]])
                Printing.strokeLine(context, 0, y1, width, y2, c.stop, 4 * u * c.lineScale);
    }
}
