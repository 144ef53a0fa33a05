// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Where the block goes: what it is, the figure, and from where it is measured. */
Item {
    id: root

    signal working(string key)
    signal notes()

    function heard() {
        words.heard();
    }

    /** A low foot: the figure with its title, pressed for its sum; no rule, no further words. */
    property bool small: false
    readonly property bool figured: !StepModel.finished && HoopModel.figure.valid
    readonly property bool placed: figured && HoopModel.figureSays.length > 0
    readonly property real headHeight: head.visible ? head.implicitHeight : Math.max(title.implicitHeight, Theme.mm(root.small ? 4 : 7))
    readonly property real room: height - headHeight - Theme.mm(1)

    StepHead {
        id: head
        visible: !root.placed || StepModel.trial
        width: parent.width
    }
    Word {
        id: title
        visible: !head.visible
        width: parent.width - (count.visible ? count.implicitWidth + Theme.gap : 0)
        cap: root.small ? Theme.capWord : Theme.capHead
        bold: true
        text: HoopModel.title
    }
    Word {
        id: count
        visible: title.visible && StepModel.count > 1 && !root.small
        x: parent.width - implicitWidth
        text: qsTr("%1 of %2").arg(StepModel.done + 1).arg(StepModel.count)
        wrapMode: Text.NoWrap
    }
    Pressable {
        visible: root.figured && root.small
        y: root.headHeight
        width: parent.width
        height: parent.height - y
        enabled: HoopModel.figure.hasWorking
        accessibleName: HoopModel.figure.text
        accessibleDescription: qsTr("show the working")
        onClicked: root.working(HoopModel.figure.key)
        FigureText {
            figure: HoopModel.figure
            cap: Math.min(Theme.capFigure, parent.height * 0.62)
            availableWidth: parent.width
            showLean: false
            accessibleIgnored: true
        }
    }
    WorkedFigure {
        id: figure
        visible: root.figured && !root.small
        y: root.headHeight + Theme.mm(1)
        width: parent.width
        height: visible ? implicitHeight : 0
        figure: HoopModel.figure
        cap: Math.min(Theme.capFigure, root.room * (HoopModel.figure.lean !== "" ? 0.42 : 0.54))
        onWorking: root.working(HoopModel.figure.key)
    }
    Word {
        id: says
        visible: root.placed && !root.small
        y: figure.y + figure.height - (figure.worked ? Theme.mm(9) : -Theme.mm(1))
        width: parent.width - (figure.worked ? Theme.mm(17) : 0)
        text: HoopModel.title !== "" && head.visible ? HoopModel.title + " " + HoopModel.figureSays : HoopModel.figureSays
    }
    StepWords {
        id: words
        readonly property bool beside: root.figured && figure.worked && !root.placed
        y: root.placed ? says.y + says.implicitHeight + Theme.mm(1)
           : root.figured ? figure.y + figure.height - Theme.mm(figure.worked ? 9.2 : -1) : root.headHeight + Theme.mm(2)
        visible: (!root.placed || root.height - y > Theme.mm(10)) && !(root.small && root.placed)
        width: parent.width
        firstWidth: width - (beside ? Theme.mm(16) : 0)
        height: Math.max(0, root.height - y)
        onNotes: root.notes()
    }
}
