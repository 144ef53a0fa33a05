// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What is looked for, from edge to edge; a press opens it to be changed. */
Pressable {
    id: root

    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink

    inList: true
    implicitHeight: Math.max(Theme.step, words.implicitHeight + Theme.mm(4))
    accessibleName: qsTr("Change what is wanted")
    accessibleDescription: WouldFit.wishSays.replace(/[{}]/g, "")

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine { width: parent.width }
    InlineLength {
        id: words
        x: Theme.margin
        width: (sign.visible ? plate.x : parent.width) - x - Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        lengthCap: Theme.capWord
        color: root.ink
        lengthColor: root.ink
        //: what the layouts below are looked for: so much bare table, or a finished size
        text: Theme.small ? root.accessibleName : qsTr("Wanted: %1").arg(WouldFit.wishSays)
        Accessible.ignored: true
    }
    CutShape {
        id: plate
        visible: sign.visible
        anchors.fill: sign
        anchors.leftMargin: -Theme.mm(2.4)
        anchors.rightMargin: -Theme.mm(2.4)
        anchors.topMargin: -Theme.mm(1.4)
        anchors.bottomMargin: -Theme.mm(1.4)
        fill: root.pressed ? Theme.colors.ink : Theme.colors.raised
        stroke: root.ink
        strokeWidth: Theme.mm(0.5) * Theme.colors.lineScale
    }
    Word {
        id: sign
        // A low page has no room for the sentence.
        visible: !Theme.small
        x: parent.width - width - Theme.margin - Theme.mm(2.4)
        anchors.verticalCenter: parent.verticalCenter
        wrapMode: Text.NoWrap
        color: root.ink
        text: qsTr("change")
        Accessible.ignored: true
    }
    FocusOutline {
        visible: root.keyboardFocus
        anchors.margins: Theme.focusGap
    }
}
