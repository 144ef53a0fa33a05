// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Kits for a class in the room where they are sewn; what they take together, and the cuts of each and of the cutting day. */
Column {
    id: root
    objectName: "kits-sheet"

    /** So much of the page is in sight at once. */
    property real room: 0

    signal ask(string key, string label, string kind, string text)

    /** Wide enough for two things side by side. */
    readonly property bool beside: width > Theme.mm(130)
    readonly property real half: width > Theme.mm(150) ? (width - Theme.margin * 2) / 2 : width
    readonly property bool planned: KitsModel.bundles.length > 0
    /** The amount in hand; without a class there is only the first. */
    property int taken: 0
    readonly property int held: taken < KitsModel.amounts.length ? taken : 0

    spacing: Theme.gap

    Component.onCompleted: KitsModel.open = true
    Component.onDestruction: KitsModel.open = false

    Item {
        width: parent.width
        // What lies beyond stands on a page of its own.
        height: Math.max(root.room, root.beside ? Math.max(classroom.height, says.y + says.height) : says.y + says.height)

        AmountInHand {
            id: inHand
            enabled: !Session.readOnly
            x: root.beside && !Theme.left ? parent.width - width : 0
            // Above the room, where they do not stand side by side: whatever comes into it, this stays under the finger.
            width: root.beside ? Theme.mm(Theme.small ? 47 : 60) : parent.width
            amount: KitsModel.amounts[root.held] ?? null
            names: KitsModel.names
            figureCap: Theme.mm(Theme.small ? 9 : 18)
            onNudged: (key, steps) => KitsModel.nudge(key, steps)
            onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
            onPicked: (key, value) => KitsModel.pick(key, value)
        }
        KitRoom {
            id: classroom
            x: root.beside && Theme.left ? inHand.width + Theme.margin * 2 : 0
            y: root.beside ? 0 : inHand.height + Theme.gap
            width: root.beside ? parent.width - inHand.width - Theme.margin * 2 : parent.width
            bundles: KitsModel.bundles
            colours: KitsModel.folded
            room: KitsModel.room
            amounts: KitsModel.amounts
            held: root.held
            accessibleName: root.planned ? KitsModel.headSays : qsTr("no kits yet")
            invitation: qsTr("Say how many students: each gets a kit, one is yours, and there is a spare for every ten or part of ten.")
            onTaken: amount => root.taken = amount
        }
        Column {
            id: says
            x: root.beside ? inHand.x : 0
            y: root.beside ? inHand.height + Theme.gap : classroom.y + classroom.height + Theme.gap
            width: root.beside ? inHand.width : parent.width
            spacing: Theme.gap
            CautionLine {
                width: parent.width
                text: KitsModel.cautionSays
            }
            Word {
                width: parent.width
                visible: root.planned
                bold: true
                text: KitsModel.headSays
            }
        }
    }
    Grid {
        width: parent.width
        visible: root.planned
        columns: root.half < width ? 2 : 1
        columnSpacing: Theme.margin * 2
        rowSpacing: Theme.gap

        Repeater {
            model: KitsModel.cloths
            Column {
                id: cloth
                required property var modelData
                width: root.half
                spacing: Theme.mm(1)
                InlineLength {
                    width: parent.width
                    text: cloth.modelData.says
                }
                ClothLengths {
                    width: parent.width
                    height: implicitHeight
                    role: cloth.modelData.print
                    together: cloth.modelData.together
                    apart: cloth.modelData.apart
                }
            }
        }
    }
    Word {
        width: parent.width
        visible: text !== ""
        text: KitsModel.hoursSay
    }
    Word {
        width: parent.width
        visible: KitsModel.cuts.length > 0
        cap: Theme.capHead
        bold: true
        text: qsTr("What is cut")
    }
    Grid {
        width: parent.width
        columns: root.half < width ? 2 : 1
        columnSpacing: Theme.margin * 2
        rowSpacing: Theme.mm(1.5)

        Repeater {
            model: KitsModel.cuts
            Item {
                id: cut
                required property var modelData
                readonly property real longest: Theme.mm(22)
                width: root.half
                height: words.height

                ClothFill {
                    x: Theme.left ? parent.width - cut.longest : 0
                    y: Theme.mm(2)
                    width: Math.max(Theme.mm(1), cut.longest * cut.modelData.wide)
                    height: Math.max(Theme.mm(1), cut.longest * cut.modelData.deep)
                    role: cut.modelData.print
                }
                Column {
                    id: words
                    x: Theme.left ? 0 : cut.longest + Theme.gap
                    width: parent.width - cut.longest - Theme.gap
                    InlineLength {
                        width: parent.width
                        text: cut.modelData.says
                    }
                    Word {
                        width: parent.width
                        bold: true
                        text: cut.modelData.each + ", " + cut.modelData.all
                    }
                }
            }
        }
    }
}
