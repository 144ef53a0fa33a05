// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts

/** One step in a plain list: what it is, its figure, how many are done. */
ChoiceRow {
    id: root

    required property int index
    required property string title
    required property string figureText
    required property int count
    required property int done
    required property bool isCurrent
    required property bool trial

    inList: true
    chosen: isCurrent
    text: trial ? qsTr("Trial: %1").arg(title) : title
    detail: figureText.length > 0 ? qsTr("%1 · %2 of %3 done").arg(figureText).arg(done).arg(count)
                                  : qsTr("%1 of %2 done").arg(done).arg(count)
}
