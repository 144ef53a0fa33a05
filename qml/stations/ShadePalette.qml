// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** A dyer's card of the cloth, light to dark, under three fans: lighter or darker, on by the hue, stronger or greyer. */
Flickable {
    id: root

    /** As which cloth it is printed. */
    property string clothRole: "front"

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height + 2 * Theme.margin

    Column {
        id: rows
        x: Theme.margin
        y: Theme.margin
        width: root.width - 2 * Theme.margin
        spacing: Theme.gap

        Flow {
            id: fans
            readonly property real least: 2 * Theme.step + Theme.gap
            readonly property real each: Math.max(least, Math.min(Theme.mm(44), (width - 2 * spacing) / 3 - 0.5))
            /** Three do not stand side by side: each takes a line. */
            readonly property bool lined: 3 * each + 2 * spacing > width
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: [
                    { what: "lightness", says: qsTr("lightness") },
                    //: red, orange, yellow, green …
                    { what: "hue", says: qsTr("hue") },
                    //: how strong a colour is, from grey to the strongest there is
                    { what: "strength", says: qsTr("strength") }
                ]
                Item {
                    id: pair
                    required property var modelData
                    width: fans.lined ? fans.width : fans.each
                    height: fans.lined ? Math.max(Theme.step, said.implicitHeight) : steps.y + steps.height
                    Word {
                        id: said
                        x: fans.lined && Theme.left ? pair.width - width : 0
                        y: fans.lined ? (pair.height - height) / 2 : 0
                        width: fans.lined ? pair.width - steps.width - fan.width - 2 * Theme.gap : pair.width
                        horizontalAlignment: !fans.lined ? Text.AlignHCenter : Theme.left ? Text.AlignRight : Text.AlignLeft
                        text: pair.modelData.says
                    }
                    SwatchFan {
                        id: fan
                        x: !fans.lined ? 0 : Theme.left ? steps.width + Theme.gap : pair.width - steps.width - width - Theme.gap
                        y: fans.lined ? (pair.height - height) / 2 : said.height + Theme.mm(1)
                        width: fans.lined ? Theme.mm(16) : fans.each
                        height: Theme.mm(Theme.small ? 10 : 14)
                        clothRole: root.clothRole
                        colour: ClothColour.colour
                        what: pair.modelData.what
                    }
                    Row {
                        id: steps
                        x: fans.lined && !Theme.left ? pair.width - width : 0
                        y: fans.lined ? (pair.height - height) / 2 : fan.y + fan.height + Theme.mm(1)
                        spacing: (fans.lined ? fans.least : fans.each) - 2 * Theme.step
                        StepButton {
                            sign: "-"
                            enabled: !Session.readOnly
                            inList: true
                            //: spoken name of a minus button; %1 is what it lessens
                            accessibleName: qsTr("%1 less").arg(pair.modelData.says)
                            onStepped: ClothColour.nudge(pair.modelData.what, -1)
                        }
                        StepButton {
                            sign: "+"
                            enabled: !Session.readOnly
                            inList: true
                            //: spoken name of a plus button; %1 is what it adds to
                            accessibleName: qsTr("%1 more").arg(pair.modelData.says)
                            onStepped: ClothColour.nudge(pair.modelData.what, 1)
                        }
                    }
                }
            }
        }
        DyersCard {
            /** A hue a column where seven find room; else a hue a row. */
            readonly property bool columns: parent.width - Theme.mm(6) >= 7 * Theme.control
            readonly property real room: root.height - 2 * Theme.margin - fans.height - Theme.gap - Theme.mm(6)
            width: Math.min(parent.width, Theme.mm(columns ? 150 : 120))
            height: implicitHeight
            across: columns ? 7 : 5
            cellHeight: Math.max(Theme.step, Math.min(Theme.mm(22), room / (columns ? 5 : 7)))
            enabled: !Session.readOnly
            clothRole: root.clothRole
            choices: columns ? ClothColour.palette : ClothColour.paletteByHue
            value: ClothColour.colour
            onChosen: value => ClothColour.choose(value)
        }
    }
}
