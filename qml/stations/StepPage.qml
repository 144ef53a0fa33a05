// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/**
 * A station where steps are done one after the other: a scene (the drawing, or the list of steps) that
 * bleeds to the edges, and the column at the cutting hand. Pedals and keys press the same targets as the
 * finger: page down, right, down or space for the next, page up, left or up for the one before, escape to
 * close what lies over the work.
 */
FocusScope {
    id: root
    focus: true

    default property alias scene: area.data
    readonly property bool upright: height > width
    /** Nothing lies over the work. */
    readonly property bool atWork: column.sheet === "work"

    /** Closes what lies over the work; false when nothing did. */
    function leave(): bool {
        if (keypad.open) {
            keypad.close();
            return true;
        }
        return column.leave();
    }

    /** Opens the readings of the block in hand. */
    function measure() {
        column.measure("measure");
    }

    Keys.onPressed: event => root.turn(event)

    /** What a key or a pedal turns here. */
    function turn(event: var) {
        const foot = event.key === Qt.Key_PageDown || event.key === Qt.Key_PageUp;
        if (foot && !Session.pedal)
            return;
        const next = [Qt.Key_PageDown, Qt.Key_Right, Qt.Key_Down, Qt.Key_Space].includes(event.key);
        const back = [Qt.Key_PageUp, Qt.Key_Left, Qt.Key_Up].includes(event.key);
        if (column.sheet !== "work" || keypad.open || (!next && !back))
            return;
        event.accepted = true;
        if (event.isAutoRepeat)
            return;
        if (foot)
            Session.pedalPressed();
        if (next)
            column.next();
        else
            column.back();
    }

    TrialLine {
        id: trial
        // Upright, over a column with a figure, the drawing needs all the height: there it stands among the notes.
        wanted: column.sheet === "work" && (!root.upright || !StepModel.figure.valid)
        x: area.x
        width: area.width
    }
    Item {
        id: area
        enabled: !keypad.open
        visible: !column.spread
        x: root.upright || !Theme.left ? 0 : column.width
        y: trial.height
        width: root.width - (root.upright ? 0 : column.width)
        height: root.height - y - (root.upright ? column.height : 0)
        clip: true
    }
    Loader {
        active: column.sheet === "measure"
        x: area.x
        y: area.y
        width: area.width
        height: area.height
        sourceComponent: MeasureScene {
            held: column.heldReading
            judged: BlockMeasure.measured
            asks: qsTr("Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.")
            head: BlockMeasure.asShownSays
            verdict: BlockMeasure.verdict
            remedy: BlockMeasure.remedy
            corners: BlockMeasure.corners
            planned: BlockMeasure.planned
            times: BlockMeasure.times
            readings: BlockMeasure.readings
            onTaken: reading => column.heldReading = reading
        }
    }
    // The keypad lies over it: what is covered takes no focus.
    StepSheets {
        id: column
        enabled: !keypad.open
        // Upright its own line falls on the band's: one key line, not two.
        readonly property bool whole: root.upright || spread
        x: whole ? (Theme.left ? 0 : -Theme.key) : Theme.left ? 0 : root.width - width
        y: root.height - height
        width: whole ? root.width + Theme.key : Theme.column
        height: root.upright && !spread ? Math.min(root.height * 0.64, Theme.mm(136), column.wanted) : root.height
        topLine: root.upright
        onEnter: (name, title, text) => keypad.ask(name, title, "length", text)
    }
    EntrySheet {
        id: keypad
        home: column
        ruler: FitModel.marks("")
        onGiven: (name, text) => {
            error = column.take(name, text);
            if (error === "")
                close();
        }
        onClosed: root.forceActiveFocus()
    }
}
