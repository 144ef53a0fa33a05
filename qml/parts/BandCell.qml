// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** One cell of the band: a printed sign with its word beneath, or beside it in a low cell. Solid when present. */
Pressable {
    id: root

    property string text
    property string sign
    property bool here: false

    readonly property bool solid: here !== pressed
    readonly property bool low: height < Theme.mm(14)
    /** Something to be done, not a place: in full ink, so that it is seen whether it can be. */
    property bool deed: false
    readonly property color ink: !enabled ? Theme.colors.line : solid ? Theme.colors.paper
                                 : deed ? Theme.colors.ink : Theme.colors.inkSoft
    readonly property color ground: solid ? Theme.colors.ink : Theme.colors.paper
    readonly property real wordBox: Theme.capWord * 1.3
    readonly property real signHeight: Math.max(Theme.mm(4.6), Math.min(Theme.mm(low ? 6 : 10.6), height * (low ? 0.5 : 0.47)))

    implicitWidth: Theme.band
    implicitHeight: Theme.control
    accessibleName: text
    Accessible.role: Accessible.PageTab
    Accessible.selected: here

    Rectangle {
        anchors.fill: parent
        visible: root.solid
        color: root.ground
    }
    Item {
        id: printed
        anchors.centerIn: parent
        width: parent.width
        height: picture.height + Theme.mm(1.6) + root.wordBox
        Pictogram {
            id: picture
            name: root.sign
            height: root.signHeight
            width: height * 48 / 44
            x: (printed.width - width) / 2
            ink: root.ink
            ground: root.ground
        }
        Word {
            id: word
            // The cell is as wide as the band; a longer word in another language is set smaller, not cut.
            width: root.width - Theme.mm(2.4)
            x: (root.width - width) / 2
            y: picture.height + Theme.mm(1.6) + Theme.capWord - baselineOffset
            height: implicitHeight
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.NoWrap
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.fontSize(Theme.mm(2.6))
            text: root.text
            bold: root.here
            color: root.ink
            Accessible.ignored: true
        }
    }
    CutShape {
        visible: root.keyboardFocus
        anchors.fill: parent
        anchors.margins: Theme.focusGap
        stroke: root.solid ? Theme.colors.paper : Theme.colors.accent
        strokeWidth: Theme.keyBold
    }
}
