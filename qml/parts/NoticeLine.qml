// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** One quiet line about what has just happened; pressing it puts it away. Nothing when there is no text. */
Pressable {
    id: root

    property string text

    signal dismissed()

    visible: text !== ""
    implicitWidth: words.implicitWidth + 2 * Theme.margin + Theme.mm(8)
    implicitHeight: visible ? Math.max(Theme.control, words.implicitHeight + Theme.mm(3)) : 0
    accessibleName: text
    //: what pressing a notice does
    accessibleDescription: qsTr("put this notice away")
    Accessible.role: Accessible.AlertMessage

    onClicked: dismissed()

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine {
        width: parent.width
    }
    Word {
        id: words
        anchors.verticalCenter: parent.verticalCenter
        x: Theme.margin
        width: root.width - 2 * Theme.margin - Theme.mm(8)
        text: root.text
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        Accessible.ignored: true
    }
    Pictogram {
        name: "tick"
        x: root.width - Theme.margin - width
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.mm(5)
        ink: words.color
        ground: Theme.colors.raised
    }
    FocusOutline {
        visible: root.keyboardFocus
        anchors.margins: Theme.focusGap
    }
}
