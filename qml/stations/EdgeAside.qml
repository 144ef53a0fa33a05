// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What goes with the step at the edge: readings and verdict, the joins, the corners, the section, the care. */
Flickable {
    id: root

    signal opened(string side)

    readonly property string phase: StepModel.finished ? "" : EdgeModel.phase

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds
    interactive: contentHeight > height

    Column {
        id: rows
        width: root.width

        SideRow {
            width: parent.width
            visible: root.phase === "square"
            height: visible ? implicitHeight : 0
            text: EdgeModel.measured ? EdgeModel.verdict : qsTr("Measure the piece")
            detail: EdgeModel.squareEnough ? "" : EdgeModel.measured ? EdgeModel.remedy : qsTr("Four sides and two diagonals, lying flat.")
            onClicked: root.opened("measure")
        }
        SideRow {
            width: parent.width
            visible: root.phase === "square"
            height: visible ? implicitHeight : 0
            opens: false
            text: Session.units === "mm" ? qsTr("Stay-stitch {3 mm} from the raw edge across every sashing end.")
                                         : qsTr("Stay-stitch {1/8 in} from the raw edge across every sashing end.")
        }
        SideRow {
            width: parent.width
            visible: root.phase === "frame"
            height: visible ? implicitHeight : 0
            text: qsTr("How the frame goes on")
            detail: EdgeModel.frameLines[0] ?? ""
            onClicked: root.opened("frame")
        }
        SideRow {
            width: parent.width
            visible: root.phase === "bind" && EdgeModel.lay.length > 0
            height: visible ? implicitHeight : 0
            text: qsTr("Where the joins fall")
            detail: EdgeModel.joinsClear ? "" : EdgeModel.laySays
            onClicked: root.opened("joins")
        }
        SideRow {
            width: parent.width
            visible: root.phase === "bind"
            height: visible ? implicitHeight : 0
            text: qsTr("Seam {%1}, in section").arg(EdgeModel.bindingSeam.text)
            onClicked: root.opened("section")
        }
        SideRow {
            width: parent.width
            visible: (root.phase === "square" || root.phase === "bind") && EdgeModel.cornerSays.length > 0
            height: visible ? implicitHeight : 0
            text: EdgeModel.cornerName
            detail: EdgeModel.biteSays
            onClicked: root.opened("corners")
        }
        SideRow {
            width: parent.width
            visible: root.phase === "last" || root.phase === ""
            height: visible ? implicitHeight : 0
            text: qsTr("Care, label, sleeve, pillow")
            detail: EdgeModel.careLines[0]
            onClicked: root.opened("care")
        }
    }
}
