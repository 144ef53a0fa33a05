// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Where the binding begins and where its strips are joined, place by place. */
Flickable {
    id: root

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            bold: true
            text: qsTr("Lay the binding round once before you sew")
        }
        Repeater {
            model: EdgeModel.lay
            Column {
                id: place
                required property var modelData
                width: rows.width
                spacing: Theme.mm(1.6)
                KeyLine { width: parent.width }
                InlineLength {
                    width: parent.width
                    text: place.modelData.says
                }
            }
        }
        KeyLine { width: parent.width }
        Repeater {
            model: EdgeModel.layActs
            ActCell {
                required property var modelData
                width: rows.width
                height: implicitHeight
                beside: true
                act: modelData
            }
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("Seen from the front, the strip laid clockwise. Each place is the middle of a seam at 45°.")
        }
    }
}
