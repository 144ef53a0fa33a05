// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A page of acts beside the work of a wide station: it takes the whole page, and its own target leads back. */
ActsPage {
    id: root

    /** What the sheet it stands on asks: give me all of the page. */
    readonly property bool spread: true

    signal closed()

    CutButton {
        width: parent.width
        height: Theme.target
        kind: "action"
        text: qsTr("Back to the work")
        onClicked: root.closed()
    }
}
