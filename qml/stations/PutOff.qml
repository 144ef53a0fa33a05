// SPDX-License-Identifier: MIT
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Puts the trial off: in as few words as stand beside a title or a figure. */
CutButton {
    objectName: "put-off"
    visible: StepModel.trial && !StepModel.finished
    width: Math.max(Theme.targetLeast, leastWidth, Math.min(Theme.mm(38), implicitWidth * 0.52))
    height: Theme.mm(14)
    cap: Theme.capWord
    //: the trial: one test block and one test join, made before the cloth for the piece is cut
    text: qsTr("Trial later")
    enabled: !Session.readOnly
    onClicked: StepModel.putOffTrial()
}
