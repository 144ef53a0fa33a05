// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The cloth in hand: its name, the colour as chosen beside its grey, and what is to be said of it. */
Column {
    id: root

    property bool tapping: false
    /** As which cloth it is printed. */
    property string clothRole: "front"
    /** How high it is shown. */
    property real swatch: Theme.mm(18)

    spacing: Theme.gap

    Word {
        width: parent.width
        cap: Theme.capHead
        bold: true
        text: ClothColour.name
    }
    Row {
        visible: ClothColour.colour !== ""
        width: parent.width
        height: root.swatch
        spacing: Theme.gap
        DyedCloth {
            width: (parent.width - Theme.gap) * 0.64
            height: parent.height
            clothRole: root.clothRole
            colour: ClothColour.colour
        }
        DyedCloth {
            width: (parent.width - Theme.gap) * 0.36
            height: parent.height
            clothRole: root.clothRole
            colour: ClothColour.grey
        }
    }
    Word {
        objectName: "shade-held"
        width: parent.width
        bold: true
        text: ClothColour.says
    }
    Word {
        visible: text !== ""
        objectName: "shade-picture-says"
        width: parent.width
        text: root.tapping ? ClothColour.pictureSays : ""
    }
    Word {
        visible: root.tapping && ClothColour.sampled
        width: parent.width
        color: Theme.colors.inkSoft
        text: qsTr("This is the cloth in that light, not the cloth itself. Compare it with the cloth in your hand.")
    }
}
