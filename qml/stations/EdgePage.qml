// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The whole piece: squared from its readings, the binding laid round it, the pins counted at the last look. */
WidePage {
    id: root
    objectName: "edge-page"

    readonly property bool counting: EdgeModel.phase === "last" && !StepModel.finished
    /** On a low screen what stands beside opens from the drawing's head. */
    readonly property bool opens: root.small && !StepModel.finished
    /** While she reads where the joins fall, the drawing shows them. */
    readonly property bool laying: root.side === "joins" && EdgeModel.lay.length > 0
    /** The piece on the tape, while it is measured. */
    readonly property EdgeMeasure taping: root.sidePage as EdgeMeasure
    /** While the seam is read in section, how it is sewn is drawn act by act. */
    readonly property bool sewing: root.side === "section" && !root.upright && !root.small
    /** The corners are chosen: the piece is seen with its edge as it will be, and a corner of it close to. */
    readonly property bool cornering: root.side === "corners"
    readonly property bool scalloped: root.cornering && EdgeModel.view.depthMm > 0
    /** Where the sewing has no room, the section itself is drawn. */
    readonly property bool sectional: root.side === "section" && !root.sewing
    readonly property real panel: Theme.mm(84)
    /** Over the foot there is room for the pins alone; beside a column of full height also for the drawing. */
    readonly property bool alone: root.counting && (root.upright || root.small || pins.parent.height < Theme.mm(92))

    function told(places: var): string {
        return places.map(place => place.says).join(" ").replace(/[{}]/g, "");
    }

    heading: EdgeModel.heading
    telling: EdgeModel.tells
    figure: StepModel.figure
    closing: StepModel.elsewhereText
    closingWords: Session.projectName
    sceneMm: root.counting ? 76 : StepModel.finished ? 118 : act.visible ? 96 : 50
    footMm: StepModel.finished ? 56 : 64
    // A scallop's figures stand at its drawing: it takes the height.
    sideMm: root.scalloped || root.cornering && EdgeModel.cornersFixed.length > 0 ? 112 : 140
    figureMm: root.counting ? 47 : StepModel.finished ? 28 : 62
    aside: "EdgeAside.qml"
    sides: ({ measure: "EdgeMeasure.qml", joins: "EdgeJoins.qml", section: "EdgeSection.qml", corners: "EdgeCorners.qml",
              care: "EdgeCare.qml", frame: "EdgeFrame.qml" })

    EdgeDrawing {
        id: drawing
        // Beside the pins, where it has room.
        x: root.counting && !root.alone && Theme.left ? root.panel : 0
        y: more.visible ? more.height + Theme.gap : 0
        visible: !root.alone && !done.visible && !root.sewing && !root.sectional && root.taping === null && !act.visible
        width: parent.width - (root.counting && !root.alone ? root.panel : 0) - (close.besides ? close.width + Theme.margin : 0)
        height: parent.height - y - (close.visible && !close.besides ? close.height + Theme.margin : 0)
        view: EdgeModel.view
        phase: root.laying ? "bind" : root.cornering ? "last" : EdgeModel.phase
        readings: phase === "square" && EdgeModel.measured ? EdgeModel.readings : []
        // A radius, a chord, a depth are read where they are seen close to.
        counted: root.scalloped
        joins: phase === "bind" ? EdgeModel.lay : []
        figured: root.laying
        accessibleName: phase === "square" ? qsTr("The piece. %1").arg(EdgeModel.verdict.replace(/[{}]/g, ""))
                        : root.laying ? root.told(EdgeModel.lay)
                        : phase === "bind" ? qsTr("The binding laid round. %1").arg(EdgeModel.laySays.replace(/[{}]/g, ""))
                        : root.cornering ? EdgeModel.cornerSays.replace(/[{}]/g, "")
                        : phase === "frame" ? qsTr("The piece with its frame") : qsTr("The finished piece")
    }
    EdgeCornerNear {
        id: close
        /** At the piece's side where the sheet is wide, else under it. */
        readonly property bool besides: root.cornering && !root.scalloped && parent.width > parent.height * 1.3
        visible: root.cornering
        x: besides ? parent.width - width - Theme.margin : (parent.width - width) / 2
        y: besides ? (parent.height - height) / 2 : parent.height - height - Theme.margin
        readonly property real high: Math.min(parent.height * (root.scalloped ? 0.56 : 0.45), Theme.mm(84))
        width: root.scalloped ? parent.width - 2 * Theme.margin : besides ? Math.min(parent.height - 2 * Theme.margin, parent.width * 0.42) : Math.min(parent.width - 2 * Theme.margin, high * 1.6)
        height: besides ? Math.min(parent.height - 2 * Theme.margin, parent.width * 0.42) : high
    }
    EdgeBound {
        // The piece runs in from the sheet's edge.
        y: Theme.margin
        width: parent.width
        height: parent.height - 2 * y
        visible: root.sectional
    }
    // How the backing comes to the piece: the piece itself would not show it.
    ActSketch {
        id: act
        x: Theme.margin
        y: drawing.y + Theme.margin
        width: parent.width - 2 * Theme.margin
        height: parent.height - y - Theme.margin
        visible: EdgeModel.phase === "back" && pictured && root.taping === null
        kind: StepModel.doing
        accessibleName: StepModel.doesText
    }
    DoneDrawing {
        id: done
        visible: StepModel.finished && root.taping === null
        anchors.fill: parent
        view: EdgeModel.view
        face: visible ? ShadeModel.front : null
        accessibleName: drawing.accessibleName
    }
    ActsPage {
        visible: root.sewing
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        height: parent.height - 2 * Theme.margin
        ground: Theme.colors.raised
        held: false
        acts: root.sewing ? EdgeModel.sewActs : []
    }
    MeasureScene {
        anchors.fill: parent
        visible: root.taping !== null
        held: root.taping?.held ?? 0
        judged: EdgeModel.measured
        asks: qsTr("Measure all six, raw edge to raw edge.")
        head: EdgeModel.unreadSays
        verdict: EdgeModel.verdict
        remedy: EdgeModel.remedy
        piece: EdgeModel.view
        corners: visible ? EdgeModel.corners : []
        planned: visible ? EdgeModel.planned : []
        times: EdgeModel.measured ? EdgeModel.times : 1
        readings: visible ? EdgeModel.readings : []
        markMm: Session.units === "mm" ? 50 : 25.4
        group: Session.units === "mm" ? 2 : 12
        onTaken: reading => root.taping.held = reading
    }
    EdgePins {
        id: pins
        visible: root.counting
        x: root.alone || Theme.left ? Theme.margin : parent.width - width - Theme.margin
        readonly property bool below: root.alone && root.opens
        readonly property real under: below && drawn === 0 ? more.y + more.height : 0
        room: parent.height - 2 * Theme.gap
        notch: below ? more.width : 0
        notchHeight: below ? more.height + Theme.mm(1) : 0
        y: Math.max(under + Theme.gap, under + (parent.height - under - height) / 2)
        width: (root.alone ? parent.width : root.panel) - 2 * Theme.margin
    }
    CutButton {
        id: more
        objectName: "more"
        visible: root.opens && root.taping === null && !root.laying
        x: Theme.left ? parent.width - width - Theme.gap : Theme.gap
        y: Theme.gap
        width: Theme.mm(30)
        height: Theme.control
        text: EdgeModel.phase === "square" ? qsTr("Measure") : qsTr("More")
        onClicked: root.openSide("more")
    }
}
