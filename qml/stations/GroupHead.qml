// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/** The head of a group in a list, from edge to edge, with its sign: closed it says what matters most of what it holds. A cloth lies over it, one corner lifted; opened, it is folded back. */
Pressable {
    id: root

    property string text
    /** Its sign, by its name among the pictograms. */
    property string pictogram
    property string summary
    property var figure: null
    property bool open: false

    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink

    inList: true
    /** What is said does not stand beside the head, but under it; measured apart, it hangs on no width of theirs. */
    readonly property bool under: said.visible && lengthOf(text, heavy) + lengthOf(summary, light) + 2 * Theme.gap > sign.x - words.x

    /** What is left beside what stands at the end. */
    readonly property real free: (length.visible ? length.x : sign.x) - words.x - Theme.gap

    function lengthOf(words: string, letters: FontMetrics): real {
        return letters.font.pixelSize > 0 ? Math.ceil(letters.advanceWidth(words)) : 0;
    }

    implicitHeight: Math.max(Theme.step, words.implicitHeight + (under ? said.implicitHeight : 0) + Theme.mm(4))
    accessibleName: text + (summary !== "" ? ", " + summary : "")
    //: of a group in a list: what it holds is seen, or is not
    accessibleDescription: open ? qsTr("open") : qsTr("closed")
    Accessible.role: Accessible.Button
    Accessible.checkable: true
    Accessible.checked: open

    FontMetrics {
        id: heavy
        font: words.font
    }
    FontMetrics {
        id: light
        font: said.font
    }
    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    KeyLine {
        width: parent.width
    }
    Pictogram {
        id: picture
        // It gives way before a word has to be broken.
        readonly property real longest: root.text.split(" ").reduce((most, word) => Math.max(most, root.lengthOf(word, heavy)), 0)
        readonly property real besides: sign.width + 2 * Theme.margin + (length.active ? length.width + Theme.gap : 0)
        visible: name !== "" && longest + width + 2 * Theme.gap <= root.width - besides
        x: Theme.margin
        width: Theme.mm(8.4)
        anchors.verticalCenter: parent.verticalCenter
        name: root.pictogram
        ink: root.ink
        ground: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    Word {
        id: words
        x: Theme.margin + (picture.visible ? picture.width + Theme.gap : 0)
        width: said.visible && !root.under ? said.x - x - Theme.gap : root.free
        y: (parent.height - implicitHeight - (root.under ? said.implicitHeight : 0)) / 2
        cap: Theme.capWord
        bold: true
        color: root.ink
        text: root.text
        Accessible.ignored: true
    }
    Word {
        id: said
        visible: !root.open && root.summary !== ""
        y: root.under ? words.y + words.implicitHeight : (parent.height - implicitHeight) / 2
        x: root.under ? words.x : sign.x - width - Theme.gap
        width: root.under ? root.free : implicitWidth
        wrapMode: root.under ? Text.Wrap : Text.NoWrap
        color: root.ink
        text: root.summary
        Accessible.ignored: true
    }
    Loader {
        id: length
        active: !root.open && root.summary === "" && root.figure !== null
        visible: active
        anchors.verticalCenter: parent.verticalCenter
        x: sign.x - width - Theme.gap
        sourceComponent: FigureText {
            figure: root.figure
            cap: Theme.capInText
            color: root.ink
            accessibleIgnored: true
        }
    }
    CoverSign {
        id: sign
        x: parent.width - width - Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        open: root.open
        ink: root.ink
        ground: picture.ground
    }
    CutShape {
        visible: root.keyboardFocus
        anchors.fill: parent
        anchors.margins: Theme.focusGap
        stroke: Theme.colors.accent
        strokeWidth: Theme.keyBold
    }
}
