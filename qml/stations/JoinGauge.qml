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
            // The bars come first where there is little height.
            visible: !Theme.small
            cap: Theme.capHead
            bold: true
            text: qsTr("True size")
        }
        CautionLine {
            width: parent.width
            text: qsTr("Pins out, cloth cool and dry, do not press on the glass.")
        }
        // Side by side, so that all of them are in sight.
        Flow {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                // The fold is laid at the mark that is told: the catch beside it is what folding just that much gives.
                model: [[JoinModel.held, qsTr("catch"), JoinModel.section.catchMm],
                        [JoinModel.fold, qsTr("fold under"), JoinModel.section.foldMm],
                        [JoinModel.seam, qsTr("seam"), JoinModel.section.seamMm]].filter(each => each[0].valid)
                Column {
                    id: stair
                    required property var modelData
                    required property int index
                    width: Math.max(bar.width, Math.floor((rows.width - 2 * Theme.gap) / 3))
                    spacing: Theme.mm(1.6)
                    // The bar is as wide as the measure: its left edge is the cloth's edge, its right edge the line.
                    Rectangle {
                        id: bar
                        objectName: "gauge-" + stair.index
                        width: stair.modelData[2] * Theme.pxPerMm
                        height: Theme.mm(Theme.small ? 16 : 22)
                        color: Theme.colors.ink
                    }
                    FigureText {
                        figure: stair.modelData[0]
                        cap: Theme.capInText
                        availableWidth: stair.width
                        showLean: false
                    }
                    Word {
                        width: parent.width
                        text: stair.modelData[1]
                    }
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
