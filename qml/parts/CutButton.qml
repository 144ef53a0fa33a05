// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/**
 * A target with cut corners. `kind` is "action" (solid, the one thing to do), "outline" or "stop".
 * Pressed it turns inverse; not yet possible it is an empty outline with the reason in words.
 */
Pressable {
    id: root

    property string text
    property string kind: "outline"
    property string reason
    property real cap: kind === "action" ? Theme.capAction : Theme.capWord
    property bool bold: kind === "action"
    /** A reading to press: set as a length instead of `text`. */
    property var figure: null

    readonly property bool solid: kind === "action"
    readonly property color own: kind === "stop" ? Theme.colors.stop : Theme.colors.ink
    readonly property color ground: !enabled ? "transparent"
        : pressed ? (solid ? Theme.colors.raised : own)
        : solid ? Theme.colors.action : Theme.colors.raised
    readonly property color lettering: !enabled ? Theme.colors.inkSoft
        : pressed ? (solid ? Theme.colors.accent : Theme.colors.raised)
        : solid ? Theme.colors.actionInk : own
    readonly property color edge: !enabled ? Theme.colors.line : solid ? Theme.colors.accent : own
    readonly property real padding: Theme.mm(2.2)
    readonly property real sidePadding: Theme.mm(0.9)
    /** Set smaller, down to the floor of 3.84 mm, when the longest word would otherwise be broken. */
    readonly property real setCap: Math.min(cap, Math.max(Theme.mm(3.84), cap * (width - 2 * sidePadding - 1) / Math.max(1, longest.advanceWidth)))
    /** The least height that holds the words; a low button in a list may take just this. */
    readonly property real contentHeight: content.height + 2 * padding
    readonly property bool reasonShown: !enabled && reason !== ""

    implicitWidth: Math.max(Theme.target, (figure ? length.implicitWidth : Math.ceil(whole.advanceWidth)) + 2 * padding)
    implicitHeight: Math.max(kind === "outline" && figure ? Theme.step : Theme.target, contentHeight)

    guardMs: kind === "outline" ? 0 : 400
    accessibleName: figure ? figure.text ?? "" : text
    accessibleDescription: reasonShown ? reason : ""

    TextMetrics {
        id: longest
        font.family: Theme.family
        font.bold: root.bold
        font.pixelSize: Theme.fontSize(root.cap)
        text: root.text.split(" ").reduce((a, b) => b.length > a.length ? b : a, "")
    }
    // Measured as asked for, not as set: a width taken from it must not lead back to it.
    TextMetrics {
        id: whole
        font: longest.font
        text: root.text
    }
    CutShape {
        anchors.fill: parent
        fill: root.ground
        stroke: root.edge
        strokeWidth: Theme.mm(0.5) * Theme.colors.lineScale
    }
    Item {
        id: content
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: root.figure ? 0 : root.cap * 0.06
        x: root.sidePadding
        width: root.width - 2 * root.sidePadding
        height: (root.figure ? length.implicitHeight : words.implicitHeight)
                + (root.reasonShown ? why.implicitHeight + Theme.mm(1) : 0)

        Word {
            id: words
            visible: !root.figure
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: root.text
            cap: root.width > 0 ? root.setCap : root.cap
            bold: root.bold
            color: root.lettering
            Accessible.ignored: true
        }
        FigureText {
            id: length
            visible: root.figure !== null
            x: (parent.width - width) / 2
            figure: root.figure
            cap: Theme.capInText
            color: root.lettering
            availableWidth: parent.width
            accessibleIgnored: true
        }
        Word {
            id: why
            visible: root.reasonShown
            anchors.bottom: parent.bottom
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            text: root.reason
            color: Theme.colors.inkSoft
            Accessible.ignored: true
        }
    }
    FocusOutline { visible: root.keyboardFocus }
}
