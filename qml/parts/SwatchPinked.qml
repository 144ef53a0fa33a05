// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A snip of the real cloth, pinked all round: the one place where cloth shows its own colour. */
Item {
    id: root

    property color colour: Theme.colors.front
    /** Length of one tooth, px. */
    property real tooth: Theme.mm(1.05)

    implicitWidth: Theme.mm(9)
    implicitHeight: Theme.mm(6.6)

    Accessible.ignored: true

    function outline(w: real, h: real, deep: real): var {
        const points = [], across = Math.max(2, Math.round((w - 2 * deep) / root.tooth));
        const down = Math.max(2, Math.round((h - 2 * deep) / root.tooth));
        const dx = (w - 2 * deep) / across, dy = (h - 2 * deep) / down;
        for (let i = 0; i < across; ++i)
            points.push(Qt.point(deep + i * dx, deep), Qt.point(deep + (i + 0.5) * dx, 0));
        for (let i = 0; i < down; ++i)
            points.push(Qt.point(w - deep, deep + i * dy), Qt.point(w, deep + (i + 0.5) * dy));
        for (let i = across; i > 0; --i)
            points.push(Qt.point(deep + i * dx, h - deep), Qt.point(deep + (i - 0.5) * dx, h));
        for (let i = down; i > 0; --i)
            points.push(Qt.point(deep, deep + i * dy), Qt.point(0, deep + (i - 0.5) * dy));
        points.push(Qt.point(deep, deep));
        return points;
    }

    Cutout {
        anchors.fill: parent
        anchors.margins: Theme.keyThin
        fill: root.colour
        stroke: Theme.colors.ink
        strokeWidth: Theme.mm(0.3) * Theme.colors.lineScale
        corners: root.outline(width, height, Theme.mm(0.7))
    }
}
