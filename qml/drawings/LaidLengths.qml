// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "sums.js" as Sums

/** The lengths of a sum laid end to end as cloth, to one scale, over the tape of what they come to. */
PrintCanvas {
    id: root

    /** {kind, ways, zero, total, parts, mm} as StepModel tells it; null for none. */
    property var laid: null
    property bool metric: false
    property string accessibleName

    readonly property int rows: (laid?.ways.length ?? 0) + (laid?.kind === "often" ? 0 : 1)
    readonly property real high: Theme.mm(6)
    readonly property real air: Theme.mm(2.4)

    implicitHeight: laid ? rows * (high + air) + Theme.mm(0.6) : 0
    shows: [laid, metric]
    mirrored: false
    Accessible.name: accessibleName

    onPrinting: context => {
        if (laid && laid.ways.length > 0)
            Sums.paint(context, Theme.colors, laid, metric, { x: Theme.mm(0.7), k: width - Theme.mm(1.4) }, high, air, unit);
    }
}
