// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The bound edge in section, and how its strip is folded; how corner and closing are made is drawn beside it. */
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
        // Upright and on a low screen nothing stands beside it: there they follow.
        Repeater {
            model: root.width > Theme.mm(90) || Theme.small ? EdgeModel.sewActs : []
            ActCell {
                required property var modelData
                required property int index
                width: rows.width
                height: implicitHeight
                beside: true
                number: index + 1
                act: modelData
            }
        }
    }
}
