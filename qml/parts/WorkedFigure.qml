// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A figure down to its double rule, pressed as one: it opens the working when there is one. */
Pressable {
    id: root

    property var figure: null
    property real cap: Theme.capFigure
    property color color: Theme.colors.ink
    property bool showUnit: true

    signal working()

    readonly property bool worked: figure?.hasWorking ?? false
    /** Width of the tab, by the word of her language. */
    readonly property real tabWidth: tab.width
    readonly property real ruleGap: Math.max(Theme.mm(2), cap * 0.11)

    implicitWidth: number.implicitWidth
    implicitHeight: number.implicitHeight + (worked ? ruleGap + tab.implicitHeight : 0)
    enabled: worked
    accessibleName: figure ? figure.text ?? "" : ""
    //: what pressing a figure does
    accessibleDescription: worked ? qsTr("show the working") : ""

    Accessible.ignored: figure === null

    onClicked: working()

    FigureText {
        id: number
        figure: root.figure
        cap: root.cap
        color: root.color
        showUnit: root.showUnit
        availableWidth: root.width
        accessibleIgnored: true
    }
    DoubleRule {
        visible: root.worked
        y: number.implicitHeight + root.ruleGap
        width: root.width - tab.width - Theme.gap
        color: root.color
    }
    WorkingTab {
        id: tab
        visible: root.worked
        x: root.width - width
        y: number.implicitHeight + root.ruleGap
        down: root.pressed
        listening: false
        activeFocusOnTab: false
        Accessible.ignored: true
    }
    FocusOutline { visible: root.keyboardFocus }
}
