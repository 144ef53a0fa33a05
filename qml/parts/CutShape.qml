// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** A rectangle with its corners cut: the sign of a pressable thing. The key line lies inside its edge. */
Cutout {
    cut: Theme.chamfer
    stroke: Theme.colors.ink
    strokeWidth: Theme.key
}
