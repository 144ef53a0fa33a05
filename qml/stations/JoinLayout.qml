// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The layout seen from the front, and from the back as it lies turned over. */
Item {
    id: root

    JoinMap {
        id: map
        width: parent.width
        height: parent.height - turn.height - Theme.gap
        columns: JoinModel.columns
        rows: JoinModel.rows
        blocks: JoinModel.blocks
        accessibleName: qsTr("Layout of the blocks; next: %1").arg(JoinModel.title)
    }
    CutButton {
        id: turn
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        text: map.back ? qsTr("See the front") : qsTr("See the back")
        onClicked: map.back = !map.back
    }
}
