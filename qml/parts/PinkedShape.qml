// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A card of cloth: pinked along its head and its foot, cut straight at its sides. */
Cutout {
    id: root

    /** How deep a tooth is, px. */
    property real tooth: Math.round(Theme.mm(1.2))

    function outline(w: real, h: real): var {
        const points = [], teeth = Math.max(4, Math.round(w / (2 * root.tooth))), step = w / teeth;
        for (let i = 0; i < teeth; ++i)
            points.push(Qt.point(i * step, root.tooth), Qt.point((i + 0.5) * step, 0));
        points.push(Qt.point(w, root.tooth));
        for (let i = teeth; i > 0; --i)
            points.push(Qt.point(i * step, h - root.tooth), Qt.point((i - 0.5) * step, h));
        points.push(Qt.point(0, h - root.tooth));
        return points;
    }

    stroke: Theme.colors.ink
    corners: root.outline(width, height)
}
