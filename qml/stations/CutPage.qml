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
    ActSketch {
        id: act
        anchors.fill: parent
        anchors.margins: Theme.margin
        visible: pictured && !drawing.visible
        kind: StepModel.finished ? "cut-done" : StepModel.doing
        accessibleName: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
    InlineLength {
        visible: !drawing.visible && !act.visible
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.margin
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
}
