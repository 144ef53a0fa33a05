// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "layouts.js" as Layouts
import "swatches.js" as Swatches

/** A piece of cloth in its own colour and print, to scale, a tape measure laid along its selvage and one along its end. It never lies mirrored. */
PrintCanvas {
    id: root

    property string clothRole: "front"
    property string colour
    property real lengthMm: 0
    property real widthMm: 0
    /** What is drawn at the least, so that a small piece looks small. */
    property real roomLengthMm: lengthMm
    property real roomWidthMm: widthMm
    /** The tape is one of inches. */
    property bool inches: false
    property string accessibleName

    readonly property real deep: Math.round(Theme.mm(8.4))
    readonly property real air: Theme.mm(2)
    readonly property real k: Math.max(0, Math.min((width - deep - 2 * air) / Math.max(1, roomLengthMm, lengthMm),
                                                   (height - deep - 2 * air) / Math.max(1, roomWidthMm, widthMm)))
    /** The cloth's corner beside both tapes. */
    readonly property real cornerX: deep + air
    readonly property real cornerY: height - deep - air

    mirrored: false
    shows: [clothRole, colour, k, lengthMm, widthMm, inches]
    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName
    onPrinting: context => {
        if (k <= 0)
            return;
        const cloth = Swatches.dyed(Theme.colors, DyedColors.pens, clothRole, colour);
        const run = lengthMm * k, wide = widthMm * k, unitPx = (inches ? 25.4 : 1) * k, out = Theme.mm(4);
        Layouts.paint(context, cloth.c, { k, x: cornerX, y: cornerY - wide, roll: 0 },
                      { role: cloth.role, strips: [], run: lengthMm, wide: widthMm, kind: "remnant" }, unit);
        context.save();
        context.translate(cornerX, cornerY + air);
        Swatches.tape(context, Theme.colors, Math.min(width - cornerX, Math.max(run, roomLengthMm * k) + out), deep, unitPx, Theme.capWord, run, Theme.family, unit);
        context.restore();
        // The other reads upwards from the same corner.
        context.translate(cornerX - air, cornerY);
        context.rotate(-Math.PI / 2);
        context.translate(0, -deep);
        Swatches.tape(context, Theme.colors, Math.min(cornerY, Math.max(wide, roomWidthMm * k) + out), deep, unitPx, Theme.capWord, wide, Theme.family, unit);
    }
}
