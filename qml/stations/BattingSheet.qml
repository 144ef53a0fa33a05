// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Batting from the roll and by the package beside each other; a press says which way it is bought. */
Item {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width

    implicitHeight: Math.max(terms.height, beside ? ways.height : 0) + (beside ? 0 : Theme.gap + ways.height)
    height: implicitHeight

    Component.onCompleted: BattingModel.open = true
    Component.onDestruction: BattingModel.open = false

    Column {
        id: terms
        x: root.beside && !Theme.left ? root.width - width : 0
        y: root.beside ? 0 : ways.height + Theme.gap
        width: root.half
        spacing: Theme.gap

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: BattingModel.amounts.length
            AmountRow {
                required property int index
                enabled: !Session.readOnly
                width: terms.width
                height: implicitHeight
                amount: BattingModel.amounts[index] ?? ({})
                onNudged: (key, steps) => BattingModel.nudge(key, steps)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
                onPicked: (key, value) => BattingModel.pick(value)
            }
        }
        CutButton {
            width: parent.width
            enabled: BattingModel.whyNot === "" && !Session.readOnly
            //: adds the size of a package of batting to those held against the roll
            text: qsTr("Add this size")
            reason: BattingModel.whyNot
            onClicked: BattingModel.add()
        }
        CutButton {
            visible: BattingModel.ways.length > 1
            width: parent.width
            enabled: !Session.readOnly
            //: takes all sizes of packages off the list
            text: qsTr("Forget the sizes")
            onClicked: BattingModel.forget()
        }
    }
    Column {
        id: ways
        x: root.beside && Theme.left ? root.width - width : 0
        width: root.half

        Word {
            width: parent.width
            bottomPadding: Theme.mm(2)
            text: BattingModel.verdictSays
        }
        Repeater {
            model: BattingModel.ways.length
            Pressable {
                id: way
                required property int index
                readonly property var told: BattingModel.ways[index] ?? ({})
                readonly property bool taken: told.taken ?? false
                readonly property bool solid: taken !== pressed
                readonly property color ink: solid ? Theme.colors.raised : Theme.colors.ink
                width: ways.width
                height: Math.max(Theme.step, words.height + Theme.mm(4))
                inList: true
                enabled: !Session.readOnly
                accessibleName: (told.says ?? "").replace(/[{}]/g, "")
                accessibleDescription: told.more ?? ""
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: taken
                onClicked: BattingModel.take(index)

                Rectangle {
                    anchors.fill: parent
                    color: way.solid ? Theme.colors.ink : Theme.colors.raised
                }
                KeyLine { width: parent.width }
                Column {
                    id: words
                    x: Theme.mm(2)
                    width: parent.width - 2 * x
                    anchors.verticalCenter: parent.verticalCenter
                    InlineLength {
                        width: parent.width
                        bold: true
                        color: way.ink
                        lengthColor: way.ink
                        text: way.told.says ?? ""
                        Accessible.ignored: true
                    }
                    Word {
                        width: parent.width
                        color: way.ink
                        text: way.told.more ?? ""
                        Accessible.ignored: true
                    }
                }
                FocusOutline {
                    visible: way.keyboardFocus
                    anchors.margins: Theme.focusGap
                }
            }
        }
    }
}
