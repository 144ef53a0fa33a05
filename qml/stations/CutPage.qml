// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The next cut: the ruler on its cloth to scale, and the column at the cutting hand. */
StepPage {
    id: root

    RulerDrawing {
        id: drawing
        anchors.fill: parent
        visible: StepModel.ruler.show && !StepModel.finished
        view: StepModel.ruler
        clothRole: StepModel.clothRole
        accessibleName: StepModel.spoken.replace(/[{}]/g, "")
    }
    InlineLength {
        visible: !drawing.visible
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.margin
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
}
