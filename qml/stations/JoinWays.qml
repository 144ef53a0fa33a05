// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** How a sashing is filled and the back closed: each way with what it makes of the plan, taken by a touch. */
Flickable {
    id: root

    property string error

    function wrongIn(reply: var): string {
        return reply.ok ? "" : reply.says;
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: qsTr("Filling and closing")
        }
        Repeater {
            model: JoinModel.ways
            ChoiceRow {
                id: way
                required property var modelData
                objectName: "way-" + modelData.kind
                width: rows.width
                text: modelData.says.replace(/[{}]/g, "")
                detail: modelData.detail
                chosen: modelData.chosen
                onClicked: root.error = root.wrongIn(JoinModel.takeWay(way.modelData.kind))
            }
        }
        Word {
            width: parent.width
            visible: text !== ""
            color: Theme.colors.stop
            text: root.error
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("What is cut already stays as it is; what no longer fits is named.")
        }
    }
}
