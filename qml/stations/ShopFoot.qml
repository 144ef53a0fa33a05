// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/** Under the shopping list: its sums, then cost and price, kits for a class, and cloth she has; one open at a time. */
Column {
    id: root

    /** Which group lies open: "price", "kits", "batting", "stock", or none. */
    property string open: ""

    /** So much of the page is in sight at once. */
    property real room: 0
    /** What a group that lies open has of it under its head. */
    readonly property real sheetRoom: room - stock.height - Theme.gap

    signal toggled(string group)
    signal ask(string group, string key, string label, string kind, string text)

    /** The head of a group, to scroll to. */
    function headOf(group: string): Item {
        return group === "price" ? price : group === "kits" ? kits : group === "batting" ? batting : stock;
    }

    /** What a group holds, while it is open, with air above and below it. */
    component Opened: Column {
        id: opened
        required property bool wanted
        property alias sourceComponent: held.sourceComponent
        visible: wanted
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        topPadding: Theme.gap
        bottomPadding: Theme.gap
        Loader {
            id: held
            active: opened.wanted
            width: opened.width
        }
    }

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
        id: price
        visible: PriceModel.known
        width: parent.width
        text: qsTr("Cost and price")
        summary: PriceModel.priceText
        pictogram: "price"
        open: root.open === "price"
        onClicked: root.toggled("price")
    }
    Opened {
        wanted: root.open === "price" && PriceModel.known
        sourceComponent: PriceSheet {
            onAsk: (key, label, kind, text) => root.ask("price", key, label, kind, text)
        }
    }
    GroupHead {
        id: kits
        visible: ShopModel.count > 0
        width: parent.width
        text: qsTr("Kits for a class")
        summary: KitsModel.headSays
        pictogram: "kits"
        open: root.open === "kits"
        onClicked: root.toggled("kits")
    }
    Opened {
        wanted: root.open === "kits"
        sourceComponent: KitsSheet {
            room: root.sheetRoom
            onAsk: (key, label, kind, text) => root.ask("kits", key, label, kind, text)
        }
    }
    GroupHead {
        id: batting
        visible: BattingModel.known
        width: parent.width
        //: batting bought cut from the roll, or ready cut in packages
        text: qsTr("Batting: roll or package")
        summary: BattingModel.headSays
        pictogram: "batting"
        open: root.open === "batting"
        onClicked: root.toggled("batting")
    }
    Opened {
        wanted: root.open === "batting" && BattingModel.known
        sourceComponent: BattingSheet {
            onAsk: (key, label, kind, text) => root.ask("batting", key, label, kind, text)
        }
    }
    GroupHead {
        id: stock
        visible: ShopModel.count > 0
        width: parent.width
        text: qsTr("Cloth you have")
        summary: StockModel.headSays
        pictogram: "stock"
        open: root.open === "stock"
        onClicked: root.toggled("stock")
    }
    Opened {
        wanted: root.open === "stock"
        sourceComponent: StockSheet {
            // The last of them ends with the page.
            room: root.sheetRoom - Theme.gap - Theme.margin
            onAsk: (key, label, kind, text) => root.ask("stock", key, label, kind, text)
        }
    }
    Item {
        width: parent.width
        height: Theme.margin
    }
}
