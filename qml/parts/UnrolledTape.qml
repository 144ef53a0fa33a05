// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "unrolled.js" as Unrolled

/** A tape rolled out as far as the figure typed says: its end goes along with it. */
Printed {
    id: root

    /** {whole, num, den} as it is set. */
    property var figure: null
    property bool metric: false

    readonly property string dress: Theme.set + Theme.pxPerMm

    mirrored: false
    implicitHeight: Theme.mm(9)
    onFigureChanged: again()
    onMetricChanged: again()
    onDressChanged: again()
    Accessible.ignored: true
    onPrinting: context => {
        if (figure && width > 0)
            Unrolled.paint(context, Theme.colors, Unrolled.reach(figure), metric, width, height, Theme.pxPerMm, Theme.family);
    }
}
