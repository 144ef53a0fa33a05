// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/**
 * In place of everything else when the projects cannot be opened: why, what can be done, and trying it again.
 * Asks nothing of the program; it ends with 2 to try again and with 1 to close.
 */
Window {
    id: root

    required property string says
    required property real pxPerMm

    width: 1280
    height: 800
    minimumWidth: 480
    minimumHeight: 360
    visible: true
    title: "Matside"
    color: Theme.colors.paper

    Binding { target: Theme; property: "pxPerMm"; value: root.pxPerMm }
    Binding { target: Theme; property: "small"; value: Math.max(root.width, root.height) / Theme.pxPerMm < 190 }

    Column {
        x: Theme.margin
        y: Math.max(Theme.margin, (root.height - height) / 2)
        width: root.width - 2 * Theme.margin
        spacing: Theme.gapTargets

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: qsTr("Your projects cannot be opened just now.")
        }
        Word {
            objectName: "why"
            width: parent.width
            text: root.says
        }
        Row {
            id: ways
            width: parent.width
            spacing: Theme.gapTargets

            CutButton {
                width: (ways.width - ways.spacing) / 2
                height: Theme.target
                focus: true
                kind: "action"
                text: qsTr("Try again")
                onClicked: Qt.exit(2)
            }
            CutButton {
                width: (ways.width - ways.spacing) / 2
                height: Theme.target
                text: qsTr("Close Matside")
                onClicked: Qt.exit(1)
            }
        }
    }
}
