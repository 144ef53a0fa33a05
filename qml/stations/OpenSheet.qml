// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The folders, project files, share files and backups of this tablet, a large row each; a press looks into one.
 */
Item {
    id: root

    readonly property OpenFiles files: FitModel.files
    property bool open: false
    /** The share file looked into is of a project that is here too. */
    readonly property bool known: Sharing.chosen !== "" && Sharing.refusal === "" && Sharing.merging.possible
    readonly property bool looking: files.chosen !== "" || Sharing.chosen !== "" || Backups.chosen !== ""

    function start() {
        leave();
        files.showDocuments();
        open = true;
    }
    function close() {
        open = false;
        leave();
    }
    function leave() {
        files.leave();
        Sharing.leave();
        Backups.leave();
    }

    // A file that the program was started with.
    Component.onCompleted: {
        if (!looking)
            return;
        files.showDocuments();
        open = true;
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
        text: qsTr("Open, bring in, back up")
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
    Column {
        id: told
        x: Theme.margin
        y: place.y + place.height
        width: parent.width - 2 * Theme.margin
        topPadding: Backups.said !== "" ? Theme.mm(2) : 0
        Word {
            width: parent.width
            visible: text !== ""
            text: Backups.refused ? "" : Backups.said
        }
        CautionLine {
            width: parent.width
            visible: text !== ""
            text: Backups.refused ? Backups.said : ""
        }
    }
    ListView {
        id: list
        visible: !root.looking
        y: told.y + told.height + Theme.gap
        width: parent.width
        height: foot.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.files
        delegate: ChoiceRow {
            required property string name
            required property string path
            required property bool isFolder
            required property bool isShare
            required property bool isBackup
            width: list.width
            text: name
            //: what a row of the list of files is
            detail: isFolder ? qsTr("folder") : isBackup ? qsTr("backup of everything") : isShare ? qsTr("project with notes and photographs") : qsTr("project")
            onClicked: isFolder ? root.files.show(path) : isBackup ? Backups.look(path) : isShare ? Sharing.look(path) : root.files.look(path)
        }
        Word {
            visible: list.count === 0
            x: Theme.margin
            width: parent.width - 2 * x
            text: qsTr("There is no project file and no folder here.")
        }
    }
    MoreBelow { over: list }
    OpenFile {
        visible: root.files.chosen !== ""
        y: list.y
        width: parent.width
        height: list.height
        name: root.files.chosenName
        refusal: root.files.refusal
        problems: root.files.problems
        ready: root.files.ready
        onOfferTaken: (row, index) => root.files.takeOffer(row, index)
    }
    MergeFile {
        visible: root.known
        y: list.y
        width: parent.width
        height: list.height
        merging: Sharing.merging
        inside: Sharing.inside
        busy: Sharing.busy
    }
    OpenFile {
        visible: Sharing.chosen !== "" && !root.known
        y: list.y
        width: parent.width
        height: list.height
        name: Sharing.chosenName
        refusal: Sharing.refusal
        inside: Sharing.inside
        problems: Sharing.problems
        ready: Sharing.ready
        busy: Sharing.busy
        onOfferTaken: (row, index) => Sharing.takeOffer(row, index)
    }
    OpenFile {
        visible: Backups.chosen !== ""
        y: list.y
        width: parent.width
        height: list.height
        name: qsTr("Backup")
        refusal: Backups.refusal
        inside: Backups.inside
        ready: Backups.ready
        busy: Backups.busy
    }
    Connections {
        target: Backups
        function onChanged() {
            if (root.open && Backups.said !== "" && !Backups.busy)
                root.files.show(root.files.folder); // the new file is among them
        }
    }
    Connections {
        target: Sharing
        function onBroughtIn(id) {
            root.close();
            Session.openProject(id);
        }
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
            visible: root.known
            width: foot.each
            height: Theme.targetLeast
            kind: "action"
            enabled: Sharing.merging.ready && !Sharing.busy && !Session.readOnly
            text: qsTr("Put together")
            onClicked: Sharing.takeIn()
        }
        CutButton {
            visible: root.looking
            width: foot.each
            height: Theme.targetLeast
            kind: root.known ? "outline" : "action"
            enabled: (Backups.chosen !== "" ? Backups.ready && !Backups.busy : Sharing.chosen !== "" ? Sharing.ready && !Sharing.busy : root.files.ready) && !Session.readOnly
            text: Backups.chosen !== "" ? qsTr("Put it all back") : root.known ? qsTr("As a project of its own") : qsTr("Lay it on the shelf")
            onClicked: {
                if (Backups.chosen !== "") {
                    Backups.restore();
                    return;
                }
                if (Sharing.chosen !== "") {
                    Sharing.bringIn();
                    return;
                }
                const id = root.files.open();
                if (id === "")
                    return;
                root.close();
                Session.openProject(id);
            }
        }
        CutButton {
            visible: root.looking
            width: foot.each
            height: Theme.targetLeast
            text: qsTr("Another file")
            onClicked: root.leave()
        }
        CutButton {
            visible: !root.looking
            width: foot.each
            height: Theme.targetLeast
            enabled: root.files.canGoUp
            text: qsTr("The folder above")
            onClicked: root.files.goUp()
        }
        CutButton {
            visible: !root.looking
            width: foot.each
            height: Theme.targetLeast
            enabled: !Backups.busy
            text: qsTr("Back up everything")
            onClicked: Backups.backUp()
        }
        CutButton {
            visible: !root.known // three at most; the list leads back too
            width: foot.each
            height: Theme.targetLeast
            text: qsTr("Back to the shelf")
            onClicked: root.close()
        }
    }
}
