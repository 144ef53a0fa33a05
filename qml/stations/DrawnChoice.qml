// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** A few values of which one is in force, as swatches cut from cloth, each a picture of what it does; the chosen one is pinned. */
Item {
    id: root

    /**
     * List of {value, says, scene, inks, words}: the last three as a ChoiceSketch takes them; or of
     * {value, says, print, colour}: each is a swatch of that cloth itself.
     */
    property var choices: []
    property var value
    property string accessibleName
    /** The word stands at the picture's right where it fits: lower than beneath it. */
    property bool beside: false
    /** How high a picture may be, mm. */
    property real pictureMost: Theme.small ? 18 : 22

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
    readonly property real pictureHeight: Math.round(Math.min(Theme.mm(pictureMost), sideways ? tileWidth : (tileWidth - 2 * side) * 0.66))
    readonly property real pictureWidth: sideways ? tileWidth - besideWord : tileWidth - 2 * side
    readonly property real tileHeight: sideways ? 2 * tooth + Math.max(pictureHeight + side, tallest)
                                                : 2 * tooth + pictureHeight + tallest + Theme.mm(1.6)
    /** What the longest word takes of a tile beside its picture. */
    readonly property real besideWord: Math.max(3 * side + longestWord(choices) + Theme.mm(0.6), tileWidth * 0.5)
    readonly property bool sideways: beside && tileWidth >= Theme.mm(40) && tileWidth - besideWord >= Theme.mm(16)
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
                readonly property bool cloth: modelData.print !== undefined
                readonly property color ink: !cloth ? (solid ? Theme.colors.raised : Theme.colors.ink) : pressed ? Theme.colors.accent : Theme.colors.ink
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

                PinkedShape {
                    visible: !tile.cloth
                    anchors.fill: parent
                    tooth: root.tooth
                    fill: tile.solid ? Theme.colors.ink : Theme.colors.raised
                    strokeWidth: tile.line
                }
                DyedCloth {
                    visible: tile.cloth
                    y: root.sideways ? (parent.height - height) / 2 : 0
                    width: root.sideways ? root.pictureWidth + root.side : parent.width
                    height: root.tooth + root.pictureHeight
                    clothRole: tile.modelData.print ?? "front"
                    colour: tile.modelData.colour ?? ""
                    line: tile.isChosen ? Theme.keyBold : Theme.mm(0.3) * Theme.colors.lineScale
                }
                ChoiceSketch {
                    visible: !tile.cloth
                    x: root.side
                    y: root.tooth + root.side
                    width: root.pictureWidth
                    height: Math.round(root.pictureHeight - root.side * (root.sideways ? 0.4 : 1))
                    scene: tile.modelData.scene ?? ""
                    inks: tile.modelData.inks ?? Theme.colors
                    words: tile.modelData.words ?? ""
                }
                Word {
                    id: says
                    x: root.sideways ? 2 * root.side + root.pictureWidth : root.side
                    y: root.sideways ? (parent.height - implicitHeight) / 2
                                     : root.tooth + root.pictureHeight + Theme.mm(0.8) + (tile.cloth ? 0 : (root.tallest - implicitHeight) / 2)
                    width: parent.width - x - root.side
                    horizontalAlignment: root.sideways ? Text.AlignLeft : Text.AlignHCenter
                    bold: tile.isChosen
                    color: tile.ink
                    text: tile.modelData.says
                    Accessible.ignored: true
                }
                PinSketch {
                    objectName: "pin"
                    visible: tile.isChosen
                    x: root.sideways ? root.side + (root.pictureWidth - width) / 2 : (parent.width - width) / 2
                    y: -Theme.mm(1.6)
                }
                FocusOutline { visible: tile.keyboardFocus }
            }
        }
    }
}
