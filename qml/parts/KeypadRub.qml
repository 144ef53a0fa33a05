// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** Takes the last of the entry back, as a stitch is unpicked; or all of it: the tape is rolled in. */
KeypadKey {
    id: root

    property bool all: false

    accessibleName: all ? qsTr("clear") : qsTr("rub out the last")

    Pictogram {
        name: root.all ? "rolledIn" : "unpicked"
        anchors.centerIn: parent
        width: Theme.mm(8)
        ink: root.ink
        ground: Theme.colors.raised
    }
}
