// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A pin as it is seen from the front, stuck through an edge: its head, and its shaft going in and out. */
PrintCanvas {
    id: root

    implicitWidth: Theme.mm(4)
    implicitHeight: Theme.mm(8)
    mirrored: false
    Accessible.ignored: true
    onPrinting: context => {
        const c = Theme.colors, x = width / 2, r = width * 0.42;
        context.strokeStyle = c.raised;
        context.lineWidth = Theme.mm(1.2);
        context.beginPath();
        context.moveTo(x, r);
        context.lineTo(x, height);
        context.stroke();
        context.strokeStyle = c.ink;
        context.lineWidth = Theme.mm(0.5);
        context.stroke();
        context.beginPath();
        context.arc(x, r + Theme.mm(0.2), r, 0, 2 * Math.PI);
        context.fillStyle = c.blade;
        context.fill();
        context.strokeStyle = c.raised;
        context.lineWidth = Theme.mm(0.4);
        context.stroke();
    }
}
