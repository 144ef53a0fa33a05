// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The folders and project files of this tablet, a large row each; a press looks into one. Nothing is written here. */
Item {
    id: root

    readonly property OpenFiles files: FitModel.files
    property bool open: false

    function start() {
        files.leave();
        files.showDocuments();
        open = true;
    }
    function close() {
        open = false;
        files.leave();
    }

    visible: open

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
        // What lies under the sheet is not pressed through it.
        Fingertip { anchors.fill: parent }
    }
    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: qsTr("Open a project file")
    }
    Word {
        id: place
        x: Theme.margin
        y: head.y + head.height + Theme.mm(1)
        width: parent.width - 2 * Theme.margin
        wrapMode: Text.NoWrap
        elide: Text.ElideLeft
        color: Theme.colors.inkSoft
        text: root.files.folder
    }
    ListView {
        id: list
        visible: root.files.chosen === ""
        y: place.y + place.height + Theme.gap
        width: parent.width
        height: foot.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.files
        delegate: ChoiceRow {
            required property string name
            required property string path
            required property bool isFolder
            width: list.width
            text: name
            //: what a row of the list of files is
            detail: isFolder ? qsTr("folder") : qsTr("project")
            onClicked: isFolder ? root.files.show(path) : root.files.look(path)
        }
        Word {
            visible: list.count === 0
            x: Theme.margin
            width: parent.width - 2 * x
            text: qsTr("There is no project file and no folder here.")
        }
    }
    OpenFile {
        visible: root.files.chosen !== ""
        y: list.y
        width: parent.width
        height: list.height
        files: root.files
    }
    Flow {
        id: foot
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gapTargets
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight

        readonly property real each: Math.max(Theme.mm(36), Math.min(Theme.mm(50), (width - 2 * spacing) / 3))

        CutButton {
            visible: root.files.chosen !== ""
            width: foot.each
            height: Theme.targetLeast
            kind: "action"
            enabled: root.files.ready && !Session.readOnly
            text: qsTr("Lay it on the shelf")
            onClicked: {
                const id = root.files.open();
                if (id === "")
                    return;
                root.close();
                Session.openProject(id);
            }
        }
        CutButton {
            visible: root.files.chosen !== ""
            width: foot.each
            height: Theme.targetLeast
            text: qsTr("Another file")
            onClicked: root.files.leave()
        }
        CutButton {
            visible: root.files.chosen === ""
            width: foot.each
            height: Theme.targetLeast
            enabled: root.files.canGoUp
            text: qsTr("The folder above")
            onClicked: root.files.goUp()
        }
        CutButton {
            width: foot.each
            height: Theme.targetLeast
            text: qsTr("Back to the shelf")
            onClicked: root.close()
        }
    }
}
