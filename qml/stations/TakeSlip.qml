// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One thing on the list to take: its slip on the line with a label for how much; once it is in the basket a pin goes through both. */
Pressable {
    id: root

    required property int index
    required property string says
    required property string detail
    required property string colour
    required property string drawnAs
    required property bool ticked

    /** The least height that shows enough of the cloth. */
    readonly property real leastHeight: slip.drop + Theme.mm(19) + label.height
    readonly property bool solid: ticked !== pressed
    readonly property color lettering: solid ? Theme.colors.raised : Theme.colors.ink

    inList: true
    accessibleName: root.says.replace("{", "").replace("}", "")
    accessibleDescription: root.ticked ? qsTr("in the basket") : qsTr("not in the basket yet")
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: root.ticked
    onClicked: TakeModel.tick(root.index)

    ClothSlip {
        id: slip
        anchors.fill: parent
        kind: root.drawnAs
        colour: root.colour
        pinned: root.ticked
        shown: label.y - drop
    }
    Rectangle {
        id: label
        x: Math.round(Theme.mm(3.6))
        y: Math.floor(parent.height - height - Theme.mm(3))
        width: parent.width - 2 * x
        height: Math.ceil(words.height + Theme.mm(3))
        color: root.solid ? Theme.colors.ink : Theme.colors.raised
        border.color: root.solid ? Theme.colors.raised : Theme.colors.ink
        border.width: Theme.keyThin
    }
    Column {
        id: words
        x: label.x + Theme.mm(1.4)
        y: label.y + Theme.mm(1.5)
        width: label.width - Theme.mm(2)
        InlineLength {
            width: parent.width
            bold: true
            // What has no length to speak up says its number larger.
            cap: root.colour === "" ? Theme.capHead : Theme.capWord
            lengthCap: Theme.mm(8)
            color: root.lettering
            text: root.says
        }
        InlineLength {
            width: parent.width
            lengthCap: Theme.mm(4.6)
            color: root.lettering
            text: root.detail
        }
    }
    PinSketch {
        objectName: "pin"
        visible: root.ticked
        x: (parent.width - width) / 2
        y: label.y + Theme.mm(1.3) - height
        width: Theme.mm(7)
        height: Theme.mm(13)
    }
    FocusOutline { visible: root.keyboardFocus }
}
