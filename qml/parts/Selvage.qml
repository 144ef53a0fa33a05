// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** The ground of the band: fringe at the screen's edge, pin holes toward the drawing. */
Printed {
    id: root

    readonly property color ground: Theme.colors.paper
    readonly property color mark: Theme.colors.line
    readonly property real unit: Theme.pxPerMm

    Accessible.ignored: true

    mirrored: Theme.left
    onGroundChanged: again()
    onUnitChanged: again()
    onPrinting: context => {
        context.fillStyle = ground;
        context.fillRect(0, 0, width, height);
        context.strokeStyle = mark;
        context.fillStyle = mark;
        context.lineWidth = 0.27 * unit;
        context.beginPath();
        for (let i = 0, y = 0.5 * unit; y < height; ++i, y += 1.02 * unit) {
            context.moveTo(0, y);
            context.lineTo((i % 2 ? 1.2 : 0.7) * unit, y);
        }
        context.stroke();
        context.beginPath();
        for (let y = 1.5 * unit; y < height; y += 2.9 * unit) {
            context.moveTo(width - 0.7 * unit, y);
            context.arc(width - unit, y, 0.29 * unit, 0, 2 * Math.PI);
        }
        context.fill();
    }
}
