// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The price as one strip of cloth cut into what it is made of, then what she reckons with: it is cut anew in sight of the finger. */
Column {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(150)

    spacing: Theme.gap

    PriceStrip {
        width: root.width
        parts: PriceModel.parts
        tape: PriceModel.tape
        total: PriceModel.priceText
        totalSays: qsTr("the price")
    }
    Grid {
        id: terms
        readonly property real cell: columns === 2 ? (width - columnSpacing) / 2 : width
        width: root.width
        columns: root.beside ? 2 : 1
        columnSpacing: Theme.margin * 2
        rowSpacing: Theme.mm(1.5)

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: PriceModel.amounts.length
            AmountRow {
                required property int index
                enabled: !Session.readOnly
                width: terms.cell
                height: implicitHeight
                amount: PriceModel.amounts[index] ?? ({})
                onNudged: (key, steps) => PriceModel.nudge(key, steps)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
            }
        }
        Column {
            width: terms.cell
            Repeater {
                model: PriceModel.besides
                Word {
                    required property var modelData
                    width: terms.cell
                    //: %1 is what is counted, %2 its amount
                    text: qsTr("%1: %2").arg(modelData.says).arg(modelData.value)
                }
            }
        }
    }
    Word {
        width: parent.width
        visible: text !== ""
        bold: true
        text: PriceModel.unpaidSays
    }
    Word {
        width: parent.width
        color: Theme.colors.inkSoft
        text: PriceModel.notesSay
    }
}
