// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** A bar to be made as long as a bank card, so that a millimetre on the screen is one. */
Item {
    id: root

    /** Length of a card, in millimetres: ISO/IEC 7810, size ID-1. */
    readonly property real cardMm: 85.6
    /** What one press adds to the bar, in pixels to the millimetre: two tenths of a millimetre on the card. */
    readonly property real stepBy: 0.01

    function grow(by: real) {
        Look.pxPerMm = Math.max(2, Math.min(20, Look.pxPerMm + by));
    }

    implicitHeight: steps.y + Math.max(steps.height, says.implicitHeight)

    Rectangle {
        id: bar
        x: Theme.left ? root.width - width : 0
        width: Math.min(root.width, root.cardMm * Look.pxPerMm)
        height: Theme.mm(6)
        color: Theme.colors.ink
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("A bar as long as a bank card")
    }
    Row {
        id: steps
        x: Theme.left ? root.width - width : 0
        y: bar.height + Theme.gap
        spacing: Theme.gap
        layoutDirection: Qt.LeftToRight
        StepButton {
            sign: "-"
            accessibleName: qsTr("Bar shorter")
            onStepped: root.grow(-root.stepBy)
        }
        StepButton {
            sign: "+"
            accessibleName: qsTr("Bar longer")
            onStepped: root.grow(root.stepBy)
        }
    }
    Word {
        id: says
        x: Theme.left ? 0 : steps.width + Theme.margin
        y: steps.y + Math.max(0, (steps.height - implicitHeight) / 2)
        width: root.width - steps.width - Theme.margin
        horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
        color: Theme.colors.inkSoft
        text: qsTr("Lay a bank card on the bar; make the bar as long as the card.")
    }
}
