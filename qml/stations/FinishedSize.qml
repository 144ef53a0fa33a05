// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The finished size both ways, in one line as large as its room holds, down to one double rule: there is a sum behind it. */
Pressable {
    id: root

    readonly property var along: FitModel.finishedAlong
    readonly property var across: FitModel.finishedAcross
    /** What the tab takes of its width. */
    readonly property real beside: below ? 0 : tab.width + Theme.margin
    readonly property real room: width - beside
    property real fullCap: Theme.mm(Theme.small ? 12 : 16)
    /** The tab hangs under the rule; else beside it. */
    property bool below: false
    readonly property real air: Theme.mm(2)
    /** Of its width, what grows with the figures, and what does not. */
    readonly property real natural: Math.max(1, wide.bareWidth + high.bareWidth)
    readonly property real fixed: wide.implicitWidth + high.implicitWidth - natural + times.implicitWidth + 2 * air
    readonly property real cap: Math.max(Theme.capInText, Math.min(fullCap, fullCap * (room - fixed) / natural))
    /** The width at which the figures are still larger than any other of the page. */
    readonly property real leastWidth: fixed + natural * Theme.mm(7.4) / fullCap + beside

    readonly property real figures: Math.max(first.implicitHeight, second.implicitHeight)
    implicitHeight: figures + Theme.mm(2.6) + rule.implicitHeight + (below ? Theme.mm(1.4) + tab.height : Theme.mm(0.5))
    height: implicitHeight
    accessibleName: qsTr("Finished %1 by %2").arg(along.text).arg(across.text)
    //: what pressing a figure does
    accessibleDescription: qsTr("show the working")

    // Measured at full size, not shown.
    FigureText {
        id: wide
        visible: false
        figure: root.along
        cap: root.fullCap
        showUnit: false
        accessibleIgnored: true
    }
    FigureText {
        id: high
        visible: false
        figure: root.across
        cap: root.fullCap
        accessibleIgnored: true
    }
    FigureText {
        id: first
        y: rule.y - Theme.mm(2.6) - footLine - foot
        readonly property real foot: implicitHeight - footLine
        figure: root.along
        cap: root.cap
        showUnit: false
        accessibleIgnored: true
    }
    Word {
        id: times
        x: first.width + root.air
        y: first.y + first.capTop + root.cap / 2 + cap / 2 - baselineOffset
        cap: Theme.capHead
        wrapMode: Text.NoWrap
        text: "×"
        Accessible.ignored: true
    }
    FigureText {
        id: second
        x: times.x + times.width + root.air
        y: first.y + first.footLine - footLine
        figure: root.across
        cap: root.cap
        accessibleIgnored: true
    }
    DoubleRule {
        id: rule
        y: root.figures + Theme.mm(2.6)
        width: root.room
    }
    WorkingTab {
        id: tab
        x: root.width - width
        y: root.height - height
        down: root.pressed
        listening: false
        activeFocusOnTab: false
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
