// SPDX-License-Identifier: MIT
import QtQuick
import "vignettes.js" as Vignettes

/** One act as it lies on the table, in the cloth of the piece at hand. Where no words beneath say the same, it has them. */
PrintCanvas {
    id: root

    /** "ripper-seam", "fold-under", … as the acts are named. */
    property string kind
    /** Its text equivalent; empty where words beneath it say the same. */
    property string accessibleName
    /** There is a picture of it. */
    readonly property bool pictured: Vignettes.draws(kind)

    mirrored: false
    shows: root.kind
    Accessible.ignored: accessibleName === ""
    Accessible.name: accessibleName
    onPrinting: context => Vignettes.paint(context, DyedColors.forWork, kind, width, height, unit)
}
