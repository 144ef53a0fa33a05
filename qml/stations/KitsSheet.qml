// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Kits for a class as bundles, how many they are, what they take together, and the cuts of each and of the cutting day. */
Column {
    id: root

    signal ask(string key, string label, string kind, string text)

    /** Wide enough for two things side by side. */
    readonly property bool beside: width > Theme.mm(150)
    readonly property real half: beside ? (width - Theme.margin * 2) / 2 : width
    readonly property bool planned: KitsModel.bundles.length > 0

    spacing: Theme.gap

    Component.onCompleted: KitsModel.open = true
    Component.onDestruction: KitsModel.open = false

    component Amount: AmountRow {
        enabled: !Session.readOnly
        height: implicitHeight
        onNudged: (key, steps) => KitsModel.nudge(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
        onPicked: (key, value) => KitsModel.pick(key, value)
    }

    Item {
        width: parent.width
        height: root.beside ? Math.max(bundles.height, students.height) : bundles.height + Theme.gap + students.height

        KitBundles {
            id: bundles
            x: root.beside && Theme.left ? students.width + Theme.margin * 2 : 0
            y: root.beside ? 0 : students.height + Theme.gap
            width: root.beside ? parent.width - students.width - Theme.margin * 2 : parent.width
            bundles: KitsModel.bundles
            colours: KitsModel.folded
            accessibleName: root.planned ? KitsModel.headSays : qsTr("no kits yet")
        }
        Amount {
            id: students
            x: root.beside && !Theme.left ? parent.width - width : 0
            // Above the bundles: where they take another row it stays under the finger.
            width: root.beside ? Theme.mm(66) : parent.width
            figureCap: Theme.mm(18)
            amount: KitsModel.amounts[0] ?? ({})
        }
    }
    Word {
        width: parent.width
        text: root.planned ? KitsModel.headSays : qsTr("Say how many students: each gets a kit, one is yours, and there is a spare for every ten or part of ten.")
        bold: root.planned
    }
    CautionLine {
        width: parent.width
        text: KitsModel.cautionSays
    }
    Grid {
        width: parent.width
        columns: root.beside ? 2 : 1
        columnSpacing: Theme.margin * 2
        rowSpacing: Theme.gap

        Repeater {
            // By number: a row that was just pressed is not made anew by what it changed.
            model: Math.max(0, KitsModel.amounts.length - 1)
            Amount {
                required property int index
                width: root.half
                amount: KitsModel.amounts[index + 1] ?? ({})
            }
        }
    }
    Column {
        width: parent.width
        Repeater {
            model: KitsModel.cloths
            InlineLength {
                required property string modelData
                width: root.width
                text: modelData
            }
        }
        Word {
            width: parent.width
            visible: text !== ""
            text: KitsModel.hoursSay
        }
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
        columns: root.beside ? 2 : 1
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
