// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pieces.js" as Pieces

/** How far a piece is, as a seam: sewn so far, the needle, and the holes still to be sewn. */
PrintCanvas {
    id: root

    /** 0 to 1. */
    property real share: 0

    implicitHeight: Math.round(Theme.mm(5))
    shows: share
    Accessible.ignored: true
    onPrinting: context => Pieces.thread(context, Theme.colors, share, width, height, unit)
}
