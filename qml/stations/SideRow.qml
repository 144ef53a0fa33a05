// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A line beside the figure that opens more: words with lengths in them, from edge to edge. */
Pressable {
    id: root

    property string text
    property string detail
    property bool opens: true

    implicitHeight: Math.max(opens ? Theme.step : 0, words.height + Theme.mm(3.4))
    enabled: opens
    inList: true
    accessibleName: (text + " " + detail).replace(/[{}]/g, "")

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine { width: parent.width }
    Column {
        id: words
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - 2 * Theme.margin - (root.opens ? Theme.mm(4) : 0)
        InlineLength {
            width: parent.width
            bold: root.opens
            text: root.text
            color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        }
        InlineLength {
            width: parent.width
            visible: root.detail !== ""
            height: visible ? implicitHeight : 0
            text: root.detail
            color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        }
    }
    Word {
        visible: root.opens
        x: parent.width - width - Theme.mm(2)
        anchors.verticalCenter: parent.verticalCenter
        bold: true
        text: "›"
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
