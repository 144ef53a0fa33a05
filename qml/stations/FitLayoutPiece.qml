// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One layout that would fit, hung on the line: the piece as it would come out, and on its label its blocks, its size and its hours. */
Pressable {
    id: root

    required property int index
    required property string says
    required property string briefSays
    required property string sizeSays
    required property string sidesSays
    required property string hoursSays
    required property string takesSays
    required property string moreSays
    required property string cautionSays
    required property var drawing
    required property var mats

    property string face: "front"
    /** Room for the label, the same for all; what this one wants of it. */
    property real labelRoom: labelWanted
    readonly property real labelWanted: width > Theme.mm(20) ? label.implicitHeight + Theme.mm(2) : 0
    /** Where the unit would take a line of its own it is left to what is wanted, above. */
    readonly property bool narrow: width < Theme.mm(46)
    readonly property bool chosen: WouldFit.chosen === index
    readonly property bool solid: chosen !== pressed
    readonly property color ink: solid ? Theme.colors.raised : Theme.colors.ink

    function brief(text: string): string {
        return narrow ? text.replace(/[ \u00a0](mm|in)\}/g, "}") : text;
    }

    inList: true
    accessibleName: says
    accessibleDescription: (sizeSays + ". " + takesSays + ". " + moreSays + " " + cautionSays).replace(/[{}]/g, "")
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: chosen
    onClicked: WouldFit.choose(index)

    HungPiece {
        width: parent.width
        height: parent.height - root.labelRoom - Theme.mm(1)
        view: root.drawing
        behind: Math.max(0, root.mats.length - 1)
        face: root.face
    }
    Rectangle {
        x: Theme.mm(1)
        y: parent.height - root.labelRoom
        width: parent.width - 2 * x
        height: root.labelRoom - Theme.mm(1)
        color: root.solid ? Theme.colors.ink : Theme.colors.raised
    }
    Column {
        id: label
        x: Theme.mm(1.6)
        y: parent.height - (root.labelRoom + Theme.mm(1) + height) / 2
        width: Math.max(1, root.width - 2 * x)
        InlineLength {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            bold: true
            lengthCap: Theme.capWord
            color: root.ink
            text: root.brief(root.briefSays)
            Accessible.ignored: true
        }
        InlineLength {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            lengthCap: Theme.capWord
            color: root.ink
            text: root.brief(root.sidesSays)
            Accessible.ignored: true
        }
        Word {
            width: parent.width
            horizontalAlignment: Text.AlignHCenter
            color: root.ink
            text: root.hoursSays
            Accessible.ignored: true
        }
        CautionSign {
            visible: root.cautionSays !== ""
            width: parent.width
            ink: root.solid ? Theme.colors.raised : Theme.colors.caution
            ground: root.solid ? Theme.colors.ink : Theme.colors.raised
        }
    }
    FocusOutline {
        visible: root.keyboardFocus
        anchors.margins: Theme.focusGap
    }
    component CautionSign: Item {
        id: sign
        property color ink
        property color ground
        height: visible ? Theme.mm(6) : 0
        Pictogram {
            anchors.horizontalCenter: parent.horizontalCenter
            name: "warning"
            width: Theme.mm(5)
            ink: sign.ink
            ground: sign.ground
        }
    }
}
