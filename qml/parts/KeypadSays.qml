// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** What is wrong with an entry, in words, and values that would do. */
Column {
    id: root

    property string error
    property real cap: Theme.capWord
    property var offers: []

    signal offerTaken(int index)

    spacing: Theme.mm(1.6)

    CautionLine {
        width: root.width
        height: implicitHeight
        cap: root.cap
        text: root.error
    }
    Flow {
        width: root.width
        spacing: Theme.gap
        visible: root.offers.length > 0
        Repeater {
            model: root.offers
            CutButton {
                required property var modelData
                width: Math.min(implicitWidth, root.width)
                height: Math.max(Theme.step, contentHeight)
                text: modelData.says
                onClicked: root.offerTaken(modelData.index)
            }
        }
    }
}
