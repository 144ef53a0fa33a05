// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The block as measured, its departure drawn larger than it is, with what it means and what to do. */
Rectangle {
    id: root

    /** Lower than wide: verdict and drawing beside each other. */
    readonly property bool beside: width > height * 1.2
    readonly property bool judged: BlockMeasure.measured

    color: Theme.colors.paper

    FindingBlock {
        id: finding
        visible: root.judged
        // Beside the drawing its lines are short and many: every word of what to do has to stand there.
        mostCap: Theme.small || root.beside ? Theme.capThird : Theme.capSecond
        mostRemedyCap: Theme.small || root.beside ? Theme.capWord : Theme.capHead
        width: root.beside ? root.width * 0.62 : root.width
        head: BlockMeasure.asShownSays
        verdict: BlockMeasure.verdict
        remedy: BlockMeasure.remedy
    }
    InlineLength {
        id: asked
        visible: !root.judged
        x: Theme.margin
        y: Theme.margin
        width: (root.beside ? root.width * 0.55 : root.width) - 2 * Theme.margin
        cap: Theme.capHead
        text: qsTr("Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.")
    }
    BlockShape {
        x: root.beside ? finding.width + Theme.margin : Theme.margin
        y: root.beside ? Theme.margin : (root.judged ? finding.implicitHeight : asked.y + asked.implicitHeight) + Theme.gap
        width: root.width - x - Theme.margin
        height: root.height - y - Theme.margin
        corners: BlockMeasure.corners
        planned: BlockMeasure.planned
        times: BlockMeasure.times
        accessibleName: root.judged ? BlockMeasure.verdict.replace(/[{}]/g, "") : asked.text
    }
}
