// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** The line over a strip's drawing; pressing it may open more. */
Item {
    id: root

    property string text
    /** At the other end, where there is room. */
    property string aside
    property bool opens: false
    /** What it says is to be minded before the machine is started. */
    property bool warns: false

    signal opened()

    height: line.y + line.height

    Pressable {
        id: line
        readonly property real lead: root.warns ? mark.width + Theme.mm(2) : 0
        x: Theme.left ? parent.width - width - Theme.margin : Theme.margin
        y: root.opens ? 0 : Theme.mm(1)
        width: Math.min(lead + words.implicitWidth + (root.opens ? Theme.mm(12) : 0), parent.width - 2 * Theme.margin)
        height: root.opens ? Math.max(Theme.control, words.implicitHeight) : words.implicitHeight
        enabled: root.opens
        accessibleName: root.text
        onClicked: root.opened()
        Pictogram {
            id: mark
            visible: root.warns
            anchors.verticalCenter: parent.verticalCenter
            name: "warning"
            width: Theme.mm(6)
            ink: Theme.colors.caution
            ground: Theme.colors.paper
        }
        Word {
            id: words
            x: line.lead
            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(implicitWidth, line.width - x - (root.opens ? Theme.mm(6) : 0))
            bold: root.opens
            color: root.warns ? Theme.colors.caution : Theme.colors.ink
            text: root.text
            Accessible.ignored: root.opens
        }
        Word {
            visible: root.opens
            anchors.verticalCenter: parent.verticalCenter
            x: parent.width - width
            bold: true
            text: "›"
            Accessible.ignored: true
        }
        FocusOutline { visible: line.keyboardFocus }
    }
    Word {
        visible: root.aside !== "" && implicitWidth + line.width + Theme.gap <= parent.width - 2 * Theme.margin
        x: Theme.left ? Theme.margin : parent.width - implicitWidth - Theme.margin
        y: line.y + (line.height - height) / 2
        wrapMode: Text.NoWrap
        bold: true
        text: root.aside
    }
}
