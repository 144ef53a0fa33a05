// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "dyes.js" as Dyes

/** A fan of snips about the cloth in hand: at the left what less of it looks like, at the right what more. */
PrintCanvas {
    id: root

    property string clothRole: "front"
    /** "#rrggbb", or "" while there is none. */
    property string colour
    /** What goes from less to more: "lightness", "hue" or "strength". */
    property string what

    implicitHeight: Theme.mm(14)
    mirrored: false
    shows: [clothRole, colour, what]
    Accessible.ignored: true
    onPrinting: context => Dyes.fan(context, Theme.colors, DyedColors.pens, clothRole,
                                    Dyes.about(colour === "" ? "#8f8f8f" : colour, what), width, height, unit)
}
