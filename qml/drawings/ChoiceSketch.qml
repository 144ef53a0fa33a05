// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "corners.js" as Corners
import "sketches.js" as Sketches
import "wishes.js" as Wishes

/** A small picture of what a choice does; the word beside it says the same. */
PrintCanvas {
    id: root

    /** "light", "label", "hand-right", "slides", … as sketches.js has them, or wishes.js, or corners.js. */
    property string scene
    /** The colours it is drawn in: for a light, that light's own. */
    property ColorSet inks: Theme.colors
    /** What is written on a label. */
    property string words

    // Each shows a hand of its own, or none.
    mirrored: false
    shows: [scene, inks]
    Accessible.ignored: true
    onPrinting: context => {
        if (Wishes.has(scene))
            Wishes.paint(context, inks, scene, width, height);
        else if (Corners.has(scene))
            Corners.paint(context, inks, scene, width, height);
        else
            Sketches.paint(context, inks, scene, width, height, Theme.family);
    }

    FigureText {
        visible: root.scene === "light"
        x: root.height * 0.08
        y: root.height * 0.05
        cap: Math.max(Theme.mm(4.6), root.height * 0.22)
        figure: visible ? { whole: "13", num: "1", den: "4" } : null
        color: root.inks.ink
        accessibleIgnored: true
    }
    Word {
        visible: text !== ""
        anchors.centerIn: parent
        cap: Theme.capWord
        bold: true
        wrapMode: Text.NoWrap
        text: root.words
        Accessible.ignored: true
    }
}
