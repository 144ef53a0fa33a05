// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** What light and dark come to: the pair least apart, the scale with the cloths, every pair, an order proposed. */
Flickable {
    id: root

    /** A cloth was pressed. */
    signal chosen(string cloth)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            cap: Theme.capHead
            bold: true
            //: the page on how light and how dark the cloths are
            text: qsTr("Light and dark")
        }
        Word {
            objectName: "shade-says"
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            bold: true
            color: ShadeModel.clear ? Theme.colors.ink : Theme.colors.caution
            text: ShadeModel.says
        }
        ShadeScale {
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            steps: ShadeModel.scale
            cloths: ShadeModel.cloths
            accessibleName: qsTr("The cloths on the scale from 1, black, to 10, white")
        }
        Column {
            width: parent.width
            Repeater {
                model: ShadeModel.cloths
                ShadeRow {
                    width: rows.width
                    onClicked: root.chosen(modelData.id)
                }
            }
            KeyLine { width: parent.width }
        }
        Word {
            visible: designs.visible
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            //: which of the block designs is judged
            text: qsTr("Design")
        }
        ChoiceCells {
            id: designs
            visible: choices.length > 0
            width: parent.width
            height: visible ? implicitHeight : 0
            perRow: Math.min(4, Math.max(1, choices.length))
            inList: true
            accessibleName: qsTr("Design")
            choices: ShadeModel.designs
            value: ShadeModel.design
            onChosen: value => ShadeModel.design = value
        }
        Column {
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            spacing: Theme.mm(1.6)
            Repeater {
                model: ShadeModel.pairs
                ShadePair {
                    width: rows.width - 2 * Theme.margin
                }
            }
        }
        Word {
            visible: text !== ""
            objectName: "shade-order"
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            text: ShadeModel.orderSays
        }
        CutButton {
            visible: ShadeModel.canReorder
            objectName: "shade-take-order"
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            height: visible ? Math.max(Theme.targetLeast, contentHeight) : 0
            inList: true
            text: qsTr("Lay them in this order")
            onClicked: ShadeModel.takeOrder()
        }
        Word {
            x: Theme.margin
            width: parent.width - 2 * Theme.margin
            color: Theme.colors.inkSoft
            text: qsTr("The patches are drawn as plain rectangles. A screen shows cloth only roughly: lay the patch on the ground and look at it from across the room.")
        }
        Item {
            width: 1
            height: Theme.gap
        }
    }
}
