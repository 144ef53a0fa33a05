// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "blocks.js" as Blocks
import "printing.js" as Printing

/**
 * A block under the ruler, one of its four sides at the blade: what was cut before lies where the turned block
 * has it, and both lines that must lie right are drawn, each with its figure. A crooked block's stitches lie as
 * far off as they were read, several times over, against their planned line in beads, and its sides are named.
 */
Item {
    id: root

    /**
     * {alongMm, acrossMm: of the trimmed block, across the blade and with it, allowanceMm, side: 1…4, block: its name,
     * turns: quarters clockwise that it lies turned by; of a crooked one names and off, as TrimModel has them}
     */
    property var view: null
    /** The first reading, and from the third side on the second: figures. */
    property var figure: null
    property var second: null
    property string accessibleName
    /** The words below the drawing on two lines, where something stands beside them. */
    property bool folded: false

    readonly property bool ready: (view?.alongMm ?? 0) > 0 && width > 0 && height > 0
    readonly property int side: view?.side ?? 1
    readonly property bool whole: side > 2
    /** The stitches must agree too. */
    readonly property bool both: whole && (second?.valid ?? false)
    readonly property var off: view?.off ?? []
    readonly property bool crooked: off.length === 4
    /** What is not cut yet stands out past the line by so much, in mm. */
    readonly property real rough: 14
    readonly property real headroom: Theme.mm(17)
    readonly property real footroom: crooked || !both ? Theme.mm(12) : headroom
    readonly property real zoom: ready ? Math.min((width - Theme.mm(22)) / (view.alongMm + 2 * rough + 18),
                                                  (height - headroom - footroom) / (view.acrossMm + 2 * rough)) : 1
    readonly property real blade: ready ? (width + view.alongMm * zoom) / 2 : 0
    readonly property real far: ready ? blade - view.alongMm * zoom : 0
    readonly property real upper: ready ? headroom + (height - headroom - footroom - view.acrossMm * zoom) / 2 : 0
    readonly property real lower: ready ? upper + view.acrossMm * zoom : 0
    /** The least of width and height within the stitches, and a side's number there. */
    readonly property real within: ready ? Math.min(blade - far, lower - upper) - 2 * inset : 0
    readonly property real chip: Theme.mm(6.6)
    readonly property real middle: (blade + far) / 2
    readonly property real inset: ready ? view.allowanceMm * zoom : 0
    readonly property real stitch: blade - inset
    /** The stitched outline as it should lie, and as it does. */
    readonly property var due: [{ x: far + inset, y: upper + inset }, { x: stitch, y: upper + inset }, { x: stitch, y: lower - inset }, { x: far + inset, y: lower - inset }]
    readonly property var own: due.map((p, i) => ({ x: p.x + (off[i]?.x ?? 0) * zoom, y: p.y + (off[i]?.y ?? 0) * zoom }))

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.view, root.zoom, root.blade, root.upper, root.both, above.height, below.y]
        Accessible.ignored: true
        onPrinting: context => {
            if (root.ready)
                root.paint(context, Theme.colors, unit);
        }
    }
    SideReading {
        id: above
        objectName: "reading-above"
        visible: root.ready
        drawnAt: root.whole ? root.far : root.stitch
        page: root.width
        y: Theme.mm(2)
        figure: root.figure
        says: root.whole ? qsTr("on the cut side") : qsTr("on the stitches")
    }
    SideReading {
        id: below
        objectName: "reading-below"
        visible: root.ready && root.both
        drawnAt: root.stitch
        page: root.width
        folded: root.folded
        // Beside its line, which is drawn on down to it; the cutter's handle reaches out beyond the blade.
        limit: root.stitch - Theme.mm(1.6)
        y: root.height - height - Theme.mm(2)
        figure: root.second
        says: qsTr("on the stitches")
    }

    // The number of each side, so that it is plain which one is meant; the name turns with the block.
    Repeater {
        model: root.ready && !root.crooked ? 4 : 0
        Rectangle {
            required property int index
            readonly property int number: (root.side + 3 - index) % 4 + 1
            readonly property bool now: index === 0
            readonly property real off: width / 2 + Theme.mm(1.4)
            readonly property real at: index === 0 ? root.stitch - off : index === 2 ? root.far + root.inset + off : root.middle
            visible: now || root.within >= 3.6 * root.chip
            width: root.chip
            height: root.chip
            x: (Theme.left ? root.width - at : at) - width / 2
            y: (index === 1 ? root.lower - root.inset - off : index === 3 ? root.upper + root.inset + off : (root.upper + root.lower) / 2) - height / 2
            color: now ? Theme.colors.ink : Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: Theme.key
            Word {
                id: numeral
                anchors.centerIn: parent
                text: String(parent.number)
                bold: true
                color: parent.now ? Theme.colors.raised : Theme.colors.ink
                Accessible.ignored: true
            }
        }
    }
    Word {
        id: whose
        visible: root.ready && !root.crooked && text !== "" && root.within >= 2 * root.chip + Math.max(implicitWidth, implicitHeight) + Theme.mm(8)
        x: (Theme.left ? root.width - root.middle : root.middle) - width / 2
        y: (root.upper + root.lower - height) / 2
        rotation: 90 * (root.view?.turns ?? 0)
        text: root.view?.block ?? ""
        bold: true
        cap: Theme.capHead
        Accessible.ignored: true
        // Which way up it stands, whatever its letters.
        Rectangle {
            y: parent.height
            width: parent.width
            height: Theme.keyBold
            color: Theme.colors.ink
        }
    }
    // The block is turned for each side: which of its own lies where, as the words have them.
    Repeater {
        id: names
        model: root.crooked ? root.view.names : []
        readonly property real widest: {
            let most = 0;
            for (let i = 0; i < count; ++i)
                most = Math.max(most, itemAt(i)?.width ?? 0);
            return most;
        }
        /** Where the one at the blade begins. */
        readonly property real nearest: root.stitch - Theme.mm(2.4) - (count > 0 ? itemAt(0)?.width ?? 0 : 0)
        /** All four clear of each other; else only the one at the blade, and the one across from it beside the cloth. */
        readonly property bool all: root.stitch - root.far - root.inset > 2 * widest + Theme.mm(6) && root.lower - root.upper - 2 * root.inset > Theme.mm(26)
        Rectangle {
            id: plate
            required property string modelData
            required property int index
            readonly property real air: Theme.mm(2.4)
            readonly property real drawn: index === 0 ? root.stitch - air - width : index === 2 && names.all ? root.far + root.inset + air
                                         : index === 2 ? Math.max(0, Math.min(root.far - (root.whole ? 3 * root.inset : root.rough * root.zoom) - Theme.mm(2), names.nearest - Theme.mm(1.5)) - width) : (root.far + root.inset + root.stitch - width) / 2
            visible: index % 2 === 0 || names.all
            x: Theme.left ? root.width - drawn - width : drawn
            y: index === 1 ? root.lower - root.inset - air - height : index === 3 ? root.upper + root.inset + air : (root.upper + root.lower - height) / 2
            width: name.implicitWidth + Theme.mm(2)
            height: name.implicitHeight
            color: Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: Theme.key
            Word {
                id: name
                anchors.centerIn: parent
                bold: plate.index === 0
                wrapMode: Text.NoWrap
                text: plate.modelData
            }
        }
    }

    /** Whether the side that lies there (0 right, 1 foot, 2 left, 3 head) was cut before. */
    function cutBefore(at: int): bool {
        return at > 0 && root.side - at >= 1;
    }
    /** An edge from corner to corner, ragged where it was not cut yet. */
    function edge(points: var, x1: real, y1: real, x2: real, y2: real, smooth: bool) {
        const steps = smooth ? 1 : 12;
        for (let i = 0; i < steps; ++i) {
            const away = smooth || i === 0 ? 0 : (i % 2 ? 1 : -1) * 2.2 * (1 + i % 3);
            const t = i / steps, across = x1 === x2;
            points.push([x1 + (x2 - x1) * t + (across ? away : 0), y1 + (y2 - y1) * t + (across ? 0 : away)]);
        }
    }
    function paint(context: var, c: var, u: real) {
        const out = root.rough * root.zoom;
        const at = [root.blade + out, root.lower + (cutBefore(1) ? 0 : out), root.far - (cutBefore(2) ? 0 : out), root.upper - (cutBefore(3) ? 0 : out)];
        const points = [];
        edge(points, at[0], at[3], at[0], at[1], false);
        edge(points, at[0], at[1], at[2], at[1], cutBefore(1));
        edge(points, at[2], at[1], at[2], at[3], cutBefore(2));
        edge(points, at[2], at[3], at[0], at[3], cutBefore(3));
        const trace = () => {
            points.forEach(([x, y], i) => i === 0 ? context.moveTo(x, y) : context.lineTo(x, y));
            context.closePath();
        };
        Printing.clothShape(context, c, "front", at[2] - out, at[3] - out, at[0] - at[2] + 2 * out, at[1] - at[3] + 2 * out, u, trace);
        context.strokeStyle = c.ink;
        context.lineWidth = 2.4 * u * c.lineScale;
        context.beginPath();
        trace();
        context.stroke();
        const s = root.inset;
        if (root.crooked)
            Blocks.stitches(context, c, root.own, u);
        else
            Printing.roleRect(context, "stitched", root.far + s, root.upper + s, root.stitch - root.far - s, root.lower - root.upper - 2 * s, c.stitched, 3 * u * c.lineScale);
        paintRuler(context, c, u, s);
        if (root.crooked)
            Blocks.plan(context, c, root.own, root.due, u);
        Printing.blade(context, c, root.blade, root.lower + out + 30 * u, root.upper - out - 14 * u, root.lower + out, u);
    }
    function paintRuler(context: var, c: var, u: real, s: real) {
        const from = root.whole ? root.far - 3 * s : root.blade - Math.min(6 * 25.4, root.view.alongMm * 0.8) * root.zoom;
        const high = root.rough * root.zoom + 8 * u, top = root.upper - high, tall = root.lower - root.upper + 2 * high;
        context.fillStyle = c.rulerBody;
        context.globalAlpha = c.rulerAlpha;
        context.fillRect(from, top, root.blade - from, tall);
        context.globalAlpha = 1;
        context.strokeStyle = c.rulerMark;
        context.lineWidth = 3 * u * c.lineScale;
        context.strokeRect(from, top, root.blade - from, tall);
        for (const x of root.both ? [root.far, root.stitch] : root.whole ? [root.far] : [root.stitch])
            Printing.strokeLine(context, x, top, x, top + tall, c.accent, 6 * u * c.lineScale);
        // Each line is drawn on, thinner, to what is said of it.
        Printing.strokeLine(context, root.whole ? root.far : root.stitch, above.y + above.height + 4 * u, root.whole ? root.far : root.stitch, top, c.accent, 3 * u * c.lineScale);
        if (root.both)
            Printing.strokeLine(context, root.stitch, top + tall, root.stitch, below.y + below.height, c.accent, 3 * u * c.lineScale);
        // The cross line: through the outline's corner, later along the side cut before.
        const cross = cutBefore(1) ? root.lower : root.lower - s;
        Printing.strokeLine(context, from, cross, root.blade, cross, c.accent, 4 * u * c.lineScale);
    }
}
