// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** One step in a plain list: what it is, its figures, and how many are made. The present one is solid. */
Pressable {
    id: root

    required property int index
    required property string title
    required property string figureText
    required property int count
    required property int done
    required property bool isCurrent
    required property bool trial

    readonly property bool made: done >= count
    readonly property bool solid: isCurrent !== pressed
    readonly property color ink: solid ? Theme.colors.raised : made ? Theme.colors.inkSoft : Theme.colors.ink
    readonly property string sizes: figureText === "" ? "" : "{" + figureText.replace(" × ", "} × {") + "}"
    readonly property string told: made ? qsTr("done") : count > 1 || done > 0 ? qsTr("%1 of %2 done").arg(done).arg(count) : ""

    inList: true
    /** On a narrow sheet the count stands under the words, not beside them. */
    readonly property bool beneath: width < Theme.mm(100)

    implicitHeight: Math.max(Theme.step, words.height + Theme.mm(5) + (beneath && tally.visible ? tally.height : 0))
    accessibleName: title + (figureText !== "" ? ", " + figureText : "") + (told !== "" ? ", " + told : "")

    Rectangle {
        width: parent.width
        height: parent.height
        color: root.solid ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine {
        width: parent.width
    }
    Column {
        id: words
        x: Theme.margin
        y: (parent.height - height - (root.beneath && tally.visible ? tally.height : 0)) / 2
        width: root.width - 2 * Theme.margin - (tally.visible && !root.beneath ? tally.width + Theme.gap : 0)
        Word {
            width: parent.width
            bold: root.isCurrent
            color: root.ink
            text: root.trial ? qsTr("Trial: %1").arg(root.title) : root.title
            Accessible.ignored: true
        }
        InlineLength {
            visible: text !== ""
            width: parent.width
            color: root.ink
            text: root.sizes
            Accessible.ignored: true
        }
    }
    Word {
        id: tally
        visible: text !== ""
        x: root.beneath ? Theme.margin : parent.width - width - Theme.margin
        y: root.beneath ? words.y + words.height : (parent.height - height) / 2
        color: root.ink
        wrapMode: Text.NoWrap
        text: root.told
        Accessible.ignored: true
    }
    CutShape {
        visible: root.keyboardFocus
        anchors.fill: parent
        anchors.margins: Theme.focusGap
        stroke: root.solid ? Theme.colors.raised : Theme.colors.accent
        strokeWidth: Theme.keyBold
    }
}
