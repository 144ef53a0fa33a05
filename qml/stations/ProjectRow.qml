// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One project on the shelf: its picture, its name, what comes next; and, opened out, what can be done with it. */
Item {
    id: root

    required property string id
    required property string name
    required property string nextText
    required property bool putAway
    required property bool isDemo
    required property int columns
    required property int rows
    required property real blockRatio
    required property color frontColour
    required property color backColour
    required property color bindingColour
    required property bool started

    /** The height a row may take while there are few of them: then its picture is the larger. */
    property real room: 0
    property bool opened: false
    property bool renaming: false

    signal toggled()
    /** Something was said at the foot of the row. */
    signal told()

    implicitHeight: line.height + (opened ? more.height + Theme.gapTargets : 0)

    Item {
        id: line
        width: parent.width
        height: Math.max(Theme.target, words.height + Theme.mm(5), picture.height + Theme.mm(5))

        Pressable {
            width: parent.width - dots.width - Theme.gapTargets
            height: parent.height
            inList: true
            accessibleName: root.name + ". " + root.nextText
            onClicked: Session.openProject(root.id)

            PiecePicture {
                id: picture
                x: Theme.margin
                anchors.verticalCenter: parent.verticalCenter
                width: Math.max(Theme.mm(30), Math.min(1.5 * height, root.width * 0.36))
                height: Math.max(Theme.mm(20), Math.min(Theme.mm(60), root.room - Theme.mm(6)))
                columns: root.columns
                rows: root.rows
                ratio: root.blockRatio
                frontColour: root.frontColour
                backColour: root.backColour
                bindingColour: root.bindingColour
            }
            Column {
                id: words
                x: picture.x + picture.width + Theme.margin
                width: parent.width - x
                anchors.verticalCenter: parent.verticalCenter
                spacing: Theme.mm(1)
                Word {
                    width: parent.width
                    cap: Theme.capHead
                    bold: true
                    text: root.name
                }
                InlineLength {
                    width: parent.width
                    text: root.nextText
                }
            }
        }
        CutButton {
            id: dots
            anchors.right: parent.right
            anchors.rightMargin: Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.mm(24)
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: root.opened ? qsTr("Less") : qsTr("More")
            onClicked: root.toggled()
        }
    }
    Flow {
        id: more
        visible: root.opened
        x: Theme.margin
        y: line.height + Theme.gap
        width: parent.width - 2 * Theme.margin
        spacing: Theme.gap

        readonly property int beside: Math.max(1, Math.min(3, Math.floor((width + spacing) / (Theme.mm(44) + spacing))))
        readonly property real each: Math.floor((width - (beside - 1) * spacing) / beside)

        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: qsTr("Make again in other cloth")
            onClicked: Shelf.makeAgain(root.id)
        }
        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: qsTr("Rename")
            onClicked: root.renaming = !root.renaming
        }
        CutButton {
            visible: Session.units.length > 0
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: qsTr("A copy in millimetres")
            onClicked: Shelf.metricCopy(root.id)
        }
        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: root.putAway ? qsTr("Bring back") : qsTr("Put away")
            onClicked: root.putAway ? Shelf.bringBack(root.id) : Shelf.putAway(root.id)
        }
        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            enabled: !Sharing.busy
            //: writes one file with the project, its notes and its photographs, to be given to someone
            text: qsTr("Share as one file")
            onClicked: Sharing.share(root.id)
        }
        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            enabled: !Sharing.busy
            //: the whole job on paper, as a PDF to be printed
            text: qsTr("Sheet for the wall")
            onClicked: Sharing.print(root.id, "long")
        }
        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            enabled: !Sharing.busy
            //: the same on a single page, as a PDF
            text: qsTr("Sheet on one page")
            onClicked: Sharing.print(root.id, "short")
        }
        CutButton {
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            enabled: !Sharing.busy
            //: what is cut for all students, and a page for each one's kit, as a PDF
            text: qsTr("Sheets for a class")
            onClicked: Sharing.print(root.id, "class")
        }
        HoldButton {
            width: more.each
            kind: "stop"
            text: qsTr("Hold to throw away")
            onHeld: Shelf.throwAway(root.id)
        }
        Word {
            visible: text !== "" && !Sharing.refused
            width: more.width
            wrapMode: Text.Wrap
            text: Sharing.sharedId === root.id ? Sharing.said : ""
            onTextChanged: root.told()
        }
        CautionLine {
            visible: text !== ""
            width: more.width
            text: Sharing.sharedId === root.id && Sharing.refused ? Sharing.said : ""
        }
        PlainField {
            visible: root.renaming
            width: more.width
            text: root.name
            accessibleName: qsTr("Name of the project")
            onAccepted: text => {
                Shelf.rename(root.id, text);
                root.renaming = false;
            }
        }
    }
    KeyLine {
        y: parent.height - height
        width: parent.width
    }
}
