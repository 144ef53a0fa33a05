// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "printing.js" as Printing

/** A cloth bought for all kits together over as much as kit by kit would take: two lengths to one scale, the second only dotted. */
PrintCanvas {
    id: root

    property string role
    /** Shares of the longest of all that are drawn, 0 to 1. */
    property real together: 0
    property real apart: 0

    implicitHeight: Theme.mm(11)
    mirrored: false
    shows: [role, together, apart]
    Accessible.ignored: true
    onPrinting: context => {
        const c = Theme.colors, line = 2.2 * unit * c.lineScale, deep = Theme.mm(6), low = Theme.mm(3.4);
        context.translate(0, 1); // a clear edge, or it would show again at the foot
        const first = Math.max(Theme.mm(1), width * together), second = Math.max(Theme.mm(1), width * apart);
        Printing.clothRect(context, c, role, 0, 0, first, deep, unit);
        context.strokeStyle = c.ink;
        context.lineWidth = line;
        context.strokeRect(line / 2, line / 2, first - line, deep - line);
        Printing.roleRect(context, "planned", line / 2, deep + Theme.mm(1.2), second - line, low, c.ink, line);
    }
}
