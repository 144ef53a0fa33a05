// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "striplets.js" as Striplets

/** A hoop strip among the others: which of its blocks are stitched, which is in the hoop, which are to do. */
PrintCanvas {
    id: root

    /** {lengthMm, widthMm, blockAcrossMm, places: [{startMm, alongMm, state}]} */
    property var view: null

    shows: view
    Accessible.ignored: true
    onPrinting: context => {
        if ((view?.lengthMm ?? 0) > 0)
            Striplets.row(context, DyedColors.forWork, view, width, height, unit);
    }
}
