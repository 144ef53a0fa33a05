// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One block of the gallery: its picture, its name, how far it is. */
Pressable {
    id: root

    required property string block
    required property string blockState
    required property string stateSays
    required property url thumb
    required property bool flagged
    required property bool noted
    required property string sizeSays

    /** What a stitched block looks like, as the strip's drawing has it. */
    property var view: null

    signal chosen(string block)

    inList: true
    //: spoken: a block's name and its state
    accessibleName: qsTr("Block %1, %2").arg(root.block).arg(root.stateSays)
    //: spoken: words were written of the block
    accessibleDescription: root.noted ? qsTr("with a note") : ""
    onClicked: root.chosen(root.block)

    CutShape {
        anchors.fill: parent
        anchors.margins: Theme.mm(0.8)
        fill: root.pressed ? Theme.colors.ink : Theme.colors.raised
        stroke: root.blockState === "spoiled" || root.blockState === "lost" ? Theme.colors.stop : Theme.colors.ink
    }
    BlockSketch {
        visible: small.status !== Image.Ready
        anchors.fill: small
        block: root.block
        made: root.blockState !== "to-do"
        view: root.view
        lost: root.blockState === "spoiled" || root.blockState === "lost"
        ink: root.pressed && !made ? Theme.colors.raised : root.blockState === "to-do" ? Theme.colors.inkSoft : Theme.colors.ink
    }
    Image {
        id: small
        anchors.fill: parent
        anchors.margins: Theme.mm(2)
        anchors.bottomMargin: word.implicitHeight + Theme.mm(2.5)
        source: root.thumb
        sourceSize.width: Math.max(1, width)
        asynchronous: true
        autoTransform: true
        cache: false
        fillMode: Image.PreserveAspectCrop
    }
    Word {
        id: word
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.mm(2)
        x: Theme.mm(1.4)
        width: parent.width - Theme.mm(2.8)
        cap: Theme.mm(3.84) // many to a row
        bold: true
        horizontalAlignment: Text.AlignHCenter
        text: small.status === Image.Ready ? root.block + " " + root.stateSays : root.stateSays
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        Accessible.ignored: true
    }
    Pictogram {
        id: flag
        name: "warning"
        visible: root.flagged
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.mm(2)
        width: Theme.mm(5)
        ink: Theme.colors.caution
        ground: Theme.colors.raised
    }
    Pictogram {
        objectName: "note"
        name: "note"
        visible: root.noted
        anchors.right: root.flagged ? flag.left : parent.right
        anchors.top: parent.top
        anchors.margins: Theme.mm(2)
        width: Theme.mm(5)
        ink: Theme.colors.ink
        ground: Theme.colors.raised
    }
    FocusOutline { visible: root.keyboardFocus }
}
