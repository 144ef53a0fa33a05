// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

// A footer of Qt 6.4 cannot be made as a bound component, so it reaches this file's ids unqualified.
// qmllint disable unqualified

/** What to buy, cloth by cloth, each with its cut layout and how good that is; a press ticks it as bought. */
FocusScope {
    id: root
    objectName: "shop-page"

    /** The sum of cost and price lies open. */
    property bool pricing: false

    function leave(): bool {
        if (keypad.open) {
            keypad.close();
            return true;
        }
        const lay = pricing;
        pricing = false;
        return lay;
    }
    function toTheFoot() {
        list.positionViewAtEnd();
    }
    function begin(key: string, label: string, kind: string) {
        keypad.ask(key, label, kind, "");
    }

    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        cap: Theme.capHead
        bold: true
        text: ShopModel.count > 0 ? qsTr("To buy") : StepModel.elsewhereText
    }
    ListView {
        id: list
        // The keypad lies over it: what is covered takes no focus.
        enabled: !keypad.open
        y: head.y + head.height + Theme.gap
        width: parent.width
        height: parent.height - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: ShopModel
        delegate: Pressable {
            id: row
            required property int index
            required property string name
            required property string colour
            required property string buyText
            required property string cutSays
            required property string proofSays
            required property string costSays
            required property var strips
            required property real usableMm
            required property real lengthMm
            required property bool bought
            readonly property bool wide: width > Theme.mm(150)

            width: ListView.view?.width ?? 0
            height: Math.max(words.height, row.wide ? layout.height : 0) + (row.wide ? 0 : layout.height) + Theme.mm(6)
            inList: true
            accessibleName: qsTr("%1: buy %2").arg(row.name).arg(row.buyText)
            accessibleDescription: row.bought ? qsTr("bought") : qsTr("not bought yet")
            onClicked: ShopModel.tick(row.index)

            KeyLine { width: parent.width }
            Rectangle {
                id: box
                x: Theme.margin
                y: Theme.mm(4)
                width: Theme.mm(8)
                height: width
                color: row.bought ? Theme.colors.ink : Theme.colors.raised
                border.color: Theme.colors.ink
                border.width: Theme.key
                Pictogram {
                    visible: row.bought
                    anchors.centerIn: parent
                    name: "tick"
                    width: Theme.mm(6)
                    ink: Theme.colors.raised
                    ground: Theme.colors.ink
                }
            }
            Column {
                id: words
                x: box.x + box.width + Theme.margin
                y: Theme.mm(3)
                width: (row.wide ? row.width * 0.56 : row.width) - x - Theme.margin
                spacing: Theme.mm(1.2)
                Row {
                    spacing: Theme.gap
                    SwatchPinked {
                        width: Theme.mm(11)
                        height: Theme.mm(8)
                        colour: row.colour
                    }
                    InlineLength {
                        width: words.width - Theme.mm(14)
                        bold: true
                        lengthCap: Theme.mm(8)
                        text: qsTr("{%1} %2").arg(row.buyText).arg(row.name)
                    }
                }
                InlineLength {
                    width: parent.width
                    text: row.cutSays
                }
                Word {
                    width: parent.width
                    color: Theme.colors.inkSoft
                    text: row.costSays.length > 0 ? row.proofSays + " " + qsTr("Costs %1.").arg(row.costSays) : row.proofSays
                }
            }
            ClothLayout {
                id: layout
                x: row.wide ? row.width * 0.56 : words.x
                y: row.wide ? Theme.mm(3) : words.y + words.height + Theme.mm(2)
                width: row.width - x - Theme.margin
                height: Theme.mm(row.wide ? 40 : 30)
                strips: row.strips
                usableMm: row.usableMm
                lengthMm: row.lengthMm
                accessibleName: qsTr("How %1 is cut").arg(row.name)
            }
            FocusOutline { visible: row.keyboardFocus }
        }
        footer: Column {
            width: parent?.width ?? 0
            KeyLine { width: parent.width }
            Item {
                width: parent.width
                height: Theme.gap
            }
            Word {
                x: Theme.margin
                width: parent.width - 2 * Theme.margin
                bold: true
                text: ShopModel.totalSays
            }
            Word {
                x: Theme.margin
                width: parent.width - 2 * Theme.margin
                text: ShopModel.sundriesSays
            }
            Item {
                width: parent.width
                height: Theme.gap
            }
            GroupHead {
                visible: PriceModel.known
                width: parent.width
                text: qsTr("Cost and price")
                summary: PriceModel.priceText
                open: root.pricing
                onClicked: root.pricing = !open
            }
            Loader {
                active: root.pricing && PriceModel.known
                visible: active
                x: Theme.margin
                width: parent.width - 2 * Theme.margin
                sourceComponent: PriceSheet {
                    onAsk: (key, label, kind) => root.begin(key, label, kind)
                }
            }
            Item {
                width: parent.width
                height: Theme.margin
            }
        }
    }
    EntrySheet {
        id: keypad
        home: list
        onGiven: (key, text) => {
            const answer = PriceModel.enter(key, text);
            error = answer.ok ? "" : answer.says;
            if (answer.ok)
                close();
        }
        onClosed: root.forceActiveFocus()
    }
}
