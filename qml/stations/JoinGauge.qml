// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Seam, fold-under and catch at true size on the calibrated screen: lay the cloth on the glass. */
Flickable {
    id: root

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
            text: qsTr("True size")
        }
        CautionLine {
            width: parent.width
            text: qsTr("Pins out, cloth cool and dry, do not press on the glass.")
        }
        Repeater {
            // The fold is laid at the mark that is told: the catch beside it is what folding just that much gives.
            model: [[JoinModel.held, qsTr("catch"), JoinModel.section.catchMm],
                    [JoinModel.fold, qsTr("fold under"), JoinModel.section.foldMm],
                    [JoinModel.seam, qsTr("seam"), JoinModel.section.seamMm]]
            Row {
                id: stair
                required property var modelData
                required property int index
                visible: modelData[0].valid
                height: visible ? Theme.mm(22) : 0
                spacing: Theme.mm(3)
                // The bar is as wide as the measure: its left edge is the cloth's edge, its right edge the line.
                Rectangle {
                    objectName: "gauge-" + stair.index
                    width: stair.modelData[2] * Theme.pxPerMm
                    height: Theme.mm(22)
                    color: Theme.colors.ink
                }
                FigureText {
                    anchors.verticalCenter: parent.verticalCenter
                    figure: stair.modelData[0]
                    cap: Theme.mm(8)
                    showLean: false
                }
                Word {
                    anchors.verticalCenter: parent.verticalCenter
                    text: stair.modelData[1]
                }
            }
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("True only after the screen was set against a card, at the foot of the shelf.")
        }
    }
}
