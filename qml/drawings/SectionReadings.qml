// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing

/**
 * What is read of a test join, on plates where it is measured on its section: the seam above, the gap and the distance
 * between the seams below, the batting's thickness at the side. A touch takes one in hand.
 */
Item {
    id: root

    /** As SectionDrawing lays it. */
    property var lie: null
    /** Four {name, says, figure, taken, overlap}: seam, gap, between, loft. */
    property var readings: []
    property int held: 0

    signal taken(int reading)

    readonly property real mm: Theme.pxPerMm
    /** Under it there is room for one row of plates, not for two. */
    readonly property bool low: height < Theme.mm(70)
    readonly property real aboveY: lie ? lie.top - 3.2 * lie.cloth - 5 * mm : 0
    readonly property real footY: lie ? lie.foot + 2.6 * lie.cloth : 0
    readonly property real betweenY: footY + (low ? 2.5 : 24) * mm
    readonly property real loftX: width - Theme.mm(19)
    /** Where each is measured, its plate's middle. */
    readonly property var spots: !lie ? [] : [
        [(lie.seamA + lie.stripA) / 2, aboveY - 8 * mm],
        [(lie.gapA + lie.gapB) / 2 - (low ? 10 * mm : 0), footY + (low ? 10 : 10.5) * mm],
        [(lie.seamA + lie.seamB) / 2 + (low ? 10 * mm : 0), low ? footY + 10 * mm : betweenY],
        [loftX, aboveY - 8 * mm]
    ]

    function place(x: real, w: real): real {
        return Math.max(0, Math.min(width - w, (Theme.left ? width - x : x) - w / 2));
    }

    PrintCanvas {
        anchors.fill: parent
        shows: [root.spots, root.held, root.low, root.readings.length]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie || root.spots.length < 4)
                return;
            const c = Theme.colors, g = root.lie, u = unit;
            const ink = at => at === root.held ? c.accent : c.ink, line = at => (at === root.held ? 3.6 : 1.6) * u * c.lineScale;
            for (const x of [g.seamA, g.stripA])
                Printing.strokeLine(context, x, root.aboveY - 2 * root.mm, x, g.top, ink(0), line(0));
            Printing.strokeLine(context, g.seamA, root.aboveY, g.stripA, root.aboveY, ink(0), line(0));
            const middle = (g.gapA + g.gapB) / 2;
            for (const x of [g.gapA, g.gapB])
                Printing.strokeLine(context, x, g.foot, x, root.footY + 3 * root.mm, ink(1), line(1));
            Printing.strokeLine(context, middle, root.footY + 3 * root.mm, root.spots[1][0], root.spots[1][1], ink(1), line(1));
            for (const x of [g.seamA, g.seamB])
                Printing.strokeLine(context, x, g.foot, x, root.betweenY + 2 * root.mm, ink(2), line(2));
            Printing.strokeLine(context, g.seamA, root.betweenY, g.seamB, root.betweenY, ink(2), line(2));
            const top = g.top + g.cloth, foot = g.foot - g.cloth;
            Printing.strokeLine(context, root.loftX, root.spots[3][1], root.loftX, foot, ink(3), line(3));
            for (const y of [top, foot])
                Printing.strokeLine(context, root.loftX - 2.4 * root.mm, y, root.loftX + 2.4 * root.mm, y, ink(3), Math.max(line(3), 2.6 * u));
        }
    }
    Repeater {
        id: plates
        model: root.lie ? root.readings.length : 0
        ReadingPlate {
            required property int index
            readonly property var spot: root.spots[index] ?? [0, 0]
            reading: root.readings[index] ?? null
            inHand: index === root.held
            unread: !(reading?.taken ?? true)
            z: inHand ? 1 : 0
            x: root.place(spot[0], width)
            y: Math.max(0, Math.min(root.height - height, spot[1] - height / 2))
            onClicked: root.taken(index)
        }
    }
    // What is measured there, where there is room beside the plate.
    Repeater {
        model: plates.count
        Word {
            id: word
            required property int index
            readonly property Item plate: plates.itemAt(index)
            readonly property bool before: index === 0 || index === 3
            /** Beside its plate; the distance between the seams beside its line. */
            readonly property real sewn: index === 2 && root.lie ? root.lie.seamB - root.lie.seamA : plate?.width ?? 0
            readonly property real from: !plate || !root.lie ? 0 : index !== 2 ? plate.x : root.place((root.lie.seamA + root.lie.seamB) / 2, sewn)
            readonly property real at: before !== Theme.left ? from - width - Theme.mm(1.6) : from + sewn + Theme.mm(1.6)
            readonly property real natural: Math.ceil(letters.advanceWidth) + 1
            readonly property real room: index !== 2 ? natural : Math.min(natural, (Theme.left ? from : root.width - from - sewn) - Theme.mm(2.8))
            visible: plate !== null && room >= Theme.mm(9) && isFree(natural) && at >= Theme.mm(1) && at + width <= root.width - Theme.mm(1)
            x: at
            width: room
            horizontalAlignment: before !== Theme.left ? Text.AlignRight : Text.AlignLeft
            /** The seam's word and the batting's stand in one row; the gap's between the seams. */
            function isFree(wide: real): bool {
                if (root.low && (index === 1 || index === 2) || !root.lie)
                    return false;
                return index === 3 ? Math.abs(root.loftX - (root.spots[0]?.[0] ?? 0)) > wide + Theme.mm(20)
                    : index === 1 ? sewn / 2 + wide + Theme.mm(2.6) < (root.lie.seamB - root.lie.seamA) / 2 : true;
            }
            y: plate ? plate.y + (plate.height - height) / 2 : 0
            bold: index === root.held
            text: [qsTr("seam"), root.readings[1]?.overlap ? qsTr("overlap") : qsTr("gap"),
                   //: the distance from one seam to the other of a sashing
                   qsTr("seam to seam"), qsTr("batting")][index] ?? ""
            Accessible.ignored: true
            TextMetrics {
                id: letters
                font: word.font
                text: word.text
            }
        }
    }
}
