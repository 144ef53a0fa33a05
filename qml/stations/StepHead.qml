// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Where in the run she is. On the trial it says so, and offers to put the trial off. */
Item {
    id: root

    /** What stands here at the end, where the page has words of its own for it. */
    property string closing
    readonly property bool finished: StepModel.finished
    readonly property bool trying: StepModel.trial && !finished

    /** The widest word of the title: it is not broken, the title is set smaller, by a hair more since letters are set in whole pixels. */
    readonly property real longest: letters.font.pixelSize > 0 ? Math.max(1, ...title.text.split(" ").map(word => letters.advanceWidth(word))) : 1

    // What stands below is clear of the button, too.
    implicitHeight: Math.max(title.implicitHeight + (trying && title.lineCount < 2 ? Theme.mm(1.4) : 0), trying ? off.y + off.height : 0)

    /** On the trial, beside its button: set on one line where the least size allows it. */
    readonly property real whole: Math.max(1, letters.advanceWidth(title.text))
    readonly property bool oneLine: trying && title.width > 0 && whole * Theme.capWord / Theme.capHead < title.width * 0.97
    readonly property real mostCap: oneLine ? Math.min(Theme.capHead, Theme.capHead * 0.97 * title.width / whole)
                                    : trying && Theme.small ? Theme.mm(4.6) : Theme.capHead

    FontMetrics {
        id: letters
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(Theme.capHead)
    }
    Word {
        id: title
        y: root.trying && lineCount < 2 ? Theme.mm(0.6) : 0
        width: parent.width - (root.trying ? off.width + Theme.gap : tally.visible ? tally.width + Theme.gap : 0)
        cap: Math.max(Theme.capWord, Math.min(root.mostCap, Theme.capHead * 0.97 * width / root.longest))
        bold: true
        text: !root.finished ? (StepModel.sided ? TrimModel.title : StepModel.title) : root.closing !== "" ? root.closing : qsTr("Nothing left to do here")
    }
    Tally {
        id: tally
        visible: !root.finished && !root.trying && StepModel.count > 1 && !StepModel.sided && !crowded
        /** The title has the count in words: beside a long one it would only make that wrap. */
        readonly property bool crowded: letters.advanceWidth(title.text) > (root.width - width - Theme.gap) * 0.97
        x: parent.width - width
        y: Theme.mm(1)
        availableWidth: Theme.mm(26)
        total: StepModel.count
        done: StepModel.done
    }
    PutOff {
        id: off
        x: parent.width - width
        y: -Theme.mm(2.4)
    }
}
