// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * One picture: where there is a camera the whole sheet is its shutter, with a frame for what is to be in it;
 * where there is none, a picture is chosen from large rows. What is done with it is the owner's business.
 */
Item {
    id: root

    required property PhotoSource camera
    required property PicturePicker picker
    /** She wants to choose although there is a camera. */
    property bool choosing: false
    /** The picture is being taken in. */
    property bool keeping: false
    /** What went wrong with the last one, in words. */
    property string problem
    /** The frame's height over its width. */
    property real frameRatio: 1
    property string keepingText
    property string chooseText
    property string tapText
    property string shutterName
    property string backText
    /** Said beneath the list, before anything is chosen. */
    property string note
    readonly property bool picking: choosing || !camera.present
    /** She comes back to the window, and may have put pictures there meanwhile. */
    readonly property bool front: Window.active

    onFrontChanged: if (front && picking && visible)
        picker.folder.refresh()
    readonly property string says: problem !== "" ? problem : camera.says

    signal closed()

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Loader {
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
        enabled: visible && root.camera.ready && !root.keeping
        anchors.fill: parent
        guardMs: 400
        accessibleName: root.shutterName
        onClicked: root.camera.capture()

        CutShape {
            readonly property real room: Math.min(parent.width - 2 * Theme.margin, (foot.y - Theme.gap - Theme.mm(24)) / root.frameRatio)
            anchors.horizontalCenter: parent.horizontalCenter
            y: Theme.mm(20)
            width: room
            height: room * root.frameRatio
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
        text: root.keeping || root.camera.busy ? root.keepingText : root.picking ? root.chooseText : root.tapText
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
        model: root.picking && root.visible ? root.picker.folder : null
        delegate: PictureRow {
            width: list.width
            onChosen: row => root.picker.choose(row)
        }
    }
    MoreBelow { over: list }
    Word {
        visible: root.picking && root.picker.folder.count === 0
        x: Theme.margin
        y: list.y + Theme.gap
        width: parent.width - 2 * Theme.margin
        //: %1 is the name of a folder
        text: qsTr("There are no pictures in the folder “%1”. Put them there, or go on without one.").arg(root.picker.folder.title)
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
        Word {
            visible: text !== ""
            width: parent.width
            text: root.note
        }
        CautionLine {
            objectName: "says"
            width: parent.width
            text: root.says
        }
        CutButton {
            visible: root.picking && root.picker.folder.canGoUp
            height: visible ? Theme.targetLeast : 0
            width: parent.width
            text: qsTr("Folder above")
            onClicked: root.picker.folder.goUp()
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
            text: root.backText
            onClicked: root.closed()
        }
    }
    onVisibleChanged: if (visible) picker.folder.refresh()
    Component.onCompleted: if (visible) picker.folder.refresh()
}
