// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The finished size both ways, as large as the column holds, down to one double rule: there is a sum behind it. */
Pressable {
    id: root

    readonly property var along: FitModel.finishedAlong
    readonly property var across: FitModel.finishedAcross
    readonly property real room: width - tab.width - Theme.margin
    property real fullCap: Theme.mm(Theme.small ? 12 : 16)
    /** The second side stands under the first. */
    property bool stacked: false
    readonly property real fixed: times.implicitWidth + 2 * air
    readonly property real air: Theme.mm(2)
    readonly property real natural: stacked ? Math.max(wide.implicitWidth, high.implicitWidth - fixed) : wide.implicitWidth + high.implicitWidth
    readonly property real cap: Math.max(Theme.capInText, Math.min(fullCap, fullCap * (room - fixed) / Math.max(1, natural)))

    readonly property real figures: stacked ? first.implicitHeight + Theme.mm(2.4) + second.implicitHeight : Math.max(first.implicitHeight, second.implicitHeight)
    implicitHeight: figures + Theme.mm(2.6) + rule.implicitHeight + Theme.mm(0.5)
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
        y: root.stacked ? 0 : rule.y - Theme.mm(2.6) - footLine - foot
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
        x: root.stacked ? 0 : times.x + times.width + root.air
        y: root.stacked ? rule.y - Theme.mm(2.6) - implicitHeight : first.y + first.footLine - footLine
        figure: root.across
        cap: root.cap
        accessibleIgnored: true
    }
    DoubleRule {
        id: rule
        y: root.height - implicitHeight - Theme.mm(0.5)
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
