// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pieces.js" as Pieces

/** A piece as it hangs from a board of the shelf: its proportions, its own colours, and which of its blocks are stitched. */
PrintCanvas {
    id: root

    /** {finishedAlongMm, finishedAcrossMm, columns, rows, sashingMm, edgeMm, outlineAlongMm, outlineAcrossMm} */
    property var view: null
    /** {block, sashing, binding, back (colours), bound, patches (a list a design: {colour, widthMm, heightMm}), at} */
    property var face: null
    /** Of each place of the layout, row by row, whether its block is stitched. */
    property var made: []
    /** Pixels to the millimetre of cloth: the same for all that hang beside each other. */
    property real toScale: 0
    /** Put away: folded in half, and paler. */
    property bool folded: false
    property string accessibleName

    /** Air around the piece, for its outline. */
    readonly property real air: Math.round(Theme.mm(0.6))
    /** How far below the board its upper edge hangs. */
    readonly property real drop: Math.round(Theme.mm(2.6))

    implicitWidth: Math.ceil((view?.finishedAlongMm ?? 0) * toScale) + 2 * air
    implicitHeight: drop + Math.ceil((view?.finishedAcrossMm ?? 0) * toScale * (folded ? 0.5 : 1)) + (folded ? 5 : 1) * air
    mirrored: false
    shows: [view, face, made, folded]

    Accessible.name: accessibleName
    Accessible.ignored: accessibleName === ""

    onPrinting: context => {
        if (!(view?.finishedAlongMm > 0) || !face)
            return;
        const w = width, h = height - drop + air, pens = { dark: Theme.day.ink, light: Theme.lamp.ink };
        context.save();
        context.translate(0, drop - air);
        if (folded)
            Pieces.folded(context, Theme.colors, view, face, made, pens, w, h, air, unit);
        else
            Pieces.paint(context, Theme.colors, view, face, made, pens, w, h, air, unit);
        context.restore();
        const inset = Math.min(w * 0.2, Theme.mm(16));
        Pieces.pegs(context, Theme.colors, [inset, w - inset], drop + Theme.mm(2.4), unit);
    }
}
