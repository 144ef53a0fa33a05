// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Of the layout that lies on the table: what shows of the wood, what it takes, and what to mind. */
Column {
    id: root

    readonly property var shown: WouldFit.shown

    readonly property bool told: shown.takesSays !== undefined

    visible: told
    spacing: Theme.mm(1)

    CautionLine {
        width: parent.width
        text: root.shown.cautionSays ?? ""
    }
    InlineLength {
        width: parent.width
        lengthCap: Theme.capWord
        text: root.shown.sizeSays ?? ""
    }
    InlineLength {
        width: parent.width
        lengthCap: Theme.capWord
        text: (root.shown.takesSays ?? "") + ". " + (root.shown.moreSays ?? "")
    }
}
