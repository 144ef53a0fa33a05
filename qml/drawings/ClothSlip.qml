// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "slips.js" as Slips

/** One thing to take at the shop, hung from a line: a slip of the cloth itself, or the thing on its card. */
PrintCanvas {
    id: root

    /** A print as printing.js has them, "thread" or "needles". */
    property string kind
    /** The cloth's own colour. */
    property string colour
    /** A pin goes through it: its edge is bolder. */
    property bool pinned: false
    /** So much of it stays free of words, from its upper edge, px. */
    property real shown: Theme.mm(16)

    /** From the top down to the slip's upper edge. */
    readonly property real drop: Math.round(Theme.mm(2.4))

    mirrored: false
    shows: [kind, colour, pinned, shown]
    Accessible.ignored: true
    onPrinting: context => {
        if (width <= 0 || height <= drop || kind === "")
            return;
        const c = Theme.colors, air = Theme.mm(1.2), line = (root.pinned ? 4.6 : 2) * unit * c.lineScale;
        context.save();
        context.translate(air, drop);
        Slips.paint(context, c, kind, colour, { dark: Theme.day.ink, light: Theme.lamp.ink }, width - 2 * air, height - drop, shown, line, unit);
        context.restore();
        Slips.hung(context, c, width, drop + Theme.mm(4.4), unit);
    }
}
