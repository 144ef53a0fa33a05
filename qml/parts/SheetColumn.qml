// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** The ground of figures and targets, with its key line on the drawing's side and its contents inside the margin. */
Item {
    id: root

    default property alias contents: inside.data
    readonly property real innerWidth: inside.width

    implicitWidth: Theme.column

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    Item {
        id: inside
        x: Theme.margin
        y: Theme.margin
        width: root.width - 2 * Theme.margin
        height: root.height - 2 * Theme.margin
    }
    KeyLine {
        x: Theme.left ? root.width - width : 0
        height: root.height
    }
}
