// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pieces.js" as Pieces

/** A board of the shelf seen from the front, or one of its posts: wood, its grain along it. */
PrintCanvas {
    id: root

    /** A board that is written on is planed smooth. */
    property bool grained: true

    implicitWidth: Math.round(Theme.mm(3.4))
    implicitHeight: Math.round(Theme.mm(4.4))
    mirrored: false
    shows: grained
    Accessible.ignored: true
    onPrinting: context => Pieces.wood(context, Theme.colors, width, height, grained, unit)
}
