// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** What can have gone wrong, drawn: two cards beside each other, every row as high as its words ask for. */
Column {
    id: root

    /** [{kind, says, block, asks}], the likeliest first. */
    property var answers: []
    /** The height in which all of them are seen, if the pictures can be as low. */
    property real room: 0

    signal chosen(var answer)

    readonly property int lines: Math.ceil(answers.length / 2)
    readonly property real least: Theme.mm(Theme.small ? 12 : 14)
    /** As high as it is drawn when it fills the card's width, at the most. */
    readonly property real pictureHeight: Math.max(least, Math.min(Theme.mm(24), (width - spacing) / 4, (room - rest - (lines - 1) * spacing) / Math.max(1, lines)))
    /** All the rows take besides their pictures. */
    property real rest: 0

    function measure() {
        let sum = 0;
        for (let i = 0; i < rows.count; ++i)
            sum += rows.itemAt(i)?.besides ?? 0;
        rest = sum;
    }

    spacing: Theme.gap

    component CardRow: Row {
        id: row
        required property int index
        readonly property real besides: Math.max(first.besides, second.besides)
        readonly property real cell: (root.width - Theme.gap) / 2

        spacing: Theme.gap
        onBesidesChanged: root.measure()
        Component.onCompleted: root.measure()

        Card {
            id: first
            place: 2 * row.index
            height: root.pictureHeight + row.besides
            width: row.cell
        }
        Card {
            id: second
            place: 2 * row.index + 1
            height: root.pictureHeight + row.besides
            width: row.cell
        }
    }
    component Card: MishapCard {
        property int place
        readonly property var answer: root.answers[place] ?? null
        visible: answer !== null
        pictureHeight: root.pictureHeight
        kind: answer?.kind ?? ""
        text: answer?.says ?? ""
        onClicked: root.chosen(answer)
    }
    Repeater {
        id: rows
        model: root.lines
        CardRow {}
        onItemAdded: root.measure()
    }
}
