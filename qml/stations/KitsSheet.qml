// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Kits for a class: how many, what they take together, and the cuts of each kit and of the cutting day. */
Item {
    id: root

    signal ask(string key, string label, string kind, string text)

    /** Wide enough for the amounts beside what follows from them. */
    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width

    implicitHeight: Math.max(terms.height, beside ? says.height : 0) + (beside ? 0 : Theme.gap + says.height)
    height: implicitHeight

    Component.onCompleted: KitsModel.open = true
    Component.onDestruction: KitsModel.open = false

    Column {
        id: terms
        x: root.beside && !Theme.left ? root.width - width : 0
        width: root.half
        spacing: Theme.gap

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: KitsModel.amounts.length
            AmountRow {
                required property int index
                enabled: !Session.readOnly
                width: terms.width
                height: implicitHeight
                amount: KitsModel.amounts[index] ?? ({})
                onNudged: (key, steps) => KitsModel.nudge(key, steps)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
                onPicked: (key, value) => KitsModel.pick(key, value)
            }
        }
    }
    Column {
        id: says
        x: root.beside && Theme.left ? root.width - width : 0
        y: root.beside ? 0 : terms.height + Theme.gap
        width: root.half
        spacing: Theme.mm(1.5)

        Word {
            width: parent.width
            text: KitsModel.headSays === "" ? qsTr("Say how many students there are: each gets a kit, you make one too, and every ten students begun add a spare one.") : KitsModel.headSays
            bold: KitsModel.headSays !== ""
        }
        CautionLine {
            width: parent.width
            text: KitsModel.cautionSays
        }
        Repeater {
            model: KitsModel.cloths
            InlineLength {
                required property string modelData
                width: says.width
                text: modelData
            }
        }
        Word {
            width: parent.width
            visible: text !== ""
            text: KitsModel.hoursSay
        }
        Word {
            width: parent.width
            visible: KitsModel.cuts.length > 0
            bold: true
            text: qsTr("What is cut")
        }
        Repeater {
            model: KitsModel.cuts
            Column {
                id: cut
                required property var modelData
                width: says.width
                KeyLine { width: parent.width }
                InlineLength {
                    width: parent.width
                    text: cut.modelData.says
                }
                Word {
                    width: parent.width
                    bold: true
                    text: cut.modelData.each + ", " + cut.modelData.all
                }
            }
        }
    }
}
