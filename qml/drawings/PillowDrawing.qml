// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pillows.js" as Pillows

/** The finished piece as a pillow, from the back: where it goes in, and where the label is sewn. */
PrintCanvas {
    id: root

    /** As EdgeDrawing has it. */
    property var view: null
    property string accessibleName

    mirrored: false
    shows: root.view
    Accessible.name: accessibleName
    onPrinting: context => {
        const along = root.view?.alongMm ?? 0, wide = root.view?.acrossMm ?? 0, air = Theme.mm(4);
        if (!(along > 0) || !(wide > 0) || width <= 2 * air || height <= 2 * air)
            return;
        const s = Math.min((width - 2 * air) / along, (height - 2 * air) / wide), w = along * s, h = wide * s;
        Pillows.back(context, DyedColors.forWork, root.view, { x: (width - w) / 2, y: (height - h) / 2, w: w, h: h, s: s }, Theme.pxPerMm, unit);
    }
}
