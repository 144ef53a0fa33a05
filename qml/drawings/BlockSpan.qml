// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "printing.js" as Printing

/** The smallest block that is wanted lying on the largest, to one scale, the sizes between them dotted. */
PrintCanvas {
    id: root

    /** Their sides, mm of cloth. */
    property real least: 0
    property real most: 0
    property string accessibleName

    mirrored: false
    shows: [least, most]
    Accessible.name: accessibleName
    onPrinting: context => {
        const wide = Math.max(least, most), side = Math.min(width, height) - 4 * unit;
        if (wide <= 0 || side <= 0)
            return;
        const c = DyedColors.plain, k = side / wide, x = (width - side) / 2, y = (height - side) / 2, line = 2 * unit * c.lineScale;
        const block = (size, role, style) => {
            const s = size * k, at = y + side - s;
            Printing.clothRect(context, c, role, x, at, s, s, unit);
            Printing.roleRect(context, style, x, at, s, s, c.ink, line);
        };
        block(most, "sashing", "planned");
        for (let i = 3; i > 0; --i) {
            const s = (least + (most - least) * i / 4) * k;
            Printing.roleRect(context, "planned", x, y + side - s, s, s, c.inkSoft, line * 0.7);
        }
        block(Math.min(least, most), "front", "solid");
        const s = Math.min(least, most) * k, inset = Math.min(s * 0.1, 14 * unit);
        if (s > 20 * unit)
            Printing.roleRect(context, "stitched", x + inset, y + side - s + inset, s - 2 * inset, s - 2 * inset, c.stitched, line);
    }
}
