// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A caution: its mark and its words. On a small screen it may fold to the mark alone. */
Item {
    id: root

    property string text
    property bool folded: false
    /** What stands beside the mark where the words are folded away. */
    property string brief

    visible: text !== ""
    implicitWidth: mark.width + (folded ? 0 : Theme.mm(3) + words.implicitWidth)
    implicitHeight: visible ? Math.max(mark.height, folded ? 0 : words.implicitHeight) : 0

    Accessible.role: Accessible.AlertMessage
    Accessible.name: text
    Accessible.ignored: text === ""

    Pictogram {
        id: mark
        name: "warning"
        width: Theme.mm(5)
        y: Theme.mm(0.9)
        ink: Theme.colors.caution
        ground: Theme.colors.raised
    }
    Word {
        visible: root.folded && root.brief !== ""
        x: words.x
        width: words.width
        text: root.brief
        color: Theme.colors.caution
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Word {
        id: words
        visible: !root.folded
        x: mark.width + Theme.mm(3)
        width: root.width - x
        text: root.text
        color: Theme.colors.caution
        Accessible.ignored: true
    }
}
