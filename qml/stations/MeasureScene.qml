// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The block under its six tapes, its departure drawn larger than it is, with what it means and what to do. */
Rectangle {
    id: root

    /** The reading in hand, 0 to 5 as the model has them. */
    property int held: 0

    signal taken(int reading)

    readonly property bool judged: BlockMeasure.measured
    /** Over little height the words stand back for the tapes. */
    readonly property bool low: height < Theme.mm(112)
    readonly property bool metric: Session.units === "mm"

    color: Theme.colors.paper

    FindingBlock {
        id: finding
        visible: root.judged
        mostCap: root.low ? Theme.capInText : Theme.capThird
        mostRemedyCap: Theme.capWord
        width: root.width
        head: BlockMeasure.asShownSays
        verdict: BlockMeasure.verdict
        remedy: BlockMeasure.remedy
    }
    InlineLength {
        id: asked
        visible: !root.judged
        x: Theme.margin
        y: Theme.margin
        width: root.width - 2 * Theme.margin
        cap: root.low ? Theme.capWord : Theme.capHead
        text: qsTr("Lay the block flat, off the hoop and rested. Measure its four sides and both diagonals.")
    }
    TapedBlock {
        x: Theme.mm(1)
        y: (root.judged ? finding.implicitHeight : asked.y + asked.implicitHeight) + Theme.mm(1)
        width: root.width - 2 * x
        height: Math.max(0, root.height - y - Theme.mm(1.5))
        visible: height >= Theme.mm(27)
        corners: BlockMeasure.corners
        planned: BlockMeasure.planned
        times: BlockMeasure.times
        judged: root.judged
        readings: BlockMeasure.readings
        held: root.held
        markMm: root.metric ? 10 : 12.7
        group: root.metric ? 5 : 2
        accessibleName: root.judged ? BlockMeasure.verdict.replace(/[{}]/g, "") : asked.text
        onTaken: reading => root.taken(reading)
    }
}
