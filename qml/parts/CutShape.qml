// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Shapes
import Matside.Theme

/** A rectangle with its corners cut: the sign of a pressable thing. The key line lies inside its edge. */
Shape {
    id: root

    property color fill: "transparent"
    property color stroke: Theme.colors.ink
    property real strokeWidth: Theme.key
    property real cut: Theme.chamfer

    readonly property real inset: strokeWidth / 2
    readonly property real farX: width - inset
    readonly property real farY: height - inset

    ShapePath {
        fillColor: root.fill
        strokeColor: root.strokeWidth > 0 ? root.stroke : "transparent"
        strokeWidth: root.strokeWidth
        joinStyle: ShapePath.MiterJoin
        PathPolyline {
            path: [
                Qt.point(root.cut, root.inset), Qt.point(root.width - root.cut, root.inset),
                Qt.point(root.farX, root.cut), Qt.point(root.farX, root.height - root.cut),
                Qt.point(root.width - root.cut, root.farY), Qt.point(root.cut, root.farY),
                Qt.point(root.inset, root.height - root.cut), Qt.point(root.inset, root.cut),
                Qt.point(root.cut, root.inset)
            ]
        }
    }
}
