// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * A value with its name above it, minus and plus at its right. A press on the value asks for the keypad; a
 * drag along it moves it by the ruler's marks, slowly near where it began and faster farther out, and
 * everything follows at once.
 */
Item {
    id: root

    property string pointer
    property string label
    property string kind
    property var figure
    property bool canLess: true
    property bool canMore: true
    property bool reckoned: false

    signal ask()

    readonly property bool draggable: kind === "length" && !Session.readOnly
    readonly property real room: width - buttons.width - Theme.gap

    implicitHeight: Math.max(Theme.step, name.implicitHeight + length.implicitHeight + Theme.mm(2.4))

    Pressable {
        id: value
        x: Theme.left ? parent.width - width : 0
        width: root.room
        height: parent.height
        enabled: !Session.readOnly
        inList: true
        accessibleName: root.label + " " + (root.figure?.text ?? "")
        drawable: root.draggable
        onClicked: root.ask()

        property real from: 0
        onDrawingChanged: {
            if (drawing) {
                from = root.figure?.mm ?? 0;
                FitModel.beginDrag(root.pointer);
            } else {
                FitModel.endDrag();
            }
        }
        onDrawnChanged: {
            const moved = drawn / Theme.pxPerMm;
            FitModel.dragTo(root.pointer, Math.max(0, from + moved * 0.4 * (1 + moved * moved / 500)));
        }

        Word {
            id: name
            width: parent.width
            color: root.reckoned ? Theme.colors.inkSoft : Theme.colors.ink
            //: %1 is a value that the plan works out by itself
            text: root.reckoned ? qsTr("%1, worked out").arg(root.label) : root.label
            Accessible.ignored: true
        }
        FigureText {
            id: length
            y: name.implicitHeight + Theme.mm(0.6)
            figure: root.figure?.valid ? root.figure : null
            cap: Theme.capInText
            availableWidth: parent.width
            color: value.pressed || value.drawing ? Theme.colors.accent : root.reckoned ? Theme.colors.inkSoft : Theme.colors.ink
            accessibleIgnored: true
        }
        Row {
            // The marks of a ruler under a value: it can be drawn along.
            visible: root.draggable
            y: parent.height - height
            spacing: Theme.mm(1.6)
            Repeater {
                model: 9
                Rectangle {
                    required property int index
                    width: Theme.keyThin
                    height: Theme.mm(index % 4 === 0 ? 1.8 : 1)
                    color: value.drawing ? Theme.colors.accent : Theme.colors.line
                }
            }
        }
        FocusOutline { visible: value.keyboardFocus }
    }
    Row {
        id: buttons
        x: Theme.left ? 0 : parent.width - width
        anchors.verticalCenter: parent.verticalCenter
        spacing: Theme.gap
        StepButton {
            sign: "-"
            enabled: root.canLess && !Session.readOnly
            //: spoken name of a minus button; %1 is what it lessens
            accessibleName: qsTr("%1 less").arg(root.label)
            onStepped: FitModel.nudge(root.pointer, -1)
        }
        StepButton {
            sign: "+"
            enabled: root.canMore && !Session.readOnly
            //: spoken name of a plus button; %1 is what it adds to
            accessibleName: qsTr("%1 more").arg(root.label)
            onStepped: FitModel.nudge(root.pointer, 1)
        }
    }
}
