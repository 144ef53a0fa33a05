// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** A block or the piece under its six tapes, its departure drawn larger than it is, with what it means and what to do. */
Rectangle {
    id: root

    /** The reading in hand, 0 to 5 as the model has them. */
    property int held: 0
    /** Something was read: before, `asks` says what to do. */
    property bool judged: false
    property string asks
    /** What the readings say, and what stands over it. */
    property string head
    property string verdict
    property string remedy
    /** As TapedBlock has them. */
    property var piece: null
    property var corners: []
    property var planned: []
    property real times: 1
    property var readings: []
    property real markMm: Session.units === "mm" ? 10 : 12.7
    property int group: Session.units === "mm" ? 5 : 2

    signal taken(int reading)

    /** Over little height the words stand back for the tapes. */
    readonly property bool low: height < Theme.mm(112)
    /** Long words leave the tapes their room, too. */
    readonly property bool wordy: remedy.length > 64

    color: Theme.colors.paper

    FindingBlock {
        id: finding
        objectName: "measured"
        visible: root.judged
        mostCap: root.low && root.wordy ? Theme.capHead : root.low || root.wordy ? Theme.capInText : Theme.capThird
        // Over little height a long one leaves room for the tapes she stands at.
        leastCap: root.low ? Theme.capHead : Theme.capInText
        mostRemedyCap: Theme.capWord
        width: root.width
        // The readings themselves tell it, each with its sign.
        head: root.low && root.piece !== null ? "" : root.head
        verdict: root.verdict
        remedy: root.remedy
    }
    InlineLength {
        id: asked
        visible: !root.judged
        x: Theme.margin
        y: Theme.margin
        width: root.width - 2 * Theme.margin
        cap: root.low ? Theme.capWord : Theme.capHead
        text: root.asks
    }
    TapedBlock {
        x: Theme.mm(1)
        y: (root.judged ? finding.implicitHeight : asked.y + asked.implicitHeight) + Theme.mm(1)
        width: root.width - 2 * x
        height: Math.max(0, root.height - y - Theme.mm(1.5))
        visible: height >= Theme.mm(27)
        piece: root.piece
        corners: root.corners
        planned: root.planned
        times: root.times
        judged: root.judged
        readings: root.readings
        held: root.held
        markMm: root.markMm
        group: root.group
        accessibleName: root.judged ? root.verdict.replace(/[{}]/g, "") : asked.text
        onTaken: reading => root.taken(reading)
    }
}
