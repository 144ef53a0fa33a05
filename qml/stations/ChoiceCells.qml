// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** A few values of which one is in force, side by side from edge to edge; the chosen one is printed solid. */
Item {
    id: root

    /** List of {value, says}. */
    property var choices: []
    property var value
    property string accessibleName
    property bool inList: false
    /** So many in a row: all of them, or as many as break no word, the rows as even as they go. */
    property int perRow: Math.max(1, Math.ceil(choices.length / Math.max(1, Math.ceil(choices.length / across))))
    readonly property int across: Math.max(1, Math.min(choices.length, Math.floor(width / leastCell)))
    readonly property real leastCell: letters.font.pixelSize > 0 ? 2 * cellMargin + 2 + longestWord(choices) : 1
    readonly property real cellMargin: Theme.mm(1)

    signal chosen(var value)

    /** Fewer than asked for where a word would be broken. */
    readonly property int columns: Math.min(perRow, across)
    readonly property int lines: Math.max(1, Math.ceil(choices.length / columns))
    readonly property real cellWidth: width / columns

    property real tallest: 0

    function longestWord(choices: var): real {
        let most = 1;
        for (let i = 0; i < choices.length; ++i)
            for (const word of choices[i].says.split(" "))
                most = Math.max(most, letters.advanceWidth(word));
        return most;
    }
    /** The height of the cell with the most lines. */
    function measure() {
        let most = 0;
        for (let i = 0; i < cells.count; ++i)
            most = Math.max(most, cells.itemAt(i)?.implicitHeight ?? 0);
        tallest = most;
    }

    implicitHeight: lines * Math.max(Theme.step, tallest)

    Accessible.role: Accessible.Grouping
    Accessible.name: accessibleName

    FontMetrics {
        id: letters
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(Theme.capWord)
    }
    Grid {
        columns: root.columns
        Repeater {
            id: cells
            model: root.choices
            Pressable {
                id: cell
                required property var modelData
                readonly property bool solid: (modelData.value === root.value) !== pressed

                width: root.cellWidth
                height: root.height / root.lines
                implicitHeight: says.implicitHeight + Theme.mm(3)
                inList: root.inList
                accessibleName: modelData.says
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: modelData.value === root.value
                onClicked: root.chosen(modelData.value)
                onImplicitHeightChanged: root.measure()
                Component.onCompleted: root.measure()

                Rectangle {
                    anchors.fill: parent
                    color: cell.solid ? Theme.colors.ink : Theme.colors.raised
                }
                Word {
                    id: says
                    x: root.cellMargin
                    width: parent.width - 2 * x
                    anchors.verticalCenter: parent.verticalCenter
                    horizontalAlignment: Text.AlignHCenter
                    bold: cell.modelData.value === root.value
                    color: cell.solid ? Theme.colors.raised : Theme.colors.ink
                    text: cell.modelData.says
                    Accessible.ignored: true
                }
                CutShape {
                    visible: cell.keyboardFocus
                    anchors.fill: parent
                    anchors.margins: Theme.focusGap
                    stroke: cell.solid ? Theme.colors.raised : Theme.colors.accent
                    strokeWidth: Theme.keyBold
                }
            }
        }
    }
    KeyLine {
        width: parent.width
    }
    KeyLine {
        y: parent.height - height
        width: parent.width
    }
}
