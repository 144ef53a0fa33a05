// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * One picture: where there is a camera the whole sheet is its shutter, with a frame for what is to be in it;
 * where there is none, a picture is chosen from large prints. What is done with it is the owner's business.
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
    /** What the head says: where a list to choose from lies below, where a tap takes the picture, where it tries again, and where nothing is to be had yet. */
    property string chooseText
    property string tapText
    property string againText
    property string plainText
    property string shutterName
    property string backText
    /** Said beneath the list, before anything is chosen. */
    property string note
    /** What the picture is of, where that is a block: as StripDrawing has it. */
    property var view: null
    property bool back: false
    /** And where it is of a cloth, that cloth's colour. */
    property string colour
    readonly property bool picking: choosing || !camera.present
    /** There is nothing to choose from. */
    readonly property bool bare: picking && picker.folder.count === 0
    /** The camera shows what it sees. */
    readonly property bool live: !picking && String(camera.view) !== ""
    readonly property bool gone: camera.trouble === PhotoSource.Gone
    /** What is drawn, by PhotoScene's names. */
    readonly property string scene: problem !== "" || camera.trouble === PhotoSource.Failed ? "torn" : gone ? "unplugged"
                                    : camera.trouble === PhotoSource.Stalled ? "blank" : bare ? "drawer" : picking || live ? "" : "held"
    readonly property string headText: keeping || camera.busy ? keepingText : bare ? plainText : picking ? chooseText
                                       : !camera.ready ? plainText : says !== "" ? againText : tapText
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

        PhotoMounts {
            readonly property real room: Math.min(parent.width - 2 * Theme.margin, (told.y - y - Theme.gap) / root.frameRatio)
            visible: root.live
            anchors.horizontalCenter: parent.horizontalCenter
            y: head.y + head.height + Theme.mm(6)
            width: room
            height: room * root.frameRatio
        }
        FocusOutline { visible: shutter.keyboardFocus }
    }
    Rectangle {
        visible: root.live
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
        text: root.headText
    }
    GridView {
        id: list
        objectName: "pictures"
        readonly property int across: Math.max(2, Math.floor(width / Theme.mm(46)))
        visible: root.picking && !root.bare
        x: Theme.margin - Theme.mm(2)
        y: head.height + Theme.mm(6)
        width: parent.width - 2 * x
        height: visible ? told.y - y - Theme.gap : 0
        cellWidth: Math.floor(width / across)
        cellHeight: Math.ceil(cellWidth * 0.75 + Theme.mm(11))
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.picking && root.visible ? root.picker.folder : null
        delegate: PicturePrint {
            width: list.cellWidth
            height: list.cellHeight
            onChosen: row => root.picker.choose(row)
        }
    }
    MoreBelow { over: list }
    Rectangle {
        visible: root.live
        y: told.y - Theme.gap
        width: parent.width
        height: parent.height - y
        color: Theme.colors.raised
    }
    PictureTold {
        id: told
        readonly property real from: head.y + head.height + Theme.margin
        // A drawing to itself, unless there are pictures to be seen.
        brief: root.live || root.picking && !root.bare
        x: Theme.margin
        y: brief ? foot.y - height - (height > 0 ? Theme.gap : 0) : from
        width: parent.width - 2 * Theme.margin
        height: brief ? implicitHeight : Math.max(0, foot.y - Theme.margin - from)
        scene: root.scene
        view: root.view
        back: root.back
        colour: root.colour
        label: root.picker.folder.title
        says: root.says
        //: %1 is the name of a folder
        told: root.bare ? qsTr("There are no pictures in the folder “%1”. Put them there, or go on without one.").arg(root.picker.folder.title) : ""
        note: root.note
    }
    Row {
        id: foot
        readonly property int count: 1 + (up.visible ? 1 : 0) + (other.visible ? 1 : 0)
        /** One alone is no bar across the sheet: it lies at the working hand. */
        readonly property real room: root.width - 2 * Theme.margin
        readonly property real each: (room - (Math.max(2, count) - 1) * spacing) / Math.max(2, count)
        x: Theme.left || count > 1 ? Theme.margin : root.width - Theme.margin - each
        y: parent.height - height - Theme.margin
        spacing: Theme.gapTargets
        CutButton {
            id: up
            visible: root.picking && root.picker.folder.canGoUp
            height: Theme.targetLeast
            width: foot.each
            text: qsTr("Folder above")
            onClicked: root.picker.folder.goUp()
        }
        CutButton {
            id: other
            objectName: "other"
            visible: root.camera.present
            height: Theme.targetLeast
            width: foot.each
            text: root.choosing ? qsTr("Use the camera") : qsTr("Choose a picture")
            onClicked: root.choosing = !root.choosing
        }
        CutButton {
            objectName: "back"
            height: Theme.targetLeast
            width: foot.each
            text: root.backText
            onClicked: root.closed()
        }
    }
    onVisibleChanged: if (visible) picker.folder.refresh()
    Component.onCompleted: if (visible) picker.folder.refresh()
}
