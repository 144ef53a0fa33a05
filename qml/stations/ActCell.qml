// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One thing to do: its vignette, its place in the order, one sentence, and what can hurt just there. */
Item {
    id: root

    /** {draws, says, minds} */
    property var act: null
    /** Its place in the order; 0 where it stands alone. */
    property int number: 0
    /** The words stand beside the vignette, not beneath. */
    property bool beside: false
    property real pictureHeight: Theme.mm(20)
    /** Another drawing in the vignette's stead. */
    property Component drawn: null

    readonly property string minds: act?.minds ?? ""
    readonly property real saysHeight: says.text !== "" ? says.implicitHeight + (minds !== "" ? Theme.mm(0.8) : 0) : 0
    /** The same whether or not its leaf is shown. */
    readonly property real wordsHeight: saysHeight + (minds !== "" ? caution.implicitHeight : 0)
    property color ground: Theme.colors.paper
    readonly property real pictureWidth: beside ? Math.round(width * 0.38) : width
    readonly property real air: Theme.mm(1.6)

    implicitHeight: beside ? Math.max(pictureHeight, wordsHeight) : pictureHeight + air + wordsHeight

    Rectangle {
        id: field
        x: root.beside && Theme.left ? root.width - width : 0
        width: root.pictureWidth
        height: root.pictureHeight
        color: root.ground
    }
    ActSketch {
        // Clear of its number.
        x: field.x + tag.room
        visible: root.drawn === null
        width: field.width - tag.room
        height: field.height
        kind: root.act?.draws ?? ""
    }
    Loader {
        x: field.x
        width: field.width
        height: field.height
        sourceComponent: root.drawn
    }
    Rectangle {
        id: tag
        readonly property real room: root.number > 0 ? width : 0
        visible: root.number > 0
        x: field.x
        width: Math.max(height, place.implicitWidth + Theme.mm(2))
        height: Theme.mm(6.4)
        color: Theme.colors.ink
        Word {
            id: place
            anchors.centerIn: parent
            bold: true
            color: Theme.colors.raised
            wrapMode: Text.NoWrap
            text: root.number
        }
    }
    Item {
        id: words
        x: root.beside && !Theme.left ? field.width + Theme.gap : 0
        y: root.beside ? Math.max(0, (root.pictureHeight - root.wordsHeight) / 2) : field.height + root.air
        width: root.beside ? root.width - field.width - Theme.gap : root.width
        height: root.wordsHeight
        InlineLength {
            id: says
            visible: text !== ""
            width: parent.width
            lengthCap: Theme.mm(7)
            text: root.act?.says ?? ""
        }
        CautionLine {
            y: root.saysHeight
            width: parent.width
            text: root.minds
        }
        // Measured, not shown: on another leaf a caution has no height of its own.
        Word {
            id: caution
            visible: false
            width: parent.width - cap * 1.25 - Theme.mm(3)
            text: root.minds
        }
    }
}
