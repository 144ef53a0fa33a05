// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Three pairs of steps, then the palette, light to dark. */
Flickable {
    id: root

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
                Column {
                    id: pair
                    required property var modelData
                    spacing: Theme.mm(1)
                    Word {
                        width: steps.width
                        text: pair.modelData.says
                    }
                    Row {
                        id: steps
                        spacing: Theme.gap
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
        FieldSwatches {
            readonly property real fitting: (parent.width - 6 * Theme.gap) / 7
            /** A hue a column where seven find room; else a hue a row. */
            readonly property bool columns: fitting >= Theme.control
            readonly property int across: columns ? 7 : 5
            // Half a pixel over, so that rounding never breaks a row early.
            width: Math.min(parent.width, across * cell + (across - 1) * spacing + 0.5)
            cell: columns ? Math.min(Theme.step, fitting) : Theme.step
            enabled: !Session.readOnly
            choices: columns ? ClothColour.palette : ClothColour.paletteByHue
            value: ClothColour.colour
            onChosen: value => ClothColour.choose(value)
        }
    }
}
