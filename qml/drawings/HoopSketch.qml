// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "hoops.js" as Hoops

/** A hoop over the block of the piece, to scale, and what the block leaves of its field; dotted while nobody has measured it. */
PrintCanvas {
    id: root

    /** {outside, opening, field, sent: each {alongMm, acrossMm}, across}; null or empty where it is not measured. */
    property var view: null
    property real largestMm: 1
    /** The line that leads to the figure is drawn. */
    property bool leading: true
    /** Where the hoop itself has room; the rest is for the line that leads out of it. */
    property real room: width

    readonly property bool known: (view?.outside?.alongMm ?? 0) > 0
    readonly property var lie: known ? Hoops.lay(view, largestMm, room, height) : null
    /** Where that line ends. */
    readonly property real level: !lie ? height / 2 : lie.across ? (lie.field.y + lie.block.y) / 2 : lie.block.y + Math.min(lie.block.h * 0.25, 30 * unit)

    shows: [view, lie, leading]
    Accessible.ignored: true
    onPrinting: context => {
        if (!lie)
            return Hoops.unknown(context, Theme.colors, room, height, unit);
        Hoops.paint(context, DyedColors.forWork, lie, unit);
        if (leading && lie.fits)
            Hoops.spare(context, Theme.colors, lie, width, unit);
    }
}
