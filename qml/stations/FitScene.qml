// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The piece on its table, as large as the page has room, with what changes it where it changes: the columns at the
 * edge they are added to, the rows at theirs, the block's size led to a block.
 */
Item {
    id: root

    /** The face that lies up. */
    property string face: "front"
    /** Only the drawing and its name: layouts are looked at. */
    property bool bare: false

    signal working()
    signal ask(string pointer, string label, string kind, string text)
    signal turned()

    /** Something lies open beside or below: the name, known by then, gives way to the drawing. */
    property bool opened: false
    /** The page is higher than wide. */
    property bool upright: false
    /** Layouts are looked at, and what is said of one stands beside the table. */
    readonly property bool sided: bare && !upright && !Theme.small

    /** Name and size stand beside the drawing, not over it. */
    readonly property bool wide: !bare && !opened && !upright
    /** No room for what changes the piece but its corner: what lies open has it all. */
    readonly property bool plain: bare || opened && Theme.small && !upright
    /** Upright and wide enough: the columns too are set below the piece, which has all the width. */
    readonly property bool under: !plain && !wide && width > Theme.mm(110) && rows.lying + columns.lying + Theme.mm(9) + Theme.gap + Theme.margin <= width
    /** Beside what lies open all of them stand in a row under the piece. */
    readonly property bool rowed: opened && !plain && !wide && !under
    readonly property real words: sided ? Math.min(width * 0.42, Theme.mm(86)) : Math.min(width * 0.42, Math.max(Theme.mm(Theme.small ? 48 : 60), size.leastWidth + Theme.margin))
    /** The height at which all that stands beside the drawing is in sight. */
    readonly property real least: wide ? size.y + size.height + sizes.height + 2 * Theme.gap : 0
    readonly property var lie: drawing.lie
    readonly property var box: lie ? (lie.table ?? lie.piece) : null
    readonly property real middleX: (wide ? words : 0) + drawing.width / 2
    /** Where the drawing ends and what stands at its edges begins, px of the drawing; the grip reaches over the cloth. */
    readonly property real wantedX: !lie ? drawing.width : Math.max(box.x + box.w + lie.beside + Theme.mm(2), lie.piece.x + lie.piece.w + Theme.mm(9.5))
    readonly property real wantedY: !lie ? drawing.height : Math.max(box.y + box.h + lie.over, lie.piece.y + lie.piece.h + Theme.mm(9.5))
    property real endX: 0
    property real endY: 0
    /** The rows keep off the line to a block, which comes up before them. */
    property real past: 0
    /** A value is being stepped: nothing moves away under the finger. */
    property bool busy: false

    /** One step of a value of the piece. */
    function step(pointer: string, steps: int) {
        keep();
        FitModel.nudge(pointer, steps);
    }
    function keep() {
        busy = true;
        hold.restart();
    }
    onWidthChanged: busy = false

    Timer {
        id: hold
        interval: 1200
        onTriggered: root.busy = false
    }
    Binding {
        target: root
        property: "endX"
        value: root.wantedX
        when: !root.busy
        restoreMode: Binding.RestoreNone
    }
    Binding {
        target: root
        property: "endY"
        value: root.wantedY
        when: !root.busy
        restoreMode: Binding.RestoreNone
    }

    Binding {
        target: root
        property: "past"
        value: leader.visible && root.wide ? leader.goalX + Theme.mm(2.6) : 0
        when: !root.busy
        restoreMode: Binding.RestoreNone
    }

    /** The place of something `w` wide whose near edge lies `x` from the side of the hand that holds the tablet. */
    function side(x: real, w: real): real {
        return Theme.left ? width - x - w : x;
    }

    Word {
        id: name
        visible: root.wide || root.bare || !root.opened
        /** Her own words, of any length: the shelf has them whole. */
        readonly property bool preview: true
        x: root.wide ? root.side(Theme.margin, width) : root.sided && Theme.left ? root.width - root.words + (turn.visible ? turn.width + Theme.gap : 0) : Theme.margin
        y: Theme.margin
        width: root.wide ? root.words - Theme.margin
             : (root.sided ? root.words - Theme.margin : parent.width - 2 * Theme.margin) - (turn.visible ? turn.width + Theme.gap : 0)
        cap: Theme.small || turn.visible ? Theme.capWord : Theme.capHead
        bold: true
        // A name may be longer than any room.
        maximumLineCount: root.wide || turn.visible ? 2 : 1
        elide: Text.ElideRight
        text: Session.projectName
    }
    CutButton {
        id: turn
        visible: root.bare && FitModel.drawing.reversible
        x: root.sided ? root.side(root.words - width, width) : parent.width - width - Theme.margin
        y: Theme.mm(2)
        width: Math.min(implicitWidth, (root.sided ? root.words : parent.width) * 0.45)
        height: visible ? Math.max(Theme.control, contentHeight) : 0
        //: the other face of the piece, in the drawing
        text: root.face === "front" ? qsTr("Show the back") : qsTr("Show the front")
        onClicked: root.turned()
    }
    FinishedSize {
        id: size
        visible: !root.bare
        below: root.wide && !Theme.small
        fullCap: Theme.mm(Theme.small ? root.wide ? 10 : 11 : root.wide ? 11.8 : 14)
        x: name.x
        y: name.visible ? name.y + name.height + Theme.mm(1.5) : Theme.mm(2)
        width: root.wide ? root.words - Theme.margin : Math.min(parent.width - 2 * Theme.margin, Theme.mm(110))
        onClicked: root.working()
    }
    TableDrawing {
        id: drawing
        readonly property real beside: root.plain || root.under || root.rowed ? 0 : columns.width + Theme.mm(4)
        readonly property real foot: root.plain ? 0 : Math.max(rows.height, root.rowed ? columns.height : 0) + Theme.mm(2) + (sizes.under && sizes.visible ? sizes.height + Theme.gap : 0)
        x: root.side(root.wide || root.sided ? root.words : 0, width)
        y: root.wide || root.sided ? 0 : root.bare ? Math.max(name.y + name.height, turn.y + turn.height) : size.y + size.height
        width: Math.max(1, parent.width - (root.wide || root.sided ? root.words : 0) - beside)
        height: Math.max(1, parent.height - y - foot - (shown.visible && !root.sided ? shown.height + Theme.gap : 0))
        view: FitModel.drawing
        mats: FitModel.mats
        face: root.face
        // On a low page they are told under the table.
        figured: !(root.bare && Theme.small)
        dragEnabled: !Session.readOnly && !root.bare
        accessibleName: mats.length > 0
            //: place mats: so many, and their two sides
            ? qsTr("%1 mats on the table, each %2 by %3").arg(mats.length).arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
            : qsTr("The piece on the table, %1 by %2").arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
        onDragged: (alongMm, acrossMm) => {
            root.keep();
            FitModel.dragCorner(alongMm, acrossMm);
        }
        onReleased: FitModel.endDrag()
        onStepped: (along, across) => {
            if (along !== 0)
                root.step("/blocks/columns", along);
            if (across !== 0)
                root.step("/blocks/rows", across);
        }
    }
    FitShown {
        id: shown
        visible: root.bare && told
        room: root.sided ? root.height - y : Theme.small ? root.height * 0.34 : 0
        x: root.sided ? root.side(Theme.margin, width) : Theme.margin
        y: root.sided ? Math.max(name.y + name.height, turn.y + turn.height) + Theme.gap : parent.height - height - Theme.gap
        width: root.sided ? root.words - Theme.margin : parent.width - 2 * Theme.margin
    }
    BlockLeader {
        id: leader
        visible: sizes.visible && root.lie !== null && FitModel.mats.length === 0
        anchors.fill: parent
        lie: root.lie
        drawing: drawing
        from: sizes
        level: root.wide
        limit: rows.from - Theme.mm(2.5)
    }
    PieceStepper {
        id: columns
        visible: !root.plain
        upright: !root.under
        width: implicitWidth
        height: implicitHeight
        x: root.side(root.under ? root.width - width - Theme.margin : root.rowed ? root.width - width - Theme.mm(7)
                                : Math.min(root.width - width - Theme.mm(1), (root.wide ? root.words : 0) + root.endX), width)
        y: root.under || root.rowed ? rows.y + rows.height - height
                                    : Math.max(drawing.y + Theme.mm(1), Math.min(root.height - height - Theme.mm(1), drawing.y + (drawing.height - height) / 2))
        label: qsTr("columns")
        count: FitModel.drawing.columns
        canLess: FitModel.drawing.columns > 1
        onLess: root.step("/blocks/columns", -1)
        onMore: root.step("/blocks/columns", 1)
        onAskKeypad: root.ask("/blocks/columns", label, "count", figure.text)
    }
    PieceStepper {
        id: rows
        visible: !root.plain
        upright: root.rowed
        width: implicitWidth
        height: implicitHeight
        /** Under the piece's middle; beside the columns as far left as the line to a block leaves room. */
        readonly property real from: Math.max(root.under ? Theme.mm(9) : Theme.margin,
                                              Math.min(root.width - Theme.margin - width - (root.under || root.wide ? columns.width + Theme.gap : 0),
                                                       Math.max(root.past, root.middleX - width / 2)))
        x: root.side(from, width)
        y: Math.min(root.height - height - Theme.mm(1) - (sizes.under && sizes.visible ? sizes.height + Theme.gap : 0), drawing.y + root.endY)
        label: qsTr("rows")
        count: FitModel.drawing.rows
        canLess: FitModel.drawing.rows > 1
        onLess: root.step("/blocks/rows", -1)
        onMore: root.step("/blocks/rows", 1)
        onAskKeypad: root.ask("/blocks/rows", label, "count", figure.text)
    }
    PieceStepper {
        id: sizes
        /** It stands under the rows. */
        readonly property bool under: !root.wide && !root.rowed
        visible: !root.plain && !(root.opened && root.under)
        upright: root.rowed
        width: implicitWidth
        height: implicitHeight
        x: root.side(root.rowed ? Theme.mm(7) : Theme.margin, width)
        y: root.wide ? Math.max(size.y + size.height + Theme.gap, Math.min(root.height - height - Theme.gap, rows.y + rows.height - height))
                     : under ? rows.y + rows.height + Theme.gap : rows.y + rows.height - height
        label: qsTr("block")
        figure: FitModel.block
        onLess: root.step("/blocks/width", -1)
        onMore: root.step("/blocks/width", 1)
        onAskKeypad: root.ask("/blocks/width", label, "length", figure.text)
    }
}
