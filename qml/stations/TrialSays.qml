// SPDX-License-Identifier: MIT
import Matside.Core
import Matside.Parts

/** What the trial is, and what it is good for; of its hoop strip, what that is cut for. A single block has nothing to join. */
Word {
    objectName: "trial-says"
    //: the trial: a block and a join made before the piece's own cloth is cut; what is measured on them sets seam and draw-up
    text: StepModel.trialSays !== "" ? StepModel.trialSays
        : JoinModel.columns * JoinModel.rows > 1 ? qsTr("The trial: first a test block and a test join, so that the figures fit your cloth.")
        : qsTr("The trial: first a test block, so that the figures fit your cloth.")
}
