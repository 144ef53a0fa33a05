// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/**
 * One bold number by itself, tracked tight, with no air before its first digit so that it hangs on
 * the margin. Its top is the top of the digits and its bottom their foot: the item is `cap` high.
 */
Item {
    id: root

    property string text
    property real cap: Theme.capInText
    property color color: Theme.colors.ink

    implicitWidth: Math.max(0, glyphs.implicitWidth - bearing)
    implicitHeight: cap

    readonly property real bearing: Math.max(0, ink.tightBoundingRect.x)

    TextMetrics {
        id: ink
        font: glyphs.font
        text: root.text
    }
    Text {
        id: glyphs
        x: -root.bearing
        y: root.cap - baselineOffset
        text: root.text
        color: root.color
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(root.cap)
        font.letterSpacing: -0.035 * Theme.fontSize(root.cap)
        renderType: Text.QtRendering
        Accessible.ignored: true
    }
}
