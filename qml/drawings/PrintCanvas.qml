// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A sheet that is printed anew whenever its colours, its size, the hand or what it shows changes. */
Printed {
    id: root

    /** Anything the picture hangs on; give a new value to have it printed anew. */
    property var shows: null
    /** One unit of the prints in px. */
    readonly property real unit: Theme.pxPerMm / 5.87

    readonly property string dress: Theme.set + Theme.pxPerMm

    readonly property var cloths: Theme.cloths

    mirrored: Theme.left
    onClothsChanged: again()
    onDressChanged: again()
    onShowsChanged: again()
    Accessible.role: Accessible.Graphic
}
