// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What to mind with the finished piece, and what may be sewn to it. */
Flickable {
    id: root

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Repeater {
            model: EdgeModel.careLines
            CautionLine {
                required property string modelData
                width: rows.width
                text: modelData
            }
        }
        Repeater {
            model: EdgeModel.useLines
            Column {
                id: use
                required property string modelData
                width: rows.width
                spacing: Theme.mm(1.6)
                KeyLine { width: parent.width }
                InlineLength {
                    width: parent.width
                    text: use.modelData
                }
            }
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("Before you sell it, look up the rules on labels and fillings where you live.")
        }
    }
}
