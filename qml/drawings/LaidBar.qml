// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "sums.js" as Sums

/** Where the pieces of one term lie in its sum, at the sum's own scale. */
PrintCanvas {
    id: root

    /** List of {at, share, term, less, rest}. */
    property var pieces: []

    implicitHeight: Theme.mm(3.4)
    shows: pieces
    mirrored: false
    Accessible.ignored: true

    onPrinting: context => {
        const lie = { x: Theme.mm(0.7), k: width - Theme.mm(1.4) };
        for (const piece of pieces)
            Sums.piece(context, Theme.colors, piece, lie, 0, height, false, unit);
    }
}
