// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What goes with the strip and the next block: lines, most of which open more. */
Flickable {
    id: root

    signal opened(string side)

    readonly property bool stitching: StepModel.doing.startsWith("stitch")

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height

    /** None is shown cut through: it comes up when it is pushed up. */
    component Row: SideRow {
        width: rows.width
        opacity: y < root.contentY || keyboardFocus || y + height <= root.contentY + root.height + Theme.mm(1) ? 1 : 0
    }
    component Bobbin: Row {
        required property bool wanted
        visible: root.stitching && wanted
        height: visible ? implicitHeight : 0
        text: HoopModel.bobbinSays
        detail: qsTr("Stops and patches")
        onClicked: root.opened("stops")
    }

    Column {
        id: rows
        width: root.width

        // Due before the next block it stands first.
        Bobbin { wanted: HoopModel.bobbinDue !== "" }
        Row {
            visible: HoopModel.canReZero && root.stitching
            height: visible ? implicitHeight : 0
            text: qsTr("Last outline ended at {%1}").arg(HoopModel.lastEnd.text)
            onClicked: root.opened("zero")
        }
        Row {
            visible: HoopModel.centreSays.length > 0
            height: visible ? implicitHeight : 0
            opens: false
            text: HoopModel.centreSays
        }
        Bobbin { wanted: HoopModel.bobbinDue === "" }
        Row {
            visible: HoopModel.drawUpSays.length > 0
            height: visible ? implicitHeight : 0
            text: HoopModel.drawUpShort
            onClicked: root.opened("drawup")
        }
        Row {
            text: HoopModel.stripSays
            detail: root.stitching ? HoopModel.sentShort
                : HoopModel.harvestSays.length > 0 ? qsTr("Gaps can yield sashing") : ""
            onClicked: root.opened("strip")
        }
        Row {
            text: qsTr("Hoops")
            onClicked: root.opened("hoops")
        }
        Row {
            text: qsTr("Pictures and notes")
            onClicked: root.opened("gallery")
        }
    }
}
