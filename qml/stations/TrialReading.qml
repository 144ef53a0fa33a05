// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** One of the trial's readings, large, with what steps it; read as it is shown or otherwise, the next one follows. */
Column {
    id: root

    property int held: 0

    signal turned(int reading)
    signal enter(string name, string title, string text)

    readonly property var readings: StepModel.trialFields
    readonly property var reading: readings[held] ?? null
    readonly property string label: reading?.says ?? ""
    readonly property bool unread: !(reading?.taken ?? true)
    readonly property int following: readings.length > 0 ? (held + 1) % readings.length : 0
    /** Where there is room what steps it stands beside the figure. */
    readonly property bool wide: width > Theme.mm(96)

    spacing: Theme.gap

    Item {
        width: parent.width
        height: root.wide ? Math.max(value.height, steps.height) : value.height + Theme.mm(1.5) + steps.height

        Pressable {
            id: value
            objectName: "reading"
            x: root.wide && Theme.left ? steps.width + Theme.gap : 0
            width: root.wide ? parent.width - steps.width - Theme.gap : parent.width
            height: name.implicitHeight + Theme.mm(2) + length.stack
            inList: true
            accessibleName: root.label + " " + (root.reading?.figure?.text ?? "")
            accessibleDescription: root.unread ? qsTr("not yet read") : ""
            onClicked: root.enter(root.reading?.name ?? "", root.label, root.unread ? "" : root.reading?.figure?.text ?? "")

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
                availableWidth: parent.width - (ask.visible ? ask.width + Theme.gap : 0)
                showLean: false
                color: value.pressed ? Theme.colors.accent : root.unread ? Theme.colors.inkSoft : Theme.colors.ink
                accessibleIgnored: true
            }
            Word {
                id: ask
                visible: root.unread
                x: length.implicitWidth + Theme.gap
                y: length.y + length.footLine - baselineOffset
                bold: true
                cap: length.cap
                color: Theme.colors.inkSoft
                text: "?"
                Accessible.ignored: true
            }
            FocusOutline { visible: value.keyboardFocus }
        }
        Row {
            id: steps
            readonly property real each: root.wide ? Theme.targetLeast : (root.width - Theme.gap) / 2
            x: root.wide && !Theme.left ? parent.width - width : 0
            y: root.wide ? Math.max(0, (value.height - height) / 2) : value.height + Theme.mm(1.5)
            spacing: Theme.gap

            StepButton {
                sign: "-"
                width: steps.each
                height: Theme.small ? Theme.step : Theme.mm(16)
                //: spoken name of a minus button; %1 is what it lessens
                accessibleName: qsTr("%1 less").arg(root.label)
                onStepped: StepModel.nudgeTrial(root.held, -1)
            }
            StepButton {
                sign: "+"
                width: steps.each
                height: Theme.small ? Theme.step : Theme.mm(16)
                //: spoken name of a plus button; %1 is what it adds to
                accessibleName: qsTr("%1 more").arg(root.label)
                onStepped: StepModel.nudgeTrial(root.held, 1)
            }
        }
    }
    CutButton {
        objectName: "read"
        width: parent.width
        height: Theme.control
        // It stays in place for the next: one press is one reading.
        guardMs: 400
        //: of one of the trial's readings: she read just what is shown
        text: root.unread ? qsTr("Read: it is as shown")
                          //: on a button: %1 is what to read next, "seam, as sewn"
                          : qsTr("Next: %1").arg(root.readings[root.following]?.says ?? "")
        onClicked: {
            // Stepped by nothing it is a reading as good as any.
            if (root.unread)
                StepModel.nudgeTrial(root.held, 0);
            root.turned(root.following);
        }
    }
    CutButton {
        // Two edges that lie over each other have less than no gap.
        visible: root.reading?.turns ?? false
        width: parent.width
        height: Theme.control
        inList: true
        text: root.reading?.overlap ? qsTr("It is a gap") : qsTr("It is an overlap")
        onClicked: StepModel.turnTrial(root.held)
    }
}
