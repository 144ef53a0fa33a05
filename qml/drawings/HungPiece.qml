// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "hung.js" as Hung

/** A piece as it would come out, pegged to a line that goes on to its neighbours; of a set of mats as many as hang behind. */
PrintCanvas {
    id: root

    /** The numbers of a TableDrawing. */
    property var view: null
    /** So many more like it hang behind. */
    property int behind: 0
    property string face: "front"
    /** All that hang beside each other to one scale, px to the millimetre at the most; 0 for as large as it goes. */
    property real toScale: 0
    /** Where it is as large as the place, for who writes on it. */
    readonly property real drop: Theme.mm(3)

    mirrored: false
    shows: [view, behind, face, toScale]
    Accessible.ignored: true
    onPrinting: context => {
        if (!(view?.finishedAlongMm > 0) || width <= 0 || height <= 0)
            return;
        const c = DyedColors.plain;
        Hung.line(context, c, width, Theme.mm(2.2), unit);
        Hung.paint(context, c, Hung.lie(view, width, height, toScale > 0 ? toScale : 1e6, drop, behind, unit), face === "back", behind, unit);
    }
}
