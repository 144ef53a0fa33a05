// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** One key of the keypad: a digit, a sign, or a fraction of the ruler. */
Pressable {
    id: root

    property string text
    property var mark: null
    property bool chosen: false

    readonly property bool solid: chosen !== pressed
    readonly property color ink: !enabled ? Theme.colors.line : solid ? Theme.colors.raised : Theme.colors.ink

    implicitWidth: Theme.step
    implicitHeight: Theme.step
    accessibleName: mark ? mark.text ?? (mark.num + "/" + mark.den) : text

    CutShape {
        anchors.fill: parent
        fill: !root.enabled ? "transparent" : root.solid ? Theme.colors.ink : Theme.colors.raised
        stroke: root.enabled ? Theme.colors.ink : Theme.colors.line
    }
    Word {
        visible: !root.mark
        anchors.centerIn: parent
        anchors.verticalCenterOffset: cap * 0.1
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.NoWrap
        text: root.text
        bold: true
        cap: root.text.length > 2 ? Theme.capWord : Theme.capInText
        color: root.ink
        Accessible.ignored: true
    }
    Fraction {
        visible: root.mark !== null
        anchors.centerIn: parent
        num: root.mark ? String(root.mark.num) : ""
        den: root.mark ? String(root.mark.den) : ""
        cap: Theme.capInText
        color: root.ink
    }
    FocusOutline { visible: root.keyboardFocus }
}
