// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The piece's four sides and two diagonals: the tape taken in hand on the drawing is stepped or typed here and kept
 * at once, with what all of them say.
 */
Flickable {
    id: root

    /** The reading in hand, 0 to 5 as the model has them. */
    property int held: 0
    /** Some of the six are still to be read. */
    readonly property bool wanting: EdgeModel.unreadSays !== ""

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
            width: parent.width
            readings: EdgeModel.readings
            held: root.held
            wide: false
            leanAbove: false
            onNudged: (at, by) => EdgeModel.nudge(at, by)
            onTurned: at => root.held = at
            onFigurePressed: root.enter(String(held), label, figureText)
        }
        KeyLine { width: parent.width }
        Word {
            width: parent.width
            visible: EdgeModel.measured && text !== ""
            text: EdgeModel.unreadSays
        }
        Word {
            width: parent.width
            visible: !EdgeModel.measured
            cap: Theme.capHead
            bold: true
            text: qsTr("Measure all six, raw edge to raw edge.")
        }
        InlineLength {
            width: parent.width
            visible: EdgeModel.measured
            bold: true
            cap: Theme.capWord
            text: EdgeModel.verdict
        }
        InlineLength {
            width: parent.width
            visible: EdgeModel.measured
            text: EdgeModel.remedy
        }
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
