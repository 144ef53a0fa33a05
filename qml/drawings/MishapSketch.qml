// SPDX-License-Identifier: MIT
import QtQuick
import "mishaps.js" as Mishaps

/** What went wrong, as it lies on the table, in the cloth of the piece at hand; the words beside it say the same. */
PrintCanvas {
    id: root

    /** "too-narrow", "spoiled", … as the mishaps are named. */
    property string kind
    /** There is a picture of it. */
    readonly property bool pictured: Mishaps.draws(kind)

    mirrored: false
    shows: root.kind
    Accessible.ignored: true
    onPrinting: context => Mishaps.paint(context, DyedColors.forWork, kind, width, height)
}
