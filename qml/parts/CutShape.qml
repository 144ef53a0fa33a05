// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A rectangle with its corners cut: the sign of a pressable thing. The key line lies inside its edge. */
Cutout {
    id: root

    property real cut: Theme.chamfer

    readonly property real inset: strokeWidth / 2
    readonly property real farX: width - inset
    readonly property real farY: height - inset

    stroke: Theme.colors.ink
    strokeWidth: Theme.key
    corners: [
        Qt.point(cut, inset), Qt.point(width - cut, inset), Qt.point(farX, cut), Qt.point(farX, height - cut),
        Qt.point(width - cut, farY), Qt.point(cut, farY), Qt.point(inset, height - cut), Qt.point(inset, cut)
    ]
}
