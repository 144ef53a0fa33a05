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

    readonly property bool ruled: StepModel.ruler.show && !StepModel.finished

    FindingBlock {
        id: finding
        objectName: "finding"
        visible: verdict !== "" && !StepModel.finished
        width: parent.width
        mostCap: Theme.small ? Theme.capThird : Theme.capSecond
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
        anchors.fill: parent
        anchors.topMargin: finding.visible ? finding.implicitHeight : 0
        visible: ready && TrimModel.figure.valid && !StepModel.finished
        view: TrimModel.lies
        figure: TrimModel.figure
        second: TrimModel.second
        accessibleName: drawing.accessibleName
    }
    BlockShape {
        id: shape
        anchors.fill: parent
        anchors.margins: Theme.margin
        anchors.topMargin: side.anchors.topMargin + Theme.gap
        visible: corners.length === 4 && !StepModel.finished
        corners: TrimModel.corners
        accessibleName: finding.Accessible.name
    }
    ApartDrawing {
        id: apart
        anchors.fill: parent
        visible: ready && !StepModel.finished
        view: TrimModel.apart
        accessibleName: qsTr("The strip comes apart down the middle of each gap; blocks off it so far: %1").arg(off)
    }
    InlineLength {
        visible: !drawing.visible && !side.visible && !shape.visible && !apart.visible
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.margin
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
}
