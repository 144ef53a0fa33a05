// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * A share file of a project that is on this tablet too: what comes from it, and what the two tell differently,
 * side by side, for her to choose.
 */
Flickable {
    id: root

    property Merging merging: null
    /** What is in the file, in words. */
    property var inside: []
    property bool busy: false

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.height + Theme.margin

    Column {
        id: rows
        x: Theme.margin
        width: root.width - 2 * Theme.margin
        spacing: Theme.gap

        Word {
            width: parent.width
            cap: Theme.capHead
            bold: true
            text: root.merging.name
        }
        Word {
            width: parent.width
            text: root.inside.join(", ")
        }
        Word {
            width: parent.width
            text: qsTr("This project is on this tablet already. Put together, all that stands here stays, and one Undo takes the rest back.")
        }
        CautionLine {
            width: parent.width
            visible: text !== ""
            text: root.merging.refusal
        }
        Word {
            width: parent.width
            visible: root.busy
            color: Theme.colors.inkSoft
            text: qsTr("One moment: the photographs are being kept.")
        }
        Word {
            width: parent.width
            visible: root.merging.nothingNew
            bold: true
            text: qsTr("All that is in the file is here already.")
        }
        Column {
            width: parent.width
            visible: root.merging.lines.length > 0
            spacing: Theme.mm(1.5)
            Word {
                width: parent.width
                bold: true
                text: qsTr("This comes from the other tablet")
            }
            Repeater {
                model: root.merging.lines
                Word {
                    required property string modelData
                    width: rows.width
                    text: modelData
                }
            }
        }
        Word {
            width: parent.width
            visible: root.merging.count > 0
            bold: true
            //: two tablets tell a thing differently; %1 is how many she has yet to choose
            text: root.merging.unanswered > 0 ? qsTr("Told differently: choose what holds. Still to choose: %1").arg(root.merging.unanswered) : qsTr("Told differently: all of it is chosen.")
        }
        Repeater {
            model: root.merging
            Column {
                id: row
                required property int index
                required property string label
                required property string here
                required property string there
                required property string together
                required property string why
                required property int said

                readonly property var both: [
                    {
                        value: Merging.ThisTablet,
                        //: the value on the tablet in her hands
                        says: qsTr("Here: %1").arg(here)
                    },
                    {
                        value: Merging.OtherTablet,
                        //: the value on the other tablet
                        says: qsTr("The other tablet: %1").arg(there)
                    }
                ]
                readonly property var sum: [
                    {
                        value: Merging.BothTogether,
                        //: pieces counted on both tablets, added up
                        says: qsTr("Both together: %1").arg(together)
                    }
                ]

                width: rows.width
                spacing: Theme.mm(2)
                Word {
                    width: parent.width
                    bold: true
                    text: row.label
                }
                Word {
                    width: parent.width
                    color: Theme.colors.inkSoft
                    text: row.why
                }
                ChoiceCells {
                    width: parent.width
                    height: Math.max(lines * Theme.target, implicitHeight)
                    inList: true
                    perRow: Theme.small && choices.length > 2 ? 1 : choices.length
                    accessibleName: row.label
                    choices: row.together === "" ? row.both : row.both.concat(row.sum)
                    value: row.said
                    onChosen: value => root.merging.say(row.index, value)
                }
            }
        }
    }
}
