// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One picture of the folder as a print under its paper corners, large enough for a knuckle, or a folder to open as a drawer. */
Pressable {
    id: root

    required property int index
    required property string name
    required property url picture
    required property bool isFolder

    signal chosen(int row)

    readonly property real air: Theme.mm(2)

    inList: true
    //: spoken name of a folder of pictures in a list
    accessibleName: root.isFolder ? qsTr("Folder %1").arg(root.name) : root.name
    onClicked: root.chosen(root.index)

    Rectangle {
        anchors.fill: parent
        anchors.margins: root.air / 2
        visible: root.pressed
        color: Theme.colors.ink
    }
    Rectangle {
        id: photograph
        visible: !root.isFolder
        x: root.air + Theme.mm(1.4)
        y: root.air + Theme.mm(1.4)
        width: parent.width - 2 * x
        height: word.y - y - Theme.mm(2)
        color: Theme.colors.raised
        border.color: Theme.colors.ink
        border.width: Theme.keyThin
        Image {
            anchors.fill: parent
            anchors.margins: Theme.mm(1.4)
            source: root.picture
            sourceSize.width: Math.max(1, width)
            asynchronous: true
            autoTransform: true
            cache: false
            fillMode: Image.PreserveAspectCrop
        }
    }
    PhotoMounts {
        visible: !root.isFolder
        anchors.fill: photograph
        anchors.margins: -Theme.mm(1.2)
        corner: Theme.mm(6)
    }
    PhotoScene {
        visible: root.isFolder
        x: root.air
        y: root.air
        width: parent.width - 2 * x
        height: word.y - y
        scene: root.isFolder ? "prints" : ""
    }
    Word {
        id: word
        x: root.air
        y: parent.height - height - root.air
        width: parent.width - 2 * x
        horizontalAlignment: Text.AlignHCenter
        bold: root.isFolder
        elide: Text.ElideMiddle
        wrapMode: Text.NoWrap
        //: a folder in a list of pictures; %1 is its name
        text: root.isFolder ? qsTr("Folder: %1").arg(root.name) : root.name
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        Accessible.ignored: true
    }
    FocusOutline {
        visible: root.keyboardFocus
        anchors.margins: Theme.focusGap
    }
}
