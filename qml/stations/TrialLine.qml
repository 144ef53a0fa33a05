// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Over the drawing of a step of the trial: what the trial is, as long as it may be put off. */
Item {
    id: root

    /** False where a sheet lies over the work: the drawing needs the room beside it. */
    property bool wanted: true

    visible: wanted && StepModel.trial && !StepModel.finished
    height: visible ? says.implicitHeight + Theme.mm(3) : 0

    TrialSays {
        id: says
        x: Theme.margin
        y: Theme.mm(1)
        width: root.width - 2 * Theme.margin
    }
    KeyLine {
        y: root.height - height
        width: root.width
    }
}
