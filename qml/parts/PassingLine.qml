// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A line that says what has just happened and goes by itself; what lies beneath it takes the touches. */
Rectangle {
    id: root

    property string text

    function say(what: string) {
        root.text = what;
        stay.restart();
    }

    visible: text !== ""
    width: words.implicitWidth + 2 * Theme.margin
    height: words.implicitHeight + Theme.mm(4)
    color: Theme.colors.raised
    border.color: Theme.colors.ink
    border.width: Theme.key

    Accessible.role: Accessible.AlertMessage
    Accessible.name: text

    Timer {
        id: stay
        interval: 4000
        onTriggered: root.text = ""
    }
    Word {
        id: words
        anchors.centerIn: parent
        text: root.text
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
