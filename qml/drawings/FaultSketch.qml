// SPDX-License-Identifier: MIT
import QtQuick
import "faults.js" as Faults

/** Something amiss with a stitched block, close up on its cloth; the word beside it says the same. */
PrintCanvas {
    id: root

    /** "pleat", "thread", "patch", "mark" or "look". */
    property string fault

    mirrored: false
    shows: fault
    Accessible.ignored: true
    onPrinting: context => {
        if (width > 0 && height > 0)
            Faults.paint(context, DyedColors.forWork, fault, width, height, unit);
    }
}
