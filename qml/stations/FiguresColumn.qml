// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Every figure that follows, live, one under the other. */
Column {
    id: root

    signal working(string key)

    Word {
        x: Theme.margin
        width: parent.width - 2 * x
        topPadding: Theme.mm(1.5)
        bottomPadding: Theme.mm(1.5)
        color: Theme.colors.inkSoft
        //: how figures are marked that the trial has not confirmed
        text: qsTr("Dotted figures: your trial may still change them.")
    }
    Repeater {
        model: FitModel.figures
        FigureRow {
            width: root.width
            onClicked: root.working(figure.key)
        }
    }
}
