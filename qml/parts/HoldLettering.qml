// SPDX-License-Identifier: MIT
import QtQuick

/** The words on a button that is held: what it does, and that it must be held. */
Column {
    id: root

    property string text
    property string hint
    property color color

    Word {
        width: root.width
        horizontalAlignment: Text.AlignHCenter
        text: root.text
        bold: true
        color: root.color
        Accessible.ignored: true
    }
    Word {
        width: root.width
        horizontalAlignment: Text.AlignHCenter
        text: root.hint
        color: root.color
        Accessible.ignored: true
    }
}
