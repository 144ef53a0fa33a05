// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Both faces of the piece, in grey or in colour, side by side or one above the other. */
Item {
    id: root

    readonly property bool beside: width > height
    readonly property real room: turn.y - Theme.gap
    readonly property real faceWidth: beside ? (width - 3 * Theme.margin) / 2 : width - 2 * Theme.margin
    readonly property real faceHeight: beside ? room - Theme.margin : (room - 2 * Theme.margin) / 2

    Column {
        x: Theme.margin
        y: Theme.margin
        spacing: Theme.mm(1)
        Word {
            id: front
            width: root.faceWidth
            bold: true
            //: the front face of the piece
            text: qsTr("Front")
        }
        PieceShades {
            objectName: "front-shades"
            width: root.faceWidth
            height: root.faceHeight - front.height - Theme.mm(1)
            view: FitModel.drawing
            face: ShadeModel.front
            accessibleName: ShadeModel.grey ? qsTr("The front in grey") : qsTr("The front in colour")
        }
    }
    Column {
        x: root.beside ? root.faceWidth + 2 * Theme.margin : Theme.margin
        y: root.beside ? Theme.margin : root.faceHeight + 2 * Theme.margin
        spacing: Theme.mm(1)
        Word {
            id: back
            width: root.faceWidth
            bold: true
            //: the back face of the piece
            text: qsTr("Back")
        }
        PieceShades {
            objectName: "back-shades"
            width: root.faceWidth
            height: root.faceHeight - back.height - Theme.mm(1)
            view: FitModel.drawing
            face: ShadeModel.back
            accessibleName: ShadeModel.grey ? qsTr("The back in grey") : qsTr("The back in colour")
        }
    }
    CutButton {
        id: turn
        objectName: "shade-grey"
        x: Theme.margin
        y: parent.height - height - Theme.margin
        width: parent.width - 2 * Theme.margin
        height: Math.max(Theme.control, contentHeight)
        text: ShadeModel.grey ? qsTr("Show in colour") : qsTr("Show in grey")
        onClicked: ShadeModel.grey = !ShadeModel.grey
    }
}
