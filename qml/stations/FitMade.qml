// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What is made of the piece already, said beside what would change it, before a finger does. */
Item {
    id: root
    objectName: "fit-made"

    /** The height of what stands beside it. */
    property real least: 0
    /** Only what is made: what else is said has the room. */
    property bool brief: false

    visible: FitModel.madeSays !== ""
    height: visible ? Math.max(Theme.control, least, words.implicitHeight + Theme.mm(2)) : 0

    KeyLine { width: parent.width }
    Pictogram {
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        name: "blocks"
        width: Theme.mm(6)
        ink: Theme.colors.ink
        ground: Theme.colors.raised
    }
    Word {
        id: words
        x: Theme.margin + Theme.mm(6) + Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - x - Theme.margin
        //: what is made: the strips and blocks named before
        text: FitModel.madeSays + (root.brief ? "" : " " + qsTr("A change here leaves it as it is."))
    }
}
