// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The strip end to end over a foot in three: the figure, what the next block takes, the targets. What she
 * opens lies over the foot's end as a column of full height, so that the strip stays in sight.
 */
FocusScope {
    id: root

    readonly property bool upright: height > width
    /** A low screen: the foot holds one row of targets, and what stands beside the strip opens from its head. */
    readonly property bool small: !upright && height < Theme.mm(120)
    readonly property bool working: column.sheet === "work" && side === ""
    /** What she opened from the middle: "" nothing, "more", "zero", "strip", "stops", "hoops". */
    property string side

    /** Closes what lies over the work; false when nothing did. */
    function leave(): bool {
        if (keypad.open) {
            keypad.close();
            return true;
        }
        if (side !== "") {
            side = "";
            return true;
        }
        return column.leave();
    }

    Keys.onPressed: event => {
        const scanning = !StepModel.finished && strip.scanEnabled;
        const forth = event.key === Qt.Key_Right, backward = event.key === Qt.Key_Left;
        const next = [Qt.Key_PageDown, Qt.Key_Down, Qt.Key_Space].includes(event.key);
        const back = [Qt.Key_PageUp, Qt.Key_Up].includes(event.key);
        if (!root.working || keypad.open)
            return;
        if (forth || backward) {
            event.accepted = true;
            if (scanning)
                HoopModel.scan(forth !== Theme.left ? 1 : -1);
            return;
        }
        // At the machine the pedal belongs to the machine: it logs nothing and turns no page.
        if ((!next && !back) || StepModel.doing.startsWith("stitch"))
            return;
        event.accepted = true;
        if (event.isAutoRepeat)
            return;
        if (next)
            column.next();
        else
            column.back();
    }

    StripDrawing {
        id: strip
        width: parent.width
        height: foot.y
        view: HoopModel.view
        at: HoopModel.position
        head: StepModel.finished ? "" : HoopModel.head
        headOpens: root.small
        over: HoopModel.overSays.replace(/[{}]/g, "")
        nextFigure: HoopModel.marking ? HoopModel.second : null
        scanEnabled: !StepModel.finished && (HoopModel.marking || StepModel.doing === "stitch-block")
        accessibleName: HoopModel.head + ". " + HoopModel.title + ": " + HoopModel.figure.text
        onScanned: place => HoopModel.position = place
        onOpened: root.side = "more"
    }
    Item {
        id: foot
        readonly property real targetsWidth: root.small ? Math.min(width * 0.64, Theme.mm(100)) : Theme.column - 2 * Theme.margin
        width: parent.width
        height: root.upright ? Math.min(root.height - Theme.mm(50), Theme.mm(166)) : Theme.mm(root.small ? 36 : 64)
        y: parent.height - height

        Rectangle {
            anchors.fill: parent
            color: Theme.colors.raised
        }
        KeyLine { width: parent.width }

        HoopFigure {
            id: figure
            x: root.upright || !Theme.left ? Theme.margin : parent.width - width - Theme.margin
            y: Theme.mm(3)
            width: root.upright ? parent.width - 2 * Theme.margin
                   : root.small ? parent.width - foot.targetsWidth - 3 * Theme.margin : Theme.mm(66)
            small: root.small
            height: root.upright ? Theme.mm(62) : parent.height - Theme.mm(6)
            onWorking: key => column.work(key)
            onNotes: column.shows = "notes"
        }
        HoopAside {
            id: aside
            visible: !root.small || root.upright
            x: root.upright ? 0 : Theme.left ? foot.targetsWidth + 2 * Theme.margin : figure.x + figure.width + Theme.margin
            y: root.upright ? figure.y + figure.height + Theme.mm(2) : Theme.key
            width: root.upright ? parent.width : parent.width - figure.width - foot.targetsWidth - 4 * Theme.margin
            height: root.upright ? targets.y - y - Theme.gap : parent.height - y
            onOpened: side => root.side = side
        }
        KeyLine {
            visible: aside.visible && !root.upright
            x: aside.x
            vertical: true
            height: parent.height
        }
        KeyLine {
            visible: aside.visible && !root.upright
            x: aside.x + aside.width
            vertical: true
            height: parent.height
        }
        StepTargets {
            id: targets
            x: root.upright || Theme.left ? Theme.margin : parent.width - width - Theme.margin
            y: root.upright ? parent.height - height - Theme.margin : Math.max(Theme.mm(3), (parent.height - height) / 2)
            width: root.upright ? parent.width - 2 * Theme.margin : foot.targetsWidth
            height: implicitHeight
            inRow: root.small && !root.upright
            onWrong: column.openWrong()
            onNext: figure.heard()
        }
    }
    StepSheets {
        id: column
        visible: sheet !== "work"
        x: root.upright ? 0 : Theme.left ? 0 : root.width - width
        y: root.height - height
        width: root.upright ? root.width : Theme.column
        height: root.upright ? Math.min(root.height * 0.64, Theme.mm(140)) : root.height
        topLine: root.upright
        onEnter: (name, title, text) => keypad.ask(name, title, "length", text)
    }
    HoopSide {
        id: sideSheet
        visible: root.side !== "" && column.sheet === "work"
        shows: root.side
        x: column.x
        y: column.y
        width: column.width
        height: column.height
        topLine: root.upright
        onClosed: root.side = ""
        onOpened: side => root.side = side
        onEnter: (name, title, text) => keypad.ask(name, title, "length", text)
    }
    EntrySheet {
        id: keypad
        home: column
        marks: FitModel.marks("")
        onGiven: (name, text) => {
            if (root.side !== "") {
                keypad.error = sideSheet.take(name, text);
                if (keypad.error === "")
                    keypad.close();
                return;
            }
            column.take(name, text);
            keypad.close();
        }
        onClosed: root.forceActiveFocus()
    }
}
