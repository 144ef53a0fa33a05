// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One count of pins under its drawing: less, the number, more. */
Item {
    id: root

    /** Into the piece; else out of it. */
    property bool going: true
    property string says
    property string lessSays
    property string moreSays
    /** The number stands over its word between the buttons, or the word over all, or beside. */
    property bool wide: true
    /** Height of the drawing; 0 for none. */
    property real drawn: 0
    /** So much of the drawing's side is taken; less than nothing: of its right. */
    property real notch: 0
    /** Three digits stand here. */
    readonly property real digits: Theme.mm(17)

    readonly property int value: going ? EdgeModel.pinsIn : EdgeModel.pinsOut
    readonly property real middle: width - 2 * less.width - 2 * Theme.gap
    readonly property bool inside: wide && whole.implicitWidth <= middle
    /** What it takes without its drawing. */
    readonly property real bare: less.height + (wide && !inside ? name.height : 0)
    readonly property real foot: drawn > 0 ? drawn + Theme.gap : 0

    implicitHeight: foot + bare

    // Measured, not shown.
    Word {
        id: whole
        visible: false
        wrapMode: Text.NoWrap
        text: root.says
    }
    PinsDrawing {
        visible: root.drawn > 0
        x: Math.max(0, root.notch)
        width: parent.width - Math.abs(root.notch)
        height: root.drawn
        going: root.going
        into: EdgeModel.pinsIn
        back: EdgeModel.pinsOut
    }
    Word {
        id: name
        x: root.inside ? less.width + Theme.gap : 0
        y: root.inside ? less.y + less.height - height : root.wide ? root.foot : less.y + (less.height - height) / 2
        width: root.inside ? root.middle : root.wide ? parent.width : less.x - Theme.gap
        horizontalAlignment: root.wide ? Text.AlignHCenter : Text.AlignLeft
        text: root.says
    }
    StepButton {
        id: less
        x: root.wide ? 0 : more.x - width - root.digits
        y: root.foot + (root.wide && !root.inside ? name.height : 0)
        width: root.wide ? Theme.mm(15) : Theme.step
        sign: "-"
        enabled: root.value > 0
        accessibleName: root.lessSays
        onStepped: EdgeModel.nudgePins(root.going, -1)
    }
    // The number has a place of its own between its buttons; the word never shares it.
    Word {
        objectName: root.going ? "pins-in" : "pins-out"
        x: less.x + less.width
        y: less.y
        width: more.x - x
        height: root.inside ? less.height - name.height : less.height
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.NoWrap
        cap: Theme.capInText
        bold: true
        text: root.value
    }
    StepButton {
        id: more
        x: parent.width - width
        y: less.y
        width: less.width
        sign: "+"
        accessibleName: root.moreSays
        onStepped: EdgeModel.nudgePins(root.going, 1)
    }
}
