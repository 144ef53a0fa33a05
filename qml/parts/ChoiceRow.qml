// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A row of a list, from edge to edge; the chosen one is printed solid. */
Pressable {
    id: root

    property string text
    property string detail
    property bool chosen: false
    property var figure: null
    /** What is drawn at the row's left, if anything. */
    property Component lead: null

    readonly property bool solid: chosen !== pressed
    readonly property color ink: !enabled ? Theme.colors.inkSoft : solid ? Theme.colors.raised : Theme.colors.ink
    readonly property real leadWidth: lead !== null ? leadLoader.width + Theme.margin : 0
    readonly property real figureWidth: figure !== null ? length.implicitWidth + Theme.margin : 0

    implicitWidth: Theme.mm(60)
    implicitHeight: Math.max(Theme.step, leadLoader.height + Theme.mm(3), length.visible ? length.implicitHeight + Theme.mm(2) : 0,
                             words.height + Theme.mm(5))
    inList: true
    accessibleName: [text, detail, figure ? figure.text ?? "" : ""].filter(t => t !== "").join(", ")

    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: chosen

    Rectangle {
        anchors.fill: parent
        color: root.solid ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine {
        width: parent.width
    }
    Loader {
        id: leadLoader
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        sourceComponent: root.lead
    }
    Column {
        id: words
        x: Theme.margin + root.leadWidth
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - Theme.margin - root.figureWidth
        Word {
            width: parent.width
            text: root.text
            bold: root.detail !== ""
            color: root.ink
            Accessible.ignored: true
        }
        InlineLength {
            width: parent.width
            visible: root.detail !== ""
            text: root.detail
            color: root.ink
            Accessible.ignored: true
        }
    }
    FigureText {
        id: length
        visible: root.figure !== null
        x: root.width - width - Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        figure: root.figure
        cap: Theme.capInText
        color: root.ink
        accessibleIgnored: true
    }
    CutShape {
        visible: root.keyboardFocus
        anchors.fill: parent
        anchors.margins: Theme.focusGap
        stroke: root.solid ? Theme.colors.raised : Theme.colors.accent
        strokeWidth: Theme.keyBold
    }
}
