// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** What can have gone wrong, drawn: cards beside each other, every row as high as its words ask for. */
Item {
    id: root

    /** [{kind, says, block, asks}], the likeliest first. */
    property var answers: []
    /** The height in which all of them are seen, if the pictures can be as low. */
    property real room: 0
    property int columns: 2

    signal chosen(var answer)

    readonly property int lines: Math.ceil(answers.length / columns)
    readonly property real cell: Math.floor((width - (columns - 1) * Theme.gap) / columns) - 1
    readonly property real least: Theme.mm(Theme.small ? 8 : 14)
    /** A little higher than it is drawn when it fills the card's width, at the most. */
    readonly property real most: Math.min(Theme.mm(52), cell * 0.56)
    readonly property real pictureHeight: Math.max(least, Math.min(most, (room - sum(words) - (lines - 1) * Theme.gap) / Math.max(1, lines)))
    /** What each row takes besides its pictures. */
    property var words: []

    function sum(list: var): real {
        return list.reduce((all, one) => all + one, 0);
    }
    function measure() {
        const high = new Array(root.lines).fill(0);
        for (let i = 0; i < cards.count; ++i) {
            const row = Math.floor(i / root.columns);
            high[row] = Math.max(high[row] ?? 0, cards.itemAt(i)?.besides ?? 0);
        }
        words = high;
    }

    implicitHeight: sum(words) + lines * pictureHeight + Math.max(0, lines - 1) * Theme.gap
    onColumnsChanged: measure()

    Repeater {
        id: cards
        model: root.answers.length
        onCountChanged: root.measure()
        MishapCard {
            required property int index
            readonly property int row: Math.floor(index / root.columns)
            readonly property var answer: root.answers[index] ?? null
            readonly property int column: index % root.columns
            x: (Theme.left ? root.columns - 1 - column : column) * (root.cell + Theme.gap)
            y: root.sum(root.words.slice(0, row)) + row * (root.pictureHeight + Theme.gap)
            width: root.cell
            height: root.pictureHeight + (root.words[row] ?? 0)
            pictureHeight: root.pictureHeight
            kind: answer?.kind ?? ""
            text: answer?.says ?? ""
            onBesidesChanged: root.measure()
            onClicked: root.chosen(answer)
        }
    }
}
