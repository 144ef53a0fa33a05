// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Every project with its picture, name and next step; and the way to a new one. */
FocusScope {
    id: root
    focus: true

    property string opened
    readonly property bool empty: list.count === 0 && !Shelf.showPutAway

    function leave() {
        opened = "";
        files.close();
    }

    Word {
        id: head
        visible: !root.empty
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capThird
        bold: true
        text: qsTr("On the shelf")
    }
    ListView {
        id: list
        y: head.y + head.height + Theme.gap
        width: parent.width
        height: file.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: Shelf
        delegate: ProjectRow {
            required property int index
            width: list.width
            room: root.opened === "" ? list.height / Math.max(1, list.count) : 0
            onTold: shown.follow(index)
            opened: root.opened === id
            onToggled: root.opened = opened ? "" : id
        }
    }
    MoreBelow {
        over: list
        ground: Theme.colors.paper
    }
    Timer {
        id: shown
        property int row: 0
        interval: 1 // once the row has laid itself out
        function follow(index: int) {
            row = index;
            restart();
        }
        onTriggered: list.positionViewAtIndex(row, ListView.End)
    }
    CutButton {
        id: file
        visible: !root.empty
        x: Theme.left ? parent.width - width - Theme.margin : Theme.margin
        y: foot.y - height - Theme.gap
        width: Math.min(implicitWidth, parent.width - 2 * Theme.margin)
        height: Theme.step
        text: qsTr("Open, bring in, back up")
        onClicked: files.start()
    }
    FirstRun {
        visible: root.empty
        width: parent.width
        height: foot.y
        focus: root.empty
    }
    Flow {
        id: foot
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.small ? Theme.gap : Theme.gapTargets
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight

        readonly property var all: [inches, millimetres, away, light, undo]
        /** What is left over of a row of all five when none of them breaks a word. */
        readonly property real spare: width - 4 * spacing - all.reduce((sum, target) => sum + target.leastWidth, 0)
        /** All five beside each other, or the two beginnings above the rest. */
        readonly property bool inRow: !root.empty && spare >= 0 && width - 4 * spacing >= Theme.mm(5 * 30)
        readonly property real first: Math.floor((width - spacing) / 2)
        readonly property real other: Math.floor((width - 2 * spacing) / 3)

        NewPiece {
            id: inches
            visible: !root.empty
            width: foot.inRow ? Math.floor(leastWidth + foot.spare / 5) : foot.first
            height: Math.max(Theme.targetLeast, contentHeight)
            kind: "action"
            cap: Theme.mm(4.5)
            firstOffered: true
        }
        NewPiece {
            id: millimetres
            visible: !root.empty
            width: foot.inRow ? Math.floor(leastWidth + foot.spare / 5) : foot.first
            height: Math.max(Theme.targetLeast, contentHeight)
            kind: "action"
            cap: Theme.mm(4.5)
        }
        CutButton {
            id: away
            visible: !root.empty
            width: foot.inRow ? Math.floor(leastWidth + foot.spare / 5) : foot.other
            height: Math.max(Theme.targetLeast, contentHeight)
            //: pieces that were put away, out of sight
            text: Shelf.showPutAway ? qsTr("Hide those put away") : qsTr("Show those put away")
            onClicked: Shelf.showPutAway = !Shelf.showPutAway
        }
        CutButton {
            visible: root.empty
            width: foot.other
            height: Math.max(Theme.targetLeast, contentHeight)
            text: qsTr("Open, bring in, back up")
            onClicked: files.start()
        }
        CutButton {
            id: light
            width: foot.inRow ? Math.floor(leastWidth + foot.spare / 5) : foot.other
            height: Math.max(Theme.targetLeast, contentHeight)
            text: qsTr("Light and language")
            onClicked: Session.view = "settings"
        }
        CutButton {
            id: undo
            width: foot.inRow ? Math.floor(leastWidth + foot.spare / 5) : foot.other
            height: Math.max(Theme.targetLeast, contentHeight)
            enabled: Session.canUndo
            text: Session.canUndo ? qsTr("Undo: %1").arg(Session.undoText) : qsTr("Undo")
            onClicked: Session.undo()
        }
    }
    OpenSheet {
        id: files
        anchors.fill: parent
    }
}
