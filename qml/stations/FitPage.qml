// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The piece on its table, and every figure that follows while the finger is still on the control. */
FocusScope {
    id: root

    readonly property bool upright: height > width
    /** What stands in the column: "fields", "figures", "working", "keypad". */
    property string shows: "fields"
    property string entering

    function leave() {
        shows = "fields";
    }
    function begin(pointer: string, label: string, kind: string, text: string) {
        entering = pointer;
        keypad.title = label;
        keypad.counting = kind === "count";
        keypad.unit = kind === "count" ? "" : kind === "share" ? "%" : Session.units;
        keypad.decimal = kind === "share" || Session.units === "mm";
        keypad.marks = kind === "length" ? FitModel.marks(pointer) : [];
        keypad.error = "";
        keypad.offers = [];
        shows = "keypad";
        keypad.start("");
    }
    function explain(key: string) {
        shows = "working";
        sum.show(key);
    }

    Word {
        id: name
        x: Theme.margin
        y: Theme.margin
        width: drawing.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: Session.projectName
    }
    TableDrawing {
        id: drawing
        x: root.upright || !Theme.left ? 0 : column.width
        y: name.y + name.height
        width: root.width - (root.upright ? 0 : column.width)
        height: root.upright ? root.height * 0.34 - y : root.height - y
        view: FitModel.drawing
        dragEnabled: !Session.readOnly
        accessibleName: qsTr("The piece on the table, %1 by %2")
            .arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
        onDragged: (alongMm, acrossMm) => FitModel.dragCorner(alongMm, acrossMm)
        onReleased: FitModel.endDrag()
        onStepped: (along, across) => {
            if (along !== 0)
                FitModel.nudge("/blocks/columns", along);
            if (across !== 0)
                FitModel.nudge("/blocks/rows", across);
        }
    }
    SheetColumn {
        id: column
        x: root.upright || Theme.left ? 0 : root.width - width
        y: root.upright ? drawing.y + drawing.height : 0
        width: root.upright ? root.width : Math.min(Theme.mm(110), root.width * 0.62)
        height: root.height - y

        Item {
            id: sheet
            anchors.fill: parent
            visible: root.shows === "fields" || root.shows === "figures"

            FitHead {
                id: head
                width: parent.width
                onWorking: key => root.explain(key)
                onAsk: (pointer, label, kind, text) => root.begin(pointer, label, kind, text)
            }
            Row {
                id: turn
                y: head.implicitHeight + Theme.gap
                width: parent.width
                spacing: Theme.gap
                CutButton {
                    width: (turn.width - turn.spacing) / 2
                    height: Theme.step
                    kind: root.shows === "fields" ? "action" : "outline"
                    cap: Theme.capWord
                    text: qsTr("What you decide")
                    onClicked: root.shows = "fields"
                }
                CutButton {
                    width: (turn.width - turn.spacing) / 2
                    height: Theme.step
                    kind: root.shows === "figures" ? "action" : "outline"
                    cap: Theme.capWord
                    text: FitModel.problems.count > 0 ? qsTr("What follows (%n)", "", FitModel.problems.count)
                                                      : qsTr("What follows")
                    onClicked: root.shows = "figures"
                }
            }
            FieldsSheet {
                visible: root.shows === "fields"
                y: turn.y + turn.height + Theme.gap
                width: parent.width
                height: parent.height - y
                onAsk: (pointer, label, kind, text) => root.begin(pointer, label, kind, text)
            }
            FiguresList {
                visible: root.shows === "figures"
                y: turn.y + turn.height + Theme.gap
                width: parent.width
                height: parent.height - y
                onWorking: key => root.explain(key)
            }
        }
        WorkingSheet {
            id: sum
            anchors.fill: parent
            visible: root.shows === "working"
            onClosed: root.shows = "figures"
        }
        Keypad {
            id: keypad
            anchors.fill: parent
            visible: root.shows === "keypad"
            onCancelled: root.shows = "fields"
            onOfferTaken: index => {
                keypad.entry = keypad.offers[index].entry;
            }
            onDone: text => {
                const answer = FitModel.enter(root.entering, text);
                keypad.error = answer.ok ? "" : answer.says;
                if (answer.ok)
                    root.shows = "fields";
            }
        }
    }
}
