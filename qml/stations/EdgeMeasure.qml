// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The piece's four sides and two diagonals: the tape taken in hand on the drawing is stepped or typed here and kept
 * at once, with what all of them say.
 */
Flickable {
    id: root

    /** The reading in hand, 0 to 5 as the model has them. */
    property int held: 0
    readonly property var reading: EdgeModel.readings[held] ?? null
    readonly property string label: reading?.says ?? ""
    readonly property bool unread: !(reading?.taken ?? true)
    readonly property int following: (held + 1) % 6
    /** Some of the six are still to be read. */
    readonly property bool wanting: EdgeModel.unreadSays !== ""

    signal enter(string name, string title, string text)

    /** What is wrong with a typed reading, or nothing. */
    function take(name: string, text: string): string {
        return EdgeModel.enter(parseInt(name), text);
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        // First, so that what the readings say does not move it under the finger.
        Pressable {
            id: value
            width: parent.width
            height: length.y + length.height + Theme.mm(1)
            inList: true
            accessibleName: root.label + " " + (root.reading?.figure?.text ?? "")
            onClicked: root.enter(String(root.held), root.label, root.reading?.figure?.text ?? "")

            Word {
                id: name
                width: parent.width
                text: root.label
                bold: true
                Accessible.ignored: true
            }
            FigureText {
                id: length
                y: name.implicitHeight + Theme.mm(0.6)
                figure: root.reading?.figure ?? null
                cap: Theme.small ? Theme.capThird : Theme.capSecond
                availableWidth: parent.width
                color: value.pressed ? Theme.colors.accent : root.unread ? Theme.colors.inkSoft : Theme.colors.ink
                accessibleIgnored: true
            }
            FocusOutline { visible: value.keyboardFocus }
        }
        Row {
            spacing: Theme.gap
            StepButton {
                sign: "-"
                width: (rows.width - Theme.gap) / 2
                height: Theme.small ? Theme.step : Theme.targetLeast
                //: spoken name of a minus button; %1 is what it lessens
                accessibleName: qsTr("%1 less").arg(root.label)
                onStepped: EdgeModel.nudge(root.held, -1)
            }
            StepButton {
                sign: "+"
                width: (rows.width - Theme.gap) / 2
                height: Theme.small ? Theme.step : Theme.targetLeast
                //: spoken name of a plus button; %1 is what it adds to
                accessibleName: qsTr("%1 more").arg(root.label)
                onStepped: EdgeModel.nudge(root.held, 1)
            }
        }
        CutButton {
            objectName: "read"
            width: parent.width
            height: Theme.control
            // It stays in place for the next: one press is one reading.
            guardMs: 400
            //: of one of the piece's six readings: she read just what is shown
            text: root.unread ? qsTr("Read: it is as shown")
                              //: on a button: %1 is the side or diagonal of the piece to read next, "right"
                              : qsTr("Next: %1").arg(EdgeModel.readings[root.following]?.says ?? "")
            onClicked: {
                // Stepped by nothing it is a reading as good as any.
                if (root.unread)
                    EdgeModel.nudge(root.held, 0);
                root.held = root.following;
            }
        }
        KeyLine { width: parent.width }
        Word {
            width: parent.width
            visible: EdgeModel.measured && text !== ""
            text: EdgeModel.unreadSays
        }
        Word {
            width: parent.width
            visible: !EdgeModel.measured
            cap: Theme.capHead
            bold: true
            text: qsTr("Measure all six, raw edge to raw edge.")
        }
        InlineLength {
            width: parent.width
            visible: EdgeModel.measured
            bold: true
            cap: Theme.capWord
            text: EdgeModel.verdict
        }
        InlineLength {
            width: parent.width
            visible: EdgeModel.measured
            text: EdgeModel.remedy
        }
        InlineLength {
            width: parent.width
            visible: text !== ""
            text: EdgeModel.roundSays
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("What is not read stands as planned. The limits are common practice; no published ones are known.")
        }
    }
}
