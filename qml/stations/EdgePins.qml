// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Pins in and pins out: until they agree, or she says why not, the piece is not finished. */
Column {
    id: root

    readonly property bool none: EdgeModel.pinsIn === 0 && EdgeModel.pinsOut === 0
    readonly property bool wide: width > Theme.mm(100)
    /** The height there is: what words and buttons leave of it is drawn on. */
    property real room: 0
    /** What lies over a corner of the drawings, on the hand's far side. */
    property real notch: 0
    property real notchHeight: 0
    readonly property real spare: wide ? room - foot.height - spacing - Math.max(into.bare, out.bare) - Theme.gap
                                       : (room - foot.height - 2 * spacing - into.bare - out.bare) / 2 - Theme.gap
    readonly property real drawn: spare < Math.max(Theme.mm(10), notchHeight) ? 0 : Math.min(spare, Theme.mm(44))

    spacing: Theme.mm(4)

    Flow {
        width: parent.width
        spacing: root.wide ? Math.min(Theme.mm(12), width * 0.06) : root.spacing
        PinCount {
            id: into
            // A hair too wide, and the second goes below the screen's foot.
            width: root.wide ? Math.floor((root.width - parent.spacing) / 2) : root.width
            says: qsTr("pins in")
            lessSays: qsTr("%1 less").arg(says)
            moreSays: qsTr("%1 more").arg(says)
            wide: root.wide
            drawn: root.drawn
            notch: Theme.left ? 0 : root.notch
        }
        PinCount {
            id: out
            width: into.width
            going: false
            says: qsTr("pins out")
            lessSays: qsTr("%1 less").arg(says)
            moreSays: qsTr("%1 more").arg(says)
            wide: root.wide
            drawn: root.drawn
            notch: Theme.left ? -root.notch : 0
        }
    }
    Flow {
        id: foot
        readonly property bool beside: root.wide && hold.visible
        width: parent.width
        spacing: Theme.gap
        Word {
            width: foot.beside ? parent.width - hold.width - Theme.gap : parent.width
            bold: EdgeModel.pinsMatch
            color: EdgeModel.pinsMatch || root.none ? Theme.colors.ink : Theme.colors.stop
            text: EdgeModel.pinsSay
        }
        HoldButton {
            id: hold
            objectName: "pins-known"
            width: foot.beside ? parent.width * 0.58 : parent.width
            height: Math.max(foot.beside ? Theme.targetLeast : Theme.mm(15), implicitHeight)
            visible: !EdgeModel.pinsMatch
            text: root.none ? qsTr("No pins were used") : EdgeModel.pinsIn - EdgeModel.pinsOut === 1 ? qsTr("I know where it is") : qsTr("I know where they are")
            onHeld: EdgeModel.explainPins()
        }
    }
}
