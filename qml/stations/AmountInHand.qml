// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/**
 * The one amount in hand, large, with two big steps; or one of a few that is chosen. Its height hangs on nothing that
 * is in hand, so that nothing moves when another is taken.
 */
Item {
    id: root

    /** {key, says, kind, figure}, or {key, says, kind: "choice", choices, value}. */
    property var amount: null
    /** What all that may be taken in hand here are called: room is kept for the longest of them. */
    property var names: []
    property real figureCap: Theme.small ? Theme.capThird : Theme.capSecond

    signal ask(string key, string label, string kind, string text)
    signal nudged(string key, int steps)
    signal picked(string key, var value)

    readonly property bool choice: amount?.kind === "choice"
    readonly property string label: amount?.says ?? ""
    /** Where there is room what steps it stands beside the figure. */
    readonly property bool wide: width > Theme.mm(96)
    readonly property real figureRoom: figureCap * 1.2 + Theme.mm(2)
    readonly property real stepDeep: Theme.small ? Theme.step : Theme.targetLeast
    property real nameRoom: 0

    function measure() {
        let most = 0;
        for (let i = 0; i < measured.count; ++i)
            most = Math.max(most, measured.itemAt(i)?.implicitHeight ?? 0);
        nameRoom = most;
    }

    implicitHeight: wide ? Math.max(nameRoom + figureRoom, stepDeep) : nameRoom + figureRoom + Theme.mm(1) + stepDeep
    height: implicitHeight

    Repeater {
        id: measured
        model: root.names.length
        Word {
            required property int index
            visible: false
            width: name.width
            bold: true
            text: root.names[index] ?? ""
            onImplicitHeightChanged: root.measure()
            Component.onCompleted: root.measure()
        }
    }
    Pressable {
        id: value
        x: root.wide && Theme.left ? root.width - width : 0
        width: root.wide ? root.width - steps.width - Theme.gapTargets : root.width
        height: root.wide ? root.height : root.nameRoom + root.figureRoom
        visible: !root.choice
        inList: true
        accessibleName: root.label + " " + (root.amount?.figure?.text ?? "")
        onClicked: root.ask(root.amount.key, root.label, root.amount.kind, root.amount.figure?.text ?? "")

        Word {
            id: name
            y: root.nameRoom - implicitHeight
            width: parent.width
            bold: true
            text: root.label
            Accessible.ignored: true
        }
        FigureText {
            id: length
            // It keeps its place with a unit and without.
            y: root.nameRoom + (root.figureRoom - setCap) / 2 - capTop
            figure: root.amount?.figure ?? null
            cap: root.figureCap
            availableWidth: parent.width
            color: value.pressed ? Theme.colors.accent : Theme.colors.ink
            accessibleIgnored: true
        }
        FocusOutline { visible: value.keyboardFocus }
    }
    Row {
        id: steps
        readonly property real each: root.wide ? Theme.mm(24) : (root.width - Theme.gap) / 2
        visible: !root.choice
        x: root.wide && !Theme.left ? root.width - width : 0
        y: root.height - height
        spacing: Theme.gap

        StepButton {
            sign: "-"
            width: steps.each
            height: root.stepDeep
            //: spoken name of a minus button; %1 is what it lessens
            accessibleName: qsTr("%1 less").arg(root.label)
            onStepped: root.nudged(root.amount.key, -1)
        }
        StepButton {
            sign: "+"
            width: steps.each
            height: root.stepDeep
            //: spoken name of a plus button; %1 is what it adds to
            accessibleName: qsTr("%1 more").arg(root.label)
            onStepped: root.nudged(root.amount.key, 1)
        }
    }
    Word {
        visible: root.choice
        width: parent.width
        bold: true
        text: root.label
        Accessible.ignored: true
    }
    ChoiceCells {
        visible: root.choice
        y: root.nameRoom
        width: parent.width
        height: root.choice ? root.height - y : 0
        inList: true
        accessibleName: root.label
        choices: root.amount?.choices ?? []
        perRow: root.wide ? 2 : 1
        value: root.amount?.value
        onChosen: value => root.picked(root.amount.key, value)
    }
}
