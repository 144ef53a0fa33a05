// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A figure with its name before it, centred on a place of a drawing and kept inside it. */
Row {
    id: root

    property string label
    property var figure: null
    /** The place it is centred on; before the drawing is mirrored. */
    property real centre: 0
    property real room: parent?.width ?? 0

    x: Math.max(Theme.margin, Math.min(room - width - Theme.margin, (Theme.left ? room - centre : centre) - width / 2))
    spacing: Theme.mm(1.6)
    Word {
        anchors.verticalCenter: parent.verticalCenter
        wrapMode: Text.NoWrap
        text: root.label
    }
    FigureText {
        anchors.verticalCenter: parent.verticalCenter
        figure: root.figure
        cap: Theme.capInText
        showUnit: false
        showLean: false
    }
}
