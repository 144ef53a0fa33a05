// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A measure as it stands on a drawing, its figure between minus and plus: lying under what it measures, or upright beside it. */
Item {
    id: root

    /** {key, says, kind, figure} */
    required property var amount
    property bool upright: false
    /** Lying, but its figure stands over the two. */
    property bool narrow: false
    /** Between the name and the figure. */
    property real air: Theme.mm(0.6)

    signal ask(string key, string label, string kind, string text)
    signal nudged(string key, int steps)

    readonly property string label: amount.says ?? ""
    /** What the name and the figure take between the two. */
    readonly property real inner: name.implicitHeight + length.implicitHeight + air

    implicitWidth: 2 * Theme.step + Theme.mm(60)
    implicitHeight: upright ? 2 * Theme.step + inner + Theme.mm(2) : narrow ? Theme.step + inner + Theme.mm(1) : Math.max(Theme.step, inner)

    StepButton {
        id: less
        x: root.upright ? (parent.width - width) / 2 : 0
        y: root.upright || root.narrow ? parent.height - height : (parent.height - height) / 2
        sign: "-"
        //: spoken name of a minus button; %1 is what it lessens
        accessibleName: qsTr("%1 less").arg(root.label)
        onStepped: root.nudged(root.amount.key, -1)
    }
    StepButton {
        id: more
        x: root.upright ? (parent.width - width) / 2 : parent.width - width
        y: root.upright ? 0 : root.narrow ? parent.height - height : (parent.height - height) / 2
        sign: "+"
        //: spoken name of a plus button; %1 is what it adds to
        accessibleName: qsTr("%1 more").arg(root.label)
        onStepped: root.nudged(root.amount.key, 1)
    }
    Pressable {
        id: value
        x: root.upright || root.narrow ? 0 : less.width + Theme.mm(1)
        y: root.upright ? more.height + Theme.mm(1) : 0
        width: root.upright || root.narrow ? parent.width : parent.width - less.width - more.width - Theme.mm(2)
        height: root.upright ? parent.height - less.height - more.height - Theme.mm(2) : root.narrow ? parent.height - less.height - Theme.mm(1) : parent.height
        inList: true
        accessibleName: root.label + " " + (root.amount.figure?.text ?? "")
        onClicked: root.ask(root.amount.key, root.label, root.amount.kind, root.amount.figure?.text ?? "")

        Word {
            id: name
            width: parent.width
            y: (parent.height - root.inner) / 2
            horizontalAlignment: Text.AlignHCenter
            text: root.label
            Accessible.ignored: true
        }
        FigureText {
            id: length
            x: (parent.width - implicitWidth) / 2
            y: name.y + name.implicitHeight + root.air
            figure: root.amount.figure ?? null
            availableWidth: parent.width
            cap: Theme.capInText
            color: value.pressed ? Theme.colors.accent : Theme.colors.ink
            accessibleIgnored: true
        }
        FocusOutline { visible: value.keyboardFocus }
    }
}
