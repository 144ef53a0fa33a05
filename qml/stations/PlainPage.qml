// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** A station told in words: its steps with their figures, and the same three targets as everywhere. */
FocusScope {
    id: root

    readonly property bool upright: height > width
    property string shows: "work"

    function leave() {
        shows = "work";
    }

    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: list.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: Session.stationName(Session.station)
    }
    Word {
        id: hint
        x: Theme.margin
        y: head.y + head.height + Theme.mm(2)
        width: head.width
        color: Theme.colors.inkSoft
        text: Session.stationHint(Session.station)
    }
    ListView {
        id: list
        x: root.upright || !Theme.left ? 0 : column.width
        y: hint.y + hint.height + Theme.gap
        width: root.width - (root.upright ? 0 : column.width)
        height: root.height - y - (root.upright ? column.height : 0)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: StepModel.steps
        delegate: StepRow {
            width: list.width
            onClicked: StepModel.goTo(index)
        }
    }
    Word {
        visible: list.count === 0
        x: Theme.margin
        y: list.y + Theme.margin
        width: list.width - 2 * Theme.margin
        text: StepModel.elsewhereText
    }
    SheetColumn {
        id: column
        x: root.upright || Theme.left ? 0 : root.width - width
        y: root.upright ? root.height - height : 0
        width: root.upright ? root.width : Theme.column
        height: root.upright ? Math.min(root.height * 0.62, Theme.mm(132)) : root.height

        readonly property string sheet: StepModel.resuming ? "resume" : root.shows !== "work" ? root.shows
                                        : StepModel.askUndoDone ? "undone"
                                        : StepModel.trialKind.length > 0 && !StepModel.finished ? "trial" : "work"

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
        TrialSheet {
            anchors.fill: parent
            visible: column.sheet === "trial"
        }
    }
}
