// SPDX-License-Identifier: MIT
import QtQuick

/**
 * A sheet to print on, printed when it is first seen and when something it shows has changed while it is
 * seen. Qt Quick alone would print every sheet twice at the start, the hidden ones too, and keep their pictures.
 */
Canvas {
    id: root

    /** Everything but lettering stands the other way round. */
    property bool mirrored: false
    property bool stale: true
    /** What was printed on: where Qt Quick has let it go, all is printed anew. */
    property var printed: null

    signal printing(var context)

    /** What it shows has changed. */
    function again() {
        stale = true;
        if (visible)
            requestPaint();
    }

    // For the very first frame; by itself Qt Quick would not print a sheet before the second.
    Component.onCompleted: again()
    onMirroredChanged: again()
    onWidthChanged: again()
    onHeightChanged: again()
    onVisibleChanged: if (visible && stale) requestPaint()
    onPaint: {
        if (!visible || (!stale && printed !== null && context === printed))
            return;
        const sheet = getContext("2d");
        if (sheet === null)
            return;
        stale = false;
        printed = sheet;
        sheet.reset();
        if (mirrored) {
            sheet.translate(width, 0);
            sheet.scale(-1, 1);
        }
        root.printing(sheet);
    }
}
