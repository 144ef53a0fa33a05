// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "pictograms.js" as Signs

/** A printed sign: solids with white cuts. Its field is 48 wide to 44 high. */
Printed {
    id: root

    property string name
    property color ink: Theme.colors.inkSoft
    property color ground: Theme.colors.paper

    implicitWidth: Theme.mm(8.3)
    implicitHeight: width * 44 / 48

    Accessible.ignored: true

    onNameChanged: again()
    onInkChanged: again()
    onGroundChanged: again()
    onPrinting: context => {
        const scale = Math.min(width / 48, height / 44);
        context.translate((width - 48 * scale) / 2, (height - 44 * scale) / 2);
        context.scale(scale, scale);
        Signs.paint(context, root.name, root.ink, root.ground);
    }
}
