// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing
import "tapes.js" as Tapes

/** The row in hand with a tape along it from raw end to raw end, and how long it should be; the other rows faint. */
Item {
    id: root

    /** {alongMm, columns, rows, blockAlongMm, blockAcrossMm, sashingMm, outsideMm} */
    property var view: null
    /** [{block, now}], row by row. */
    property var blocks: []
    /** How long the row should be; null to say nothing. */
    property var figure: null
    /** Millimetres from mark to mark of the tape, and how many make a longer one. */
    property real markMm: 25.4
    property int group: 12
    property string accessibleName

    readonly property bool ready: (view?.alongMm ?? 0) > 0 && width > 0 && height > 0
    readonly property int row: inHand()
    readonly property real side: Theme.mm(7)
    readonly property real tape: Theme.mm(8)
    readonly property real air: Theme.mm(1.2)
    readonly property real foot: figure ? Theme.mm(15) : Theme.mm(3)
    readonly property real rowMm: ready ? view.blockAcrossMm + 2 * view.outsideMm : 1
    readonly property real k: ready ? Math.max(0, Math.min((width - 2 * side) / view.alongMm, (height - tape - air - foot - Theme.mm(6)) / rowMm)) : 0
    readonly property real high: rowMm * k
    readonly property real from: ready ? (width - view.alongMm * k) / 2 : 0
    readonly property real span: ready ? view.alongMm * k : 0
    readonly property real between: Theme.mm(3)
    /** As high as it can stand with the rows above it in sight; else in the middle. */
    readonly property real rowY: Math.min(row * (high + between) + Theme.mm(5), Math.max(Theme.mm(3), (height - high - air - tape - foot) / 2))

    clip: true
    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    function inHand(): int {
        for (let i = 0; i < blocks.length; ++i)
            if (blocks[i].now)
                return Math.floor(i / Math.max(1, view?.columns ?? 1));
        return 0;
    }
    function blockX(column: int): real {
        return from + (view.outsideMm + column * (view.blockAlongMm + view.sashingMm)) * k;
    }
    function paintRow(context: var, c: var, y: real, u: real) {
        const a = view.outsideMm * k, w = view.blockAlongMm * k, h = view.blockAcrossMm * k;
        Printing.clothRect(context, c, "sashing", from, y, span, high, u);
        for (let column = 0; column < view.columns; ++column) {
            const x = blockX(column), left = column === 0 ? a : 0, right = column === view.columns - 1 ? a : 0;
            Printing.clothRect(context, c, "front", x - left, y, w + left + right, high, u);
            Printing.roleRect(context, "stitched", x, y + a, w, h, c.stitched, 2.2 * u * c.lineScale);
        }
        context.strokeStyle = c.ink;
        context.lineWidth = 2.4 * u * c.lineScale;
        context.strokeRect(from, y, span, high);
    }
    function paint(context: var, c: var, u: real) {
        context.globalAlpha = 0.25;
        for (let row = 0; row < view.rows; ++row) {
            const below = row > root.row ? air + tape + foot : 0;
            const y = rowY + (row - root.row) * (high + between) + below;
            if (row !== root.row && y < height && y + high > 0)
                faint(context, c, y, u);
        }
        context.globalAlpha = 1;
        paintRow(context, c, rowY, u);
        const edge = rowY + high + air;
        Tapes.lay(context, c, from, edge, 0, span, tape, markMm * k, group, false, u);
        // From the row's raw ends down past the tape, to what is said of it.
        for (const x of [from, from + span])
            Printing.strokeLine(context, x, rowY - 10 * u, x, edge + tape + (figure ? Theme.mm(12) : 0), c.accent, 3 * u * c.lineScale);
        if (figure)
            Printing.measure(context, Object.assign({}, c, { ink: c.accent }), from, from + span, said.y + said.height / 2, said.width + Theme.mm(4), u);
    }
    /** A row that waits: its outline and its blocks, without the print. */
    function faint(context: var, c: var, y: real, u: real) {
        context.strokeStyle = c.ink;
        context.lineWidth = 2 * u * c.lineScale;
        context.strokeRect(from, y, span, high);
        for (let column = 0; column < view.columns; ++column)
            Printing.roleRect(context, "stitched", blockX(column), y + view.outsideMm * k, view.blockAlongMm * k, view.blockAcrossMm * k, c.ink, 1.8 * u * c.lineScale);
    }

    PrintCanvas {
        anchors.fill: parent
        mirrored: false
        shows: [root.view, root.blocks, root.figure, root.k, root.rowY, root.markMm, said.width]
        Accessible.ignored: true
        onPrinting: context => {
            if (root.ready)
                root.paint(context, DyedColors.forWork, unit);
        }
    }
    Repeater {
        model: root.ready && root.view.blockAlongMm * root.k > Theme.mm(9) ? root.view.columns : 0
        Rectangle {
            id: plate
            required property int index
            x: root.blockX(index) + (root.view.blockAlongMm * root.k - width) / 2
            y: root.rowY + (root.high - height) / 2
            width: name.implicitWidth + Theme.mm(2)
            height: name.implicitHeight
            color: Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: Theme.key
            Word {
                id: name
                anchors.centerIn: parent
                bold: true
                wrapMode: Text.NoWrap
                text: root.blocks[root.row * root.view.columns + plate.index]?.block ?? ""
            }
        }
    }
    FigureText {
        id: said
        visible: root.ready && root.figure !== null
        x: (root.width - width) / 2
        y: root.rowY + root.high + root.air + root.tape + Theme.mm(2)
        figure: root.figure
        cap: Theme.capThird
        color: Theme.colors.accent
        accessibleIgnored: true
    }
}
