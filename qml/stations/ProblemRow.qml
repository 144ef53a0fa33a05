// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What stands in the way, why, and the nearest values that work, one tap each. A caution stays quiet. */
Column {
    id: root

    required property int index
    required property string at
    required property string says
    required property bool caution
    required property var offers

    topPadding: Theme.mm(1)
    bottomPadding: Theme.gap
    spacing: Theme.mm(2)

    CautionLine {
        visible: root.caution
        width: parent.width
        text: root.caution ? root.says : ""
    }
    Word {
        visible: !root.caution && root.says !== ""
        width: parent.width
        color: Theme.colors.stop
        bold: true
        text: root.says
    }
    Flow {
        visible: root.offers.length > 0
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: root.offers
            CutButton {
                required property var modelData
                width: Math.min(implicitWidth, root.width)
                height: Math.max(Theme.step, contentHeight)
                inList: true
                enabled: !Session.readOnly
                text: modelData.says
                onClicked: FitModel.takeOffer(root.index, modelData.index)
            }
        }
    }
}
