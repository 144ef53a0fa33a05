// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Cloth she has already, drawn to scale: a piece is entered and added; a piece listed is pressed to take it away. */
Column {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width
    readonly property real clothsWidth: beside ? (width - Theme.margin * 2) * 0.52 : width
    /** Which cloth it is a piece of. */
    readonly property var choice: StockModel.amounts[0] ?? ({})

    spacing: Theme.gap

    Item {
        width: parent.width
        height: root.beside ? Math.max(cloths.y + cloths.height, piece.height) : cloths.y + cloths.height

        StockPiece {
            id: piece
            x: root.beside && Theme.left ? root.width - width : 0
            width: root.beside ? root.width - root.clothsWidth - Theme.margin * 2 : root.width
            onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
        }
        Column {
            id: cloths
            x: root.beside && !Theme.left ? root.width - width : 0
            y: root.beside ? 0 : piece.height + Theme.gap
            width: root.clothsWidth
            // A pin stands up out of the first row.
            spacing: Theme.mm(1.8)

            Word {
                width: parent.width
                text: root.choice.says ?? ""
                Accessible.ignored: true
            }
            DrawnChoice {
                enabled: !Session.readOnly
                width: parent.width
                height: implicitHeight
                pictureMost: 14
                // Where a long word leaves room for one in a row only.
                beside: columns === 1
                accessibleName: root.choice.says ?? ""
                choices: root.choice.choices ?? []
                value: root.choice.value
                onChosen: value => StockModel.pick(value)
            }
        }
    }
    Word {
        width: parent.width
        text: StockModel.pieces.length > 0
              ? qsTr("These are cut up first. Press one to take it away.")
              : qsTr("What you have is cut up before anything is bought. Measure it without its selvages.")
    }
    Grid {
        width: parent.width
        columns: root.beside ? 2 : 1
        columnSpacing: Theme.margin * 2
        rowSpacing: Theme.mm(1.5)

        Repeater {
            model: StockModel.pieces
            Pressable {
                id: owned
                required property int index
                required property string modelData
                readonly property var drawn: StockModel.drawn[index] ?? null
                width: root.half
                height: Math.max(picture.height, words.height) + Theme.mm(3)
                inList: true
                //: spoken name of a piece of cloth in the list: pressing it takes it away
                accessibleName: qsTr("take away: %1").arg(modelData)
                onClicked: StockModel.takeAway(index)
                KeyLine { width: parent.width }
                ClothLayout {
                    id: picture
                    y: Theme.mm(1.5)
                    width: parent.width * 0.42
                    height: Theme.mm(24)
                    kind: "remnant"
                    clothRole: owned.drawn?.print ?? "front"
                    colour: owned.drawn?.colour ?? ""
                    lengthMm: owned.drawn?.lengthMm ?? 0
                    usableMm: owned.drawn?.widthMm ?? 0
                    accessibleName: words.text.replace(/[{}]/g, "")
                    scaleLengthMm: StockModel.mostLengthMm
                    scaleWidthMm: StockModel.mostWidthMm
                }
                InlineLength {
                    id: words
                    x: picture.width + Theme.gap
                    width: parent.width - x
                    anchors.verticalCenter: parent.verticalCenter
                    text: owned.modelData
                }
                FocusOutline { visible: owned.keyboardFocus }
            }
        }
    }
}
