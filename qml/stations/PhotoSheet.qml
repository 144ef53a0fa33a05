// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * A picture of one face of the block: where there is a camera the whole sheet is its shutter, with the block's
 * outline as a frame; where there is none, a picture is chosen from large rows. Closes when one is kept.
 */
Item {
    id: root

    /** She wants to choose although there is a camera. */
    property bool choosing: false
    readonly property PhotoSource camera: BlockLog.camera
    readonly property bool picking: choosing || !camera.present
    readonly property string says: BlockLog.problem !== "" ? BlockLog.problem : camera.says
    //: what a picture is of: the front or the back of a block
    readonly property string faceSays: BlockLog.face === 1 ? qsTr("the back") : qsTr("the front")

    signal closed()

    Connections {
        target: BlockLog
        enabled: root.visible
        function onPictureKept() {
            root.closed();
        }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Loader {
        id: finder
        visible: !root.picking
        anchors.fill: parent
        active: root.visible && String(root.camera.view) !== ""
        onActiveChanged: if (active) setSource(root.camera.view, { source: root.camera })
        Component.onCompleted: if (active) setSource(root.camera.view, { source: root.camera })
    }
    Pressable {
        id: shutter
        objectName: "shutter"
        visible: !root.picking
        enabled: visible && root.camera.ready && !BlockLog.keeping
        anchors.fill: parent
        guardMs: 400
        //: %1 is "the front" or "the back"
        accessibleName: qsTr("Take a picture of %1").arg(root.faceSays)
        onClicked: root.camera.capture()

        CutShape {
            id: frame
            readonly property real ratio: BlockLog.along.mm > 0 ? BlockLog.across.mm / BlockLog.along.mm : 1
            readonly property real room: Math.min(parent.width - 2 * Theme.margin, (parent.height - foot.height - Theme.mm(24)) / ratio)
            anchors.horizontalCenter: parent.horizontalCenter
            y: Theme.mm(20)
            width: room
            height: room * ratio
            fill: "transparent"
            stroke: Theme.colors.accent
            strokeWidth: Theme.keyBold
        }
        FocusOutline { visible: shutter.keyboardFocus }
    }
    Rectangle {
        width: parent.width
        height: head.height + Theme.mm(6)
        color: Theme.colors.raised
    }
    Word {
        id: head
        x: Theme.margin
        y: Theme.mm(3)
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: BlockLog.keeping || root.camera.busy ? qsTr("Keeping the picture")
            //: %1 is "the front" or "the back", %2 a block's name
            : root.picking ? qsTr("Choose a picture of %1, block %2").arg(root.faceSays).arg(BlockLog.block)
            : qsTr("Tap anywhere: %1 of block %2").arg(root.faceSays).arg(BlockLog.block)
    }
    ListView {
        id: list
        objectName: "pictures"
        visible: root.picking
        y: head.height + Theme.mm(6)
        width: parent.width
        height: visible ? foot.y - y - Theme.gap : 0
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.picking && root.visible ? BlockLog.picker.folder : null
        delegate: PictureRow {
            width: list.width
            onChosen: row => BlockLog.picker.choose(row)
        }
    }
    Word {
        visible: root.picking && BlockLog.picker.folder.count === 0
        x: Theme.margin
        y: list.y + Theme.gap
        width: parent.width - 2 * Theme.margin
        //: %1 is the name of a folder
        text: qsTr("There are no pictures in the folder “%1”. Put them there, or go on without one.").arg(BlockLog.picker.folder.place)
    }
    Connections {
        // She has put pictures there meanwhile.
        target: Qt.application
        enabled: root.picking && root.visible
        function onStateChanged() {
            if (Qt.application.state === Qt.ApplicationActive)
                BlockLog.picker.folder.refresh();
        }
    }
    Rectangle {
        anchors.fill: foot
        anchors.margins: -Theme.gap
        color: Theme.colors.raised
    }
    Column {
        id: foot
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap
        CautionLine {
            objectName: "says"
            width: parent.width
            text: root.says
        }
        CutButton {
            visible: root.picking && BlockLog.picker.folder.canGoUp
            height: visible ? Theme.targetLeast : 0
            width: parent.width
            text: qsTr("Folder above")
            onClicked: BlockLog.picker.folder.goUp()
        }
        CutButton {
            objectName: "other"
            visible: root.camera.present
            height: visible ? Theme.targetLeast : 0
            width: parent.width
            text: root.choosing ? qsTr("Use the camera") : qsTr("Choose a picture")
            onClicked: root.choosing = !root.choosing
        }
        CutButton {
            objectName: "back"
            width: parent.width
            height: Theme.targetLeast
            text: qsTr("Back without a picture")
            onClicked: root.closed()
        }
    }
    onVisibleChanged: if (visible) BlockLog.picker.folder.refresh()
    Component.onCompleted: if (visible) BlockLog.picker.folder.refresh()
}
