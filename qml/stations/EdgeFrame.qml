// SPDX-License-Identifier: MIT
import Matside.Core

/** How the frame is cut to length, sewn on both faces and filled. */
SpreadActs {
    heading: qsTr("The frame")
    acts: EdgeModel.frameActs
}
