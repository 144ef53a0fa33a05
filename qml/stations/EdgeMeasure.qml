// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The piece's four sides and two diagonals: the tape taken in hand on the drawing is stepped or typed here and kept
 * at once. What all of them say stands over the drawing.
 */
Flickable {
    id: root

    /** The reading in hand, 0 to 5 as the model has them. */
    property int held: 0
    /** Some of the six are still to be read, or are read anew. */
    readonly property bool wanting: EdgeModel.unreadSays !== "" || EdgeModel.again

    /** So high upright: the drawing takes the rest. */
    readonly property real wanted: hand.implicitHeight + Theme.mm(30)

    signal enter(string name, string title, string text)

    /** What is wrong with a typed reading, or nothing. */
    function take(name: string, text: string): string {
        return EdgeModel.enter(parseInt(name), text);
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        // First, so that what the readings say does not move it under the finger.
        ReadingHeld {
            id: hand
            width: parent.width
            readings: EdgeModel.readings
            held: root.held
            leanAbove: false
            onNudged: (at, by) => EdgeModel.nudge(at, by)
            onTurned: at => root.held = at
            onFigurePressed: root.enter(String(held), label, figureText)
        }
        KeyLine { width: parent.width }
        InlineLength {
            width: parent.width
            visible: text !== ""
            text: EdgeModel.roundSays
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("What is not read stands as planned. The limits are common practice; no published ones are known.")
        }
    }
}
