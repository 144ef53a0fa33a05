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

    /** Where what the readings say ends. */
    readonly property real under: finding.visible ? finding.implicitHeight : 0
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
        verdict: TrimModel.verdict
        remedy: TrimModel.remedy
    }
    RulerDrawing {
        id: drawing
        anchors.fill: parent
        visible: root.ruled && !TrimModel.trimming
        view: StepModel.ruler
        clothRole: StepModel.clothRole
        accessibleName: TrimModel.title + ". " + TrimModel.figure.text + " " + TrimModel.firstSays + ". " + TrimModel.checkSays
    }
    SideDrawing {
        id: side
        y: root.under
        width: parent.width
        // Beside the column it stands over the buttons; over it they stand beside its words.
        height: (root.upright ? parent.height : root.footTop) - y
        folded: root.upright
        // Under the words there may be no room left for it: then they say it all.
        visible: ready && TrimModel.figure.valid && !StepModel.finished && height >= Theme.mm(58)
        view: TrimModel.lies
        figure: TrimModel.figure
        second: TrimModel.second
        accessibleName: drawing.accessibleName
    }
    BlockShape {
        id: shape
        x: Theme.margin
        y: root.under + Theme.gap
        width: parent.width - 2 * x
        height: root.footTop - y
        visible: corners.length === 4 && !StepModel.finished && height >= Theme.mm(30)
        corners: TrimModel.corners
        times: TrimModel.times
        accessibleName: finding.verdictShown
    }
    ApartDrawing {
        id: apart
        anchors.fill: parent
        visible: ready && !StepModel.finished
        view: TrimModel.apart
        accessibleName: qsTr("The strip comes apart down the middle of each gap; blocks off it so far: %1").arg(off)
    }
    Row {
        id: foot
        visible: root.footed
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * x
        height: Theme.mm(14)
        spacing: Theme.gapTargets

        CutButton {
            id: measures
            objectName: "measure"
            // Elsewhere the main button does the same.
            readonly property bool wanted: TrimModel.way !== "measure"
            visible: wanted
            width: Math.max(Theme.mm(22), leastWidth + Theme.mm(2))
            height: parent.height
            //: on a button: the block in hand is measured
            text: qsTr("Measure")
            onClicked: root.measure()
        }
        CutButton {
            objectName: "anyway"
            visible: TrimModel.anywayText !== ""
            width: Math.min(Theme.mm(56), parent.width - (measures.visible ? measures.width + parent.spacing : 0))
            height: parent.height
            guardShown: true
            text: TrimModel.anywayText
            onClicked: TrimModel.cutAnyway()
        }
    }
    InlineLength {
        visible: !finding.visible && !drawing.visible && !side.visible && !shape.visible && !apart.visible
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.margin
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
}
