// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A caution: its mark and its words. On a small screen it may fold to the mark and a word. */
Item {
    id: root

    property string text
    property real cap: Theme.capWord
    property bool folded: false
    /** What stands beside the mark where the words are folded away. */
    property string brief

    visible: text !== ""
    implicitWidth: mark.width + (words.text !== "" ? Theme.mm(3) + words.implicitWidth : 0)
    implicitHeight: visible ? Math.max(mark.height, words.text !== "" ? words.implicitHeight : 0) : 0

    Accessible.role: Accessible.AlertMessage
    Accessible.name: text
    Accessible.ignored: text === ""

    Pictogram {
        id: mark
        name: "warning"
        width: root.cap * 1.25
        y: root.cap * 0.225
        ink: Theme.colors.caution
        ground: Theme.colors.raised
    }
    Word {
        id: words
        visible: text !== ""
        x: mark.width + Theme.mm(3)
        width: root.width - x
        cap: root.cap
        text: root.folded ? root.brief : root.text
        color: Theme.colors.caution
        Accessible.ignored: true
    }
}
