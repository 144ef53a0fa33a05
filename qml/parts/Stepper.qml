// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/**
 * A name and its value above, minus and plus beneath. Pressing the value asks for the keypad.
 * A value that is worked out and not entered says so; a problem stands under it in words.
 */
Item {
    id: root

    property string label
    property var figure: null
    property string valueText
    property bool canLess: true
    property bool canMore: true
    property bool reckoned: false
    property bool askable: true
    property string problem
    /** What is to be said of it stands in words elsewhere: nothing under it moves when that changes. */
    property bool noted: true
    /** The value stands under the name though there is room beside it: as its neighbour's does. */
    property bool stacked: false
    /** The room the neighbours' names and values take: what is pressed stands on one level with theirs. */
    property real headLeast: 0

    signal less()
    signal more()
    signal askKeypad()

    readonly property string spokenValue: figure ? figure.text ?? "" : valueText
    readonly property bool inlineFits: besideFits && !stacked
    readonly property bool besideFits: width <= 0 || name.implicitWidth + Theme.mm(1.6) + valueWidth <= width
    readonly property real valueWidth: figure ? length.implicitWidth : choice.implicitWidth
    readonly property real headHeight: Math.max(headLeast, headWanted)
    readonly property real headWanted: Math.max(Theme.control, inlineFits ? length.implicitHeight : name.implicitHeight
                                                + (figure ? length.capTop + Theme.capInText + Theme.mm(2.6) : choice.implicitHeight))

    implicitWidth: Math.max(2 * Theme.step + Theme.gap, name.implicitWidth + Theme.mm(1.6) + valueWidth)
    implicitHeight: headHeight + Theme.mm(1.5) + Theme.step
                    + (note.visible ? note.implicitHeight + Theme.mm(1.5) : 0)

    Pressable {
        id: head
        width: Math.max(Theme.targetLeast, Math.min(root.width, root.implicitWidth))
        height: root.headHeight
        enabled: root.askable && root.enabled
        accessibleName: root.label + " " + root.spokenValue
        accessibleDescription: root.problem
        onClicked: root.askKeypad()

        Word {
            id: name
            width: root.inlineFits ? implicitWidth : root.width
            y: root.inlineFits ? parent.height - Theme.mm(1.4) - Theme.capInText / 2 + cap / 2 - baselineOffset - Theme.mm(1.2) : 0
            text: root.label
            color: root.problem !== "" && !root.noted ? Theme.colors.caution : root.reckoned ? Theme.colors.inkSoft : Theme.colors.ink
            Accessible.ignored: true
        }
        FigureText {
            id: length
            visible: root.figure !== null
            x: root.inlineFits ? name.width + Theme.mm(1.6) : 0
            y: parent.height - Theme.mm(2.6) - Theme.capInText - capTop
            figure: root.figure
            cap: Theme.capInText
            color: head.pressed ? Theme.colors.accent : root.reckoned ? Theme.colors.inkSoft : Theme.colors.ink
            accessibleIgnored: true
        }
        Word {
            id: choice
            visible: root.figure === null
            x: length.x
            width: root.inlineFits ? implicitWidth : root.width
            y: name.y + (root.inlineFits ? 0 : name.implicitHeight)
            text: root.valueText
            bold: true
            color: length.color
            Accessible.ignored: true
        }
        FocusOutline { visible: head.keyboardFocus }
    }
    Row {
        id: buttons
        y: root.headHeight + Theme.mm(1.5)
        spacing: Theme.gap
        StepButton {
            sign: "-"
            enabled: root.canLess
            //: spoken name of a minus button; %1 is what it lessens
            accessibleName: qsTr("%1 less").arg(root.label)
            onStepped: root.less()
        }
        StepButton {
            sign: "+"
            enabled: root.canMore
            //: spoken name of a plus button; %1 is what it adds to
            accessibleName: qsTr("%1 more").arg(root.label)
            onStepped: root.more()
        }
    }
    Word {
        id: note
        y: buttons.y + buttons.height + Theme.mm(1.5)
        width: root.width
        visible: root.noted && text !== ""
        //: stands under a value the app reckons itself
        text: root.problem !== "" ? root.problem : root.reckoned ? qsTr("worked out") : ""
        color: root.problem !== "" ? Theme.colors.caution : Theme.colors.inkSoft
    }
}
