// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A tag of stiff paper on a thread: its eye on the left, the thread up to what it is tied to. */
PrintCanvas {
    id: root

    /** How far the thread reaches up above the paper, and where it ends there. */
    property real rise: Theme.mm(8)
    property real knotX: eye
    /** The eye, from the left edge. */
    readonly property real eye: Theme.mm(6.5)
    /** Where the paper may be written on. */
    readonly property real written: Theme.mm(13)

    mirrored: false
    shows: [rise, knotX]
    Accessible.ignored: true
    onPrinting: context => {
        const c = Theme.colors, cut = Theme.mm(4.4), line = 2 * unit * c.lineScale, half = line / 2;
        const top = rise + half, foot = height - half, mid = (rise + height) / 2;
        context.beginPath();
        context.moveTo(cut, top);
        context.lineTo(width - half, top);
        context.lineTo(width - half, foot);
        context.lineTo(cut, foot);
        context.lineTo(half, foot - cut);
        context.lineTo(half, top + cut);
        context.closePath();
        context.fillStyle = c.raised;
        context.fill();
        context.strokeStyle = c.ink;
        context.lineWidth = line;
        context.stroke();
        // The eye: a ring of card round the hole.
        for (const [r, colour] of [[2.7, c.ink], [2.7 - 0.35 * c.lineScale, c.table], [1.2, c.ink]]) {
            context.beginPath();
            context.arc(eye, mid, Theme.mm(r), 0, 2 * Math.PI);
            context.fillStyle = colour;
            context.fill();
        }
        // The thread, doubled through the eye and knotted where it holds.
        const knot = Theme.mm(1.4);
        context.strokeStyle = c.accent;
        context.lineWidth = 3.4 * unit * c.lineScale;
        context.lineCap = "round";
        context.beginPath();
        context.moveTo(eye, mid);
        context.bezierCurveTo(eye - Theme.mm(5), mid - Theme.mm(6), knotX - Theme.mm(6), rise, knotX, knot);
        context.moveTo(eye, mid);
        context.bezierCurveTo(eye + Theme.mm(5), mid - Theme.mm(4), knotX + Theme.mm(2), rise, knotX, knot);
        context.moveTo(knotX, knot);
        context.lineTo(knotX + Theme.mm(3), knot + Theme.mm(2.6));
        context.stroke();
        context.lineCap = "butt";
        context.beginPath();
        context.arc(knotX, knot, Theme.mm(0.9), 0, 2 * Math.PI);
        context.fillStyle = c.accent;
        context.fill();
    }
}
