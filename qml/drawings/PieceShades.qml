// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "shades.js" as Shades

/** One face of the piece in flat colours, to scale: where a cloth's colour is not known it is hatched. */
PrintCanvas {
    id: root

    /** {finishedAlongMm, finishedAcrossMm, columns, rows, sashingMm, edgeMm, outlineAlongMm, outlineAcrossMm} */
    property var view: null
    /** {block, sashing, binding, bound, patches (a list a design: {colour, widthMm, heightMm}), at} */
    property var face: null
    property string accessibleName

    shows: [view, face]

    Accessible.name: accessibleName

    onPrinting: context => {
        if (view && face && view.finishedAlongMm > 0 && view.finishedAcrossMm > 0)
            Shades.paint(context, Theme.colors, view, face, width, height, unit);
    }
}
