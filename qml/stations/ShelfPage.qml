// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** A shelf: every project hangs from its board, with its name, how far it is and its next step; at the foot the way to a new one. */
FocusScope {
    id: root
    focus: true

    property string opened
    readonly property bool empty: list.count === 0 && !Shelf.showPutAway

    function leave() {
        opened = "";
        files.close();
    }

    ShelfBoard {
        id: crown
        width: parent.width
        height: Math.round(root.empty ? implicitHeight : head.height + Theme.mm(Theme.small ? 0.6 : 2))
        grained: root.empty
        Word {
            id: head
            visible: !root.empty
            x: posts.wide + Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - 2 * x
            horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
            cap: Theme.mm(4.6)
            bold: true
            text: qsTr("On the shelf")
        }
    }
    ListView {
        id: list
        // Upright there is room for a single piece above its words.
        readonly property bool stacked: width < Theme.mm(150) && height / Math.max(1, count) > Theme.mm(110)
        readonly property real boards: Theme.mm(4.4)
        readonly property real pieceRoom: stacked ? width - 2 * Theme.margin : Math.floor(width * (count === 1 && !Theme.small ? 0.5 : width < Theme.mm(150) ? 0.34 : Theme.small ? 0.36 : 0.4))
        readonly property real pieceHigh: Math.max(Theme.mm(28), Math.min(Theme.mm(stacked ? 110 : 90), root.opened === "" ? room - boards - Theme.mm(8) - (stacked ? Theme.mm(60) : 0) : 0))
        readonly property real room: height / Math.max(1, count)
        /** All in proportion to each other. */
        readonly property real toScale: Math.min((pieceRoom - Theme.mm(2)) / Shelf.longestAlongMm, pieceHigh / Shelf.longestAcrossMm)

        x: posts.wide
        y: crown.height
        width: parent.width - 2 * x
        height: foot.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: Shelf
        delegate: ProjectRow {
            required property int index
            width: list.width
            room: root.opened !== "" || list.stacked ? 0 : Math.min(list.room, Theme.mm(76))
            toScale: list.toScale
            pieceRoom: list.pieceRoom
            first: index === 0
            onTold: shown.follow(index)
            opened: root.opened === id
            onToggled: root.opened = opened ? "" : id
        }
    }
    Item {
        id: posts
        readonly property real wide: Math.round(Theme.mm(3.4))
        y: crown.height
        width: parent.width
        height: foot.y - y - Theme.gap
        ShelfBoard {
            height: parent.height
        }
        ShelfBoard {
            x: parent.width - width
            height: parent.height
        }
        ShelfBoard {
            // The lowest board, where the pieces leave a bay free.
            visible: root.empty || list.contentHeight < list.height - Theme.mm(8)
            y: parent.height - height
            width: parent.width
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
    FirstRun {
        visible: root.empty
        x: posts.wide
        y: crown.height
        width: parent.width - 2 * x
        height: posts.height - Theme.mm(4.4)
        focus: root.empty
    }
    Flow {
        id: foot
        x: Theme.margin
        y: parent.height - height - Theme.gap
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight

        readonly property var every: [inches, millimetres, file, away, light, undo]
        readonly property var all: every.filter(target => target.wanted)
        /** For the targets alone, where all stand beside each other. */
        readonly property real room: width - (all.length - 1) * spacing
        readonly property real least: all.reduce((sum, target) => sum + target.leastWidth, 0)
        /** What they take with two lines of words each. */
        readonly property real needed: all.reduce((sum, target) => sum + need(target), 0)
        readonly property bool inRow: room >= needed || root.width > root.height && room >= least
        readonly property int perRow: Math.ceil(all.length / 2)
        readonly property real share: Math.floor((width - (perRow - 1) * spacing) / perRow)
        function need(target: var): real {
            return Math.max(target.leastWidth, 0.6 * target.implicitWidth);
        }
        function wide(target: var): real {
            if (!inRow)
                return share;
            if (room >= needed)
                return Math.floor(need(target) + (room - needed) / all.length);
            return Math.floor(target.leastWidth + (room - least) * (need(target) - target.leastWidth) / (needed - least));
        }
        readonly property real high: Math.max(Theme.step, ...all.map(target => target.contentHeight))

        NewPiece {
            id: inches
            readonly property bool wanted: !root.empty
            visible: wanted
            width: foot.wide(inches)
            height: foot.high
            firstOffered: true
        }
        NewPiece {
            id: millimetres
            readonly property bool wanted: !root.empty
            visible: wanted
            width: foot.wide(millimetres)
            height: foot.high
        }
        CutButton {
            id: file
            readonly property bool wanted: true
            width: foot.wide(file)
            height: foot.high
            text: qsTr("Open or back up")
            onClicked: files.start()
        }
        CutButton {
            id: away
            // On an empty shelf the way to them stands large above.
            readonly property bool wanted: Shelf.putAwayCount > 0 && !root.empty
            visible: wanted
            width: foot.wide(away)
            height: foot.high
            //: pieces that were put away, out of sight
            text: Shelf.showPutAway ? qsTr("Hide what is put away") : qsTr("Show what is put away")
            onClicked: Shelf.showPutAway = !Shelf.showPutAway
        }
        CutButton {
            id: light
            readonly property bool wanted: true
            width: foot.wide(light)
            height: foot.high
            text: qsTr("Language, screen")
            onClicked: Session.view = "settings"
        }
        CutButton {
            id: undo
            readonly property bool wanted: true
            width: foot.wide(undo)
            height: foot.high
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
