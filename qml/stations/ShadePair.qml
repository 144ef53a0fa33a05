// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/** Two cloths one on the other, and how many steps they are apart. The pair least apart is set in bold. */
Item {
    id: root

    /** {says, over, under, apart, clear, least} */
    required property var modelData

    implicitHeight: Math.max(Theme.mm(9), says.height, apart.height)
    height: implicitHeight

    Accessible.role: Accessible.StaticText
    Accessible.name: says.text + ": " + apart.text

    SwatchPinked {
        id: ground
        width: Theme.mm(14)
        height: Theme.mm(9)
        anchors.verticalCenter: parent.verticalCenter
        colour: root.modelData.under
        Rectangle {
            anchors.centerIn: parent
            width: Theme.mm(6)
            height: Theme.mm(4.4)
            color: root.modelData.over
        }
    }
    Word {
        id: says
        x: ground.width + Theme.gap
        width: apart.x - x - Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        bold: root.modelData.least
        text: root.modelData.says
        Accessible.ignored: true
    }
    Word {
        id: apart
        x: parent.width - width
        anchors.verticalCenter: parent.verticalCenter
        wrapMode: Text.NoWrap
        bold: root.modelData.least
        color: root.modelData.clear ? Theme.colors.ink : Theme.colors.caution
        //: so many steps of the scale from black to white lie between two cloths
        text: qsTr("%1 steps").arg(root.modelData.apart)
        Accessible.ignored: true
    }
}
