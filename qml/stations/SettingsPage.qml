// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The light she works in, her cutting hand, and how large the screen is: a book of swatches, each a picture of what it does. Rolls. */
FocusScope {
    id: root
    focus: true

    function leave() {
        Session.view = "shelf";
    }

    Word {
        id: head
        x: Theme.left ? back.x + back.width + Theme.margin : Theme.margin
        y: back.y + Math.max(0, (back.height - implicitHeight) / 2)
        width: root.width - back.width - 3 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: qsTr("Language and screen")
    }
    CutButton {
        id: back
        x: Theme.left ? Theme.margin : root.width - width - Theme.margin
        y: Theme.margin
        width: Math.min(implicitWidth, root.width / 2)
        height: Math.max(Theme.step, contentHeight)
        text: qsTr("Back to the shelf")
        onClicked: root.leave()
    }
    Flickable {
        id: roll
        y: Math.max(head.y + head.height, back.y + back.height) + Theme.gap
        width: root.width
        height: root.height - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        contentHeight: choices.height + Theme.margin

        Flow {
            id: choices
            x: Theme.margin
            width: roll.width - 2 * Theme.margin
            spacing: Theme.mm(5)

            /** Six swatches beside each other, as in a sample book; on a narrow page four, or a choice to a row. */
            readonly property bool six: width >= Theme.mm(190)
            readonly property bool halves: width >= Theme.mm(118)
            readonly property real half: Math.floor((width - spacing) / 2)
            readonly property real two: six ? Math.floor((width - 2 * spacing) / 3) : halves ? half : width
            readonly property real lone: six ? two : width
            readonly property real three: six ? half : width
            readonly property real four: six ? width - spacing - two : width

            SettingsGroup {
                width: choices.four
                title: qsTr("Language")
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Language")
                    readonly property var tongues: Language.choices
                    choices: tongues.map(tongue => ({ value: tongue.value, says: tongue.says, scene: "label",
                                                      words: Number(8.5).toLocaleString(Qt.locale(tongue.value), "f", 1) + " mm" }))
                    value: Language.code
                    onChosen: value => Language.code = value
                }
            }
            SettingsGroup {
                width: choices.lone
                title: qsTr("Cutting hand")
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Cutting hand")
                    // Left on the left, whichever is chosen: they stay under the finger.
                    choices: [leftHand, rightHand]
                    readonly property var rightHand: ({ value: false, says: qsTr("Right"), scene: "hand-right" })
                    readonly property var leftHand: ({ value: true, says: qsTr("Left"), scene: "hand-left" })
                    value: Session.leftHanded
                    onChosen: value => Session.leftHanded = value
                }
            }
            SettingsGroup {
                width: choices.three
                title: qsTr("Light")
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Light")
                    //: the light she works in
                    choices: [{ value: "day", says: qsTr("Day"), scene: "light", inks: Theme.day },
                              { value: "lamp", says: qsTr("Lamp"), scene: "light", inks: Theme.lamp },
                              { value: "contrast", says: qsTr("High contrast"), scene: "light", inks: Theme.contrast }]
                    value: Look.colourSet
                    onChosen: value => Look.colourSet = value
                }
            }
            SettingsGroup {
                width: choices.three
                title: qsTr("Read aloud")
                says: !Aloud.voiced ? qsTr("This tablet has no voice for your language: nothing is read out.")
                    : Aloud.when === "each" ? qsTr("Where you cut, a step is read out only once you have asked for it there.") : ""
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Read aloud")
                    //: when a step is read out: never, when she asks, at each new step
                    choices: [{ value: "off", says: qsTr("Never"), scene: "aloud-off" },
                              { value: "asked", says: qsTr("When asked"), scene: "aloud-asked" },
                              { value: "each", says: qsTr("Each new step"), scene: "aloud-each" }]
                    value: Aloud.when
                    onChosen: value => Aloud.when = value
                }
            }
            SettingsGroup {
                width: choices.two
                title: qsTr("Movement")
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Movement")
                    //: whether sheets slide into place or are simply there
                    choices: [{ value: false, says: qsTr("Sheets slide in"), scene: "slides" },
                              { value: true, says: qsTr("Nothing moves"), scene: "stands" }]
                    value: Look.reducedMotion
                    onChosen: value => Look.reducedMotion = value
                }
            }
            SettingsGroup {
                width: choices.two
                title: qsTr("Page-turn pedal")
                says: qsTr("Put it well away from the machine’s pedal. While a block is stitched it turns nothing.")
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Page-turn pedal")
                    choices: [{ value: true, says: qsTr("Turns the steps"), scene: "pedal-on" },
                              { value: false, says: qsTr("Turns nothing"), scene: "pedal-off" }]
                    value: Session.pedal
                    onChosen: value => Session.pedal = value
                }
            }
            SettingsGroup {
                width: choices.two
                title: qsTr("Window for helpers")
                DrawnChoice {
                    width: parent.width
                    accessibleName: qsTr("Window for helpers")
                    choices: [{ value: false, says: qsTr("Closed"), scene: "helper-off" },
                              { value: true, says: qsTr("Open"), scene: "helper-on" }]
                    value: Session.helper
                    onChosen: value => Session.helper = value
                }
            }
            SettingsGroup {
                width: choices.three
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
}
