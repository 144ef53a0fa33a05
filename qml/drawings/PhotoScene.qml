// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "photos.js" as Photos
import "printing.js" as Printing

/** How a picture of a block comes about, or what keeps it from coming; the words beside it say the same. */
PrintCanvas {
    id: root

    /** "held" (the tablet over the block), "blank", "torn", "unplugged", "drawer"; "" for none. */
    property string scene
    /** The block, as StripDrawing has it, or null. */
    property var view: null
    property bool back: false
    /** Where the picture is of a cloth instead: its colour. */
    property string colour
    /** What stands on the drawer's label. */
    property string label

    readonly property real scaled: Math.min(width / Photos.wide, height / Photos.high)

    mirrored: false
    shows: [scene, view, back, colour]
    Accessible.ignored: true
    onPrinting: context => {
        if (width <= 0 || height <= 0)
            return;
        const cloth = { front: { print: "", colour: colour } };
        Photos.paint(context, colour === "" ? DyedColors.forWork : Printing.dyed(Theme.colors, cloth, DyedColors.pens, false), scene, view, back, width, height);
    }

    Word {
        readonly property real room: 54 * root.scaled
        visible: root.scene === "drawer" && implicitWidth <= room && cap >= Theme.mm(3.84)
        anchors.horizontalCenter: parent.horizontalCenter
        y: parent.height / 2 + 28.5 * root.scaled - height / 2
        cap: Math.min(Theme.capWord, 8 * root.scaled)
        wrapMode: Text.NoWrap
        text: root.label
        Accessible.ignored: true
    }
}
