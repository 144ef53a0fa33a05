// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A figure with what it lies on, above or below the line it belongs to. */
Row {
    id: root

    /** Where its line is drawn, px from the left of the right-handed sheet. */
    property real drawnAt
    /** Width of the page it stands on, and how far to the right it may reach. */
    property real page
    property real limit: page - Theme.margin
    property var figure: null
    property string says
    /** The words on two lines, where it is narrow. */
    property bool folded: false

    readonly property real from: Math.max(Theme.margin, Math.min(limit - width, drawnAt - width / 2))

    x: Theme.left ? page - from - width : from
    height: Math.max(length.implicitHeight, words.implicitHeight)
    spacing: Theme.gap

    FontMetrics {
        id: letters
        font: words.font
    }
    FigureText {
        id: length
        figure: root.figure
        cap: Theme.capThird
        color: Theme.colors.accent
        anchors.verticalCenter: parent.verticalCenter
    }
    Word {
        id: words
        readonly property real longest: Math.max(0, ...root.says.split(" ").map(word => letters.advanceWidth(word)))
        width: root.folded ? Math.ceil(Math.max(longest * 1.03, letters.advanceWidth(root.says) * 0.55)) : implicitWidth
        anchors.verticalCenter: parent.verticalCenter
        color: Theme.colors.accent
        text: root.says
    }
}
