// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
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
        accessibleName: StepModel.lines.join(". ")
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

        Loader {
            id: inside
            anchors.fill: parent
            focus: true
            sourceComponent: StepModel.resuming ? resume
                             : root.shows === "working" ? working
                             : root.shows === "wrong" ? wrong
                             : StepModel.askUndoDone ? undone : work
        }
    }

    Component {
        id: work
        CutColumn {
            onWorking: key => {
                root.shows = "working";
                inside.item.show(key);
            }
            onWrong: root.shows = "wrong"
        }
    }
    Component {
        id: working
        WorkingSheet { onClosed: root.shows = "work" }
    }
    Component {
        id: wrong
        WrongSheet { onClosed: root.shows = "work" }
    }
    Component {
        id: resume
        ResumeSheet {}
    }
    Component {
        id: undone
        Item {
            Word {
                width: parent.width
                cap: Theme.capHead
                bold: true
                text: qsTr("Was it tapped by mistake, or is the piece spoiled?")
            }
            CutButton {
                anchors.bottom: spoiled.top
                anchors.bottomMargin: Theme.gapTargets
                width: parent.width
                height: Theme.target
                kind: "action"
                text: qsTr("Tapped by mistake")
                onClicked: StepModel.answerUndo("mistake")
            }
            CutButton {
                id: spoiled
                anchors.bottom: parent.bottom
                width: parent.width
                height: Theme.target
                kind: "outline"
                text: qsTr("Done and spoiled")
                onClicked: StepModel.answerUndo("spoiled")
            }
        }
    }
}
