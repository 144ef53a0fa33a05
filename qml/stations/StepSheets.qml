// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/** The column of a station of steps: the work, or what lies over it. No dialog box: one sheet at a time. */
SheetColumn {
    id: root
    objectName: "sheets"

    /** What she opened over the work: "work" (nothing), "working", "wrong", "notes". */
    property string shows: "work"
    property bool topLine: false
    /** Of a block's six readings the one in hand. */
    property int heldReading: 0
    /** Of the trial's readings the one in hand. */
    property int heldTrial: 0
    readonly property string sheet: StepModel.resuming ? "resume" : root.shows !== "work" ? root.shows
                                    : StepModel.askUndoDone ? "undone"
                                    : StepModel.trialKind.length > 0 && !StepModel.finished ? "trial" : "work"

    /** What lies over the work takes the whole page. */
    readonly property bool spread: sheet === "wrong" && ((trouble.item as WrongSheet)?.spread ?? false)
    /** The height at which nothing has to give way. */
    readonly property real wanted: sheet === "work" ? work.wanted + 2 * Theme.margin
                                   : sheet === "measure" ? Theme.mm(108) : Theme.mm(136)

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
    /** Back to the work from what lay over it. */
    function done() {
        shows = "work";
    }
    /** Opens the readings of the block in hand, of one of the "others", or where they tell of a "common" size. */
    function measure(way: string) {
        if (way === "others")
            BlockMeasure.beginOther();
        else
            BlockMeasure.begin();
        heldReading = firstToRead();
        shows = "measure";
        if (way === "common")
            (readings.item as MeasureSheet).showCommon();
    }
    /** The reading to take in hand first: the likeliest misread, where there is one, else one not yet read. */
    function firstToRead(): int {
        let unread = 0;
        for (let at = BlockMeasure.readings.length - 1; at >= 0; --at) {
            if (BlockMeasure.readings[at].suspect)
                return at;
            if (!BlockMeasure.readings[at].taken)
                unread = at;
        }
        return unread;
    }
    /** Opens the sum behind a figure, or the answers to what went wrong. */
    function work(key: string) {
        shows = "working";
        (sum.item as WorkingSheet).show([key]);
    }
    function openWrong() {
        shows = "wrong";
        (trouble.item as WrongSheet).begin();
    }
    /** A measure typed for the trial, for an answer to what went wrong, or of a block; what is wrong with it. */
    function take(name: string, text: string): string {
        if (root.sheet === "measure")
            return (readings.item as MeasureSheet).take(name, text);
        if (root.sheet === "wrong")
            (trouble.item as WrongSheet).take(name, text);
        else
            return StepModel.typeTrial(heldTrial, text);
        return "";
    }

    StepColumn {
        id: work
        anchors.fill: parent
        visible: root.sheet === "work"
        onWorking: key => root.work(key)
        onWrong: root.openWrong()
        onNotes: root.shows = "notes"
        onMeasure: way => root.measure(way)
    }
    // What may lie over the work is made when it is first wanted: the work itself stands the sooner.
    component Sheet: Later {
        anchors.fill: parent
    }
    Sheet {
        id: sum
        objectName: "sheet-working"
        wanted: root.sheet === "working"
        sourceComponent: WorkingSheet {
            onClosed: () => root.done()
        }
    }
    Sheet {
        id: trouble
        objectName: "sheet-wrong"
        wanted: root.sheet === "wrong"
        sourceComponent: WrongSheet {
            onEnter: (name, title) => root.enter(name, title, "")
            onMeasure: () => root.measure("measure")
            onClosed: () => root.done()
        }
    }
    Sheet {
        id: readings
        objectName: "sheet-measure"
        wanted: root.sheet === "measure"
        sourceComponent: MeasureSheet {
            held: root.heldReading
            onTurned: reading => root.heldReading = reading
            onEnter: (name, title, text) => root.enter(name, title, text)
            onClosed: () => root.done()
        }
    }
    Sheet {
        objectName: "sheet-notes"
        wanted: root.sheet === "notes"
        sourceComponent: NotesSheet {
            onClosed: () => root.done()
        }
    }
    Sheet {
        objectName: "sheet-resume"
        wanted: root.sheet === "resume"
        sourceComponent: ResumeSheet {}
    }
    Sheet {
        objectName: "sheet-undone"
        wanted: root.sheet === "undone"
        sourceComponent: UndoneSheet {}
    }
    Sheet {
        id: trial
        objectName: "sheet-trial"
        wanted: root.sheet === "trial"
        sourceComponent: TrialSheet {
            held: root.heldTrial
            onTurned: reading => root.heldTrial = reading
            onEnter: (name, title, text) => root.enter(name, title, text)
        }
    }
    KeyLine {
        visible: root.topLine
        x: -Theme.margin
        y: -Theme.margin
        width: root.width
    }
}
