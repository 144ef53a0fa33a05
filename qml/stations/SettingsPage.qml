// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The light she works in, her cutting hand, and how large the screen is. */
FocusScope {
    id: root

    function leave() {
        Session.view = "shelf";
    }

    Column {
        x: Theme.margin
        y: Theme.margin
        width: Math.min(parent.width - 2 * Theme.margin, Theme.mm(140))
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: qsTr("Light")
        }
        Repeater {
            model: [{ set: "day", says: qsTr("Daylight") }, { set: "lamp", says: qsTr("Lamplight") },
                    { set: "contrast", says: qsTr("High contrast") }]
            ChoiceRow {
                required property var modelData
                width: parent.width
                text: modelData.says
                chosen: Look.colourSet === modelData.set
                onClicked: Look.colourSet = modelData.set
            }
        }
        Word {
            width: parent.width
            topPadding: Theme.gapTargets
            cap: Theme.capHead
            bold: true
            text: qsTr("Cutting hand")
        }
        Repeater {
            model: [{ left: false, says: qsTr("Right") }, { left: true, says: qsTr("Left: everything is mirrored but the figures") }]
            ChoiceRow {
                required property var modelData
                width: parent.width
                text: modelData.says
                chosen: Session.leftHanded === modelData.left
                onClicked: Session.leftHanded = modelData.left
            }
        }
        Stepper {
            width: parent.width
            label: qsTr("Screen, pixels to the millimetre")
            valueText: Look.pxPerMm.toFixed(2)
            askable: false
            onLess: Look.pxPerMm = Math.max(2, Look.pxPerMm - 0.05)
            onMore: Look.pxPerMm = Math.min(20, Look.pxPerMm + 0.05)
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("Lay a bank card on this bar: it should be as long as the card.")
        }
        Rectangle {
            // ISO/IEC 7810 ID-1 cards are 85.60 mm long.
            width: 85.6 * Look.pxPerMm
            height: Theme.mm(6)
            color: Theme.colors.ink
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("A bar as long as a bank card")
        }
        CutButton {
            width: Theme.mm(60)
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("Back to the shelf")
            onClicked: Session.view = "shelf"
        }
    }
}
