// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** One file looked into: the project's name, what else is inside, and what must be mended before it is laid on the shelf. */
Flickable {
    id: root

    property string name
    property string refusal
    /** What else is inside, in words. */
    property var inside: []
    property var problems: []
    property bool ready: false
    property bool busy: false

    signal offerTaken(int row, int index)

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
            text: root.name
        }
        Word {
            width: parent.width
            visible: text !== ""
            color: Theme.colors.stop
            text: root.refusal
        }
        Word {
            width: parent.width
            visible: text !== ""
            text: root.inside.join(", ")
        }
        Word {
            width: parent.width
            visible: root.busy
            color: Theme.colors.inkSoft
            text: qsTr("One moment: all of it is being read.")
        }
        Word {
            width: parent.width
            visible: root.refusal === "" && !root.busy
            text: root.ready ? qsTr("All of it can be read. The file stays as it is.")
                                   : qsTr("Not all of it can be read. What you choose here mends the copy; the file stays as it is.")
        }
        Repeater {
            model: root.problems
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
                            onClicked: root.offerTaken(row.index, modelData.index)
                        }
                    }
                }
            }
        }
    }
}
