// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** One of a block's six readings, large, with what steps it; and the way to the next. */
Column {
    id: root

    property int held: 0

    signal turned(int reading)
    signal enter(string name, string title, string text)

    readonly property var reading: BlockMeasure.readings[held] ?? null
    readonly property string label: reading?.says ?? ""
    readonly property bool unread: !(reading?.taken ?? true)
    readonly property bool doubted: reading?.suspect ?? false
    readonly property int following: (held + 1) % 6
    /** Where there is room what steps it stands beside the figure. */
    readonly property bool wide: width > Theme.mm(96)

    spacing: Theme.gap

    KeyLine { width: parent.width }
    Item {
        width: parent.width
        // Of its own: what stands in its middle does not ask for the height that hangs on it.
        readonly property real row: Math.max(value.height, steps.height)
        height: root.wide ? row : value.height + Theme.mm(1.5) + steps.height

        Pressable {
            id: value
            x: root.wide && Theme.left ? steps.width + Theme.gap : 0
            y: root.wide ? (parent.row - height) / 2 : 0
            width: root.wide ? parent.width - steps.width - Theme.gap : parent.width
            height: name.implicitHeight + Theme.mm(2) + length.stack
            inList: true
            accessibleName: root.label + " " + (root.reading?.figure?.text ?? "")
            accessibleDescription: note.text
            onClicked: root.enter(String(root.held), root.label, root.reading?.figure?.text ?? "")

            Word {
                id: name
                width: parent.width
                text: root.label + ((root.reading?.figure?.lean ?? "") !== "" ? ", " + root.reading.figure.lean : "")
                bold: true
                Accessible.ignored: true
            }
            FigureText {
                id: length
                // It keeps its place with a fraction and without.
                y: name.implicitHeight + Theme.mm(1) + (stack - cap) / 2 - capTop
                figure: root.reading?.figure ?? null
                cap: Theme.small ? Theme.capThird : Theme.capSecond
                availableWidth: parent.width
                showLean: false
                color: value.pressed ? Theme.colors.accent : root.unread ? Theme.colors.inkSoft : Theme.colors.ink
                accessibleIgnored: true
            }
            FocusOutline { visible: value.keyboardFocus }
        }
        Row {
            id: steps
            readonly property real each: root.wide ? Theme.targetLeast : (root.width - Theme.gap) / 2
            x: root.wide && !Theme.left ? parent.width - width : 0
            y: root.wide ? (parent.row - height) / 2 : value.height + Theme.mm(1.5)
            spacing: Theme.gap

            StepButton {
                sign: "-"
                width: steps.each
                height: Theme.small ? Theme.step : Theme.targetLeast
                //: spoken name of a minus button; %1 is what it lessens
                accessibleName: qsTr("%1 less").arg(root.label)
                onStepped: BlockMeasure.nudge(root.held, -1)
            }
            StepButton {
                sign: "+"
                width: steps.each
                height: Theme.small ? Theme.step : Theme.targetLeast
                //: spoken name of a plus button; %1 is what it adds to
                accessibleName: qsTr("%1 more").arg(root.label)
                onStepped: BlockMeasure.nudge(root.held, 1)
            }
        }
    }
    CutButton {
        width: parent.width
        height: Theme.control
        // It stays in place for the next: one press is one reading.
        guardMs: 400
        //: of one of a block's six readings: she read just what is shown
        text: root.unread ? qsTr("Read: it is as shown")
                          //: on a button: %1 is the side or diagonal of a block to read next, "right"
                          : qsTr("Next: %1").arg(BlockMeasure.readings[root.following]?.says ?? "")
        onClicked: {
            // Stepped by nothing it is a reading as good as any.
            if (root.unread)
                BlockMeasure.nudge(root.held, 0);
            root.turned(root.following);
        }
    }
    Word {
        id: note
        width: parent.width
        visible: text !== ""
        color: root.doubted ? Theme.colors.caution : Theme.colors.inkSoft
        text: root.doubted ? qsTr("measure this one again first") : root.unread ? qsTr("not yet read") : ""
    }
}
