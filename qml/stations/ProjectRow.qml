// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One project on the shelf: it hangs from the board above, with its name, how far it is and what comes next; and, opened out, what can be done with it. */
Item {
    id: root

    required property string id
    required property string name
    required property string nextText
    required property bool putAway
    required property bool isDemo
    required property bool goesOn
    required property var view
    required property var face
    required property var made
    required property bool metric
    required property string sizeText
    required property string stitchedText
    required property real share

    /** The height a row may take while there are few of them. */
    property real room: 0
    /** Pixels to the millimetre of cloth, the same in every row. */
    property real toScale: 0
    /** The width kept for the pieces, so that the words of all rows stand below each other. */
    property real pieceRoom: 0
    /** The uppermost, whose next step is set the largest. */
    property bool first: false
    property bool opened: false
    property bool renaming: false

    /** The words above the piece, where the page is narrow and there is height for both. */
    readonly property bool stacked: pieceRoom >= width - 2 * Theme.margin
    readonly property real air: Theme.mm(Theme.small ? 1.6 : 3)

    signal toggled()
    /** Something was said at the foot of the row. */
    signal told()

    /** The same place for the other hand. */
    function placed(x: real, wide: real): real {
        return Theme.left ? width - x - wide : x;
    }

    implicitHeight: line.height + (opened ? more.height + 2 * Theme.gap : 0) + board.height

    Item {
        id: line
        width: parent.width
        height: Math.max(root.room - board.height, root.stacked ? picture.height + root.air + words.height + root.air
                                                                : Math.max(words.height + 2 * root.air, picture.height + root.air))

        Pressable {
            id: opens
            width: parent.width
            height: parent.height
            inList: true
            accessibleName: root.name + ". " + target.says
            accessibleDescription: root.putAway ? aside.text + ". " + root.stitchedText : root.stitchedText
            onClicked: {
                if (root.putAway)
                    Shelf.bringBack(root.id);
                else
                    Session.openProject(root.id);
            }

            PiecePicture {
                id: picture
                x: root.placed(Theme.margin + Math.max(0, (root.pieceRoom - width) / 2), width)
                width: implicitWidth
                height: implicitHeight
                view: root.view
                face: root.face
                made: root.made
                folded: root.putAway
                toScale: Math.min(root.toScale, root.pieceRoom / Math.max(1, root.view?.finishedAlongMm ?? 1))
            }
            Column {
                id: words
                x: root.stacked ? Theme.margin : root.placed(2 * Theme.margin + root.pieceRoom, width)
                y: root.stacked ? parent.height - height - root.air : Math.max(root.air, (parent.height - height) / 2)
                width: root.width - (root.stacked ? 2 * Theme.margin : root.pieceRoom + 3 * Theme.margin)
                spacing: Theme.mm(Theme.small ? 0.8 : 1.4)

                Item {
                    width: parent.width
                    height: Math.max(name.height, dots.height)
                    Word {
                        id: name
                        x: Theme.left ? dots.width + Theme.gap : 0
                        anchors.verticalCenter: parent.verticalCenter
                        width: parent.width - dots.width - Theme.gap
                        cap: Theme.small ? Theme.mm(4.6) : Theme.capHead
                        bold: true
                        text: root.name
                    }
                }
                Word {
                    id: aside
                    visible: root.putAway
                    width: parent.width
                    bold: true
                    color: Theme.colors.inkSoft
                    //: of a piece that lies folded at the back of the shelf
                    text: qsTr("Put away for now")
                }
                InlineLength {
                    visible: root.sizeText !== ""
                    width: parent.width
                    lengthCap: Theme.mm(5)
                    text: root.sizeText
                }
                Word {
                    width: parent.width
                    color: Theme.colors.inkSoft
                    text: root.stitchedText
                }
                ThreadLine {
                    visible: !root.putAway
                    width: parent.width
                    share: root.share
                }
                Item {
                    id: target
                    readonly property bool solid: root.goesOn || root.putAway
                    readonly property string says: root.putAway ? qsTr("Bring back") : root.nextText
                    width: parent.width
                    height: Math.max(Theme.mm(root.first && solid && !Theme.small ? 18 : 13), says.implicitHeight + Theme.mm(Theme.small ? 3 : 4))
                    CutShape {
                        anchors.fill: parent
                        fill: target.solid !== opens.pressed ? (target.solid ? Theme.colors.action : Theme.colors.ink) : Theme.colors.raised
                        stroke: target.solid ? Theme.colors.accent : Theme.colors.ink
                        strokeWidth: Theme.mm(0.5) * Theme.colors.lineScale
                    }
                    InlineLength {
                        id: says
                        x: Theme.mm(3)
                        anchors.verticalCenter: parent.verticalCenter
                        width: parent.width - 2 * x
                        cap: target.solid && root.first && !Theme.small ? Theme.mm(4.6) : Theme.capWord
                        bold: target.solid
                        color: target.solid ? (opens.pressed ? Theme.colors.accent : Theme.colors.actionInk)
                                            : opens.pressed ? Theme.colors.raised : Theme.colors.ink
                        text: target.says
                    }
                    FocusOutline { visible: opens.keyboardFocus }
                }
            }
        }
        CutButton {
            id: dots
            x: words.x + (Theme.left ? 0 : words.width - width)
            y: words.y + Math.max(0, (name.height - height) / 2)
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
            // Of a piece in millimetres that would be the same again.
            visible: !root.metric
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: qsTr("A copy in millimetres")
            onClicked: Shelf.metricCopy(root.id)
        }
        CutButton {
            visible: !root.putAway
            width: more.each
            height: Theme.step
            kind: "outline"
            cap: Theme.capWord
            text: qsTr("Put away")
            onClicked: Shelf.putAway(root.id)
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
    ShelfBoard {
        id: board
        y: parent.height - height
        width: parent.width
    }
}
