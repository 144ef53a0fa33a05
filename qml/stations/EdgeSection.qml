// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The bound edge in section, and how its strip is folded; how corner and closing are made is drawn beside it. */
Flickable {
    id: root

    /** Upright and on a low screen nothing stands beside it but the section: there the acts follow. */
    readonly property bool follows: root.width > Theme.mm(90) || Theme.small

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
        EdgeBound {
            visible: !root.follows
            width: parent.width
            height: width * 0.9
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: EdgeModel.binding.byHand ? qsTr("On the back the fold just covers the seam; sewn down by hand.")
                                           : qsTr("On the back the fold passes the seam, so that stitching from the front catches it.")
        }
        Repeater {
            model: root.follows ? EdgeModel.sewActs : []
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
