// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "workplace.js" as WorkPlace

/** The place where the tablet stands, each thing in it as it is set: the tablet, the light, the voice, the mat, the pedal. */
PrintCanvas {
    id: root

    /** [{name, value, words}, …] in the order of `boxes`: "language", "light", … as workplace.js has them. */
    property var things: []
    /** Where the picture of each goes: {x, y, w, h}. */
    property var boxes: []
    /** How far down the shelves are, and the boards of the table. */
    property var shelves: []
    property var tables: []
    property string accessibleName

    // The mat shows the hand by itself.
    mirrored: false
    shows: [things, boxes, shelves, tables]
    Accessible.name: accessibleName
    onPrinting: context => {
        WorkPlace.room(context, Theme.colors, width, shelves, tables, unit);
        for (let i = 0; i < Math.min(things.length, boxes.length); ++i)
            WorkPlace.thing(context, Theme.colors, things[i].name, things[i], boxes[i], Theme.family);
    }
}
