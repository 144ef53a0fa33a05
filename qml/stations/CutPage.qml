// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The next cut at full size: the drawing bleeds to the edges, the column stands at the cutting hand. */
FocusScope {
    id: root

    readonly property bool upright: height > width
    /** What stands in the column: "work", "working", "wrong". */
    property string shows: "work"

    function leave() {
        shows = "work";
    }

    Keys.onPressed: event => {
        if (root.shows !== "work")
            return;
        const next = event.key === Qt.Key_PageDown || event.key === Qt.Key_Right;
        const back = event.key === Qt.Key_PageUp || event.key === Qt.Key_Left;
        if (!next && !back)
            return;
        event.accepted = true;
        if (next && StepModel.canGoNext && !event.isAutoRepeat)
            StepModel.next();
        else if (back && StepModel.canGoBack && !event.isAutoRepeat)
            StepModel.back();
    }

    RulerDrawing {
        id: drawing
        visible: StepModel.ruler.show && !StepModel.finished
        x: root.upright || !Theme.left ? 0 : column.width
        width: root.width - (root.upright ? 0 : column.width)
        height: root.height - (root.upright ? column.height : 0)
        view: StepModel.ruler
        clothRole: StepModel.clothRole
        accessibleName: StepModel.spoken
    }
    InlineLength {
        visible: !drawing.visible
        anchors.centerIn: drawing
        width: drawing.width - 2 * Theme.column / 4
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }

    SheetColumn {
        id: column
        x: root.upright || Theme.left ? 0 : root.width - width
        y: root.upright ? root.height - height : 0
        width: root.upright ? root.width : Theme.column
        height: root.upright ? Math.min(root.height * 0.62, Theme.mm(132)) : root.height

        readonly property string sheet: StepModel.resuming ? "resume" : root.shows !== "work" ? root.shows
                                        : StepModel.askUndoDone ? "undone"
                                        : "work"

        CutColumn {
            anchors.fill: parent
            visible: column.sheet === "work"
            onWorking: key => {
                root.shows = "working";
                sum.show(key);
            }
            onWrong: {
                trouble.answered = false;
                root.shows = "wrong";
            }
        }
        WorkingSheet {
            id: sum
            anchors.fill: parent
            visible: column.sheet === "working"
            onClosed: root.shows = "work"
        }
        WrongSheet {
            id: trouble
            anchors.fill: parent
            visible: column.sheet === "wrong"
            onClosed: root.shows = "work"
        }
        ResumeSheet {
            anchors.fill: parent
            visible: column.sheet === "resume"
        }
        UndoneSheet {
            anchors.fill: parent
            visible: column.sheet === "undone"
        }
    }
}
