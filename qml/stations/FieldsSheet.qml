// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Everything she decides, group by group, in one list that runs. */
ListView {
    id: root

    signal ask(string pointer, string label, string kind, string text)

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    spacing: Theme.gap
    model: FitModel.fields
    delegate: FieldRow {
        width: root.width
        onAsk: (pointer, label, kind, text) => root.ask(pointer, label, kind, text)
    }
}
