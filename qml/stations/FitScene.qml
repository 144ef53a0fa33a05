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
    /** What is being set of the table is marked: "along", "across" or "". */
    property string marked
    /** Only the drawing and its name: layouts are looked at. */
    property bool bare: false

    signal working()
    signal ask(string pointer, string label, string kind, string text)
    signal turned()

    /** Name and size stand beside the drawing, not over it. */
    readonly property bool wide: !bare && width > height * 1.25
    readonly property real words: Theme.mm(Theme.small ? 48 : 60)
    readonly property var lie: drawing.lie
    /** Where the drawing ends and what stands at its edges begins, px of the drawing; the grip reaches over the cloth. */
    readonly property real endX: !lie ? drawing.width : Math.max(box.x + box.w + lie.beside, lie.piece.x + lie.piece.w + Theme.mm(9.5))
    readonly property real endY: !lie ? drawing.height : Math.max(box.y + box.h + lie.over, lie.piece.y + lie.piece.h + Theme.mm(9.5))
    readonly property var box: lie ? (lie.table ?? lie.piece) : null
    readonly property real middleX: (lie ? lie.piece.x + lie.piece.w / 2 : drawing.width / 2)
    readonly property real middleY: drawing.y + (lie ? lie.piece.y + lie.piece.h / 2 : drawing.height / 2)

    /** The place of something `w` wide whose near edge lies `x` from the side of the hand that holds the tablet. */
    function side(x: real, w: real): real {
        return Theme.left ? width - x - w : x;
    }

    Word {
        id: name
        /** Her own words, of any length: the shelf has them whole. */
        readonly property bool preview: true
        x: root.wide ? root.side(Theme.margin, width) : Theme.margin
        y: Theme.margin
        width: root.wide ? root.words - Theme.margin : parent.width - 2 * Theme.margin - (turn.visible ? turn.width + Theme.gap : 0)
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
        x: parent.width - width - Theme.margin
        y: Theme.mm(2)
        width: Math.min(implicitWidth, parent.width * 0.45)
        height: visible ? Math.max(Theme.control, contentHeight) : 0
        //: the other face of the piece, in the drawing
        text: root.face === "front" ? qsTr("Show the back") : qsTr("Show the front")
        onClicked: root.turned()
    }
    FinishedSize {
        id: size
        visible: !root.bare
        stacked: root.wide
        fullCap: Theme.mm(Theme.small ? root.wide ? 10 : 11 : root.wide ? 15 : 14)
        x: name.x
        y: name.y + name.height + Theme.mm(1.5)
        width: root.wide ? root.words - Theme.margin : Math.min(parent.width - 2 * Theme.margin, Theme.mm(110))
        onClicked: root.working()
    }
    TableDrawing {
        id: drawing
        readonly property real beside: root.bare ? 0 : columns.width + Theme.mm(2)
        readonly property real under: root.bare ? 0 : rows.height + Theme.mm(2) + (sizes.under ? sizes.height + Theme.gap : 0)
        x: root.side(root.wide ? root.words : 0, width)
        y: root.wide ? 0 : root.bare ? Math.max(name.y + name.height, turn.y + turn.height) : size.y + size.height
        width: Math.max(1, parent.width - (root.wide ? root.words : 0) - beside)
        height: Math.max(1, parent.height - y - under)
        view: FitModel.drawing
        mats: FitModel.mats
        face: root.face
        marked: root.marked
        dragEnabled: !Session.readOnly && !root.bare
        accessibleName: mats.length > 0
            //: place mats: so many, and their two sides
            ? qsTr("%1 mats on the table, each %2 by %3").arg(mats.length).arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
            : qsTr("The piece on the table, %1 by %2").arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
        onDragged: (alongMm, acrossMm) => FitModel.dragCorner(alongMm, acrossMm)
        onReleased: FitModel.endDrag()
        onStepped: (along, across) => {
            if (along !== 0)
                FitModel.nudge("/blocks/columns", along);
            if (across !== 0)
                FitModel.nudge("/blocks/rows", across);
        }
    }
    BlockLeader {
        visible: sizes.visible && root.lie !== null && FitModel.mats.length === 0
        anchors.fill: parent
        lie: root.lie
        drawing: drawing
        from: sizes
        level: root.wide
    }
    PieceStepper {
        id: columns
        visible: !root.bare
        upright: true
        width: implicitWidth
        height: implicitHeight
        x: root.side(Math.min(root.width - width - Theme.mm(1), (root.wide ? root.words : 0) + root.endX), width)
        y: Math.max(drawing.y + Theme.mm(1), Math.min(root.height - height - Theme.mm(1), root.middleY - height / 2))
        label: qsTr("columns")
        count: FitModel.drawing.columns
        canLess: FitModel.drawing.columns > 1
        onLess: FitModel.nudge("/blocks/columns", -1)
        onMore: FitModel.nudge("/blocks/columns", 1)
        onAskKeypad: root.ask("/blocks/columns", label, "count", figure.text)
    }
    PieceStepper {
        id: rows
        visible: !root.bare
        width: implicitWidth
        height: implicitHeight
        /** Under the piece's middle, and left of what else stands there. */
        readonly property real most: root.width - Theme.margin - width - (root.wide || sizes.under ? 0 : sizes.width + Theme.gapTargets)
        x: root.side(Math.max(Theme.margin, Math.min(most, (root.wide ? root.words : 0) + root.middleX - width / 2)), width)
        y: Math.min(root.height - height - Theme.mm(1) - (sizes.under ? sizes.height + Theme.gap : 0), drawing.y + root.endY)
        label: qsTr("rows")
        count: FitModel.drawing.rows
        canLess: FitModel.drawing.rows > 1
        onLess: FitModel.nudge("/blocks/rows", -1)
        onMore: FitModel.nudge("/blocks/rows", 1)
        onAskKeypad: root.ask("/blocks/rows", label, "count", figure.text)
    }
    PieceStepper {
        id: sizes
        /** No room beside the rows: it stands under them. */
        readonly property bool under: !root.wide && !root.bare && rows.width + width + Theme.gapTargets + 2 * Theme.margin > root.width
        visible: !root.bare
        width: implicitWidth
        height: implicitHeight
        x: root.side(root.wide || under ? Theme.margin : root.width - Theme.margin - width, width)
        y: root.wide ? Math.max(size.y + size.height + Theme.gap, Math.min(root.height - height - Theme.gap, rows.y + rows.height - height))
                     : under ? rows.y + rows.height + Theme.gap : rows.y + rows.height - height
        label: qsTr("block")
        figure: FitModel.block
        onLess: FitModel.nudge("/blocks/width", -1)
        onMore: FitModel.nudge("/blocks/width", 1)
        onAskKeypad: root.ask("/blocks/width", label, "length", figure.text)
    }
}
