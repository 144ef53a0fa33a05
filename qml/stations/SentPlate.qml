// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What is typed into the machine for one block: its size, and small how much larger than the block that is. */
Item {
    id: root

    implicitHeight: rows.height + Theme.mm(5)
    Accessible.role: Accessible.StaticText
    Accessible.name: HoopModel.sentSays

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
        border.color: Theme.colors.ink
        border.width: Theme.key
    }
    Column {
        id: rows
        x: Theme.mm(1.8)
        y: Theme.mm(2.6)
        width: root.width - 2 * x
        spacing: Theme.mm(1)
        Word {
            width: parent.width
            //: on a plate, over the size that is typed into the embroidery machine
            text: qsTr("Send to the machine")
            Accessible.ignored: true
        }
        FigureText {
            figure: ({ whole: HoopModel.sentSize, unit: "mm", text: HoopModel.sentSize })
            cap: Theme.mm(5.8)
            accessibleIgnored: true
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: HoopModel.sentPercent
            Accessible.ignored: true
        }
    }
}
