// SPDX-License-Identifier: MIT
import QtQuick
import "strips.js" as Strips

/** One face of a stitched block as it comes off the hoop, with the cloth around it. */
PrintCanvas {
    id: root

    /** As StripDrawing has it: {blockAlongMm, blockAcrossMm, patches}. */
    property var view: null
    property bool back: false

    mirrored: false
    shows: [root.view, root.back]
    Accessible.ignored: true
    onPrinting: context => {
        if ((root.view?.blockAlongMm ?? 0) > 0 && width > 0 && height > 0)
            Strips.block(context, DyedColors.forWork, root.view, width, height, root.back, unit);
    }
}
