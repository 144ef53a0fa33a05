// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import Matside.Parts

/** How much of the table shows at one side, or how far the cloth hangs over: written on the table, on bare wood. */
Item {
    id: root

    property var figure: null
    property var lie: null
    /** -1, 0 or 1: which side of the piece, along and across. */
    property int sideX: 0
    property int sideY: 0

    readonly property var table: lie?.table ?? null
    readonly property var piece: lie?.piece ?? null
    /** The figure's own parts; a value type does not hand them on by itself. */
    readonly property var plain: ({
        // Between two marks: there is no room for the words, so a sign says it.
        whole: ((figure?.lean ?? "") !== "" ? "\u2248" : "") + (figure?.whole ?? ""),
        num: figure?.num ?? "", den: figure?.den ?? "", unit: figure?.unit ?? "", lean: "", minus: false, text: figure?.text ?? ""
    })
    readonly property bool hangs: figure?.minus ?? false

    function between(side: int, tableFrom: real, tableSize: real, pieceFrom: real, pieceSize: real): real {
        if (side === 0)
            return pieceFrom + pieceSize / 2;
        const a = side < 0 ? tableFrom : tableFrom + tableSize;
        const b = side < 0 ? pieceFrom : pieceFrom + pieceSize;
        return (a + b) / 2;
    }
    /** A strip of wood too narrow for the figure: it stands outside, on the paper. */
    function clear(centre: real, side: int, need: real, room: real, outer: real): real {
        return side === 0 || room >= need ? centre : outer + side * (need / 2 + Theme.mm(0.8));
    }

    readonly property real roomX: table && piece ? Math.abs(table.w - piece.w) / 2 : 0
    readonly property real roomY: table && piece ? Math.abs(table.h - piece.h) / 2 : 0
    readonly property real outerX: table && piece ? (sideX < 0 ? Math.min(table.x, piece.x) : Math.max(table.x + table.w, piece.x + piece.w)) : 0
    readonly property real outerY: table && piece ? (sideY < 0 ? Math.min(table.y, piece.y) : Math.max(table.y + table.h, piece.y + piece.h)) : 0
    readonly property bool diagonal: sideX !== 0 && sideY !== 0
    // At a corner of a piece on a round table the wood lies between the corner and the rim.
    readonly property real rimX: table ? table.x + table.w - table.h * 0.1465 : 0
    readonly property real rimY: table ? table.y + table.h * 0.1465 : 0
    readonly property bool fitsCorner: piece !== null && rimX - piece.x - piece.w > plate.width && piece.y - rimY > plate.height
    readonly property real centreX: !table || !piece ? 0 : diagonal ? (fitsCorner ? (piece.x + piece.w + rimX) / 2 : rimX + plate.width / 2 + Theme.mm(1))
        : clear(between(sideX, table.x, table.w, piece.x, piece.w), sideX, plate.width, roomX, outerX)
    readonly property real centreY: !table || !piece ? 0 : diagonal ? (fitsCorner ? (piece.y + rimY) / 2 : rimY - plate.height / 2)
        : clear(between(sideY, table.y, table.h, piece.y, piece.h), sideY, plate.height, roomY, outerY)
    readonly property bool onWood: diagonal ? fitsCorner && !hangs : sideX !== 0 ? roomX >= plate.width && !hangs : roomY >= plate.height && !hangs

    Rectangle {
        id: plate
        x: Math.max(0, Math.min(root.parent.width - width, (Theme.left ? root.parent.width - root.centreX : root.centreX) - width / 2))
        y: Math.max(0, Math.min(root.parent.height - height, root.centreY - height / 2))
        visible: root.table !== null && root.figure !== null
        width: number.implicitWidth + Theme.mm(2)
        height: number.implicitHeight + Theme.mm(1)
        color: root.onWood ? Theme.colors.table : "transparent"
        FigureText {
            id: number
            anchors.centerIn: parent
            //: after a length: the cloth hangs so far over the table's edge
            figure: root.hangs ? Object.assign({}, root.plain, { unit: qsTr("over") }) : root.plain
            showUnit: root.hangs
            availableWidth: Theme.mm(28)
            showLean: false
            cap: Theme.capInText * (root.lie?.figure ?? 1)
        }
    }
}
