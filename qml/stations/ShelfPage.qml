// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Every project with its picture, name and next step; and the way to a new one. */
FocusScope {
    id: root

    property string opened

    function leave() {
        opened = "";
    }

    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capSecond * 0.7
        bold: true
        text: qsTr("On the shelf")
    }
    Word {
        id: first
        visible: list.count === 0
        x: Theme.margin
        y: head.y + head.height + Theme.gapTargets
        width: parent.width - 2 * Theme.margin
        text: qsTr("Begin a piece in your ruler’s measure: it starts with nine blocks that you can change at once.")
    }
    ListView {
        id: list
        y: head.y + head.height + Theme.gap
        width: parent.width
        height: foot.y - y - Theme.gap
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: Shelf
        delegate: ProjectRow {
            width: list.width
            opened: root.opened === id
            onToggled: root.opened = opened ? "" : id
        }
    }
    Flow {
        id: foot
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gapTargets
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight

        readonly property real each: Math.max(Theme.mm(36), Math.min(Theme.mm(50), (width - 4 * spacing) / 5))

        CutButton {
            width: foot.each
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("New, in inches")
            onClicked: Shelf.createProject(qsTr("New piece"), "inch")
        }
        CutButton {
            width: foot.each
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("New, in millimetres")
            onClicked: Shelf.createProject(qsTr("New piece"), "metric")
        }
        CutButton {
            width: foot.each
            height: Theme.targetLeast
            kind: "outline"
            text: Shelf.showPutAway ? qsTr("Hide what was put away") : qsTr("Show what was put away")
            onClicked: Shelf.showPutAway = !Shelf.showPutAway
        }
        CutButton {
            width: foot.each
            height: Theme.targetLeast
            kind: "outline"
            text: qsTr("Light and hand")
            onClicked: Session.view = "settings"
        }
        CutButton {
            width: foot.each
            height: Theme.targetLeast
            kind: "outline"
            enabled: Session.canUndo
            text: Session.canUndo ? qsTr("Undo: %1").arg(Session.undoText) : qsTr("Undo")
            onClicked: Session.undo()
        }
    }
}
