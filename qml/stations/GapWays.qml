// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** What the gaps between the blocks of a strip can be, each drawn to one scale; a touch takes one. */
WholeRows {
    id: root

    readonly property var ways: HoopModel.gapWays
    readonly property real longestMm: longest(ways)

    /** With what was given up lying past the end. */
    function longest(ways: var): real {
        let most = 1;
        for (let i = 0; i < ways.length; ++i) {
            const lost = ways[i].lost;
            most = Math.max(most, ways[i].lengthMm, lost.length > 0 ? lost[lost.length - 1] + ways[i].alongMm : 0);
        }
        return most;
    }

    leastRow: Theme.mm(40)
    mostRow: Theme.mm(64)
    model: ways.length
    delegate: DrawnCard {
        id: card
        required property int index
        readonly property var way: root.ways[index] ?? null

        width: root.width
        height: root.rowHeight
        chosen: way?.chosen ?? false
        accessibleName: way ? way.says : ""
        accessibleDescription: way ? [way.gap.text, ...way.details].join(", ") : ""
        onClicked: HoopModel.takeGaps(way.value)

        Word {
            id: says
            // Where it is narrow what it comes to says enough.
            visible: !strip.narrow
            x: Theme.left ? 0 : card.lead
            width: card.innerWidth - card.lead
            horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
            bold: true
            color: card.ink
            text: card.way?.says ?? ""
            Accessible.ignored: true
        }
        GapStrip {
            id: strip
            y: narrow ? 0 : says.height + Theme.mm(1)
            says: card.way?.says ?? ""
            lead: card.lead
            width: card.innerWidth
            height: card.innerHeight - y
            way: card.way
            longestMm: root.longestMm
            details: card.way?.details ?? []
            ink: card.ink
        }
    }
}
