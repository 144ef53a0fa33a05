// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One way to buy batting: drawn with the strips it yields, then told; the way taken is printed solid below its drawing. */
Item {
    id: root

    /** {roll, count, says, more, taken, strips, lengthMm, usableMm, lengthSays, widthSays} */
    property var told: ({})
    property real scaleLengthMm
    property real scaleWidthMm
    property bool solid: false

    readonly property color ink: solid ? Theme.colors.raised : Theme.colors.ink
    readonly property bool several: (told.count ?? 1) > 1

    implicitHeight: words.y + words.height + Theme.mm(2)
    height: implicitHeight

    ClothLayout {
        id: drawn
        x: Theme.mm(2)
        y: Theme.mm(1)
        width: parent.width - 2 * x - Theme.mm(13)
        height: Theme.mm(40)
        before: Theme.mm(33)
        kind: root.told.roll ? "roll" : "package"
        clothRole: "batting"
        strips: root.told.strips ?? []
        lengthMm: root.told.lengthMm ?? 0
        usableMm: root.told.usableMm ?? 0
        lengthSays: root.told.lengthSays ?? ""
        widthSays: root.told.widthSays ?? ""
        accessibleName: (lengthSays + " × " + widthSays).replace(/[{}]/g, "")
        scaleLengthMm: root.scaleLengthMm
        scaleWidthMm: root.scaleWidthMm
    }
    Word {
        id: times
        visible: root.several
        x: parent.width - width - Theme.mm(2)
        y: drawn.y + (drawn.height - height) / 2
        wrapMode: Text.NoWrap
        cap: Theme.capThird
        bold: true
        text: "× " + (root.told.count ?? 1)
        Accessible.ignored: true
    }
    Rectangle {
        y: words.y - Theme.mm(1)
        width: parent.width
        height: parent.height - y
        color: root.solid ? Theme.colors.ink : "transparent"
    }
    Column {
        id: words
        x: Theme.mm(2)
        y: drawn.y + drawn.height + Theme.mm(2)
        width: parent.width - 2 * x
        InlineLength {
            width: parent.width
            bold: true
            color: root.ink
            lengthColor: root.ink
            text: root.told.says ?? ""
            Accessible.ignored: true
        }
        Word {
            width: parent.width
            color: root.ink
            text: root.told.more ?? ""
            Accessible.ignored: true
        }
    }
}
