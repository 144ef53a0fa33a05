// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A small picture of a piece for the shelf: its blocks, its proportions and its own colours. */
PrintCanvas {
    id: root

    property int columns: 1
    property int rows: 1
    /** A block's size across over its size along. */
    property real ratio: 1
    property color frontColour: Theme.colors.front
    property color backColour: Theme.colors.back
    property color bindingColour: Theme.colors.binding
    property string accessibleName

    implicitWidth: Theme.mm(24)
    implicitHeight: Theme.mm(16)
    mirrored: false
    shows: [columns, rows, ratio, frontColour, backColour, bindingColour]

    Accessible.name: accessibleName
    Accessible.ignored: accessibleName === ""

    onPrinting: context => {
        const c = Theme.colors, u = unit;
        const across = Math.max(1, columns), down = Math.max(1, rows), tall = ratio > 0 ? ratio : 1;
        const room = 10 * u;
        const block = Math.min((width - room) / across, (height - room) / (down * tall));
        const w = across * block, h = down * block * tall;
        const x = (width - w) / 2, y = (height - h) / 2;
        // A corner turned back shows the other face.
        const turn = Math.min(w, h) * 0.2;
        context.fillStyle = frontColour;
        context.fillRect(x, y, w, h);
        context.strokeStyle = c.ink;
        context.lineWidth = 1.1 * u * c.lineScale;
        context.beginPath();
        for (let i = 1; i < across; ++i) {
            context.moveTo(x + i * block, y);
            context.lineTo(x + i * block, y + h);
        }
        for (let j = 1; j < down; ++j) {
            context.moveTo(x, y + j * block * tall);
            context.lineTo(x + w, y + j * block * tall);
        }
        context.stroke();
        const band = Math.max(3.5 * u, Math.min(w, h) * 0.05);
        context.strokeStyle = bindingColour;
        context.lineWidth = band;
        context.strokeRect(x + band / 2, y + band / 2, w - band, h - band);
        context.strokeStyle = c.ink;
        context.lineWidth = 1.8 * u * c.lineScale;
        context.strokeRect(x, y, w, h);
        context.clearRect(x + w - turn, y + h - turn, turn + 2 * u, turn + 2 * u);
        context.beginPath();
        context.moveTo(x + w, y + h - turn);
        context.lineTo(x + w - turn, y + h - turn);
        context.lineTo(x + w - turn, y + h);
        context.closePath();
        context.fillStyle = backColour;
        context.fill();
        context.stroke();
    }
}
