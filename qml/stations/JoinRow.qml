// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** A row measured on the table: it sets the marks, and says whether it must be eased or sewn anew. */
Flickable {
    id: root

    signal enter(string name, string title, string text)

    function take(name: string, text: string): string {
        return wrongIn(JoinModel.measureRow(text));
    }
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
            cap: Theme.small ? Theme.capWord : Theme.capHead
            bold: true
            text: qsTr("%1: how long is it, raw end to raw end?").arg(JoinModel.title)
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            text: qsTr("Enter its length")
            onClicked: root.enter("row", qsTr("Length of the row, raw end to raw end"), "")
        }
        InlineLength {
            width: parent.width
            visible: JoinModel.rowSays.length > 0
            text: JoinModel.rowSays
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("Lay it flat, not stretched. How much may be eased is common practice; no published limit is known.")
        }
    }
}
