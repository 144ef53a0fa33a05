// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One picture of the folder, large enough for a knuckle, or a folder to open. */
Pressable {
    id: root

    required property int index
    required property string name
    required property url picture
    required property bool isFolder

    signal chosen(int row)

    implicitHeight: Theme.target
    inList: true
    //: spoken name of a folder of pictures in a list
    accessibleName: root.isFolder ? qsTr("Folder %1").arg(root.name) : root.name
    onClicked: root.chosen(root.index)

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine {
        width: parent.width
    }
    Image {
        id: small
        visible: !root.isFolder
        x: Theme.margin
        y: Theme.mm(1.5)
        width: Theme.mm(28)
        height: root.height - Theme.mm(3)
        source: root.picture
        sourceSize.width: width
        asynchronous: true
        autoTransform: true
        cache: false
        fillMode: Image.PreserveAspectCrop
    }
    Word {
        x: root.isFolder ? Theme.margin : small.x + small.width + Theme.margin
        width: root.width - x - Theme.margin
        anchors.verticalCenter: parent.verticalCenter
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
