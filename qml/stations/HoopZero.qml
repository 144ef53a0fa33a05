// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Where the last outline really ended: plus and minus one mark from where it was expected, or typed. */
Flickable {
    id: root

    signal enter(string name, string title, string text)

    function take(name: string, text: string): string {
        return wrongIn(HoopModel.reZero(text));
    }
    function wrongIn(reply: var): string {
        return reply.ok ? "" : reply.says;
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: qsTr("The last outline really ended at")
        }
        Stepper {
            width: parent.width
            label: qsTr("from the zero end")
            figure: HoopModel.lastEnd
            canLess: true
            canMore: true
            onLess: HoopModel.nudgeEnd(-1)
            onMore: HoopModel.nudgeEnd(1)
            onAskKeypad: root.enter("end", qsTr("The last outline really ended at"), spokenValue)
        }
        InlineLength {
            width: parent.width
            visible: HoopModel.expectSays.length > 0
            height: visible ? implicitHeight : 0
            text: HoopModel.expectSays
        }
        InlineLength {
            width: parent.width
            visible: HoopModel.overSays.length > 0
            height: visible ? implicitHeight : 0
            color: Theme.colors.stop
            text: HoopModel.overSays
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("Measure from the zero end, not from the block before: then no error piles up.")
        }
    }
}
