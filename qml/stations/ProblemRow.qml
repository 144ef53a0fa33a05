// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What stands in the way, why, and the nearest values that work, one tap each. */
Item {
    id: root

    required property int index
    required property string says
    required property bool caution
    required property var offers

    implicitHeight: words.height + choices.height + Theme.gapTargets

    Word {
        id: words
        width: parent.width
        color: root.caution ? Theme.colors.caution : Theme.colors.stop
        bold: !root.caution
        text: root.says
    }
    Column {
        id: choices
        y: words.height + Theme.mm(2)
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: root.offers
            CutButton {
                required property var modelData
                width: choices.width
                height: Math.max(Theme.step, implicitHeight)
                kind: "outline"
                cap: Theme.capWord
                text: modelData.says
                onClicked: FitModel.takeOffer(root.index, modelData.index)
            }
        }
    }
}
