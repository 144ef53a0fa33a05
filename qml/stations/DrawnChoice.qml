// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** A few values of which one is in force, as swatches cut from cloth, each a picture of what it does; the chosen one is pinned. */
Item {
    id: root

    /** List of {value, says, scene, inks, words}: the last three as a ChoiceSketch takes them. */
    property var choices: []
    property var value
    property string accessibleName

    signal chosen(var value)

    readonly property real gap: Theme.gap
    readonly property real tooth: Math.round(Theme.mm(1.2))
    readonly property real side: Math.round(Theme.mm(1.4))
    /** All of them in a row, or as many as break no word, the rows as even as they go. */
    readonly property int columns: Math.max(1, Math.ceil(choices.length / Math.max(1, Math.ceil(choices.length / across))))
    readonly property int across: Math.max(1, Math.min(choices.length, Math.floor((width + gap) / (leastTile + gap))))
    readonly property real leastTile: letters.font.pixelSize > 0 ? 2 * side + Theme.mm(2) + longestWord(choices) : 1
    readonly property int lines: Math.max(1, Math.ceil(choices.length / columns))
    readonly property real tileWidth: Math.floor((width - (columns - 1) * gap) / columns)
    readonly property real pictureHeight: Math.round(Math.min(Theme.mm(Theme.small ? 18 : 22), (tileWidth - 2 * side) * 0.66))
    readonly property real tileHeight: tooth + pictureHeight + tallest + Theme.mm(1.6) + tooth
    property real tallest: 0

    function longestWord(choices: var): real {
        let most = 1;
        for (let i = 0; i < choices.length; ++i)
            for (const word of choices[i].says.split(" "))
                most = Math.max(most, letters.advanceWidth(word));
        return most;
    }
    /** The height of the name with the most lines. */
    function measure() {
        let most = 0;
        for (let i = 0; i < tiles.count; ++i)
            most = Math.max(most, tiles.itemAt(i)?.nameHeight ?? 0);
        tallest = most;
    }
    /** A swatch: pinked along its head and its foot, cut straight at its sides. */
    function outline(w: real, h: real): var {
        const points = [], teeth = Math.max(4, Math.round(w / (2 * root.tooth))), step = w / teeth;
        for (let i = 0; i < teeth; ++i)
            points.push(Qt.point(i * step, root.tooth), Qt.point((i + 0.5) * step, 0));
        points.push(Qt.point(w, root.tooth));
        for (let i = teeth; i > 0; --i)
            points.push(Qt.point(i * step, h - root.tooth), Qt.point((i - 0.5) * step, h));
        points.push(Qt.point(0, h - root.tooth));
        return points;
    }

    implicitHeight: lines * tileHeight + (lines - 1) * gap

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
        spacing: root.gap
        Repeater {
            id: tiles
            model: root.choices
            Pressable {
                id: tile
                required property var modelData
                readonly property bool isChosen: modelData.value === root.value
                readonly property bool solid: isChosen !== pressed
                readonly property real nameHeight: says.implicitHeight
                readonly property real line: isChosen ? Theme.keyBold : Theme.keyThin

                width: root.tileWidth
                height: root.tileHeight
                inList: true
                accessibleName: modelData.says
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: isChosen
                onClicked: root.chosen(modelData.value)
                onNameHeightChanged: root.measure()
                Component.onCompleted: root.measure()

                Cutout {
                    anchors.fill: parent
                    fill: tile.solid ? Theme.colors.ink : Theme.colors.raised
                    stroke: Theme.colors.ink
                    strokeWidth: tile.line
                    corners: root.outline(width, height)
                }
                ChoiceSketch {
                    x: root.side
                    y: root.tooth + root.side
                    width: parent.width - 2 * x
                    height: Math.round(root.pictureHeight - root.side)
                    scene: tile.modelData.scene
                    inks: tile.modelData.inks ?? Theme.colors
                    words: tile.modelData.words ?? ""
                }
                Word {
                    id: says
                    x: root.side
                    y: root.tooth + root.pictureHeight + Theme.mm(0.8) + (root.tallest - implicitHeight) / 2
                    width: parent.width - 2 * x
                    horizontalAlignment: Text.AlignHCenter
                    bold: tile.isChosen
                    color: tile.solid ? Theme.colors.raised : Theme.colors.ink
                    text: tile.modelData.says
                    Accessible.ignored: true
                }
                PinSketch {
                    objectName: "pin"
                    visible: tile.isChosen
                    anchors.horizontalCenter: parent.horizontalCenter
                    y: -Theme.mm(1.6)
                }
                FocusOutline { visible: tile.keyboardFocus }
            }
        }
    }
}
