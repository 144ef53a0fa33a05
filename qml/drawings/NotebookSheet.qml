// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "notebook.js" as Notebook

/** What a page of notes is made of: the sewn leaf, a label sewn down, a snip of the cloth of a role. */
PrintCanvas {
    id: root

    /** "leaf", "label" or "snip". */
    property string kind: "leaf"
    property string role: "front"
    /** What is written stands clear of the leaf's seam by so much. */
    readonly property real seam: Theme.mm(11)

    shows: [kind, role]
    Accessible.ignored: true
    onPrinting: context => {
        if (width <= 0 || height <= 0)
            return;
        if (kind === "leaf")
            Notebook.leaf(context, Theme.colors, width, height, Theme.pxPerMm);
        else if (kind === "label")
            Notebook.label(context, Theme.colors, width, height, Theme.pxPerMm);
        else
            Notebook.snip(context, DyedColors.plain, role, width, height, Theme.pxPerMm, unit);
    }
}
