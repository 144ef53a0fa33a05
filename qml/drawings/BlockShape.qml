// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "printing.js" as Printing

/** A measured block with its departure drawn several times over, against its planned size in dots. */
Item {
    id: root

    /** Four {x, y} from the middle, in widths of the planned block, top left first, clockwise. */
    property var corners: []
    /** The same of the size it should have. */
    property var planned: []
    property real times: 5
    property string accessibleName

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        anchors.bottomMargin: times.visible ? times.implicitHeight + Theme.mm(1) : 0
        shows: [root.corners, root.planned]
        mirrored: false // a block's own left and right are never mirrored
        Accessible.ignored: true
        onPrinting: context => {
            const c = Theme.colors, u = unit, s = Math.min(width, height) * 0.74, x0 = width / 2, y0 = height / 2;
            if (root.corners.length !== 4 || root.planned.length !== 4)
                return;
            const all = root.corners.concat(root.planned);
            const xs = all.map(p => Math.abs(p.x)), ys = all.map(p => Math.abs(p.y));
            const fit = Math.min(1, 0.5 / Math.max(...xs) * 1.3, 0.5 / Math.max(...ys) * 1.3);
            const at = p => [x0 + p.x * s * fit, y0 + p.y * s * fit];
            const trace = () => {
                root.corners.forEach((p, i) => i === 0 ? context.moveTo(...at(p)) : context.lineTo(...at(p)));
                context.closePath();
            };
            Printing.clothShape(context, c, "front", x0 - s, y0 - s, 2 * s, 2 * s, u, trace);
            for (let i = 0; i < 4; ++i) {
                const [a, b] = at(root.corners[i]), [d, e] = at(root.corners[(i + 1) % 4]);
                Printing.roleLine(context, "stitched", a, b, d, e, c.stitched, 4 * u * c.lineScale);
            }
            for (const [i, j] of [[0, 2], [1, 3]]) {
                const [a, b] = at(root.corners[i]), [d, e] = at(root.corners[j]);
                Printing.roleLine(context, "planned", a, b, d, e, c.accent, 2.4 * u * c.lineScale);
            }
            const [a, b] = at(root.planned[0]), [d, e] = at(root.planned[2]);
            Printing.roleRect(context, "planned", a, b, d - a, e - b, c.blade, 2.4 * u * c.lineScale);
        }
    }
    Word {
        id: times
        anchors.bottom: parent.bottom
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        visible: root.times > 1 && root.corners.length === 4 && root.height > Theme.mm(30)
        text: qsTr("drawn %1 times as far off").arg(root.times)
        color: Theme.colors.inkSoft
    }
}
