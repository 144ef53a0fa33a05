// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Place in the run, the one figure, one line, one caution, three targets. */
Item {
    id: root

    signal working(string key)
    signal wrong()
    signal notes()
    signal measure(way: string)

    function next() {
        targets.takeNext();
    }
    function back() {
        targets.takeBack();
    }

    readonly property var figure: StepModel.sided ? TrimModel.figure : StepModel.figure
    readonly property bool finished: StepModel.finished
    readonly property bool figured: !finished && root.figure.valid
    /** What was found of the block stands over the drawing, which needs the more height. */
    readonly property bool judged: StepModel.sided && TrimModel.verdict !== ""
    readonly property real air: Theme.mm(Theme.small ? 1.4 : 2.4)

    /** The height at which nothing has to give way. */
    readonly property real wanted: figured ? Theme.mm(judged ? 118 : 136)
                                   : head.implicitHeight + words.wanted + 2 * air + targets.implicitHeight + 1

    StepHead {
        id: head
        width: parent.width
    }
    WorkedFigure {
        id: figure
        objectName: "figure"
        visible: root.figured
        y: head.implicitHeight + root.air
        width: parent.width
        height: visible ? implicitHeight : 0
        figure: root.figure
        // On a low screen the figure gives way before the targets do; its rule, its tab
        // and the air down to the targets take 15.8 mm.
        cap: Math.max(Theme.mm(11), Math.min(Theme.capFigure * (root.judged ? 0.8 : 1), (targets.y - y - Theme.mm(15.8)) / 1.34))
        onWorking: root.working(root.figure.key)
    }
    StepWords {
        id: words
        // The cloth stands on the line of the figure's tab, left of it.
        readonly property bool beside: figure.visible && figure.worked
        y: figure.visible ? figure.y + figure.height - (beside ? Theme.mm(9.2) : -root.air) : figure.y
        width: parent.width
        height: Math.max(0, targets.y - y - root.air)
        firstWidth: width - (beside ? Math.max(Theme.mm(16), figure.tabWidth + Theme.gap) : 0)
        tabHeight: beside ? figure.y + figure.height - y : 0
        onNotes: root.notes()
    }
    StepTargets {
        id: targets
        anchors.bottom: parent.bottom
        width: parent.width
        onNext: words.heard()
        onWrong: root.wrong()
        onMeasure: way => root.measure(way)
    }
}
