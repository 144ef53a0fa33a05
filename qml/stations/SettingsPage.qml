// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The light she works in, her cutting hand, and how large the screen is. Rolls on a low screen. */
FocusScope {
    id: root
    focus: true

    readonly property bool wide: width >= Theme.mm(170)

    function leave() {
        Session.view = "shelf";
    }

    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: root.width - 2 * Theme.margin
        cap: Theme.mm(6.5)
        bold: true
        text: qsTr("Language, light, hand and screen")
    }
    Flickable {
        id: roll
        y: head.y + head.height + Theme.gap
        width: root.width
        height: foot.y - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        contentHeight: choices.height + Theme.gap

        Flow {
            id: choices
            x: Theme.margin
            width: roll.width - 2 * Theme.margin
            spacing: Theme.gapTargets

            readonly property real each: root.wide ? (width - spacing) / 2 : width

            SettingsGroup {
                width: choices.each
                title: qsTr("Language")
                LanguageChoice {
                    width: parent.width
                    inList: true
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Light")
                ChoiceCells {
                    width: parent.width
                    inList: true
                    accessibleName: qsTr("Light")
                    //: the light she works in
                    choices: [{ value: "day", says: qsTr("Day") }, { value: "lamp", says: qsTr("Lamp") },
                              { value: "contrast", says: qsTr("High contrast") }]
                    value: Look.colourSet
                    onChosen: value => Look.colourSet = value
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Cutting hand")
                says: qsTr("For the left hand everything is mirrored but the figures.")
                ChoiceCells {
                    width: parent.width
                    inList: true
                    accessibleName: qsTr("Cutting hand")
                    choices: Theme.left ? [{ value: true, says: qsTr("Left") }, { value: false, says: qsTr("Right") }]
                                        : [{ value: false, says: qsTr("Right") }, { value: true, says: qsTr("Left") }]
                    value: Session.leftHanded
                    onChosen: value => Session.leftHanded = value
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Movement")
                ChoiceCells {
                    width: parent.width
                    inList: true
                    accessibleName: qsTr("Movement")
                    //: whether sheets slide into place or are simply there
                    choices: [{ value: false, says: qsTr("Sheets slide in") }, { value: true, says: qsTr("Nothing moves") }]
                    value: Look.reducedMotion
                    onChosen: value => Look.reducedMotion = value
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Read aloud")
                says: !Aloud.voiced ? qsTr("This tablet has no voice for your language: nothing is read out.")
                    : Aloud.when === "each" ? qsTr("Where you cut, a step is read out only once you have asked for it there.")
                    : Aloud.when === "asked" ? qsTr("Press Read beside a step to hear it; press again to hush it.") : ""
                ChoiceCells {
                    width: parent.width
                    inList: true
                    accessibleName: qsTr("Read aloud")
                    //: when a step is read out: never, when she asks, at each new step
                    choices: [{ value: "off", says: qsTr("Never") }, { value: "asked", says: qsTr("When asked") },
                              { value: "each", says: qsTr("Each new step") }]
                    value: Aloud.when
                    onChosen: value => Aloud.when = value
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Page-turn pedal")
                says: qsTr("Put it where your foot cannot take it for the machine’s, or on the table. While a block is stitched it turns nothing.")
                ChoiceCells {
                    width: parent.width
                    inList: true
                    accessibleName: qsTr("Page-turn pedal")
                    choices: [{ value: true, says: qsTr("Turns the steps") }, { value: false, says: qsTr("Turns nothing") }]
                    value: Session.pedal
                    onChosen: value => Session.pedal = value
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Window for helpers")
                says: qsTr("The same step, large and without buttons, for a second screen: for a helper or a class.")
                ChoiceCells {
                    width: parent.width
                    inList: true
                    accessibleName: qsTr("Window for helpers")
                    choices: [{ value: false, says: qsTr("Closed") }, { value: true, says: qsTr("Open") }]
                    value: Session.helper
                    onChosen: value => Session.helper = value
                }
            }
            SettingsGroup {
                width: choices.each
                title: qsTr("Size of the screen")
                CardBar {
                    width: parent.width
                }
            }
        }
    }
    MoreBelow {
        over: roll
        ground: Theme.colors.paper
    }
    Rectangle {
        id: foot
        y: root.height - height
        width: root.width
        height: back.height + 2 * Theme.margin
        color: Theme.colors.paper
        KeyLine {
            width: parent.width
        }
        CutButton {
            id: back
            x: Theme.left ? Theme.margin : parent.width - width - Theme.margin
            y: Theme.margin
            width: Math.min(Theme.mm(76), parent.width - 2 * Theme.margin)
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("Back to the shelf")
            onClicked: root.leave()
        }
    }
}
