// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "strips.js" as Strips
import "printing.js" as Printing

/** Where a hoop is measured: the field the needle reaches, the opening inside the frame, the frame's outside. */
Item {
    id: root

    /** Which of the three is measured now: "field", "opening", "outside"; it is drawn bold and named. */
    property string measured: "outside"
    property string accessibleName

    implicitHeight: Theme.mm(48)
    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    readonly property real side: Math.min(height - Theme.mm(14), width * 0.6)

    PrintCanvas {
        anchors.fill: parent
        shows: [root.measured]
        Accessible.ignored: true
        onPrinting: context => {
            const c = Theme.colors, u = unit, s = root.side, bar = s * 0.1;
            const x = (width - s) / 2, y = Theme.mm(1);
            Printing.clothRect(context, c, "front", x - s * 0.18, y + s * 0.1, s * 1.36, s * 0.8, u);
            context.translate(x, y);
            Strips.frame(context, c, s, s, bar, u);
            const field = bar + s * 0.07;
            Printing.roleRect(context, "stitched", field, field, s - 2 * field, s - 2 * field, c.stitched, 2 * u * c.lineScale);
            const inset = root.measured === "outside" ? 0 : root.measured === "opening" ? bar : field;
            const foot = s + 4 * Theme.pxPerMm;
            context.strokeStyle = c.accent;
            Printing.strokeLine(context, inset, inset, inset, foot, c.accent, 2.4 * u);
            Printing.strokeLine(context, s - inset, inset, s - inset, foot, c.accent, 2.4 * u);
            Printing.measure(context, c, inset, s - inset, foot, 0, u);
        }
    }
    Word {
        anchors.bottom: parent.bottom
        width: parent.width
        horizontalAlignment: Text.AlignHCenter
        text: root.measured === "outside" ? qsTr("the frame’s outside, edge to edge")
              : root.measured === "opening" ? qsTr("the opening inside the frame")
              //: field: as far as the needle can stitch
              : qsTr("the field: as far as the needle stitches")
    }
}
