// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "edges.js" as Edges
import "tapes.js" as Tapes

/** The piece with the six tapes it is measured by, each with its figure; a touch takes one in hand. */
Item {
    id: root

    /** As EdgeDrawing has it. */
    property var view: null
    /** Six {says, figure, taken}: the sides clockwise from the top, then the diagonals. */
    property var readings: []
    /** The one in hand. */
    property int held: 0
    /** Millimetres from mark to mark of the tape, and how many make a longer one. */
    property real markMm: 25.4
    property int group: 12
    property string accessibleName

    signal taken(int reading)

    readonly property real tape: Theme.mm(4.4)
    readonly property real air: Theme.mm(1)
    /** From the raw edge to the middle of a side's tape. */
    readonly property real reach: air + tape / 2
    /** The plates above and below hang outside of their tapes: the diagonals' lie close by. */
    readonly property real lift: reach + Theme.mm(3)
    readonly property real pad: lift + Theme.step / 2
    readonly property real padSide: Math.max(Theme.mm(11), widest / 2 + reach + Theme.mm(1))
    readonly property real k: view && view.alongMm > 0 && view.acrossMm > 0
                              ? Math.max(0, Math.min((width - 2 * padSide) / view.alongMm, (height - 2 * pad) / view.acrossMm)) : 0
    readonly property real w: view ? view.alongMm * k : 0
    readonly property real h: view ? view.acrossMm * k : 0
    readonly property real x0: (width - w) / 2
    readonly property real y0: (height - h) / 2
    property real widest: Theme.mm(16)

    function measure() {
        let most = 0;
        for (let i = 0; i < plates.count; ++i)
            most = Math.max(most, plates.itemAt(i)?.implicitWidth ?? 0);
        widest = most;
    }

    Accessible.role: Accessible.Grouping
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.view, root.held, root.k, root.x0, root.markMm]
        mirrored: false
        Accessible.ignored: true
        onPrinting: context => {
            if (root.w <= 0)
                return;
            Edges.piece(context, DyedColors.forWork, root.view, { x: root.x0, y: root.y0, w: root.w, h: root.h, s: root.k }, false, unit);
            const tapes = Tapes.round(root.x0, root.y0, root.w, root.h, root.tape, root.air);
            // The diagonals lie over each other: the one in hand is uppermost.
            for (const i of [0, 1, 2, 3, 4, 5].filter(i => i !== root.held).concat(root.held)) {
                const at = tapes[i];
                if (at)
                    Tapes.lay(context, Theme.colors, at.x, at.y, at.angle, at.length, root.tape, root.markMm * root.k, root.group, i === root.held, unit);
            }
        }
    }
    Repeater {
        id: plates
        model: root.readings.length
        ReadingPlate {
            required property int index
            readonly property var at: Tapes.plateAt(index, root.x0, root.y0, root.w, root.h, root.reach, root.lift, root.widest)
            reading: root.readings[index] ?? null
            inHand: index === root.held
            unread: !(reading?.taken ?? true)
            brief: Theme.small
            x: Math.max(0, Math.min(root.width - width, at[0] - width / 2))
            y: Math.max(0, Math.min(root.height - height, at[1] - height / 2))
            onClicked: root.taken(index)
            onImplicitWidthChanged: root.measure()
            Component.onCompleted: root.measure()
        }
    }
}
