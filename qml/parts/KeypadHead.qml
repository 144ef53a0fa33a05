// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "fractions.js" as Fractions

/** The value that is being entered, as typed so far, on its line. */
Item {
    id: root

    /** Height of the value's capitals. */
    property real cap: Theme.capSecond
    property var figure: null
    /** True while the value stands as it was: the first key replaces it. */
    property bool untouched: false
    property bool wrong: false

    /** As high as the value stands at the most: a fraction alone. */
    readonly property real most: Fractions.stack(cap, true, Theme.capNumeralLeast, Theme.pxPerMm)

    FigureText {
        id: value
        // Digits stay where they are, with a fraction and without.
        y: Math.max(0, (root.most - implicitHeight) / 2)
        figure: root.figure
        cap: root.cap
        color: root.untouched ? Theme.colors.inkSoft : Theme.colors.ink
        availableWidth: root.width
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: root.wrong ? Theme.keyBold : Theme.key
        color: root.wrong ? Theme.colors.caution : Theme.colors.ink
    }
}
