// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing

/**
 * A stitched strip that comes apart: a cut down the middle of each gap, the next one under the blade, along a ruler
 * that lies on the block that comes off. The cutter stands on the other side of it.
 */
Item {
    id: root

    /** {lengthMm, widthMm, blockMm: [along, across], starts: [mm], names, cuts: [mm], done} */
    property var view: null
    property string accessibleName
    /** Blocks off the strip so far. */
    readonly property int off: view?.done ?? 0

    readonly property bool ready: (view?.lengthMm ?? 0) > 0 && width > 0 && height > 0
    readonly property var names: view?.names ?? []
    readonly property real blockLong: ready ? view.blockMm[0] : 0
    readonly property real zoom: ready ? Math.min((width - Theme.mm(12)) / view.lengthMm, (height - Theme.mm(34)) / view.widthMm) : 1
    readonly property real x0: ready ? (width - view.lengthMm * zoom) / 2 : 0
    readonly property real upper: ready ? (height - view.widthMm * zoom) / 2 : 0
    readonly property real lower: height - upper

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.view, root.zoom, root.x0, root.upper]
        Accessible.ignored: true
        onPrinting: context => {
            if (root.ready)
                root.paint(context, Theme.colors, unit);
        }
    }
    Repeater {
        model: root.ready ? root.view.starts : []
        Word {
            id: number
            required property real modelData
            required property int index
            readonly property real middle: root.x0 + (modelData + root.blockLong / 2) * root.zoom
            x: (Theme.left ? root.width - middle : middle) - width / 2
            y: (root.height - height) / 2
            bold: index === root.off
            color: index < root.off ? Theme.colors.inkSoft : Theme.colors.ink
            text: root.names[index] ?? index + 1
            wrapMode: Text.NoWrap
        }
    }

    /** Its edge at the blade; longer than the strip is wide, and as wide as leaves room for a spread hand. */
    function paintRuler(context: var, c: var, blade: real, u: real) {
        const wide = Math.min(6 * 25.4 * root.zoom, blade - 4 * u), from = blade - wide;
        const top = root.upper - 12 * u, high = root.lower - root.upper + 24 * u;
        context.fillStyle = c.rulerBody;
        context.globalAlpha = c.rulerAlpha;
        context.fillRect(from, top, wide, high);
        context.globalAlpha = 1;
        // Its marks run along the edge the blade follows.
        for (let i = 1, y = top + 25.4 * root.zoom / 2; y < top + high; ++i, y += 25.4 * root.zoom / 2)
            Printing.strokeLine(context, blade - (i % 2 ? 8 : 18) * u, y, blade, y, c.rulerMark, 1.4 * u * c.lineScale);
        context.strokeStyle = c.rulerMark;
        context.lineWidth = 3 * u * c.lineScale;
        context.strokeRect(from, top, wide, high);
    }
    function paint(context: var, c: var, u: real) {
        const k = root.zoom, high = root.lower - root.upper;
        const wide = root.view.blockMm[0] * k, tall = root.view.blockMm[1] * k, middle = (root.upper + root.lower) / 2;
        const edges = [0, ...root.view.cuts.slice(0, root.view.done), root.view.lengthMm];
        const parted = 3 * u;
        for (let i = 0; i + 1 < edges.length; ++i) {
            // What is cut already stands a little apart.
            const from = root.x0 + edges[i] * k + (i > 0 ? parted : 0);
            const to = root.x0 + edges[i + 1] * k - (i + 2 < edges.length ? parted : 0);
            Printing.clothRect(context, c, "front", from, root.upper, to - from, high, u);
            context.strokeStyle = c.ink;
            context.lineWidth = 2.4 * u * c.lineScale;
            context.strokeRect(from, root.upper, to - from, high);
        }
        for (const start of root.view.starts) {
            const x = root.x0 + start * k;
            context.fillStyle = c.raised;
            context.beginPath();
            context.arc(x + wide / 2, middle, Math.min(36 * u, wide / 2, tall / 2), 0, 2 * Math.PI);
            context.fill();
            Printing.roleRect(context, "stitched", x, middle - tall / 2, wide, tall, c.stitched, 3 * u * c.lineScale);
        }
        root.view.cuts.forEach((cut, i) => {
            const x = root.x0 + cut * k;
            if (i === root.view.done)
                paintRuler(context, c, x, u);
            if (i === root.view.done)
                Printing.blade(context, c, x, root.lower + 44 * u, root.upper - 24 * u, root.lower - 20 * u, u);
            else if (i > root.view.done)
                Printing.roleLine(context, "planned", x, root.lower + 20 * u, x, root.upper - 20 * u, c.blade, 4 * u * c.lineScale);
        });
    }
}
