// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "marking.js" as Marking

/** A pin's head, and a basting thread that hangs down from it. */
PrintCanvas {
    id: root

    readonly property real head: Math.round(Theme.mm(3.6))

    width: head
    mirrored: false
    Accessible.ignored: true
    onPrinting: context => Marking.thread(context, Theme.colors, width, height, head, unit)
}
