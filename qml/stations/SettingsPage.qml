// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The place at the mat, where all that can be settled about the tablet stands as it is settled; what is taken in hand is changed in a drawer that leaves it in sight. */
FocusScope {
    id: root
    objectName: "settings-page"
    focus: true

    /** Which of `things` is in hand; none: -1. */
    property int held: -1
    readonly property string heldName: things[held]?.name ?? ""
    /** The page is too low for a heading over the picture. */
    readonly property bool low: height < Theme.mm(115)

    //: when a step is read out: never, when she asks, at each new step
    readonly property var voices: [{ value: "off", says: qsTr("Never"), scene: "aloud-off" },
                                   { value: "asked", says: qsTr("When asked"), scene: "aloud-asked" },
                                   { value: "each", says: qsTr("Each new step"), scene: "aloud-each" }]
    //: the light she works in
    readonly property var lights: [{ value: "day", says: qsTr("Day"), scene: "light", inks: Theme.day },
                                   { value: "lamp", says: qsTr("Lamp"), scene: "light", inks: Theme.lamp },
                                   { value: "contrast", says: qsTr("High contrast"), scene: "light", inks: Theme.contrast }]
    readonly property var helpers: [{ value: false, says: qsTr("Closed"), scene: "helper-off" },
                                    { value: true, says: qsTr("Open"), scene: "helper-on" }]
    // Left on the left, whichever is chosen: they stay under the finger.
    readonly property var hands: [{ value: true, says: qsTr("Left"), scene: "hand-left" },
                                  { value: false, says: qsTr("Right"), scene: "hand-right" }]
    //: whether sheets slide into place or are simply there
    readonly property var ways: [{ value: false, says: qsTr("Sheets slide in"), scene: "slides" },
                                 { value: true, says: qsTr("Nothing moves"), scene: "stands" }]
    readonly property var pedals: [{ value: true, says: qsTr("Turns the steps"), scene: "pedal-on" },
                                   { value: false, says: qsTr("Turns nothing"), scene: "pedal-off" }]
    readonly property var tongues: {
        const all = [];
        for (let i = 0; i < Language.choices.length; ++i)
            all.push({ value: Language.choices[i].value, says: Language.choices[i].says, scene: "label",
                       words: Number(8.5).toLocaleString(Qt.locale(Language.choices[i].value), "f", 1) + " mm" });
        return all;
    }

    readonly property var things: [
        thing("language", qsTr("Language"), tongues, Language.code),
        thing("light", qsTr("Light"), lights, Look.colourSet),
        thing("aloud", qsTr("Read aloud"), voices, Aloud.when),
        thing("helper", qsTr("Window for helpers"), helpers, Session.helper),
        thing("hand", qsTr("Cutting hand"), hands, Session.leftHanded),
        thing("movement", qsTr("Movement"), ways, Look.reducedMotion),
        { name: "card", title: qsTr("Size of the screen"), says: "", value: 0, words: "", choices: [] },
        thing("pedal", qsTr("Page-turn pedal"), pedals, Session.pedal)
    ]

    function thing(name: string, title: string, choices: var, value: var): var {
        for (let i = 0; i < choices.length; ++i)
            if (choices[i].value === value)
                return { name, title, says: choices[i].says, value, words: choices[i].words ?? "", choices };
        return { name, title, says: "", value, words: "", choices };
    }
    /** Takes what is called so in hand, or lets go of what is. */
    function take(name: string) {
        held = -1;
        for (let i = 0; i < things.length; ++i)
            if (things[i].name === name)
                held = i;
    }
    function choose(value: var) {
        if (heldName === "language")
            Language.code = value;
        else if (heldName === "light")
            Look.colourSet = value;
        else if (heldName === "aloud")
            Aloud.when = value;
        else if (heldName === "helper")
            Session.helper = value;
        else if (heldName === "hand")
            Session.leftHanded = value;
        else if (heldName === "movement")
            Look.reducedMotion = value;
        else if (heldName === "pedal")
            Session.pedal = value;
    }
    function leave() {
        if (held >= 0)
            held = -1;
        else
            Session.view = "shelf";
    }

    Word {
        id: head
        x: Theme.left ? back.x + back.width + Theme.margin : Theme.margin
        y: back.y + Math.max(0, (back.height - implicitHeight) / 2)
        width: root.width - back.width - 3 * Theme.margin
        cap: Theme.capHead
        bold: true
        //: heading of the page where the tablet is set up: the place where it stands beside the cutting mat
        text: qsTr("The place at the mat")
    }
    CutButton {
        id: back
        x: Theme.left ? Theme.margin : root.width - width - Theme.margin
        y: root.low ? Theme.mm(1.5) : Theme.margin
        width: Math.min(implicitWidth, root.width / 2)
        height: Math.max(root.low ? Theme.control : Theme.step, contentHeight)
        text: qsTr("Back to the shelf")
        onClicked: Session.view = "shelf"
    }
    SettingsScene {
        id: scene
        x: Theme.margin
        y: Math.max(head.y + head.height, back.y + back.height) + Theme.mm(1.5)
        width: root.width - 2 * Theme.margin
        height: root.height - y - Theme.mm(2)
        things: root.things
        held: root.held
        coverFrom: drawer.visible ? drawer.y - y : 0
        coverTo: drawer.visible ? drawer.y + drawer.height - y : 0
        onTaken: thing => root.held = root.held === thing ? -1 : thing
    }
    Rectangle {
        id: drawer
        readonly property real pad: Theme.mm(root.low ? 1.5 : 3)
        visible: root.held >= 0
        // It lies over the rows that what is in hand does not stand in.
        readonly property bool foot: scene.row(root.held) < scene.rows / 2
        readonly property real least: Math.max(Theme.mm(root.low ? 34 : 42), group.y + group.implicitHeight + pad)
        /** No row lies half under it: it ends where one does, unless that hid what is in hand. */
        readonly property real whole: foot ? root.height - scene.y - Math.floor((root.height - least - scene.y) / scene.deep) * scene.deep
                                           : Math.ceil(least / scene.deep) * scene.deep
        readonly property bool clear: foot ? root.height - whole >= scene.y + (scene.row(root.held) + 1) * scene.deep
                                           : whole <= scene.row(root.held) * scene.deep
        /** Else down to the labels of what is in hand. */
        readonly property real labelled: scene.row(root.held) * scene.deep + scene.labelTop
        y: foot ? root.height - height : scene.y
        width: root.width
        height: clear ? whole : foot || labelled < least ? least : labelled
        color: Theme.colors.raised
        // A finger beside the choices does not reach what lies under it.
        TapHandler { gesturePolicy: TapHandler.WithinBounds }
        KeyLine { width: parent.width }
        KeyLine {
            y: parent.height - height
            width: parent.width
        }
        CutButton {
            id: done
            x: Theme.left ? Theme.margin : parent.width - width - Theme.margin
            y: drawer.pad
            width: Math.max(implicitWidth, Theme.targetLeast)
            height: Math.max(Theme.control, contentHeight)
            //: closes what is being set
            text: qsTr("Done")
            onClicked: root.held = -1
        }
        Word {
            id: title
            x: Theme.left ? done.x + done.width + Theme.gapTargets : Theme.margin
            y: done.y + (done.height - implicitHeight) / 2
            width: parent.width - done.width - 2 * Theme.margin - Theme.gapTargets
            cap: Theme.mm(4.6)
            bold: true
            text: root.things[root.held]?.title ?? ""
        }
        Column {
            id: group
            // For either hand in the same place: what was pressed stays under the finger.
            x: Theme.margin
            y: Math.max(done.y + done.height, title.y + title.height) + Theme.mm(1.8)
            width: parent.width - 2 * Theme.margin
            spacing: Theme.mm(1)
            DrawnChoice {
                visible: root.heldName !== "card"
                height: visible ? implicitHeight : 0
                width: parent.width
                beside: true
                pictureMost: root.low ? 17 : 20
                accessibleName: root.things[root.held]?.title ?? ""
                choices: root.things[root.held]?.choices ?? []
                value: root.things[root.held]?.value
                onChosen: value => root.choose(value)
            }
            CardBar {
                visible: root.heldName === "card"
                height: visible ? implicitHeight : 0
                width: parent.width
            }
            Word {
                visible: text !== ""
                width: parent.width
                color: Theme.colors.inkSoft
                text: root.heldName === "pedal" ? qsTr("Put it well away from the machine’s pedal. While a block is stitched it turns nothing.")
                    : root.heldName !== "aloud" ? ""
                    : !Aloud.voiced ? qsTr("This tablet has no voice for your language: nothing is read out.")
                    : Aloud.when === "each" ? qsTr("Where you cut, a step is read out only once you have asked for it there.") : ""
            }
        }
    }
}
