// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What the piece costs to make and what to ask for it: the sum line by line, then what she reckons with. */
Item {
    id: root

    signal ask(string key, string label, string kind, string text)

    /** Wide enough for the sum beside what it is made of: it moves in sight of the finger. */
    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width

    implicitHeight: beside ? Math.max(sum.height, terms.height) : sum.height + Theme.gap + terms.height
    height: implicitHeight

    Column {
        id: sum
        x: Theme.left && root.beside ? root.width - width : 0
        width: root.half

        Repeater {
            model: PriceModel.working
            Item {
                id: line
                required property var modelData
                width: sum.width
                height: Math.max(says.height, value.height) + Theme.mm(1.5) + (rule.visible ? rule.height + Theme.mm(1) : 0)

                Accessible.role: Accessible.StaticText
                //: spoken: %1 is a line of the sum, %2 its amount
                Accessible.name: qsTr("%1: %2").arg(modelData.says).arg(modelData.value)

                Word {
                    id: says
                    width: parent.width - value.width - Theme.gap
                    bold: line.modelData.total
                    text: line.modelData.says
                    Accessible.ignored: true
                }
                Word {
                    id: value
                    x: parent.width - width
                    wrapMode: Text.NoWrap
                    bold: true
                    cap: line.modelData.total ? Theme.capThird : Theme.capWord
                    text: line.modelData.value
                    Accessible.ignored: true
                }
                DoubleRule {
                    id: rule
                    visible: line.modelData.total
                    y: Math.max(says.height, value.height)
                    width: parent.width
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
    Column {
        id: terms
        x: !root.beside || Theme.left ? 0 : root.width - width
        y: root.beside ? 0 : sum.height + Theme.gap
        width: root.half
        spacing: Theme.gap

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: PriceModel.amounts.length
            AmountRow {
                required property int index
                enabled: !Session.readOnly
                width: terms.width
                height: implicitHeight
                amount: PriceModel.amounts[index] ?? ({})
                onNudged: (key, steps) => PriceModel.nudge(key, steps)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
            }
        }
    }
}
