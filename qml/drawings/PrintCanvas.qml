// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A sheet that is printed anew whenever its colours, its size, the hand or what it shows changes. */
Canvas {
    id: root

    /** Anything the picture hangs on; give a new value to have it printed anew. */
    property var shows: null
    /** One unit of the prints in px. */
    readonly property real unit: Theme.pxPerMm / 5.87
    property bool mirrored: Theme.left

    signal printing(var context)

    readonly property string dress: Theme.set + Theme.pxPerMm

    onDressChanged: requestPaint()
    onShowsChanged: requestPaint()
    onMirroredChanged: requestPaint()
    onWidthChanged: requestPaint()
    onHeightChanged: requestPaint()
    onPaint: {
        const context = getContext("2d");
        context.reset();
        if (mirrored) {
            context.translate(width, 0);
            context.scale(-1, 1);
        }
        root.printing(context);
    }
    Accessible.role: Accessible.Graphic
}
