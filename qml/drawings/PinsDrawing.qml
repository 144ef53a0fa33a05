// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pins.js" as Pins

/** The pins that went into the piece, stuck through its edge; or those that came out, back in the cushion. */
PrintCanvas {
    id: root

    /** Into the piece; else back in the cushion. */
    property bool going: true
    property int into: 0
    property int back: 0

    mirrored: false
    shows: [going, into, back]
    Accessible.ignored: true
    onPrinting: context => {
        if (width <= 0 || height <= 0)
            return;
        if (going)
            Pins.inEdge(context, DyedColors.forWork, into, back, width, height, Theme.pxPerMm, unit);
        else
            Pins.inCushion(context, DyedColors.forWork, into, back, width, height, Theme.pxPerMm, unit);
    }
}
