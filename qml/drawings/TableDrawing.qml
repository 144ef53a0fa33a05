// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import Matside.Parts
import "sidemarks.js" as SideMarks
import "tablelay.js" as TableLay
import "tables.js" as Tables
import "tocome.js" as ToCome

/**
 * The table with the piece on it, to scale: what shows of the table is written on the table. Held by
 * its corner grip the piece asks for a new size; who owns the drawing decides and sets the numbers.
 */
Item {
    id: root

    /** All the numbers below at once, as one object; or set them singly. Millimetres. */
    property var view: null
    property string shape: view?.shape ?? "none"
    property real tableAlongMm: view?.tableAlongMm ?? 0
    property real tableAcrossMm: view?.tableAcrossMm ?? 0
    /** The leaf in the table's middle; 0 while it is out. */
    property real leafMm: view?.leafMm ?? 0
    property real finishedAlongMm: view?.finishedAlongMm ?? 0
    property real finishedAcrossMm: view?.finishedAcrossMm ?? 0
    property int columns: view?.columns ?? 0
    property int rows: view?.rows ?? 0
    property real trimmedAlongMm: view?.trimmedAlongMm ?? 0
    property real trimmedAcrossMm: view?.trimmedAcrossMm ?? 0
    property real outlineAlongMm: view?.outlineAlongMm ?? 0
    property real outlineAcrossMm: view?.outlineAcrossMm ?? 0
    property real sashingMm: view?.sashingMm ?? 0
    property real edgeMm: view?.edgeMm ?? 0
    property var revealAlong: view?.revealAlong ?? null
    property var revealAcross: view?.revealAcross ?? null
    property var corner: view?.corner ?? null
    property bool reversible: view?.reversible ?? false
    /** A set of mats in place of one piece: list of {x, y, turn}, mm from the table's middle, degrees. */
    property var mats: []
    /** Which face lies up: "front" or "back". */
    property string face: "front"
    /** Patches on each block: list of {role, points: [[x, y], …]}, 0 to 1 of the outline. */
    property var motif: []
    /** What is being set at "along" (both ends) or "across" (both sides) is marked; or "". */
    property string marked
    /** Nothing of it is laid out yet: bare cloth in dots, on mats a plate. */
    property bool toCome: false
    /** What shows of the table is written on it. */
    property bool figured: true
    property bool dragEnabled: false
    property string accessibleName

    signal dragStarted()
    /** The finished size asked for, mm. */
    signal dragged(real alongMm, real acrossMm)
    signal released()
    signal stepped(int along, int across)

    /** All the numbers as one: a new view lays the drawing once, not once for each number in it. */
    readonly property var measures: view ?? {
        shape, tableAlongMm, tableAcrossMm, leafMm, finishedAlongMm, finishedAcrossMm, columns, rows,
        outlineAlongMm, outlineAcrossMm, sashingMm, edgeMm, revealAlong, revealAcross
    }
    readonly property bool ready: measures.finishedAlongMm > 0 && measures.finishedAcrossMm > 0
                                  && measures.columns > 0 && measures.rows > 0 && width > 0 && height > 0
    readonly property var lie: ready ? TableLay.lay(measures, width, height, Theme.pxPerMm, mats, figured) : null
    readonly property bool hasTable: shape === "rect" || shape === "round"

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        id: sheet
        anchors.fill: parent
        shows: [root.lie, root.face, root.motif, root.marked, root.toCome]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie)
                return;
            if (root.toCome)
                ToCome.paint(context, DyedColors.plain, root.lie, unit);
            else
                Tables.paint(context, DyedColors.plain, root.lie, root.face === "back", root.face === "back" ? [] : root.motif, unit);
            if (root.marked !== "")
                SideMarks.paint(context, Theme.colors, root.lie, root.marked, unit);
        }
    }
    Word {
        visible: !root.ready
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.margin, Theme.mm(90))
        horizontalAlignment: Text.AlignHCenter
        //: shown where the drawing will be while the project has no size yet
        text: qsTr("The piece is drawn here once it has a size.")
        color: Theme.colors.inkSoft
    }

    Repeater {
        model: root.figured && root.ready && root.hasTable && root.mats.length === 0 ? [[-1, 0], [1, 0], [0, -1], [0, 1]] : []
        RevealMark {
            required property var modelData
            figure: modelData[0] !== 0 ? root.revealAlong : root.revealAcross
            lie: root.lie
            sideX: modelData[0]
            sideY: modelData[1]
        }
    }
    RevealMark {
        visible: root.figured && root.ready && root.hasTable && root.mats.length === 0 && root.shape === "round" && (root.corner?.valid ?? root.corner !== null)
        figure: root.corner
        lie: root.lie
        sideX: 1
        sideY: -1
    }

    CornerGrip {
        id: grip
        // Of a set no corner is the one to hold: its size is stepped.
        visible: root.dragEnabled && root.ready && root.mats.length === 0
        enabled: visible
        readonly property real cornerX: root.lie ? root.lie.piece.x + root.lie.piece.w : 0
        // Whole in the drawing, whatever lies beneath it.
        x: Math.max(0, Math.min(root.width - width, (Theme.left ? root.width - cornerX : cornerX) - width / 2))
        y: root.lie ? Math.min(root.height - height, root.lie.piece.y + root.lie.piece.h - height / 2) : 0
        accessibleName: qsTr("size of the piece: drag, or use the arrow keys")

        property real fromAlong: 0
        property real fromAcross: 0
        property real scaleThen: 1
        onStarted: {
            fromAlong = root.finishedAlongMm;
            fromAcross = root.finishedAcrossMm;
            scaleThen = root.lie.k;
            root.dragStarted();
        }
        // The piece stays centred on the table: its corner goes half as far as it grows.
        onMoved: (dx, dy) => root.dragged(Math.max(0, fromAlong + 2 * (Theme.left ? -dx : dx) / scaleThen),
                                          Math.max(0, fromAcross + 2 * dy / scaleThen))
        onReleased: root.released()
        onStepped: (along, across) => root.stepped(along, across)
    }
}
