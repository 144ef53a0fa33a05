// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One thing she says: a value with minus and plus at its right, or one of a few. */
Item {
    id: root

    /** {key, says, kind, figure}, or {key, says, kind: "choice", choices, value, perRow}. */
    required property var amount
    /** The value's capitals; larger where it is what the page is about. */
    property real figureCap: Theme.capInText

    signal ask(string key, string label, string kind, string text)
    signal nudged(string key, int steps)
    signal picked(string key, var value)

    readonly property bool choice: amount.kind === "choice"
    readonly property string label: amount.says ?? ""

    implicitHeight: choice ? cells.y + cells.implicitHeight
                           : Math.max(Theme.step, name.implicitHeight + length.implicitHeight + Theme.mm(1.2))

    Pressable {
        id: value
        visible: !root.choice
        x: Theme.left ? parent.width - width : 0
        width: root.width - buttons.width - Theme.gap
        height: parent.height
        inList: true
        accessibleName: root.label + " " + (root.amount.figure?.text ?? "")
        onClicked: root.ask(root.amount.key, root.label, root.amount.kind, root.amount.figure?.text ?? "")

        Word {
            id: name
            width: parent.width
            text: root.label
            Accessible.ignored: true
        }
        FigureText {
            id: length
            y: name.implicitHeight + Theme.mm(0.6)
            figure: root.amount.figure ?? null
            cap: root.figureCap
            availableWidth: parent.width
            color: value.pressed ? Theme.colors.accent : Theme.colors.ink
            accessibleIgnored: true
        }
        FocusOutline { visible: value.keyboardFocus }
    }
    Row {
        id: buttons
        visible: !root.choice
        x: Theme.left ? 0 : parent.width - width
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.gap
        StepButton {
            sign: "-"
            //: spoken name of a minus button; %1 is what it lessens
            accessibleName: qsTr("%1 less").arg(root.label)
            onStepped: root.nudged(root.amount.key, -1)
        }
        StepButton {
            sign: "+"
            //: spoken name of a plus button; %1 is what it adds to
            accessibleName: qsTr("%1 more").arg(root.label)
            onStepped: root.nudged(root.amount.key, 1)
        }
    }
    Word {
        id: head
        visible: root.choice
        width: parent.width
        text: root.label
        Accessible.ignored: true
    }
    ChoiceCells {
        id: cells
        visible: root.choice
        y: head.visible ? head.implicitHeight + Theme.mm(1) : 0
        width: parent.width
        inList: true
        accessibleName: root.label
        choices: root.amount.choices ?? []
        perRow: root.amount.perRow ?? Math.max(1, choices.length)
        value: root.amount.value
        onChosen: value => root.picked(root.amount.key, value)
    }
}
