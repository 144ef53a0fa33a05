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
    /** No words are set smaller. */
    readonly property real leastCap: Math.min(cap, Theme.mm(3.84))
    readonly property real lineWidth: width - 2 * sidePadding - 1
    readonly property var wordWidths: letters.font.pixelSize > 0 ? root.text.split(/[ \n]/).map(word => letters.advanceWidth(word)) : []
    readonly property real longest: Math.max(1, ...wordWidths)
    /** Set smaller, down to the floor, when the longest word would otherwise be broken; a hair more, since letters are set in whole pixels. */
    readonly property real capByWidth: Math.min(cap, Math.max(leastCap, cap * 0.98 * lineWidth / longest))
    /** And smaller again when the lines would otherwise not stand in the height. */
    readonly property real setCap: capByHeight()
    /** The least width that breaks no word. */
    readonly property real leastWidth: Math.ceil(1.05 * longest * Theme.fontSize(leastCap) / Theme.fontSize(cap)) + 2 * sidePadding + 2
    /** The least height that holds the words; a low button in a list may take just this. */
    readonly property real contentHeight: reasonHeight + 2 * padding
        + (figure ? length.implicitHeight : linesAt(capByWidth) * lineHeight(capByWidth))
    readonly property bool reasonShown: !enabled && reason !== ""
    /** A low button has no room for both: why it cannot be pressed says more than what it would do. */
    readonly property bool reasonAlone: reasonShown && !figure && height > 0
        && linesAt(leastCap) * lineHeight(leastCap) + reasonHeight > height
    readonly property real reasonHeight: reasonShown ? why.implicitHeight + Theme.mm(1) : 0

    function lineHeight(cap: real): real {
        return Math.ceil(cap * words.lineShare);
    }
    /** So many lines the words take at that size: counted, since what is asked may not hang on what is set. */
    function linesAt(cap: real): int {
        const share = cap / root.cap, blank = letters.advanceWidth(" ");
        let lines = 1, end = -blank;
        for (const word of wordWidths) {
            if (end > 0 && (end + blank + word) * share > 0.98 * lineWidth) {
                ++lines;
                end = -blank;
            }
            end += blank + word;
        }
        return lines;
    }
    function capByHeight(): real {
        let size = capByWidth;
        while (size > leastCap && linesAt(size) * lineHeight(size) > height - reasonHeight)
            size = Math.max(leastCap, size - Theme.mm(0.1));
        return size;
    }

    implicitWidth: Math.max(Theme.target, (figure ? length.implicitWidth : Math.ceil(whole.advanceWidth)) + 2 * padding)
    implicitHeight: Math.max(kind === "outline" && figure ? Theme.step : Theme.target, contentHeight)

    guardMs: kind !== "outline" || guardShown ? 400 : 0
    accessibleName: figure ? figure.text ?? "" : text
    accessibleDescription: reasonShown ? reason : ""

    FontMetrics {
        id: letters
        font.family: Theme.family
        font.bold: root.bold
        font.pixelSize: Theme.fontSize(root.cap)
    }
    // Measured as asked for, not as set: a width taken from it must not lead back to it.
    TextMetrics {
        id: whole
        font: letters.font
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
        height: root.reasonAlone ? why.implicitHeight
                : (root.figure ? length.implicitHeight : words.implicitHeight) + root.reasonHeight

        Word {
            id: words
            visible: !root.figure && !root.reasonAlone
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
