// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** A name, its value beneath it, minus and plus under both unless it is compact. Pressing the value asks for the keypad. */
Item {
    id: root

    property string label
    property int count: 0
    property var figure: ({ key: "", minus: false, whole: String(count), num: "", den: "", unit: "", lean: "", text: String(count) })
    property bool compact: false
    property bool canLess: true
    property bool canMore: true

    signal less()
    signal more()
    signal askKeypad()

    readonly property real valueHeight: Math.max(Theme.capInText * 1.5, Theme.mm(9.6))

    readonly property real nameWidth: name.implicitWidth
    readonly property real underneath: compact ? 0 : Theme.step

    implicitHeight: name.implicitHeight + valueHeight + underneath

    Pressable {
        id: value
        width: parent.width
        height: parent.height - root.underneath
        enabled: root.enabled && !Session.readOnly
        accessibleName: root.label + " " + root.figure.text
        onClicked: root.askKeypad()
        Word {
            id: name
            width: parent.width
            text: root.label
            Accessible.ignored: true
        }
        FigureText {
            y: name.implicitHeight + (root.valueHeight - Theme.mm(1.2) - implicitHeight) / 2
            figure: root.figure
            cap: Theme.capInText
            availableWidth: parent.width
            showUnit: false
            color: value.pressed ? Theme.colors.accent : Theme.colors.ink
            accessibleIgnored: true
        }
        FocusOutline { visible: value.keyboardFocus }
    }
    Row {
        visible: !root.compact
        y: parent.height - Theme.step
        spacing: Theme.gap
        StepButton {
            sign: "-"
            enabled: root.canLess && !Session.readOnly
            //: spoken name of a minus button; %1 is what it lessens
            accessibleName: qsTr("%1 less").arg(root.label)
            onStepped: root.less()
        }
        StepButton {
            sign: "+"
            enabled: root.canMore && !Session.readOnly
            //: spoken name of a plus button; %1 is what it adds to
            accessibleName: qsTr("%1 more").arg(root.label)
            onStepped: root.more()
        }
    }
}
