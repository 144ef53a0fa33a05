// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** What was noted of a block, on a line over the drawing: where there is more of it, as much as stands on its lines. */
Item {
    id: root

    property string text
    property int lines: 2

    visible: text !== ""
    implicitHeight: visible ? words.y + words.height + Theme.mm(1.4) : 0
    height: implicitHeight

    Accessible.role: Accessible.StaticText
    //: %1 is what was noted of a block when it was stitched, "Pleat on the back"
    Accessible.name: qsTr("Noted: %1").arg(text)
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
        maximumLineCount: root.lines
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
