// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One note of a block: its size and what was written on a label, its pictures under their corners. */
Item {
    id: root

    required property var modelData
    property string sizeSays
    /** The height that is seen of the list it is in. */
    property real seen: Theme.mm(90)
    property string frontSays
    property string backSays

    readonly property bool front: modelData.front.toString() !== ""
    readonly property bool back: modelData.back.toString() !== ""
    readonly property bool pictured: front || back
    readonly property bool beside: pictured && width > Theme.mm(130)
    readonly property real rest: beside ? width - label.width - Theme.gap : width

    implicitHeight: beside ? Math.max(label.height, faces.height) : label.height + (pictured ? faces.height + Theme.gap : 0)

    NotebookSheet {
        id: label
        kind: "label"
        x: root.beside && Theme.left ? root.rest + Theme.gap : 0
        width: root.beside ? root.width * 0.32 : root.width
        height: words.height + Theme.mm(10)
    }
    Column {
        id: words
        x: label.x + Theme.mm(5)
        y: Theme.mm(5)
        width: label.width - Theme.mm(10)
        spacing: Theme.mm(2)
        InlineLength {
            width: parent.width
            text: root.sizeSays
        }
        Word {
            visible: text !== ""
            width: parent.width
            color: Theme.colors.caution
            text: root.modelData.flagsSays
        }
        Word {
            visible: text !== ""
            width: parent.width
            text: root.modelData.words
        }
    }
    Row {
        id: faces
        visible: root.pictured
        x: root.beside ? (Theme.left ? 0 : label.width + Theme.gap) : 0
        y: root.beside ? 0 : label.height + Theme.gap
        NotedFace {
            visible: root.front
            width: root.rest / (root.front && root.back ? 2 : 1)
            says: root.frontSays
            role: "front"
            most: root.seen
            picture: root.modelData.front
        }
        NotedFace {
            visible: root.back
            width: root.rest / (root.front && root.back ? 2 : 1)
            says: root.backSays
            role: "back"
            most: root.seen
            picture: root.modelData.back
        }
    }
}
