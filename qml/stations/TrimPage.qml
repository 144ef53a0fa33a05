// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * Four sides in order, each with its second reference. What a measured block's readings say lies over the drawing,
 * seen first; the column at the hand stays as it is.
 */
StepPage {
    id: root

    /** Where what the readings say ends, and what was noted of the block. */
    readonly property real banded: finding.visible ? finding.implicitHeight : 0
    readonly property real under: noted.visible ? noted.y + noted.height : banded
    /** What stands at the foot of the drawing, and where that begins. */
    readonly property bool footed: StepModel.sided && !StepModel.finished && root.atWork && (measures.wanted || TrimModel.anywayText !== "")
    readonly property real footTop: foot.visible ? foot.y - Theme.gap : foot.parent.height
    readonly property bool ruled: StepModel.ruler.show && !StepModel.finished

    FindingBlock {
        id: finding
        objectName: "finding"
        visible: verdict !== "" && !StepModel.finished
        width: parent.width
        // Where the ruler has a place under it, the drawing keeps its room.
        mostCap: TrimModel.figure.valid ? Theme.mm(6.6) : Theme.small ? Theme.capThird : Theme.capSecond
        mostRemedyCap: Theme.small || TrimModel.figure.valid ? Theme.capWord : Theme.capHead
        verdict: TrimModel.verdict
        remedy: TrimModel.remedy
    }
    NotedLine {
        id: noted
        y: root.banded
        width: parent.width
        lines: root.upright || Theme.small ? 1 : 2
        text: root.atWork && !StepModel.finished ? TrimModel.remembered : ""
    }
    RulerDrawing {
        id: drawing
        anchors.fill: parent
        visible: root.ruled && !TrimModel.trimming
        view: StepModel.ruler
        clothRole: StepModel.clothRole
        accessibleName: TrimModel.title + ". " + TrimModel.figure.text + " " + (TrimModel.firstSays + ". " + TrimModel.checkSays).replace(/[{}]/g, "")
    }
    SideDrawing {
        id: side
        readonly property real beside: root.upright && foot.visible ? foot.implicitWidth + Theme.margin : 0
        x: Theme.left ? 0 : beside
        y: root.under
        width: parent.width - beside
        // Where the page is narrow it stands over the button, elsewhere the button stands beside it or its words.
        height: Math.min(parent.width < Theme.mm(100) ? root.footTop : parent.height, legend.wanted ? legend.over : parent.height) - y
        folded: true
        // Under the words there may be no room left for it: then they say it all.
        visible: ready && TrimModel.figure.valid && !StepModel.finished && height >= Theme.mm(crooked || whole ? 58 : 50)
        view: TrimModel.lies
        figure: TrimModel.figure
        second: TrimModel.second
        accessibleName: drawing.accessibleName
    }
    BlockLegend {
        id: legend
        /** Upright it stands under the drawing, else in the buttons' row. */
        readonly property bool beside: !root.upright && foot.visible
        readonly property real taken: beside ? foot.implicitWidth + Theme.margin : 0
        readonly property real over: (beside ? Math.min(y, foot.y) : y) - Theme.mm(1)
        readonly property bool wanted: side.crooked && TrimModel.figure.valid
        visible: wanted && side.visible
        x: (Theme.left ? Theme.margin : taken + Theme.margin) + (beside ? 0 : Theme.left ? 0 : side.beside)
        width: parent.width - taken - 2 * Theme.margin - (beside ? 0 : side.beside)
        y: beside ? foot.y + (foot.implicitHeight - height) / 2 : parent.height - height - Theme.mm(1)
        plannedShown: true
        times: side.view?.times ?? 1
    }
    BlockShape {
        id: shape
        // Over the column there is little height, but room beside the buttons.
        readonly property real beside: root.upright && foot.visible ? foot.implicitWidth + foot.spacing : 0
        x: Theme.margin + (Theme.left ? 0 : beside)
        y: root.under + Theme.gap
        width: parent.width - 2 * Theme.margin - beside
        height: (root.upright ? parent.height - Theme.gap : root.footTop) - y
        visible: corners.length === 4 && !StepModel.finished && height >= Theme.mm(30)
        corners: TrimModel.corners
        planned: TrimModel.planned
        times: TrimModel.times
        accessibleName: finding.verdictShown
    }
    ApartDrawing {
        id: apart
        anchors.fill: parent
        visible: ready && !StepModel.finished
        view: TrimModel.apart
        accessibleName: qsTr("The strip comes apart along a ruler, down the middle of each gap; blocks off it so far: %1").arg(off)
    }
    Grid {
        id: foot
        readonly property real room: parent.height - root.under
        readonly property bool stacked: root.upright && measures.wanted && TrimModel.anywayText !== "" && room >= 2 * Theme.control + 3 * Theme.gap
        readonly property real each: Math.max(Theme.control, Math.min(Theme.mm(14), room - 2 * Theme.gap))
        visible: root.footed && room >= Theme.control
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        columns: stacked ? 1 : 2
        x: Theme.left ? parent.width - implicitWidth - Theme.margin : Theme.margin
        y: parent.height - implicitHeight - Math.min(Theme.margin, Math.max(Theme.mm(1), room - implicitHeight - Theme.gap))
        spacing: stacked ? Theme.gap : Theme.gapTargets

        CutButton {
            id: measures
            objectName: "measure"
            // Elsewhere the main button does the same.
            readonly property bool wanted: TrimModel.way !== "measure"
            visible: wanted
            width: Math.max(Theme.mm(22), leastWidth + Theme.mm(1))
            height: foot.stacked ? Theme.control : foot.each
            //: on a button: the block in hand is measured
            text: qsTr("Measure")
            onClicked: root.measure()
        }
        CutButton {
            objectName: "anyway"
            visible: TrimModel.anywayText !== ""
            width: Theme.mm(39)
            height: foot.stacked ? Theme.control : foot.each
            guardShown: true
            text: TrimModel.anywayText
            onClicked: TrimModel.cutAnyway()
        }
    }
    // Nothing lies there to scale: the act itself, whose words stand in the column.
    ActSketch {
        id: act
        readonly property bool wanted: !finding.visible && !drawing.visible && !side.visible && !shape.visible && !apart.visible
        anchors.fill: parent
        anchors.margins: Theme.margin
        visible: wanted && pictured
        kind: StepModel.finished ? "trim-done" : StepModel.doing
        accessibleName: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
    InlineLength {
        visible: act.wanted && !act.pictured
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.margin
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
}
