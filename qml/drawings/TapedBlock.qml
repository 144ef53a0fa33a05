// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "blocks.js" as Blocks
import "edges.js" as Edges

/**
 * A block, or the whole piece, with the six tapes it is measured by, its departure drawn several times over; each tape has its figure,
 * and a touch takes it in hand. The block's own left and right are never mirrored.
 */
Item {
    id: root

    /** The piece, as EdgeDrawing has it; null for a block. */
    property var piece: null
    /** As BlockShape has them; no corners where the readings make no shape. */
    property var corners: []
    property var planned: []
    property real times: 1
    /** Something was read: before, the block is drawn as planned and nothing is told of it. */
    property bool judged: false
    /** Six {says, figure, mm, told, taken, suspect}: the sides clockwise from the top, then the diagonals. */
    property var readings: []
    property int held: 0
    /** Millimetres from mark to mark of a tape, and how many make a longer one. */
    property real markMm: 12.7
    property int group: 2
    property string accessibleName

    signal taken(int reading)

    /** There is height for the words under it; those of what is drawn larger take two lines where it is narrow. */
    readonly property bool told: height >= Theme.mm(times > 1 && width < Theme.mm(84) ? 48 : 36)
    /** Nothing is drawn further off than it is where that cannot be told. */
    readonly property bool shaped: corners.length === 4 && (told || times <= 1)
    /** Over little height tapes and words are smaller. */
    readonly property bool low: height < Theme.mm(66)
    readonly property real tape: Theme.mm(low ? 3 : 4.4)
    readonly property real air: Theme.mm(0.6)
    readonly property real reach: air + tape / 2
    readonly property real lift: low ? reach : reach + Theme.mm(3)
    /** What is seen of a plate; where it is low what is pressed reaches over that. */
    readonly property real pad: lift + (low ? Theme.mm(4.8) : Theme.step / 2)
    readonly property real padSide: reach + Theme.mm(1) + widest + (low ? tape : 0)
    property var wides: [0, 0, 0, 0, 0, 0]
    readonly property real widest: Math.max(Theme.mm(14), ...wides)
    readonly property var plateAt: Blocks.plates(k > 0 ? own : [], {
        wides: wides, high: Theme.step - Theme.mm(low ? 1 : 0), reach: reach, lift: lift, out: reach + tape,
        needed: unspared()
    })
    readonly property real foot: legend.visible ? legend.height + Theme.mm(1) : 0
    readonly property var shape: shaped && corners.length === 4 ? corners : planned
    /** The plates hang round the block; a larger one that was planned needs room for its line alone. */
    readonly property real k: planned.length === 4 ? Math.min(Blocks.fit(shape, width / 2 - padSide, (height - foot) / 2 - pad),
                                                              Blocks.fit(planned, width / 2 - Theme.mm(1), (height - foot) / 2 - Theme.mm(1))) : 0
    readonly property var own: Blocks.placed(shape, width / 2, (height - foot) / 2, k)
    readonly property var due: Blocks.placed(planned, width / 2, (height - foot) / 2, k)

    /** Of each reading, that its plate must stand there even where there is little room. */
    function unspared(): var {
        const all = [];
        for (let i = 0; i < readings.length; ++i)
            all.push(i === held || !readings[i].told || !readings[i].taken || (readings[i].suspect ?? false));
        return all;
    }
    function measure() {
        const all = [];
        for (let i = 0; i < 6; ++i)
            all.push(plates.itemAt(i)?.implicitWidth ?? 0);
        wides = all;
    }

    Accessible.role: Accessible.Grouping
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.piece, root.own, root.due, root.readings, root.held, legend.visible, root.plateAt]
        mirrored: false
        Accessible.ignored: true
        onPrinting: context => {
            if (root.k > 0)
                Blocks.taped(context, DyedColors.forWork, {
                    ground: root.piece ? c => Edges.crooked(context, c, root.piece, root.own, unit) : null, corners: root.own, planned: legend.visible ? root.due : [], shaped: root.shaped, readings: root.readings, held: root.held,
                    high: root.tape, air: root.air, markMm: root.markMm, group: root.group, plates: root.plateAt
                }, unit);
        }
    }
    Repeater {
        id: plates
        model: root.planned.length === 4 ? root.readings.length : 0
        ReadingPlate {
            required property int index
            readonly property real over: root.low ? Theme.mm(1.7) : 0
            readonly property var at: root.plateAt[index] ?? null
            reading: root.readings[index] ?? null
            inHand: index === root.held
            unread: !(reading?.taken ?? true) || !root.judged
            doubted: reading?.suspect ?? false
            brief: root.piece !== null && Theme.small
            z: inHand ? 1 : 0
            visible: at !== null
            x: Math.max(0, Math.min(root.width - width, (at?.[0] ?? 0) - width / 2))
            y: Math.max(-over, Math.min(root.height - root.foot - height + over, (at?.[1] ?? 0) - height / 2))
            onClicked: root.taken(index)
            onImplicitWidthChanged: root.measure()
            Component.onCompleted: root.measure()
        }
    }
    BlockLegend {
        id: legend
        visible: root.judged && root.told && (plannedShown || times > 1)
        anchors.bottom: parent.bottom
        width: parent.width
        low: root.height < Theme.mm(80)
        plannedShown: root.planned.length === 4 && (!root.shaped || !Blocks.same(root.corners, root.planned))
        times: root.shaped ? root.times : 1
    }
}
