// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "blocks.js" as Blocks
import "printing.js" as Printing

/** A measured block with its departure drawn several times over, against its planned size in beads. */
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
        anchors.bottomMargin: legend.visible ? legend.height + Theme.mm(1) : 0
        shows: [root.corners, root.planned]
        mirrored: false // a block's own left and right are never mirrored
        Accessible.ignored: true
        onPrinting: context => {
            if (root.corners.length !== 4 || root.planned.length !== 4)
                return;
            const c = DyedColors.forWork, u = unit, least = Math.min(width, height);
            const k = Math.min(least * 0.74, Blocks.fit(root.corners.concat(root.planned), least * 0.48, least * 0.48));
            const own = Blocks.placed(root.corners, width / 2, height / 2, k);
            Blocks.cloth(context, c, own, u);
            Blocks.stitches(context, c, own, u);
            for (const [p, q] of Blocks.ends(own).slice(4))
                Printing.roleLine(context, "planned", p.x, p.y, q.x, q.y, c.accent, 2.4 * u * c.lineScale);
            Blocks.plan(context, c, own, Blocks.placed(root.planned, width / 2, height / 2, k), u);
        }
    }
    BlockLegend {
        id: legend
        anchors.bottom: parent.bottom
        width: parent.width
        visible: root.corners.length === 4 && root.planned.length === 4 && root.height > Theme.mm(30) && (plannedShown || times > 1)
        plannedShown: root.planned.length === 4 && !Blocks.same(root.corners, root.planned)
        times: root.times
    }
}
