// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * How the picture comes about, drawn, and beside it in words what is the matter. It fills the place it is given, or
 * takes as little of it as it can where something else is to be seen.
 */
Item {
    id: root

    property string scene
    property var view: null
    property bool back: false
    property string colour
    property string label
    /** What went wrong and what to do. */
    property string says
    /** What else there is to say, a text each; "" for none. */
    property string told
    property string note
    property bool brief: false

    readonly property bool wordy: says !== "" || told !== "" || note !== ""
    readonly property bool beside: brief || width > height * 1.2
    readonly property bool low: beside && height < Theme.mm(76)
    readonly property real cap: brief || low ? Theme.capWord : Theme.mm(4.6)
    /** So much of the width the drawing has beside the words. */
    readonly property real share: !low ? 0.52 : note !== "" ? 0.24 : says !== "" && told !== "" ? 0.34 : 0.42

    implicitHeight: words.height > 0 || drawing.visible && brief ? Math.max(words.height, drawing.visible ? Theme.mm(22) : 0) : 0

    PhotoScene {
        id: drawing
        visible: root.scene !== ""
        x: root.beside && Theme.left && root.wordy ? root.width - width : 0
        width: root.brief ? Theme.mm(32) : !root.wordy || !root.beside ? root.width : Math.floor(root.width * root.share)
        height: root.brief ? Theme.mm(22) : !root.wordy || root.beside ? root.height
                : Math.max(0, Math.min(root.height * 0.66, root.height - words.height - Theme.margin))
        scene: root.scene
        view: root.view
        back: root.back
        colour: root.colour
        label: root.label
    }
    Column {
        id: words
        readonly property real from: drawing.visible && root.beside ? drawing.width + 2 * Theme.margin : 0
        x: Theme.left ? 0 : from
        y: root.brief ? Math.max(0, (drawing.visible ? drawing.height : 0) - height) / 2
           : root.beside ? Math.max(0, (root.height - height) / 2) : (drawing.visible ? drawing.height + Theme.margin : 0)
        width: root.width - from
        spacing: root.low ? Theme.gap : Theme.margin
        CautionLine {
            objectName: "says"
            width: parent.width
            cap: root.cap
            text: root.says
        }
        Word {
            visible: text !== ""
            width: parent.width
            cap: root.cap
            text: root.told
        }
        Word {
            visible: text !== ""
            width: parent.width
            text: root.note
        }
    }
}
