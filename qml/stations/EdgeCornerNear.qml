// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The piece's corner seen close to, in a frame of its own: the binding, its mitre or curve, and what it bites into. */
Item {
    id: root

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    EdgeDrawing {
        anchors.fill: parent
        view: EdgeModel.view
        phase: "last"
        cornerMm: Math.max(EdgeModel.view.radiusMm * 1.4, EdgeModel.view.outsideMm * 5, EdgeModel.view.depthMm * 5, 60)
        wide: true
        curve: EdgeModel.view.depthMm > 0 ? null : EdgeModel.curve
        accessibleName: qsTr("A corner close to")
    }
    Rectangle {
        anchors.fill: parent
        color: "transparent"
        border.width: Theme.key
        border.color: Theme.colors.ink
    }
}
