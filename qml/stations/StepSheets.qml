// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The column of a station of steps: the work, or what lies over it. No dialog box: one sheet at a time. */
SheetColumn {
    id: root
    objectName: "sheets"

    /** What she opened over the work: "work" (nothing), "working", "wrong", "notes". */
    property string shows: "work"
    property bool topLine: false
    readonly property string sheet: StepModel.resuming ? "resume" : root.shows !== "work" ? root.shows
                                    : StepModel.askUndoDone ? "undone"
                                    : StepModel.trialKind.length > 0 && !StepModel.finished ? "trial" : "work"

    /** The height at which nothing has to give way. */
    readonly property real wanted: sheet === "work" ? work.wanted + 2 * Theme.margin : Theme.mm(136)

    /** Asks for the keypad for one measure. */
    signal enter(string name, string title, string text)

    function leave(): bool {
        if (sheet === "undone") {
            StepModel.answerUndo("");
            return true;
        }
        const lay = root.shows !== "work";
        root.shows = "work";
        return lay;
    }
    function next() {
        work.next();
    }
    function back() {
        work.back();
    }
    /** Opens the sum behind a figure, or the answers to what went wrong. */
    function work(key: string) {
        shows = "working";
        sum.show([key]);
    }
    function openWrong() {
        trouble.answered = false;
        trouble.error = "";
        shows = "wrong";
    }
    /** A measure typed for the trial, for an answer to what went wrong, or of a block; what is wrong with it. */
    function take(name: string, text: string): string {
        if (root.sheet === "measure")
            return readings.take(name, text);
        if (root.sheet === "wrong")
            trouble.take(name, text);
        else
            trial.take(name, text);
        return "";
    }

    StepColumn {
        id: work
        anchors.fill: parent
        visible: root.sheet === "work"
        onWorking: key => root.work(key)
        onWrong: root.openWrong()
        onNotes: root.shows = "notes"
    }
    WorkingSheet {
        id: sum
        objectName: "sheet-working"
        anchors.fill: parent
        visible: root.sheet === "working"
        onClosed: root.shows = "work"
    }
    WrongSheet {
        id: trouble
        objectName: "sheet-wrong"
        anchors.fill: parent
        visible: root.sheet === "wrong"
        onEnter: (name, title) => root.enter(name, title, "")
        onMeasure: {
            BlockMeasure.begin();
            root.shows = "measure";
        }
        onClosed: root.shows = "work"
    }
    MeasureSheet {
        objectName: "sheet-measure"
        id: readings
        anchors.fill: parent
        visible: root.sheet === "measure"
        onEnter: (name, title, text) => root.enter(name, title, text)
        onClosed: root.shows = "work"
    }
    NotesSheet {
        objectName: "sheet-notes"
        anchors.fill: parent
        visible: root.sheet === "notes"
        onClosed: root.shows = "work"
    }
    ResumeSheet {
        objectName: "sheet-resume"
        anchors.fill: parent
        visible: root.sheet === "resume"
    }
    UndoneSheet {
        objectName: "sheet-undone"
        anchors.fill: parent
        visible: root.sheet === "undone"
    }
    TrialSheet {
        id: trial
        objectName: "sheet-trial"
        anchors.fill: parent
        visible: root.sheet === "trial"
        onEnter: (name, title, text) => root.enter(name, title, text)
    }
    KeyLine {
        visible: root.topLine
        x: -Theme.margin
        y: -Theme.margin
        width: root.width
    }
}
