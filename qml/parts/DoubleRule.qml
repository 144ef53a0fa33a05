// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** Two rules, as at the foot of an account: there is a sum behind the figure above. */
Item {
    id: root

    property color color: Theme.colors.ink

    implicitHeight: Theme.mm(1.2) + Theme.key

    Rectangle {
        width: root.width
        height: Theme.key
        color: root.color
    }
    Rectangle {
        y: Theme.mm(1.2)
        width: root.width
        height: Theme.key
        color: root.color
    }
}
