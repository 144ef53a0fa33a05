// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "dones.js" as Dones
import "tablelay.js" as TableLay

/** The finished piece in its own cloths, lying on the whole table, a corner turned back. */
PrintCanvas {
    id: root

    /** As EdgeDrawing has it. */
    property var view: null
    /** {patches (a list a design: {dye, widthMm, heightMm}), at} */
    property var face: null
    property string accessibleName

    mirrored: false
    shows: [view, face]
    Accessible.name: accessibleName
    onPrinting: context => {
        const along = root.view?.alongMm ?? 0, across = root.view?.acrossMm ?? 0, air = Theme.mm(7);
        if (!(along > 0) || !(across > 0) || width <= 2 * air || height <= 2 * air)
            return;
        const s = Math.min((width - 2 * air) / along, (height - 2 * air) / across), w = along * s, h = across * s;
        const g = { x: (width - w) / 2, y: (height - h) / 2, w: w, h: h, s: s };
        const v = root.view;
        const fit = TableLay.lay({ shape: "none", finishedAlongMm: along, finishedAcrossMm: across, columns: v.columns, rows: v.rows, sashingMm: v.sashingMm,
            edgeMm: v.outsideMm, outlineAlongMm: v.blockAlongMm, outlineAcrossMm: v.blockAcrossMm }, width, height, air / 4);
        Dones.paint(context, DyedColors.plain, root.view, root.face, fit, g, width, height, Theme.pxPerMm, unit);
    }
}
