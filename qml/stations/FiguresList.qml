// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** The figures that follow, in a list of their own. */
Flickable {
    id: root

    signal working(string key)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height

    FiguresColumn {
        id: rows
        width: root.width
        onWorking: key => root.working(key)
    }
}
