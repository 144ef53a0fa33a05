// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Batting from the roll and by the package beside each other, to one scale; a press says which way it is bought. */
Column {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width

    spacing: Theme.gap

    Component.onCompleted: BattingModel.open = true
    Component.onDestruction: BattingModel.open = false

    component Cells: Grid {
        width: root.width
        columns: root.beside ? 2 : 1
        columnSpacing: Theme.margin * 2
        rowSpacing: Theme.mm(1.5)
    }

    Cells {
        Repeater {
            model: BattingModel.ways.length
            Pressable {
                id: way
                required property int index
                readonly property var told: BattingModel.ways[index] ?? ({})
                readonly property bool taken: told.taken ?? false
                width: root.half
                height: shown.height
                inList: true
                enabled: !Session.readOnly
                accessibleName: (told.says ?? "").replace(/[{}]/g, "")
                accessibleDescription: told.more ?? ""
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: taken
                onClicked: BattingModel.take(index)

                BattingWay {
                    id: shown
                    width: parent.width
                    told: way.told
                    scaleLengthMm: BattingModel.mostLengthMm
                    scaleWidthMm: BattingModel.mostWidthMm
                    solid: way.taken !== way.pressed
                }
                Rectangle {
                    width: parent.width
                    height: shown.height
                    color: "transparent"
                    border.color: Theme.colors.ink
                    border.width: Theme.key
                }
                FocusOutline {
                    visible: way.keyboardFocus
                    anchors.margins: Theme.focusGap
                }
            }
        }
        Column {
            width: root.half
            BattingWay {
                visible: told.lengthMm !== undefined
                width: parent.width
                told: BattingModel.offered
                scaleLengthMm: BattingModel.mostLengthMm
                scaleWidthMm: BattingModel.mostWidthMm
            }
            CutButton {
                width: parent.width
                enabled: BattingModel.whyNot === "" && !Session.readOnly
                //: adds the size of a package of batting to those held against the roll
                text: qsTr("Add this size")
                height: Math.max(Theme.control, contentHeight)
                reason: BattingModel.whyNot
                onClicked: BattingModel.add()
            }
        }
    }
    Word {
        width: parent.width
        text: BattingModel.verdictSays
    }
    Cells {
        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: BattingModel.amounts.length
            AmountRow {
                required property int index
                enabled: !Session.readOnly
                width: root.half
                height: implicitHeight
                amount: BattingModel.amounts[index] ?? ({})
                onNudged: (key, steps) => BattingModel.nudge(key, steps)
                onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
                onPicked: (key, value) => BattingModel.pick(value)
            }
        }
    }
    CutButton {
        visible: BattingModel.ways.length > 1
        width: root.half
        enabled: !Session.readOnly
        //: takes all sizes of packages off the list
        text: qsTr("Forget the sizes")
        height: Math.max(Theme.control, contentHeight)
        onClicked: BattingModel.forget()
    }
}
