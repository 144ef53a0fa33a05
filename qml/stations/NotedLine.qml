// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** What was noted of a block, on a line over the drawing: where there is more of it, as much as stands on two. */
Item {
    id: root

    property string text

    visible: text !== ""
    implicitHeight: visible ? words.y + words.height + Theme.mm(1.4) : 0
    height: implicitHeight

    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Pictogram {
        id: sign
        x: Theme.left ? root.width - width - Theme.margin : Theme.margin
        y: words.y + (words.lineHeight - height) / 2
        name: "note"
        width: Theme.mm(7)
        ink: Theme.colors.ink
        ground: Theme.colors.raised
    }
    Word {
        id: words
        x: Theme.left ? Theme.margin : sign.x + sign.width + Theme.gap
        y: Theme.mm(1.2)
        width: root.width - sign.width - Theme.gap - 2 * Theme.margin
        text: root.text
        maximumLineCount: 2
        elide: Text.ElideRight
        // What else was written stands with the block's notes.
        readonly property bool preview: true
        Accessible.ignored: true
    }
    KeyLine {
        y: root.height - height
        width: root.width
    }
}
