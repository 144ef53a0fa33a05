// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "bindings.js" as Bindings

/**
 * The bound edge in section, the front above: seam, the strip over the edge, and how far it reaches on the back;
 * under it, where there is room, the strip opened out with its measures.
 */
Item {
    id: root

    /** {folded, byHand, seamMm, reachMm, loftMm} */
    property var view: null
    property var seam: null
    /** How far the fold lies past the seam on the back. */
    property var reach: null
    /** How wide the strip is cut, and pressed in half; null to show no strip. */
    property var cut: null
    property var pressed: null
    property string accessibleName

    readonly property bool opened: cut !== null && height > Theme.mm(98)
    readonly property real high: height - (opened ? Theme.mm(42) : 0)
    /** As large as there is room for. */
    readonly property real scaled: Math.max(0.8, Math.min(1.8, high / Theme.mm(66), width / Theme.mm(72)))
    readonly property var lie: view && view.seamMm > 0 && width > 0 && height > 0
                               ? Bindings.lay(view, width, high, Theme.pxPerMm * scaled) : null
    readonly property real bar: Math.min(width - 2 * Theme.margin, Theme.mm(120))
    readonly property var strip: ({ x: (width - bar) / 2, y: high + Theme.mm(15), w: bar, h: Theme.mm(9) })

    implicitHeight: Theme.mm(72)
    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.lie, root.view, root.opened]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie)
                return;
            Bindings.paint(context, DyedColors.forWork, root.view, root.lie, Theme.pxPerMm * root.scaled, unit * root.scaled);
            if (root.opened)
                Bindings.strip(context, DyedColors.forWork, root.view, root.strip, Theme.pxPerMm, unit);
        }
    }
    FigureTag {
        visible: root.lie !== null
        centre: ((root.lie?.seam ?? 0) + (root.lie?.edge ?? 0)) / 2
        y: Math.max(0, (root.lie?.above ?? 0) - Theme.mm(3.4) * root.scaled - height)
        label: qsTr("seam")
        figure: root.seam
    }
    FigureTag {
        visible: root.lie !== null && root.reach !== null
        centre: ((root.lie?.seam ?? 0) + (root.lie?.reach ?? 0)) / 2
        y: Math.min(root.high - height, (root.lie?.below ?? 0) + Theme.mm(2.4) * root.scaled)
        //: so far the fold of the binding lies beyond the seam, on the back
        label: qsTr("past the seam")
        figure: root.reach
    }
    FigureTag {
        visible: root.opened
        centre: root.width / 2
        y: root.strip.y - Theme.mm(5) - height
        //: the width a strip of binding is cut
        label: qsTr("strip, cut")
        figure: root.cut
    }
    FigureTag {
        visible: root.opened && (root.pressed?.valid ?? false)
        centre: root.strip.x + root.strip.w / 4
        y: root.strip.y + root.strip.h + Theme.mm(5)
        //: the strip of binding, folded along its middle with the iron
        label: qsTr("pressed in half")
        figure: root.pressed
    }
}
