// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * One term of a sum: its name, its value, and under them where it lies in the sum. One that has a sum of its own
 * carries the double rule.
 */
Pressable {
    id: root

    /** {name, text, figureKey, entered, common, preset, pieces}. */
    required property var modelData

    readonly property bool worked: modelData.figureKey !== ""
    /** A value too long to stand beside its name stands under it. */
    readonly property bool beneath: value.implicitWidth > width * 0.72

    enabled: worked
    inList: true
    /** What the words and the value take, without the bar under them. */
    readonly property real told: beneath ? words.height + value.height + Theme.mm(5)
                                         : Math.max(words.height + Theme.mm(2.4), value.height + Theme.mm(worked ? 4 : 2.4))
    implicitHeight: Math.max(Theme.step, told + (bar.visible ? bar.height + Theme.mm(1.6) : 0))
    accessibleName: modelData.name + ", " + modelData.text
    //: what pressing a term of a sum does
    accessibleDescription: worked ? qsTr("show the working") : ""

    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine {
        width: parent.width
    }
    Column {
        id: words
        // A sum that is told anew lets its rows go one by one: their last bindings find no row.
        y: root?.beneath ? Theme.mm(1.5) : ((root?.told ?? 0) - height) / 2
        width: (root?.width ?? 0) - (root?.beneath ? 0 : value.width + Theme.gap)
        Word {
            width: parent.width
            color: root.pressed ? Theme.colors.raised : Theme.colors.ink
            text: root.modelData.name
            Accessible.ignored: true
        }
        Word {
            visible: text !== ""
            width: parent.width
            color: root.pressed ? Theme.colors.raised : Theme.colors.inkSoft
            text: root.modelData.entered
                  //: stands under a value that the maker entered herself
                  ? qsTr("as you entered it")
                  //: stands under the size of the blocks: one that blocks off size have in common, taken for all
                  : root.modelData.common ? qsTr("the common size")
                  //: stands under a value that every new piece has and that she left as it was
                  : root.modelData.preset ? qsTr("preset") : ""
            Accessible.ignored: true
        }
    }
    InlineLength {
        id: value
        x: (root?.width ?? 0) - width
        y: root?.beneath ? words.y + words.height : ((root?.told ?? 0) - height) / 2 - (root?.worked ? Theme.mm(0.8) : 0)
        width: Math.min(implicitWidth, root?.width ?? 0)
        height: implicitHeight
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        text: "{" + root.modelData.text + "}"
        Accessible.ignored: true
    }
    DoubleRule {
        visible: root.worked
        x: value.x
        y: value.y + value.height
        width: value.width
        color: value.color
    }
    LaidBar {
        id: bar
        visible: pieces.length > 0
        y: (root?.height ?? 0) - height - Theme.mm(1.6)
        width: root?.width ?? 0
        height: implicitHeight
        pieces: root?.modelData.pieces ?? []
    }
    FocusOutline { visible: root.keyboardFocus }
}
