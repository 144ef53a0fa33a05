// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "folds.js" as Folds
import "swatches.js" as Swatches

/** A cloth in its own colour and print, folded in layers as it lies in a pile or on a shelf. It is the same for either hand. */
PrintCanvas {
    id: root

    /** As which cloth it is printed: "front", "back", … */
    property string clothRole: "front"
    /** "#rrggbb", or "" for the colour its print is drawn in. */
    property string colour
    property int layers: 3
    /** There is none yet: it is dotted. */
    property bool planned: false
    property real line: Theme.mm(0.3) * Theme.colors.lineScale

    mirrored: false
    shows: [clothRole, colour, layers, planned, line]
    Accessible.ignored: true
    onPrinting: context => Folds.pile(context, Swatches.dyed(Theme.colors, { dark: Theme.day.ink, light: Theme.lamp.ink }, clothRole, colour),
                                      0, 1, width, height - 2, layers, planned, line, unit * 0.8)
}
