// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** A station told in words: its steps with their figures, and the same three targets as everywhere. */
StepPage {
    id: root

    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: Session.stationName(Session.station)
    }
    Word {
        id: hint
        x: Theme.margin
        y: head.y + head.height + Theme.mm(1)
        width: head.width
        color: Theme.colors.inkSoft
        text: Session.stationHint(Session.station)
    }
    Flickable {
        id: list
        y: hint.y + hint.height + Theme.gap
        width: parent.width
        height: parent.height - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        contentHeight: rows.height

        /** Brings a row into sight without moving more than is needed. */
        function reveal(row: Item) {
            const last = Math.max(0, contentHeight - height);
            contentY = Math.max(0, Math.min(row.y, last, Math.max(contentY, row.y + row.height - height)));
        }

        Column {
            id: rows
            width: list.width
            Repeater {
                id: each
                model: StepModel.steps
                StepRow {
                    id: row
                    width: rows.width
                    onClicked: StepModel.goTo(index)
                    onIsCurrentChanged: if (isCurrent) list.reveal(row)
                    onYChanged: if (isCurrent) list.reveal(row)
                }
            }
            KeyLine {
                width: parent.width
            }
        }
    }
    Word {
        visible: each.count === 0
        x: Theme.margin
        y: list.y + Theme.margin
        width: list.width - 2 * Theme.margin
        text: StepModel.elsewhereText
    }
}
