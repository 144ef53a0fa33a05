// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings

/** The bound edge of this piece, in section. */
BindingSection {
    view: EdgeModel.binding
    seam: EdgeModel.bindingSeam
    reach: EdgeModel.bindingReach
    cut: EdgeModel.bindingCut
    pressed: EdgeModel.bindingFolded
    accessibleName: qsTr("The bound edge in section, seam %1").arg(EdgeModel.bindingSeam.text)
}
