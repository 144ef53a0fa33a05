// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The piece's corner seen close to, in a frame of its own: the binding, its mitre or curve, and what it bites into.
 * Of scallops one of each way with its measures.
 */
Item {
    id: root

    readonly property bool scalloped: EdgeModel.view.depthMm > 0
    /** Both scallops stand beside each other where that leaves each wider than high figures are. */
    readonly property bool abreast: width > height * 1.1

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    EdgeDrawing {
        anchors.fill: parent
        visible: !root.scalloped
        view: EdgeModel.view
        phase: "last"
        cornerMm: Math.max(EdgeModel.view.radiusMm * 1.4, EdgeModel.view.outsideMm * 5, 60)
        wide: true
        curve: root.scalloped ? null : EdgeModel.curve
        accessibleName: qsTr("A corner close to")
    }
    Repeater {
        model: root.scalloped ? [EdgeModel.topScallop, EdgeModel.sideScallop] : []
        ScallopNear {
            id: near
            required property var modelData
            required property int index
            x: root.abreast ? index * root.width / 2 + Theme.key : Theme.key
            y: root.abreast ? Theme.key : index * root.height / 2 + Theme.key
            width: (root.abreast ? root.width / 2 : root.width) - 2 * Theme.key
            height: (root.abreast ? root.height : root.height / 2) - 2 * Theme.key
            way: modelData
            depth: EdgeModel.depth
            depthMm: EdgeModel.view.depthMm
            seamMm: EdgeModel.view.seamMm
            //: so many scallops along the piece
            says: index === 0 ? qsTr("along")
                //: so many scallops across the piece
                : qsTr("across")
            accessibleName: EdgeModel.cornerSays.replace(/[{}]/g, "")
        }
    }
    KeyLine {
        visible: root.scalloped
        vertical: root.abreast
        x: root.abreast ? root.width / 2 : 0
        y: root.abreast ? 0 : root.height / 2
        width: root.abreast ? implicitWidth : root.width
        height: root.abreast ? root.height : implicitHeight
    }
    Rectangle {
        anchors.fill: parent
        color: "transparent"
        border.width: Theme.key
        border.color: Theme.colors.ink
    }
}
