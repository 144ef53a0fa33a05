// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The machine's stops in order, each patch with the rectangle to lay, then bobbin and time. */
Flickable {
    id: root

    /** Before the block in hand the bobbin is changed: then that stands first. */
    readonly property bool due: HoopModel.bobbinDue !== ""

    component NewBobbin: CutButton {
        width: rows.width
        height: Theme.targetLeast
        text: qsTr("New bobbin in")
        onClicked: StepModel.newBobbin()
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.mm(1.6)

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: HoopModel.block !== "" ? qsTr("Block %1, stop by stop").arg(HoopModel.block) : qsTr("Stop by stop")
        }
        CautionLine {
            width: parent.width
            text: HoopModel.bobbinDue
        }
        NewBobbin { visible: root.due }
        Repeater {
            model: HoopModel.stops
            Row {
                id: stop
                required property var modelData
                width: rows.width
                spacing: Theme.mm(2)
                Word {
                    id: number
                    width: Theme.mm(6)
                    bold: true
                    text: stop.modelData.number
                }
                ClothFill {
                    visible: stop.modelData.role !== ""
                    width: visible ? Theme.mm(9) : 0
                    height: Theme.mm(7)
                    role: stop.modelData.role !== "" ? stop.modelData.role : "front"
                    outlined: true
                }
                Column {
                    width: stop.width - number.width - Theme.mm(15)
                    Word {
                        width: parent.width
                        text: stop.modelData.says
                    }
                    InlineLength {
                        visible: stop.modelData.size !== ""
                        width: parent.width
                        text: stop.modelData.size
                    }
                }
            }
        }
        Word {
            visible: !root.due
            width: parent.width
            bold: true
            text: HoopModel.bobbinSays
        }
        InlineLength {
            width: parent.width
            text: HoopModel.timeSays
        }
        NewBobbin { visible: !root.due }
    }
}
