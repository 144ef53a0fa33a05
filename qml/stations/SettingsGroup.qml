// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One thing to settle: its name, the choices, and a word on what it does. */
Column {
    id: root

    property string title
    property string says
    default property alias choice: inside.data

    spacing: Theme.mm(2)

    Word {
        width: root.width
        cap: Theme.mm(4.6)
        bold: true
        text: root.title
    }
    Item {
        id: inside
        width: root.width
        height: childrenRect.height
    }
    Word {
        visible: text !== ""
        width: root.width
        color: Theme.colors.inkSoft
        text: root.says
    }
}
