// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "photos.js" as Photos

/** The four paper corners a photograph is put under: the frame for what is to be on it. */
PrintCanvas {
    id: root

    /** How long a corner is, px. */
    property real corner: Math.min(Theme.mm(14), width * 0.2)

    mirrored: false
    shows: corner
    Accessible.ignored: true
    onPrinting: context => {
        const line = Math.min(Theme.keyBold, corner * 0.08), out = Math.ceil(0.16 * corner + line);
        Photos.mounts(context, Theme.colors, out, out, width - 2 * out, height - 2 * out, corner, line);
    }
}
