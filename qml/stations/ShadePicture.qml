// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The photograph as large as it goes; where it is tapped a ring shows the place whose mean was taken. */
Item {
    id: root

    Image {
        id: image
        anchors.fill: parent
        anchors.margins: Theme.margin
        source: root.visible ? ClothColour.picture : ""
        fillMode: Image.PreserveAspectFit
        asynchronous: true
        autoTransform: true
        cache: false
        sourceSize.width: 1600
        sourceSize.height: 1600
    }
    Fingertip {
        id: finger
        objectName: "shade-tap"
        x: image.x + (image.width - width) / 2
        y: image.y + (image.height - height) / 2
        width: Math.max(1, image.paintedWidth)
        height: Math.max(1, image.paintedHeight)
        listening: image.status === Image.Ready
        onStruck: at => ClothColour.tap(at.x / width, at.y / height)

        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The picture: tap the cloth")

        Rectangle {
            visible: ClothColour.sampled
            readonly property real reach: Math.max(Math.min(parent.width, parent.height) / 40, Theme.mm(2))
            x: ClothColour.spotX * parent.width - width / 2
            y: ClothColour.spotY * parent.height - height / 2
            width: 2 * reach
            height: width
            radius: reach
            color: "transparent"
            border.color: Theme.colors.raised
            border.width: Theme.keyBold
            Rectangle {
                anchors.fill: parent
                anchors.margins: -Theme.keyBold
                radius: width / 2
                color: "transparent"
                border.color: Theme.colors.ink
                border.width: Theme.keyBold
            }
        }
    }
}
