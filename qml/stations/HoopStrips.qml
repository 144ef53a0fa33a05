// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The strips in work, each with its own place, and what the gaps and the first blocks offer. */
Flickable {
    id: root

    /** A block in hand that is stitched has its strip already. */
    readonly property bool choosing: HoopModel.stripCount > 1 && !HoopModel.marking
        && StepModel.doing !== "trim-patches" && StepModel.doing !== "press-block"

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: HoopModel.stripSays
        }
        Row {
            width: parent.width
            spacing: Theme.gapTargets
            visible: root.choosing
            CutButton {
                width: (parent.width - parent.spacing) / 2
                height: Theme.targetLeast
                enabled: HoopModel.strip > 1
                text: qsTr("Previous strip")
                onClicked: HoopModel.strip = HoopModel.strip - 1
            }
            CutButton {
                width: (parent.width - parent.spacing) / 2
                height: Theme.targetLeast
                enabled: HoopModel.strip < HoopModel.stripCount
                text: qsTr("Next strip")
                onClicked: HoopModel.strip = HoopModel.strip + 1
            }
        }
        Word {
            width: parent.width
            visible: root.choosing
            color: Theme.colors.inkSoft
            text: qsTr("Two people, two machines: each strip keeps its own place.")
        }
        InlineLength {
            width: parent.width
            visible: HoopModel.overSays.length > 0
            color: Theme.colors.stop
            text: HoopModel.overSays
        }
        InlineLength {
            width: parent.width
            text: HoopModel.sentSays
        }
        InlineLength {
            width: parent.width
            visible: HoopModel.harvestSays.length > 0
            text: HoopModel.harvestSays
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            visible: HoopModel.canHarvest
            text: qsTr("Let the gaps yield sashing")
            onClicked: HoopModel.takeHarvest()
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            visible: HoopModel.someGapsSays.length > 0
            text: HoopModel.someGapsSays
            onClicked: HoopModel.takeSomeGaps()
        }
        InlineLength {
            width: parent.width
            visible: HoopModel.drawUpSays.length > 0
            text: HoopModel.drawUpSays
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            visible: HoopModel.drawUpSays.length > 0
            text: qsTr("Take it for the blocks to come")
            onClicked: HoopModel.takeDrawUp()
        }
    }
}
