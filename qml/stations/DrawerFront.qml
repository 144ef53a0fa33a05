// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/**
 * The front of a drawer in the chest under the table: wood with a knob, and a paper label that says what lies in
 * it and what matters most of that. Pulled out, its label is printed solid and what it holds lies beneath.
 */
Pressable {
    id: root

    property string text
    /** Its sign, by its name among the pictograms. */
    property string pictogram
    property string summary
    property var figure: null
    property bool open: false
    /** The height its neighbours take. */
    property real least: 0

    readonly property bool solid: open !== pressed
    readonly property color ink: solid ? Theme.colors.raised : Theme.colors.ink
    readonly property color ground: solid ? Theme.colors.ink : Theme.colors.raised
    readonly property real rim: Theme.mm(1.3)
    readonly property real air: Theme.mm(1.6)
    /** The width at which no word of it is broken. */
    readonly property real leastWidth: longest + 2 * air + rim + knob.width + Theme.mm(3.4)
    readonly property real longest: (text + " " + summary).split(" ").reduce((most, word) => Math.max(most, lengthOf(word, heavy)), 0)
    /** Beside its name a figure would break a word: it stands beneath. */
    readonly property bool beneath: length.active && longest + length.width + 3 * air > plate.width
    /** The height it asks for by itself. */
    readonly property real wanted: Math.max(Theme.step, plate.inside + 2 * (rim + Theme.mm(Theme.small ? 0.2 : 0.8)))

    function lengthOf(words: string, letters: FontMetrics): real {
        return letters.font.pixelSize > 0 ? Math.ceil(letters.advanceWidth(words)) : 0;
    }

    inList: true
    implicitHeight: open ? wanted : Math.max(least, wanted)
    accessibleName: text + (summary !== "" ? ", " + summary : "")
    //: of a group in a list: what it holds is seen, or is not
    accessibleDescription: open ? qsTr("open") : qsTr("closed")
    Accessible.role: Accessible.Button
    Accessible.checkable: true
    Accessible.checked: open

    FontMetrics {
        id: heavy
        font: words.font
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.colors.table
        border.width: Theme.key
        border.color: Theme.colors.ink
    }
    // The grain of the front, beside its label.
    Repeater {
        model: 3
        Rectangle {
            required property int index
            x: plate.x + plate.width + Theme.mm(index === 1 ? 0.6 : 1.1)
            y: root.height * (0.16 + 0.33 * index)
            width: root.width - x - Theme.mm(1)
            height: Theme.keyThin
            color: Theme.colors.tableMark
        }
    }
    Rectangle {
        id: knob
        width: Theme.mm(4)
        height: width
        radius: width / 2
        x: root.width - width - Theme.mm(1.6)
        y: (root.height - height) / 2
        color: root.solid ? Theme.colors.raised : Theme.colors.ink
        border.width: Theme.key
        border.color: Theme.colors.ink
    }
    Rectangle {
        id: plate
        readonly property real inside: root.beneath ? words.implicitHeight + length.height
                                                    : Math.max(words.implicitHeight + (said.visible ? said.implicitHeight : 0), length.active ? length.height : 0)
        x: root.rim
        y: root.rim
        width: knob.x - x - Theme.mm(1.6)
        height: root.height - 2 * root.rim
        color: root.ground
        border.width: Theme.keyThin
        border.color: Theme.colors.ink

        Pictogram {
            id: picture
            // It gives way before a word has to be broken.
            readonly property real besides: 2 * root.air + (length.active && !root.beneath ? length.width + root.air : 0)
            readonly property real room: plate.width - besides - width - root.air
            // Nor does it make three lines of two.
            visible: name !== "" && root.longest <= room && root.lengthOf(root.text, heavy) <= 1.6 * room
            x: root.air
            width: Theme.mm(8.4)
            anchors.verticalCenter: parent.verticalCenter
            name: root.pictogram
            ink: root.ink
            ground: root.ground
        }
        Word {
            id: words
            x: root.air + (picture.visible ? picture.width + root.air : 0)
            width: (length.active && !root.beneath ? length.x : plate.width) - x - root.air
            y: (parent.height - implicitHeight - (said.visible ? said.implicitHeight : root.beneath ? length.height : 0)) / 2
            cap: Theme.capWord
            bold: true
            color: root.ink
            text: root.text
            Accessible.ignored: true
        }
        Word {
            id: said
            visible: text !== ""
            x: words.x
            y: words.y + words.implicitHeight
            width: words.width
            color: root.ink
            text: root.open ? "" : root.summary
            Accessible.ignored: true
        }
        Loader {
            id: length
            active: !root.open && root.summary === "" && root.figure !== null
            visible: active
            x: root.beneath ? words.x : plate.width - width - root.air
            y: root.beneath ? words.y + words.implicitHeight : (parent.height - height) / 2
            sourceComponent: FigureText {
                figure: root.figure
                cap: Theme.capInText
                color: root.ink
                accessibleIgnored: true
            }
        }
    }
    CutShape {
        visible: root.keyboardFocus
        anchors.fill: parent
        anchors.margins: Theme.focusGap
        stroke: Theme.colors.accent
        strokeWidth: Theme.keyBold
    }
}
