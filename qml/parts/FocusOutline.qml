// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A second outline, 0.8 mm outside its parent, for the one with the keyboard's focus. */
CutShape {
    anchors.fill: parent
    anchors.margins: -(Theme.focusGap + Theme.keyBold)
    stroke: Theme.colors.accent
    strokeWidth: Theme.keyBold
    cut: Theme.chamfer + Theme.focusGap
}
