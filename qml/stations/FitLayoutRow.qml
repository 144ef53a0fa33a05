// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One layout that would fit: the piece on its table, its blocks, what it comes to and what it takes. */
Pressable {
    id: root

    required property int index
    required property string says
    required property string sizeSays
    required property string takesSays
    required property string moreSays
    required property string cautionSays
    required property var drawing
    required property var mats

    property string face: "front"
    readonly property bool chosen: WouldFit.chosen === index
    readonly property bool solid: chosen !== pressed
    readonly property color ink: solid ? Theme.colors.raised : Theme.colors.ink

    implicitHeight: Math.max(sketch.height, words.height) + Theme.mm(4)
    height: implicitHeight
    inList: true
    accessibleName: says
    accessibleDescription: (sizeSays + ". " + takesSays + ". " + moreSays + " " + cautionSays).replace(/[{}]/g, "")
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: chosen
    onClicked: WouldFit.choose(index)

    Rectangle {
        anchors.fill: parent
        color: root.solid ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine { width: parent.width }
    Rectangle {
        anchors.fill: sketch
        color: Theme.colors.raised
    }
    TableSketch {
        id: sketch
        x: Theme.margin
        y: Theme.mm(2)
        width: Theme.mm(Theme.small ? 14 : 20)
        height: width * 0.7
        view: root.drawing
        mats: root.mats
        face: root.face
    }
    Column {
        id: words
        x: sketch.x + sketch.width + Theme.mm(2.5)
        y: Theme.mm(2)
        width: root.width - x - Theme.margin
        Word {
            width: parent.width
            bold: true
            color: root.ink
            text: root.says
            Accessible.ignored: true
        }
        InlineLength {
            width: parent.width
            lengthCap: Theme.capWord
            color: root.ink
            lengthColor: root.ink
            text: root.sizeSays
            Accessible.ignored: true
        }
        Word {
            width: parent.width
            color: root.ink
            text: root.takesSays
            Accessible.ignored: true
        }
        InlineLength {
            visible: root.moreSays !== ""
            width: parent.width
            lengthCap: Theme.capWord
            color: root.ink
            lengthColor: root.ink
            text: root.moreSays
            Accessible.ignored: true
        }
        Item {
            visible: root.cautionSays !== ""
            width: parent.width
            height: visible ? caution.height + Theme.mm(2) : 0
            Rectangle {
                anchors.fill: parent
                color: Theme.colors.raised
            }
            CautionLine {
                id: caution
                x: Theme.mm(1)
                y: Theme.mm(1)
                width: parent.width - 2 * x
                height: implicitHeight
                text: root.cautionSays
            }
        }
    }
    FocusOutline {
        visible: root.keyboardFocus
        anchors.margins: Theme.focusGap
    }
}
