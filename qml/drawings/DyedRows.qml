// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "dyes.js" as Dyes

/** A dyer's card: snips of one cloth in many dyes, strung row by row on cords. */
PrintCanvas {
    id: root

    property string clothRole: "front"
    /** The dyes, "#rrggbb", row by row. */
    property var colours: []
    property int across: 7
    /** How much of the card is left about the snips, px. */
    property real rim: Theme.mm(3)

    mirrored: false
    shows: [clothRole, colours, across]
    Accessible.ignored: true
    onPrinting: context => Dyes.card(context, Theme.colors, DyedColors.pens, clothRole, colours, across,
                                     width, height, rim, unit)
}
