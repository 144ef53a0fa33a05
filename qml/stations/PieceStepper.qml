// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What stands at an edge of the piece: minus and plus with the value between them. Pressing the value asks for the keypad. */
Item {
    id: root

    property string label
    property int count: 0
    property var figure: ({ key: "", minus: false, whole: String(count), num: "", den: "", unit: "", lean: "", text: String(count) })
    /** Plus above minus, for an edge that runs down; else minus and plus side by side. */
    property bool upright: false
    property bool canLess: true
    property bool canMore: true

    signal less()
    signal more()
    signal askKeypad()

    readonly property real told: Math.max(name.implicitWidth, number.implicitWidth, Theme.control)
    readonly property real tall: Math.max(Theme.step, number.implicitHeight + name.implicitHeight + Theme.mm(0.6))

    /** What it takes lying. */
    readonly property real lying: 2 * Theme.step + 2 * Theme.gap + told

    implicitWidth: upright ? Math.max(Theme.step, told) : lying
    implicitHeight: upright ? 2 * Theme.step + 2 * Theme.gap + tall : tall

    StepButton {
        x: root.upright ? (root.width - width) / 2 : 0
        y: root.upright ? root.height - height : (root.height - height) / 2
        sign: "-"
        enabled: root.canLess && !Session.readOnly
        //: spoken name of a minus button; %1 is what it lessens
        accessibleName: qsTr("%1 less").arg(root.label)
        onStepped: root.less()
    }
    Pressable {
        id: value
        x: (root.width - width) / 2
        y: root.upright ? Theme.step + Theme.gap : 0
        width: root.told
        height: root.tall
        enabled: root.enabled && !Session.readOnly
        accessibleName: root.label + " " + root.figure.text
        onClicked: root.askKeypad()
        FigureText {
            id: number
            x: (parent.width - implicitWidth) / 2
            y: (root.tall - implicitHeight - name.implicitHeight) / 2
            figure: root.figure
            cap: Theme.capInText
            showUnit: false
            showLean: false
            color: value.pressed ? Theme.colors.accent : Theme.colors.ink
            accessibleIgnored: true
        }
        Word {
            id: name
            x: (parent.width - width) / 2
            y: number.y + number.implicitHeight
            width: implicitWidth
            wrapMode: Text.NoWrap
            text: root.label
            Accessible.ignored: true
        }
        FocusOutline { visible: value.keyboardFocus }
    }
    StepButton {
        x: root.upright ? (root.width - width) / 2 : root.width - width
        y: root.upright ? 0 : (root.height - height) / 2
        sign: "+"
        enabled: root.canMore && !Session.readOnly
        //: spoken name of a plus button; %1 is what it adds to
        accessibleName: qsTr("%1 more").arg(root.label)
        onStepped: root.more()
    }
}
