// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "printing.js" as Printing

/** A rectangle of one drawing role: its tone and its mark. */
PrintCanvas {
    id: root

    /** front, rest, back, batting, sashing, patchA, patchB, patch, waste, table, binding or hoop. */
    property string role: "front"
    property bool outlined: true
    property string accessibleName

    implicitWidth: Theme.mm(17)
    implicitHeight: Theme.mm(11)
    shows: role + outlined

    Accessible.name: accessibleName
    Accessible.ignored: accessibleName === ""

    onPrinting: context => {
        const c = Theme.colors;
        Printing.clothRect(context, c, role, 0, 0, width, height, unit);
        if (!outlined)
            return;
        const line = 2.2 * unit * c.lineScale;
        context.strokeStyle = c.ink;
        context.lineWidth = line;
        context.strokeRect(line / 2, line / 2, width - line, height - line);
    }
}
