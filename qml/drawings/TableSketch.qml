// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "tablelay.js" as TableLay
import "tables.js" as Tables

/** The piece on its table in small, to scale, without figures: for one row of a list. */
PrintCanvas {
    id: root

    /** The numbers of a TableDrawing. */
    property var view: null
    /** A set of mats in place of one piece: list of {x, y, turn}. */
    property var mats: []
    /** Which face lies up: "front" or "back". */
    property string face: "front"

    implicitWidth: Theme.mm(26)
    implicitHeight: Theme.mm(18)
    shows: [view, mats, face]
    Accessible.ignored: true

    onPrinting: context => {
        if (!(view?.finishedAlongMm > 0) || width <= 0 || height <= 0)
            return;
        // No figure stands here, so no paper is kept free for one.
        const lie = TableLay.lay(view, width, height, Theme.pxPerMm * 0.1, mats);
        Tables.paint(context, DyedColors.plain, lie, face === "back", [], unit * 0.5);
    }
}
