// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** A paper label tied to a thing in a drawing: its amount and what it is; a touch takes it in hand. */
Pressable {
    id: root

    property string says
    property string value
    property bool inHand: false
    /** Nothing of it yet: it is dotted, and still may be taken in hand. */
    property bool bare: false
    /** Only told, never in hand: it has no label of its own. */
    property bool told: false
    /** The amounts of labels under each other end below each other in so much room; 0 for as much as this one takes. */
    property real valueRoom: 0
    /** Where room is scarce: two lines of words nearly fill it. */
    property bool tight: Theme.small
    /** The amount stands over the words. */
    property bool stacked: false

    readonly property bool solid: inHand !== pressed
    readonly property color lettering: solid ? Theme.colors.raised : Theme.colors.ink
    readonly property real air: Theme.mm(Theme.small ? 1.5 : 1.8)
    readonly property real gap: value !== "" && !stacked ? Theme.mm(2.4) : 0
    readonly property real room: stacked || value === "" ? 0 : Math.max(valueRoom, length.implicitWidth)
    readonly property real valueWidth: length.implicitWidth
    /** Its words break nowhere but between them. */
    readonly property bool whole: longest <= words.width
    readonly property real longest: letters.font.pixelSize > 0 ? Math.max(0, ...words.text.split(" ").map(word => letters.advanceWidth(word))) : 0
    readonly property real wanted: air * 2 + (stacked ? length.implicitHeight + Theme.mm(1) : 0) + words.implicitHeight - Theme.mm(tight && !stacked ? 3.4 : 2.4)

    enabled: !told
    inList: true
    accessibleName: value !== "" ? says + ": " + value : says
    Accessible.role: told ? Accessible.StaticText : Accessible.RadioButton
    Accessible.checkable: !told
    Accessible.checked: inHand

    FontMetrics {
        id: letters
        font: words.font
    }
    Rectangle {
        visible: !root.told
        anchors.fill: parent
        color: root.solid ? Theme.colors.ink : root.bare ? Theme.colors.paper : Theme.colors.raised
        border.color: Theme.colors.ink
        border.width: root.bare && !root.solid ? 0 : Theme.key
    }
    component Dots: DotLine {
        visible: root.bare && !root.solid && !root.told
        dot: Theme.mm(0.7)
        step: Theme.mm(1.6)
        color: Theme.colors.ink
    }
    Dots {
        width: parent.width
        height: dot
    }
    Dots {
        y: parent.height - dot
        width: parent.width
        height: dot
    }
    FigureText {
        id: length
        visible: root.value !== ""
        x: root.stacked ? root.air : root.air + root.room - implicitWidth
        y: root.stacked ? root.air : (root.height - implicitHeight) / 2
        figure: ({ whole: root.value, text: root.value })
        cap: Theme.small ? Theme.mm(4.6) : Theme.capHead
        color: root.lettering
        accessibleIgnored: true
    }
    Word {
        id: words
        x: root.air + root.room + root.gap
        y: root.stacked ? length.y + length.implicitHeight + Theme.mm(0.6) : (root.height - implicitHeight) / 2 + Theme.mm(0.4)
        width: Math.max(1, root.width - x - root.air)
        text: root.says
        color: root.lettering
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
