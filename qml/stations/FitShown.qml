// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Of the layout that lies on the table: what shows of the wood, what it takes, and what to mind. */
Column {
    id: root

    /** How high it may be where it has only so much room; its size, which hangs on the line too, is left out then. */
    property real room: 0

    readonly property var shown: WouldFit.shown

    readonly property bool told: shown.takesSays !== undefined

    visible: told
    spacing: Theme.mm(1)

    CautionLine {
        width: parent.width
        text: root.shown.cautionSays ?? ""
    }
    InlineLength {
        id: taken
        width: parent.width
        lengthCap: Theme.capWord
        text: (root.shown.takesSays ?? "") + ". " + (root.shown.moreSays ?? "")
    }
    InlineLength {
        visible: root.room <= 0 || taken.y + taken.height + root.spacing + implicitHeight <= root.room
        width: parent.width
        lengthCap: Theme.capWord
        text: root.shown.sizeSays ?? ""
    }
}
