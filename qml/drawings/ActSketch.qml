// SPDX-License-Identifier: MIT
import QtQuick
import "vignettes.js" as Vignettes

/** One act as it lies on the table, in the cloth of the piece at hand; the words beneath say the same. */
PrintCanvas {
    id: root

    /** "ripper-seam", "fold-under", … as the acts are named. */
    property string kind
    /** There is a picture of it. */
    readonly property bool pictured: Vignettes.draws(kind)

    mirrored: false
    shows: root.kind
    Accessible.ignored: true
    onPrinting: context => Vignettes.paint(context, dyedForWork(), kind, width, height)
}
