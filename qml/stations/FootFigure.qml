// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The figure of a wide station: what it is, the number, and from where it is measured. */
Item {
    id: root

    property string heading
    property string telling
    /** How far it is in its run; empty where the title says it. */
    property string tally: qsTr("%1 of %2").arg(StepModel.done + 1).arg(StepModel.count)
    property var figure: null
    /** At the end, the head and the words under it; empty for the step's own. */
    property string closing
    property string closingWords

    signal working(string key)
    signal notes()

    function heard() {
        words.heard();
    }

    /** A low foot: the figure with its title, pressed for its sum; no rule, no further words. */
    property bool small: false
    /** What to mind stands among its words. */
    readonly property bool minded: words.visible
    readonly property string firstCaution: words.firstCaution
    readonly property bool figured: !StepModel.finished && (root.figure?.valid ?? false)
    readonly property bool placed: figured && root.telling.length > 0
    readonly property real headHeight: head.visible ? head.implicitHeight : Math.max(title.implicitHeight, Theme.mm(root.small ? 4 : 7))
    readonly property real room: height - headHeight - Theme.mm(1)

    StepHead {
        id: head
        // A low foot has no room for more than the figure's title; the trial is put off beside its figure.
        visible: !(root.small && root.figured) && (StepModel.trial || !root.placed)
        closing: root.closing
        width: parent.width
    }
    Word {
        id: title
        visible: !head.visible
        width: parent.width - (count.visible ? count.implicitWidth + Theme.gap : sign.visible ? sign.width + Theme.gap : 0)
        cap: root.small ? Theme.capWord : Theme.capHead
        bold: true
        text: root.heading !== "" ? root.heading : StepModel.title
    }
    Word {
        id: count
        // A title of the step counts in words; a heading it would make wrap has the block's name.
        readonly property bool wanted: root.heading !== "" && root.heading !== StepModel.title
            && whole.advanceWidth <= (root.width - implicitWidth - Theme.gap) * 0.97
        visible: title.visible && wanted && StepModel.count > 1 && !root.small
        x: parent.width - implicitWidth
        text: root.tally
        wrapMode: Text.NoWrap
    }
    TextMetrics {
        id: whole
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(Theme.capHead)
        text: title.text
    }
    Pressable {
        visible: root.figured && root.small
        y: root.headHeight
        width: parent.width - (off.visible ? off.width + Theme.gap : sign.visible ? sign.width + Theme.mm(1.5) : 0)
        height: parent.height - y
        enabled: root.figure?.hasWorking ?? false
        accessibleName: root.figure?.text ?? ""
        accessibleDescription: qsTr("show the working")
        onClicked: root.working(root.figure.key)
        FigureText {
            figure: root.figure
            cap: Math.min(Theme.capFigure, parent.height * (off.visible ? 0.44 : 0.62))
            availableWidth: parent.width
            showLean: false
            accessibleIgnored: true
        }
    }
    MindSign {
        id: sign
        objectName: "mind"
        visible: root.small && !root.minded && !StepModel.finished && StepModel.caution !== ""
        x: parent.width - width
        y: -Theme.mm(1.6)
        onClicked: root.notes()
    }
    PutOff {
        id: off
        visible: StepModel.trial && root.figured && root.small
        x: parent.width - width
        // Its foot stands level with that of the targets.
        y: (root.height + Theme.target) / 2 - height
    }
    WorkedFigure {
        id: number
        visible: root.figured && !root.small
        y: root.headHeight + Theme.mm(1)
        width: parent.width
        height: visible ? implicitHeight : 0
        figure: root.figure
        // A second line beneath takes its room from the number; a fraction alone stands taller than a whole number.
        readonly property real below: says.visible ? (says.lineCount - 1) * Theme.capWord * 1.62 : 0
        readonly property bool stacked: (root.figure?.whole ?? "") === ""
        cap: Math.min(Theme.capFigure, (root.room - 1.6 * below) * ((root.figure?.lean ?? "") === "" ? (stacked ? 0.47 : 0.54) : head.visible ? 0.28 : 0.42))
        onWorking: root.working(root.figure.key)
    }
    Word {
        id: says
        visible: root.placed && !root.small
        y: number.y + number.height - (number.worked ? Theme.mm(9) : -Theme.mm(1))
        width: parent.width - (number.worked ? Math.max(Theme.mm(17), number.tabWidth + Theme.gap) : 0)
        // What stands at the head already is not said twice.
        text: root.heading !== "" && root.heading !== StepModel.title && head.visible ? root.heading + " " + root.telling : root.telling
    }
    StepWords {
        id: words
        closing: root.closing !== "" ? root.closingWords : StepModel.elsewhereText
        readonly property bool beside: root.figured && number.worked && !root.placed
        y: root.placed ? says.y + says.implicitHeight + Theme.mm(1)
           : root.figured ? number.y + number.height - Theme.mm(number.worked ? 9.2 : -1) : root.headHeight + Theme.mm(2)
        visible: (!root.placed || root.height - y > Theme.mm(10)) && !(root.small && root.figured)
        width: parent.width
        firstWidth: width - (beside ? Math.max(Theme.mm(16), number.tabWidth + Theme.gap) : 0)
        tabHeight: number.visible && number.worked ? Math.max(0, number.y + number.height - y) : 0
        height: Math.max(0, root.height - y)
        onNotes: root.notes()
    }
}
