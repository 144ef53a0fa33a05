// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** A picture of one face of a block under paper corners, below it which face it is, with a snip of its cloth. */
Item {
    id: root

    property string says
    property string role
    property url picture

    /** The most height it may take, so that it is seen whole. */
    property real most: Theme.mm(90)

    readonly property real air: Theme.mm(3)

    implicitHeight: photograph.y + photograph.height + air + Math.max(snip.height, word.height)

    Rectangle {
        id: photograph
        x: (parent.width - width) / 2
        y: root.air
        width: Math.min(parent.width - 2 * root.air, Theme.mm(62), Math.max(Theme.mm(18), root.most - snip.height - 3 * root.air))
        height: width
        color: Theme.colors.raised
        border.color: Theme.colors.ink
        border.width: Theme.keyThin
        Image {
            anchors.fill: parent
            anchors.margins: Theme.mm(2)
            source: root.picture
            sourceSize.width: Math.max(1, width)
            asynchronous: true
            autoTransform: true
            cache: false
            fillMode: Image.PreserveAspectCrop
        }
    }
    PhotoMounts {
        anchors.fill: photograph
        anchors.margins: -Theme.mm(1.6)
        corner: Math.min(Theme.mm(9), photograph.width * 0.22)
    }
    Row {
        y: photograph.y + photograph.height + root.air
        x: (parent.width - width) / 2
        height: snip.height
        spacing: Theme.gap
        NotebookSheet {
            id: snip
            kind: "snip"
            role: root.role
            width: Theme.mm(16)
            height: Theme.mm(13)
            PinSketch {
                x: (parent.width - width) / 2
                y: -Theme.mm(1)
                rotation: 18
            }
        }
        Word {
            id: word
            anchors.verticalCenter: parent.verticalCenter
            bold: true
            text: root.says
        }
    }
}
