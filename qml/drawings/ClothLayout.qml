// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "layouts.js" as Layouts
import "printing.js" as Printing
import "swatches.js" as Swatches

/** How one cloth is cut, to scale: strips across or along it, the pieces of each, and what is left; its two sides are measured where they are told. It never lies mirrored. */
Item {
    id: root

    /**
     * [{mm, repeats, run, pieces: [{mm, along, count, gap}]}]; `along` is less than the strip where a piece is
     * trimmed, `run` the length of strips that lie side by side along the selvage
     */
    property var strips: []
    property real usableMm: 0
    property real lengthMm: 0
    property string clothRole: "front"
    /** The cloth's own colour, "#rrggbb"; "" for that of its print. */
    property string colour
    /** "cloth", with a "roll" before it, a "package" unfolded, or a "remnant" that is nothing but cloth. */
    property string kind: "cloth"
    /** What the drawing is scaled to; several that stand together share it. */
    property real scaleLengthMm: lengthMm
    property real scaleWidthMm: usableMm
    /** Its two sides, in braces. */
    property string lengthSays
    property string widthSays
    property string accessibleName

    readonly property real rolled: kind === "roll" ? Theme.mm(9) : 0
    /** How much room is kept before the cloth, for its width and its roll; the same for those that share a scale. */
    property real before: rolled + (widthSays !== "" ? breadth.naturalWidth + Theme.mm(2) : Theme.mm(0.4))

    readonly property real unit: Theme.pxPerMm / 5.87
    readonly property var lie: width > 0 && lengthMm > 0 && usableMm > 0
                               ? Layouts.lay({
                                     width: width, height: height, before: before, foot: lengthSays !== "" ? Theme.mm(11) : Theme.mm(1), scaleLength: scaleLengthMm, scaleWidth: scaleWidthMm
                                 }, rolled, Theme.mm(2.2)) : null
    readonly property real run: lie ? lengthMm * lie.k : 0
    readonly property real wide: lie ? usableMm * lie.k : 0
    readonly property real foot: lie ? lie.y + wide + Theme.mm(6.6) : 0

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName
    Accessible.ignored: accessibleName === ""

    PrintCanvas {
        anchors.fill: parent
        mirrored: false
        shows: [root.strips, root.lie, root.run, root.wide, root.clothRole, root.colour, root.kind, extent.naturalWidth, breadth.implicitHeight]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie)
                return;
            const c = Theme.colors;
            const cloth = Swatches.dyed(c, { dark: Theme.day.ink, light: Theme.lamp.ink }, root.clothRole, root.colour);
            Layouts.paint(context, cloth.c, root.lie, { role: cloth.role, strips: root.strips, run: root.lengthMm, wide: root.usableMm, kind: root.kind }, unit);
            if (root.widthSays !== "")
                Layouts.upright(context, c, breadth.x + breadth.width / 2, root.lie.y, root.lie.y + root.wide, breadth.implicitHeight + Theme.mm(1), unit);
            if (root.lengthSays !== "" && extent.beside)
                Printing.measure(context, c, root.lie.x, root.lie.x + root.run, root.foot, extent.naturalWidth + Theme.mm(4), unit * 0.7);
        }
    }
    InlineLength {
        id: breadth
        visible: root.widthSays !== ""
        x: root.lie ? root.lie.x - root.rolled - naturalWidth - Theme.mm(2) : 0
        y: root.lie ? root.lie.y + (root.wide - implicitHeight) / 2 : 0
        width: naturalWidth
        text: root.widthSays
        Accessible.ignored: true
    }
    InlineLength {
        id: extent
        /** The line it stands in is longer than its figure. */
        readonly property bool beside: root.run > naturalWidth + Theme.mm(8)
        visible: root.lengthSays !== ""
        x: root.lie ? Math.max(0, Math.min(root.width - naturalWidth, root.lie.x + (root.run - naturalWidth) / 2)) : 0
        y: root.foot - implicitHeight / 2
        width: naturalWidth
        text: root.lengthSays
        Accessible.ignored: true
    }
}
