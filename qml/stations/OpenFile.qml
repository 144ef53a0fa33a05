// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** One project file looked into: its name, and in words what must be mended before it can be laid on the shelf. */
Flickable {
    id: root

    required property OpenFiles files

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height

    Column {
        id: rows
        x: Theme.margin
        width: root.width - 2 * Theme.margin
        spacing: Theme.gap

        Word {
            width: parent.width
            visible: text !== ""
            cap: Theme.capHead
            bold: true
            text: root.files.chosenName
        }
        Word {
            width: parent.width
            visible: text !== ""
            color: Theme.colors.stop
            text: root.files.refusal
        }
        Word {
            width: parent.width
            visible: root.files.refusal === ""
            text: root.files.ready ? qsTr("All of it can be read. The file stays as it is.")
                                   : qsTr("Not all of it can be read. What you choose here mends the copy; the file stays as it is.")
        }
        Repeater {
            model: root.files.problems
            Column {
                id: row
                required property int index
                required property var modelData
                width: rows.width
                spacing: Theme.mm(2)
                KeyLine {
                    width: parent.width
                }
                Word {
                    width: parent.width
                    color: Theme.colors.stop
                    bold: true
                    text: row.modelData.says
                }
                Flow {
                    width: parent.width
                    spacing: Theme.gap
                    Repeater {
                        model: row.modelData.offers
                        CutButton {
                            required property var modelData
                            width: Math.min(implicitWidth, row.width)
                            height: Math.max(Theme.step, contentHeight)
                            inList: true
                            text: modelData.says
                            onClicked: root.files.takeOffer(row.index, modelData.index)
                        }
                    }
                }
            }
        }
    }
}
