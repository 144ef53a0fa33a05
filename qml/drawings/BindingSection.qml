// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "bindings.js" as Bindings

/** The bound edge in section, the front above: seam, the strip over the edge, and how far it reaches on the back. */
Item {
    id: root

    /** {folded, byHand, seamMm, reachMm, loftMm} */
    property var view: null
    property var seam: null
    property string accessibleName

    readonly property var lie: view && view.seamMm > 0 && width > 0 && height > 0
                               ? Bindings.lay(view, width, height, Theme.pxPerMm) : null

    implicitHeight: Theme.mm(72)
    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.lie, root.view]
        Accessible.ignored: true
        onPrinting: context => {
            if (root.lie)
                Bindings.paint(context, dyedForWork(), root.view, root.lie, Theme.pxPerMm, unit);
        }
    }
    Row {
        visible: root.lie !== null
        readonly property real middle: ((root.lie?.seam ?? 0) + (root.lie?.edge ?? 0)) / 2
        x: Math.max(0, Math.min(root.width - width, (Theme.left ? root.width - middle : middle) - width / 2))
        y: (root.lie?.above ?? 0) - Theme.mm(3) - height
        spacing: Theme.mm(1.6)
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        Word {
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("seam")
        }
        FigureText {
            figure: root.seam
            cap: Theme.mm(5)
            showUnit: false
            showLean: false
        }
    }
    Word {
        y: parent.height - height
        width: parent.width
        color: Theme.colors.inkSoft
        text: root.view?.byHand ? qsTr("On the back the fold just covers the seam; sewn down by hand.")
                                : qsTr("On the back the fold passes the seam, so that stitching from the front catches it.")
    }
}
