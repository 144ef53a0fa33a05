// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "swatches.js" as Swatches

/** A snip of one cloth, pinked all round, in its own colour and print. */
PrintCanvas {
    id: root

    /** As which cloth it is printed: "front", "back", "patch", … */
    property string clothRole: "front"
    /** "#rrggbb", or "" for the colour its print is drawn in. */
    property string colour
    /** Its outline, px. */
    property real line: Theme.mm(0.3) * Theme.colors.lineScale
    /** The print's size; smaller for cloth seen from farther away. */
    property real scaleOfPrint: 1

    mirrored: false
    shows: [clothRole, colour, line]
    Accessible.ignored: true
    onPrinting: context => Swatches.snip(context, Swatches.dyed(Theme.colors, DyedColors.pens, clothRole, colour),
                                         0, 0, width, height, unit * scaleOfPrint, line)
}
