// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "marking.js" as Marking

/** A piece of tailor's chalk whose worn point stands on the tape: what a finger pushes along the strip. */
PrintCanvas {
    id: root

    /** A finger pushes it. */
    property bool held: false

    width: Math.round(Theme.mm(25))
    height: Math.round(Theme.mm(13))
    mirrored: false
    shows: held
    Accessible.ignored: true
    onPrinting: context => Marking.chalk(context, Theme.colors, held, width, height, unit)
}
