// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The bound edge in section, how its strip is folded, and how corner and closing are made. */
Flickable {
    id: root

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        InlineLength {
            width: parent.width
            bold: true
            text: EdgeModel.bindingFolded.valid
                  ? qsTr("Double fold: cut {%1}, pressed in half to {%2}").arg(EdgeModel.bindingCut.text).arg(EdgeModel.bindingFolded.text)
                  : qsTr("Single fold: cut {%1}").arg(EdgeModel.bindingCut.text)
        }
        BindingSection {
            width: parent.width
            height: implicitHeight
            view: EdgeModel.binding
            seam: EdgeModel.bindingSeam
            accessibleName: qsTr("The bound edge in section, seam %1").arg(EdgeModel.bindingSeam.text)
        }
        InlineLength {
            width: parent.width
            text: EdgeModel.sewSays
        }
        CautionLine {
            width: parent.width
            text: qsTr("Slow over the thick places; turn the wheel by hand. Pins out before the needle.")
        }
    }
}
