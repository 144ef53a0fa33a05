// SPDX-License-Identifier: MIT
pragma Singleton
import QtQuick
import Matside.Theme
import "printing.js" as Printing

/** The colours with the cloths of the piece at hand in them, mixed once for all sheets. Only to be read. */
QtObject {
    readonly property var pens: ({ dark: Theme.day.ink, light: Theme.lamp.ink })
    readonly property var plain: Printing.dyed(Theme.colors, Theme.cloths, pens, false)
    /** The same, each cloth light or dark enough that the lines of a working drawing stand out from it. */
    readonly property var forWork: Printing.dyed(Theme.colors, Theme.cloths, pens, true)
}
