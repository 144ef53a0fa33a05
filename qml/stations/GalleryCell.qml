// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * One block where it will lie in the piece, half of the sashing round it: its photograph, else its stitched cloth,
 * else dots on the bare table; on it its name and how far it is.
 */
Pressable {
    id: root

    required property string block
    required property string blockState
    required property string stateSays
    required property url thumb
    required property bool flagged
    required property bool noted
    required property string sizeSays

    /** What a stitched block looks like, as the strip's drawing has it. */
    property var view: null
    /** The sashing between two blocks, px. */
    property real sashing: Theme.mm(2)

    readonly property bool made: blockState !== "to-do"
    /** No room for words: signs of the stations stand for them, told in the page's head. */
    readonly property bool tiny: width < Theme.mm(23)
    /** Small: its name and its signs still stand beside each other. */
    readonly property bool narrow: width < Theme.mm(29)
    readonly property bool gone: blockState === "spoiled" || blockState === "lost"

    signal chosen(string block)

    inList: true
    //: spoken: a block's name and its state
    accessibleName: qsTr("Block %1, %2").arg(root.block).arg(root.stateSays)
    //: spoken: words were written of the block
    accessibleDescription: root.noted ? qsTr("with a note") : ""
    onClicked: root.chosen(root.block)

    // Joined: its sashing is sewn to it.
    Rectangle {
        visible: root.blockState === "joined"
        anchors.fill: parent
        color: Theme.colors.sashing
    }
    Rectangle {
        id: lies
        anchors.fill: parent
        anchors.margins: Math.round(root.sashing / 2)
        color: root.pressed ? Theme.colors.ink : Theme.colors.table

        BlockSketch {
            visible: small.status !== Image.Ready
            anchors.fill: parent
            made: root.made
            view: root.view
            lost: root.gone
            ink: root.pressed ? Theme.colors.raised : Theme.colors.ink
        }
        Image {
            id: small
            anchors.fill: parent
            source: root.thumb
            sourceSize.width: Math.max(1, width)
            asynchronous: true
            autoTransform: true
            cache: false
            fillMode: Image.PreserveAspectCrop
        }
        Rectangle {
            visible: root.made
            anchors.fill: parent
            color: "transparent"
            border.width: root.keyboardFocus || root.pressed || root.gone ? Theme.keyBold : Theme.key
            border.color: root.gone ? Theme.colors.stop : Theme.colors.ink
        }
        // The name, pinned to the cloth's corner; of a block to do it stands in its place on the table.
        Rectangle {
            id: tag
            readonly property bool told: root.made
            x: told ? 0 : (parent.width - width) / 2
            y: told ? 0 : (parent.height - height - (root.tiny ? 0 : state.height)) / 2
            width: Math.min(parent.width, name.implicitWidth + Theme.mm(2))
            height: name.implicitHeight
            color: told ? Theme.colors.raised : "transparent"
            border.width: told ? Theme.key : 0
            border.color: Theme.colors.ink
            Word {
                id: name
                anchors.horizontalCenter: parent.horizontalCenter
                // A name stays on one line, however narrow the cell.
                width: Math.min(implicitWidth, parent.width)
                wrapMode: Text.NoWrap
                cap: root.narrow && root.made ? Theme.mm(3.84) : Math.max(Theme.mm(3.84), Math.min(Theme.capHead, root.width * 0.6 / Math.max(1, text.length)))
                bold: true
                text: root.block
                color: !tag.told && root.pressed ? Theme.colors.raised : Theme.colors.ink
                Accessible.ignored: true
            }
        }
        Rectangle {
            id: state
            visible: !root.tiny || sign.visible
            x: root.made ? parent.width - width : (parent.width - width) / 2
            y: root.made ? parent.height - height : tag.y + tag.height
            width: root.tiny ? sign.width + Theme.mm(1) : Math.min(parent.width, word.implicitWidth + Theme.mm(1.6))
            height: root.tiny ? sign.height + Theme.mm(1) : word.implicitHeight
            color: root.made ? Theme.colors.raised : "transparent"
            border.width: root.made ? Theme.key : 0
            border.color: Theme.colors.ink
            Pictogram {
                id: sign
                anchors.centerIn: parent
                visible: root.tiny && name !== ""
                name: ({ stitched: "Hoop", trimmed: "Trim", joined: "Join" })[root.blockState] ?? ""
                width: Theme.mm(5)
                ink: Theme.colors.ink
                ground: Theme.colors.raised
            }
            Word {
                id: word
                visible: !root.tiny
                anchors.horizontalCenter: parent.horizontalCenter
                width: Math.min(implicitWidth, lies.width)
                horizontalAlignment: Text.AlignHCenter
                cap: Theme.mm(3.84) // many to a row
                text: root.stateSays
                color: !root.made && root.pressed ? Theme.colors.raised : Theme.colors.ink
                Accessible.ignored: true
            }
        }
        Rectangle {
            visible: root.flagged || root.noted
            x: parent.width - width
            width: signs.width + Theme.mm(1.6)
            height: signs.height + Theme.mm(1.2)
            color: Theme.colors.raised
            border.width: Theme.key
            border.color: Theme.colors.ink
            Grid {
                id: signs
                anchors.centerIn: parent
                columns: root.narrow ? 1 : 2
                spacing: Theme.mm(0.8)
                Pictogram {
                    objectName: "note"
                    name: "note"
                    visible: root.noted
                    width: Theme.mm(5)
                    ink: Theme.colors.ink
                    ground: Theme.colors.raised
                }
                Pictogram {
                    name: "warning"
                    visible: root.flagged
                    width: Theme.mm(5)
                    ink: Theme.colors.caution
                    ground: Theme.colors.raised
                }
            }
        }
    }
    FocusOutline { visible: root.keyboardFocus }
}
