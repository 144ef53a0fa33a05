// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What goes with the join: seam and catch on the gauge, the layout, how to press, what the rows say. */
Flickable {
    id: root

    signal opened(string side)

    readonly property bool sewing: StepModel.doing === "join-short" || StepModel.doing === "join-long-row"

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height

    Column {
        id: rows
        width: root.width

        SideRow {
            width: parent.width
            visible: JoinModel.measuring
            height: visible ? implicitHeight : 0
            text: qsTr("Measure this row")
            detail: JoinModel.rowSays
            onClicked: root.opened("row")
        }
        SideRow {
            width: parent.width
            visible: root.sewing
            height: visible ? implicitHeight : 0
            text: JoinModel.held.valid ? qsTr("Seam {%1} catch {%2}").arg(JoinModel.seam.text).arg(JoinModel.held.text)
                                       : qsTr("Seam {%1}").arg(JoinModel.seam.text)
            detail: qsTr("True-size gauge")
            onClicked: root.opened("gauge")
        }
        SideRow {
            objectName: "ways"
            width: parent.width
            visible: JoinModel.ways.length > 1 && !StepModel.finished
            height: visible ? implicitHeight : 0
            text: qsTr("Filling and closing")
            detail: JoinModel.sashingSays
            onClicked: root.opened("ways")
        }
        SideRow {
            width: parent.width
            visible: JoinModel.tested && !StepModel.finished
            height: visible ? implicitHeight : 0
            text: JoinModel.testSays
            onClicked: root.opened("test")
        }
        SideRow {
            width: parent.width
            visible: JoinModel.missed.valid && root.sewing
            height: visible ? implicitHeight : 0
            opens: false
            //: a fold so wide that the ditch stitching would not catch it
            text: qsTr("Never fold {%1} under: the stitches in the ditch would miss it.").arg(JoinModel.missed.text)
        }
        SideRow {
            width: parent.width
            visible: root.sewing || JoinModel.mayLay
            height: visible ? implicitHeight : 0
            text: qsTr("Layout, front and back")
            detail: JoinModel.swapSays !== "" ? qsTr("Two blocks should change places") : ""
            onClicked: root.opened("map")
        }
        SideRow {
            width: parent.width
            visible: JoinModel.pressSays.length > 0
            height: visible ? implicitHeight : 0
            opens: false
            text: JoinModel.pressSays
        }
        SideRow {
            width: parent.width
            visible: JoinModel.fillSays.length > 0
            height: visible ? implicitHeight : 0
            opens: false
            text: JoinModel.fillSays
        }
        SideRow {
            width: parent.width
            visible: JoinModel.bulkSays.length > 0
            height: visible ? implicitHeight : 0
            opens: false
            text: JoinModel.bulkSays
        }
    }
}
