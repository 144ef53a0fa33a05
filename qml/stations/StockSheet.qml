// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Cloth she has already: a piece is entered and added; a piece listed is pressed to take it away. */
Item {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width

    implicitHeight: Math.max(terms.height, beside ? there.height : 0) + (beside ? 0 : Theme.gap + there.height)
    height: implicitHeight

    Column {
        id: terms
        x: root.beside && !Theme.left ? root.width - width : 0
        width: root.half
        spacing: Theme.gap

        Repeater {
            model: StockModel.amounts.length
            AmountRow {
                required property int index
                enabled: !Session.readOnly
                width: terms.width
                height: implicitHeight
                amount: StockModel.amounts[index] ?? ({})
                onNudged: (key, steps) => StockModel.nudge(key, steps)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
                onPicked: (key, value) => StockModel.pick(value)
            }
        }
        CutButton {
            width: parent.width
            enabled: StockModel.whyNot === "" && !Session.readOnly
            //: adds the piece of cloth just entered
            text: qsTr("Add this piece")
            reason: StockModel.whyNot
            onClicked: StockModel.add()
        }
    }
    Column {
        id: there
        x: root.beside && Theme.left ? root.width - width : 0
        y: root.beside ? 0 : terms.height + Theme.gap
        width: root.half

        Word {
            width: parent.width
            text: StockModel.pieces.length > 0
                  ? qsTr("These are cut up first. Press one to take it away.")
                  : qsTr("A remnant or a length you have is cut up before anything is bought. Measure it without its selvages.")
        }
        Repeater {
            model: StockModel.pieces
            Pressable {
                id: piece
                required property int index
                required property string modelData
                width: there.width
                height: Math.max(Theme.step, words.height + Theme.mm(4))
                inList: true
                //: spoken name of a piece of cloth in the list: pressing it takes it away
                accessibleName: qsTr("take away: %1").arg(modelData)
                onClicked: StockModel.takeAway(index)
                KeyLine { width: parent.width }
                InlineLength {
                    id: words
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    text: piece.modelData
                }
                FocusOutline { visible: piece.keyboardFocus }
            }
        }
    }
}
