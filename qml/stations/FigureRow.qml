// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** A figure that follows: a press opens its sum. One that was not tried yet stands on dots. */
Pressable {
    id: root

    required property string label
    required property var figure

    /** Beside its figure a word of the name would be broken: the figure stands beneath. */
    readonly property bool beneath: letters.font.pixelSize > 0 && longest > width - length.implicitWidth - 2 * Theme.margin - Theme.gap
    readonly property real longest: label.split(" ").reduce((most, word) => Math.max(most, letters.advanceWidth(word)), 0)

    readonly property color ink: pressed ? Theme.colors.raised : Theme.colors.ink

    enabled: figure.hasWorking
    inList: true
    implicitHeight: beneath ? words.implicitHeight + length.implicitHeight + Theme.mm(4.4)
                            : Math.max(Theme.step, words.implicitHeight + Theme.mm(3), length.implicitHeight + Theme.mm(3.4))
    accessibleName: label + ", " + figure.text + (figure.untried ? ", " + qsTr("not tried yet") : "")
    //: what pressing a figure does
    accessibleDescription: figure.hasWorking ? qsTr("show the working") : ""

    FontMetrics {
        id: letters
        font: words.font
    }
    Rectangle {
        anchors.fill: parent
        color: root.pressed ? Theme.colors.ink : Theme.colors.raised
    }
    Rectangle {
        x: Theme.margin
        width: parent.width - 2 * x
        height: Theme.keyThin
        color: Theme.colors.line
    }
    Word {
        id: words
        x: Theme.margin
        y: root.beneath ? Theme.mm(1) : (parent.height - implicitHeight) / 2
        width: (root.beneath ? parent.width - Theme.margin : length.x - Theme.gap) - x
        color: root.ink
        text: root.label
        Accessible.ignored: true
    }
    FigureText {
        id: length
        x: root.width - width - Theme.margin
        width: implicitWidth
        y: root.beneath ? words.y + words.implicitHeight : (parent.height - implicitHeight) / 2 - Theme.mm(0.6)
        figure: root.figure
        cap: Theme.capInText
        color: root.ink
        accessibleIgnored: true
    }
    DotLine {
        visible: root.figure.untried
        x: length.x
        y: length.y + length.height + Theme.mm(0.8)
        width: length.width
        height: dot
        dot: Theme.mm(0.7)
        step: Theme.mm(1.6)
        color: root.ink
    }
    CutShape {
        visible: root.keyboardFocus
        anchors.fill: parent
        anchors.margins: Theme.focusGap
        stroke: Theme.colors.accent
        strokeWidth: Theme.keyBold
    }
}
