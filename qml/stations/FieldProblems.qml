// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core

/** What stands in the way of one field, said at the field. */
Column {
    id: root

    property string pointer

    Repeater {
        model: FitModel.problems
        ProblemRow {
            visible: root.pointer === at || root.pointer.startsWith(at + "/")
            width: root.width
        }
    }
}
