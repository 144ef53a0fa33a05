// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * A station whose drawing is wide: the drawing over a foot in three, the figure, what stands beside it, the
 * targets. What she opens is a column of full height in the foot's stead, with the whole drawing beside it. On a low screen the foot holds one row, and what stands beside opens from the drawing's head.
 */
FocusScope {
    id: root

    default property alias scene: area.data
    property alias heading: figure.heading
    property alias telling: figure.telling
    property alias figure: figure.figure
    property alias tally: figure.tally
    property alias closing: figure.closing
    property alias closingWords: figure.closingWords
    /** What stands beside the figure: a page with `opened(side)`. */
    property string aside
    /** The pages that can be opened, by name; "more" is the aside itself. */
    property var sides: ({})
    property string side
    /** What stands opened there; null for none. */
    readonly property Item sidePage: side !== "" ? sideSheet.shown : null
    /** A sheet of the page's own that lies over everything, with `leave()`. */
    property Item over
    /** False where the foot or the hand works something else: the pedal turns no page and logs nothing. */
    property bool pedal: true

    /** Words that lead back to what is in hand where the scene shows something else; it is asked for first. */
    property string showFirst
    signal handWanted()

    /** An arrow key: 1 forth, −1 back. */
    signal scanned(int by)

    readonly property bool upright: height > width
    readonly property bool small: !upright && height < Theme.mm(120)
    readonly property string sheet: column.sheet
    /** Of the trial's readings the one in hand. */
    property alias heldTrial: column.heldTrial
    readonly property bool working: column.sheet === "work" && side === ""
    /** The least height left to the drawing on an upright screen, millimetres. */
    property real sceneMm: 50
    /** Height of the foot where the screen is neither upright nor low, millimetres. */
    property real footMm: 64
    /** The most height for the figure on an upright screen, millimetres. */
    property real figureMm: 62
    /** The most height for what is opened on an upright screen, millimetres. */
    property real sideMm: 140
    /** A column lies over the foot: the drawing takes what the column leaves. */
    /** That column lies over the whole page. */
    readonly property bool spread: column.spread || (sideSheet.visible && sideSheet.spread)
    readonly property bool covered: column.sheet !== "work" || (side !== "" && !(root.over?.visible ?? false))

    /** Closes what lies over the work; false when nothing did. */
    function leave(): bool {
        if (keypad.open) {
            keypad.close();
            return true;
        }
        if (root.over?.visible && root.over.leave())
            return true;
        if (side !== "") {
            side = "";
            return true;
        }
        return column.leave();
    }
    function openSide(name: string) {
        side = name;
    }

    Keys.onPressed: event => root.turn(event)

    /** What a key or a pedal turns here. */
    function turn(event: var) {
        const foot = event.key === Qt.Key_PageDown || event.key === Qt.Key_PageUp;
        if (foot && !Session.pedal)
            return;
        const forth = event.key === Qt.Key_Right, backward = event.key === Qt.Key_Left;
        const next = [Qt.Key_PageDown, Qt.Key_Down, Qt.Key_Space].includes(event.key);
        const back = [Qt.Key_PageUp, Qt.Key_Up].includes(event.key);
        if (!root.working || keypad.open)
            return;
        if (forth || backward) {
            event.accepted = true;
            root.scanned(forth !== Theme.left ? 1 : -1);
            return;
        }
        if ((!next && !back) || !root.pedal)
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
        wanted: area.visible && !root.covered
        x: area.x
        width: area.width
    }
    Item {
        id: area
        enabled: !keypad.open
        readonly property bool narrowed: root.covered && !root.upright
        visible: !(root.over?.visible ?? false) && !root.spread
        x: narrowed && Theme.left ? column.width : 0
        y: trial.height
        width: parent.width - (narrowed ? column.width : 0)
        height: (narrowed ? parent.height : root.covered ? (sideSheet.visible ? sideSheet.y : column.y) : foot.y) - y
        clip: true
    }
    Item {
        id: foot
        enabled: !keypad.open
        visible: area.visible && !root.covered
        readonly property real targetsWidth: root.small ? Math.min(width * 0.64, Theme.mm(StepModel.trial ? 88 : 94)) : Theme.column - 2 * Theme.margin
        width: parent.width
        height: root.upright ? Math.min(root.height - Theme.mm(root.sceneMm), Theme.mm(166)) : Theme.mm(root.small ? 36 : root.footMm)
        y: parent.height - height

        Rectangle {
            anchors.fill: parent
            color: Theme.colors.raised
        }
        KeyLine { width: parent.width }

        FootFigure {
            id: figure
            x: root.upright || !Theme.left ? Theme.margin : parent.width - width - Theme.margin
            y: Theme.mm(3)
            width: root.upright ? parent.width - 2 * Theme.margin
                   : root.small ? parent.width - foot.targetsWidth - 3 * Theme.margin : Theme.mm(66)
            small: root.small
            // Upright it leaves a place to what is to be minded, between it and the targets.
            height: root.upright ? Math.min(Theme.mm(root.figureMm), targets.y - y - Theme.mm(5) - (StepModel.caution !== "" ? Theme.control : 0))
                                 : parent.height - Theme.mm(6)
            onWorking: key => column.work(key)
            onNotes: column.shows = "notes"
        }
        Loader {
            id: beside
            visible: !root.small || root.upright
            source: root.aside
            x: root.upright ? 0 : Theme.left ? foot.targetsWidth + 2 * Theme.margin : figure.x + figure.width + Theme.margin
            y: mind.y + mind.height
            width: root.upright ? parent.width : parent.width - figure.width - foot.targetsWidth - 4 * Theme.margin
            height: root.upright ? targets.y - y - Theme.gap : parent.height - y
        }
        MoreBelow {
            over: beside.item as Flickable
            within: beside
        }
        // Where the words under the figure have no room, the first thing to mind leads what stands beside.
        MindSign {
            id: mind
            objectName: "mind"
            alone: false
            // Its words would lie on the targets, or push down what stands beside.
            readonly property bool narrow: root.upright ? y + whole.implicitHeight + Theme.mm(6) > targets.y : whole.implicitHeight > Theme.mm(14)
            visible: beside.visible && !figure.minded && !StepModel.finished && StepModel.caution !== ""
            x: beside.x
            y: root.upright ? figure.y + figure.height + Theme.mm(2) : Theme.key
            width: beside.width
            height: !visible ? 0 : narrow ? Theme.control : Math.max(Theme.control, whole.implicitHeight + Theme.mm(3))
            inList: true
            onClicked: column.shows = "notes"
            KeyLine {
                visible: root.upright
                width: parent.width
            }
            CautionLine {
                id: first
                x: Theme.margin
                anchors.verticalCenter: parent.verticalCenter
                width: parent.width - 2 * Theme.margin
                text: figure.firstCaution
                folded: mind.narrow
                brief: mind.brief
            }
            // Measured, not shown.
            Word {
                id: whole
                visible: false
                width: first.width - Theme.mm(8)
                text: first.text
            }
        }
        Connections {
            target: beside.item
            ignoreUnknownSignals: true
            function onOpened(side: string) {
                root.side = side;
            }
        }
        KeyLine {
            visible: beside.visible && !root.upright
            x: beside.x
            vertical: true
            height: parent.height
        }
        KeyLine {
            visible: beside.visible && !root.upright
            x: beside.x + beside.width
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
            showFirst: root.showFirst
            onHandWanted: root.handWanted()
            onWrong: column.openWrong()
            onNext: figure.heard()
        }
    }
    // What a sheet or the keypad lies over takes no focus: Tab stays with what can be pressed.
    StepSheets {
        id: column
        enabled: !keypad.open
        visible: sheet !== "work"
        x: root.upright || spread ? 0 : Theme.left ? 0 : root.width - width
        y: root.height - height
        width: root.upright || spread ? root.width : Theme.column
        // The join that is read needs its section beside the sheet.
        readonly property real most: root.side !== "" && (sideSheet.asked > 0) ? sideSheet.asked
                                     : Theme.mm(StepModel.doing === "test-join" && sheet === "trial" ? 118 : 140)
        height: spread ? root.height : root.upright ? Math.min(root.height * 0.64, most) : root.height
        topLine: root.upright && !spread
        onEnter: (name, title, text) => keypad.ask(name, title, "length", text)
    }
    SideSheet {
        id: sideSheet
        enabled: !keypad.open
        visible: source !== "" && column.sheet === "work"
        source: root.side === "more" ? root.aside : root.sides[root.side] ?? ""
        x: spread ? 0 : column.x
        y: root.height - height
        width: spread ? root.width : column.width
        height: spread || !root.upright ? root.height : Math.min(root.height * 0.64, Theme.mm(root.sideMm))
        topLine: root.upright && !spread
        onClosed: root.side = ""
        onOpened: side => root.side = side
        onEnter: (name, title, text) => keypad.ask(name, title, name.endsWith("count") ? "count" : "length", text)
    }
    EntrySheet {
        id: keypad
        home: column
        ruler: FitModel.marks("")
        onGiven: (name, text) => {
            const wrong = root.side !== "" ? sideSheet.take(name, text) : column.take(name, text);
            error = wrong;
            if (wrong === "")
                close();
        }
        onClosed: root.forceActiveFocus()
    }
}
