// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The shelf with nothing on it: a piece in dots, one line of words, and the three ways to begin, or the way to what was put away. */
FocusScope {
    id: root

    /** Pieces are there, all of them put away. */
    readonly property bool putAway: Shelf.putAwayCount > 0
    readonly property bool upright: height > width
    /** On a low screen the ways to begin share what height there is. */
    readonly property real high: upright ? Theme.target : Math.max(Theme.step, Math.min(Theme.target, (height - invitation.height - 4 * air) / 2))
    readonly property real air: Theme.small ? Theme.gap : Theme.gapTargets

    PieceToCome {
        id: piece
        x: root.upright || !Theme.left ? 0 : root.width - width
        width: root.upright ? root.width : root.width - ways.width - Theme.margin
        height: Math.max(0, (languages.visible ? languages.y : root.upright ? ways.y : root.height) - root.air)
    }
    LanguageChoice {
        id: languages
        visible: choices.length > 1
        x: piece.x + Theme.margin
        y: (root.upright ? ways.y : root.height) - height - root.air
        width: piece.width - 2 * Theme.margin
        perRow: root.upright ? choices.length : 2
    }
    Column {
        id: ways
        x: root.upright ? Theme.margin : Theme.left ? Theme.margin : root.width - width - Theme.margin
        y: root.upright ? root.height - height - root.air : Math.max(0, Math.min(root.height - height - Theme.gap, (root.height - height) / 2))
        width: root.upright ? root.width - 2 * Theme.margin : Theme.mm(Theme.small ? 90 : 96)
        spacing: root.air

        Column {
            id: invitation
            width: parent.width
            spacing: Theme.mm(1.2)
            Word {
                width: parent.width
                cap: Theme.capHead
                bold: true
                //: every piece was put away, out of sight; %1 is how many
                text: root.putAway ? qsTr("Pieces put away: %1").arg(Shelf.putAwayCount) : qsTr("The shelf is empty.")
            }
            Word {
                width: parent.width
                text: root.putAway ? qsTr("Nothing else is on the shelf. What was put away can be brought back.")
                                   : qsTr("Begin with the demo, ready to cut, or with nine blocks of your own.")
            }
        }
        CutButton {
            objectName: "demo"
            width: parent.width
            height: root.high
            focus: true
            kind: "action"
            enabled: root.putAway || !Power.spent
            text: root.putAway ? qsTr("Show what is put away") : qsTr("Open the demo")
            onClicked: {
                if (root.putAway)
                    Shelf.showPutAway = true;
                else
                    Shelf.openDemo();
            }
        }
        Row {
            id: own
            readonly property real each: (ways.width - root.air) / 2
            spacing: root.air
            layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
            NewPiece {
                width: own.each
                height: root.high
                firstOffered: true
            }
            NewPiece {
                width: own.each
                height: root.high
            }
        }
    }
}
