// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One of several readings, large, with what steps it; read as it is shown or otherwise, the next one follows. */
Column {
    id: root

    /** {says, figure, taken} each. */
    property var readings: []
    property int held: 0
    readonly property var reading: readings[held] ?? null
    readonly property string label: reading?.says ?? ""
    readonly property string figureText: reading?.figure?.text ?? ""
    readonly property bool unread: !(reading?.taken ?? true)
    readonly property int following: readings.length > 0 ? (held + 1) % readings.length : 0
    /** Where there is room what steps it stands beside the figure. */
    property bool wide: width > Theme.mm(96)
    property real stepHeight: Theme.small ? Theme.step : Theme.targetLeast
    /** "a generous" stands with the name, not before the figure. */
    property bool leanAbove: true
    /** A question mark stands with what is not yet read. */
    property bool asks: false
    property string note

    signal nudged(int reading, int by)
    signal turned(int reading)
    /** It is to be typed. */
    signal figurePressed()

    spacing: Theme.gap

    Item {
        width: parent.width
        // Of its own: what stands in its middle does not ask for the height that hangs on it.
        readonly property real row: Math.max(value.height, steps.height)
        height: root.wide ? row : value.height + Theme.mm(1.5) + steps.height

        Pressable {
            id: value
            objectName: "reading"
            x: root.wide && Theme.left ? steps.width + Theme.gap : 0
            y: root.wide ? (parent.row - height) / 2 : 0
            width: root.wide ? parent.width - steps.width - Theme.gap : parent.width
            height: name.implicitHeight + Theme.mm(2) + length.stack
            inList: true
            accessibleName: root.label + " " + root.figureText
            accessibleDescription: root.note
            onClicked: root.figurePressed()

            Word {
                id: name
                readonly property string lean: root.leanAbove ? root.reading?.figure?.lean ?? "" : ""
                width: parent.width
                text: root.label + (lean !== "" ? ", " + lean : "")
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
                showLean: !root.leanAbove
                color: value.pressed ? Theme.colors.accent : root.unread ? Theme.colors.inkSoft : Theme.colors.ink
                accessibleIgnored: true
            }
            Word {
                id: ask
                visible: root.asks && root.unread
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
            y: root.wide ? (parent.row - height) / 2 : value.height + Theme.mm(1.5)
            spacing: Theme.gap

            StepButton {
                sign: "-"
                width: steps.each
                height: root.stepHeight
                //: spoken name of a minus button; %1 is what it lessens
                accessibleName: qsTr("%1 less").arg(root.label)
                onStepped: root.nudged(root.held, -1)
            }
            StepButton {
                sign: "+"
                width: steps.each
                height: root.stepHeight
                //: spoken name of a plus button; %1 is what it adds to
                accessibleName: qsTr("%1 more").arg(root.label)
                onStepped: root.nudged(root.held, 1)
            }
        }
    }
    CutButton {
        objectName: "read"
        width: parent.width
        height: Theme.control
        // It stays in place for the next: one press is one reading.
        guardMs: 400
        //: of several readings of a block, a join or the piece: she read just what is shown
        text: root.unread ? qsTr("Read: it is as shown")
                          //: on a button: %1 is what to read next, "right"
                          : qsTr("Next: %1").arg(root.readings[root.following]?.says ?? "")
        onClicked: {
            // Stepped by nothing it is a reading as good as any.
            if (root.unread)
                root.nudged(root.held, 0);
            root.turned(root.following);
        }
    }
}
