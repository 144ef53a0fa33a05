// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Seam, fold-under and catch at true size on the calibrated screen: lay the cloth on the glass. */
Flickable {
    id: root

    /** Without what this join has not. */
    function measured(all: var): var {
        return all.filter(each => each[0].valid);
    }

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
        // Side by side, so that all of them are in sight; no wider than their words want, and what is left shared out.
        Flow {
            id: bars
            readonly property real wanted: {
                let sum = 0;
                for (let i = 0; i < stairs.count; ++i)
                    sum += stairs.itemAt(i)?.least ?? 0;
                return sum;
            }
            readonly property real over: Math.max(0, Math.floor((width - wanted - (stairs.count - 1) * spacing) / Math.max(1, stairs.count)))
            width: parent.width
            spacing: Theme.mm(2)
            FontMetrics {
                id: letters
                font.family: Theme.family
                font.pixelSize: Theme.fontSize(Theme.capWord)
            }
            Repeater {
                id: stairs
                // The fold is laid at the mark that is told: the catch beside it is what folding just that much gives.
                model: root.measured([[JoinModel.held, qsTr("catch"), JoinModel.section.catchMm],
                        [JoinModel.fold, qsTr("fold under"), JoinModel.section.foldMm],
                        [JoinModel.seam, qsTr("seam"), JoinModel.section.seamMm]])
                Column {
                    id: stair
                    required property var modelData
                    required property int index
                    readonly property real longest: Math.max(...modelData[1].split(" ").map(word => letters.advanceWidth(word)))
                    readonly property real least: Math.ceil(Math.max(bar.width, longest + 2))
                    width: least + bars.over
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
