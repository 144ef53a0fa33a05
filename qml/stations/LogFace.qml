// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One face of the block: its picture, or the place for it. */
Pressable {
    id: root

    property string says
    property url picture
    /** The cloth seen on this face, and the block's height to its width. */
    property string role: "front"
    property real ratio: 1

    readonly property bool pictured: small.status === Image.Ready

    implicitHeight: Theme.target * 1.4
    guardMs: 400
    //: %1 is "Front" or "Back face"
    accessibleName: qsTr("Photo: %1").arg(root.says)

    CutShape {
        anchors.fill: parent
        fill: root.pressed ? Theme.colors.ink : Theme.colors.paper
        stroke: Theme.colors.ink
    }
    // Where no picture is yet the block itself, as it lies there.
    ClothFill {
        readonly property real room: Math.min(parent.width - Theme.mm(12), (parent.height - Theme.mm(22)) / root.ratio)
        visible: !root.pictured
        x: (parent.width - width) / 2
        y: (parent.height - word.height - Theme.mm(4) - height) / 2
        width: Math.max(0, room)
        height: width * root.ratio
        role: root.role
    }
    Image {
        id: small
        anchors.fill: parent
        anchors.margins: Theme.mm(2)
        anchors.bottomMargin: Theme.mm(9)
        source: root.picture
        sourceSize.width: Math.max(1, width)
        asynchronous: true
        autoTransform: true
        cache: false
        fillMode: Image.PreserveAspectFit
    }
    Word {
        id: word
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.mm(2.5)
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        cap: root.pictured ? Theme.capWord : Theme.mm(3.84)
        bold: root.pictured
        text: root.pictured ? root.says : root.accessibleName
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
