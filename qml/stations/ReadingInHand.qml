// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** One of a block's six readings, large, with what steps it; and the way to the next. */
Column {
    id: root

    property alias held: hand.held

    signal turned(int reading)
    signal enter(string name, string title, string text)

    spacing: Theme.gap

    KeyLine {
        width: parent.width
        visible: !Theme.small
    }
    ReadingHeld {
        id: hand
        readonly property bool doubted: reading?.suspect ?? false
        width: parent.width
        readings: BlockMeasure.readings
        note: doubted ? qsTr("measure this one again first") : said.text
        onNudged: (at, by) => BlockMeasure.nudge(at, by)
        onTurned: at => root.turned(at)
        onFigurePressed: root.enter(String(held), label, figureText)
    }
    Word {
        id: said
        width: parent.width
        visible: text !== ""
        color: Theme.colors.inkSoft
        // That it is to be read again, the main button says.
        text: hand.unread ? qsTr("not yet read") : ""
    }
}
