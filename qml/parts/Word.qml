// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** Plain words, sized by cap height (px). Given a width they wrap between words; a word is broken only when it alone is too wide; they never elide. */
Text {
    property real cap: Theme.capWord
    property bool bold: false
    /** A line's height to the capitals'. */
    readonly property real lineShare: 1.62

    color: Theme.colors.ink
    font.family: Theme.family
    font.bold: bold
    font.pixelSize: Theme.fontSize(cap)
    lineHeight: cap * lineShare
    lineHeightMode: Text.FixedHeight
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    renderType: Text.QtRendering

    Accessible.role: Accessible.StaticText
    Accessible.name: text
    Accessible.ignored: text === ""
}
