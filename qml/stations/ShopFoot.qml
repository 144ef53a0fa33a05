// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Under the shopping list: its sums, then cost and price, kits for a class, and cloth she has; one open at a time. */
Column {
    id: root

    /** Which group lies open: "price", "kits", "batting", "stock", or none. */
    property string open: ""

    signal toggled(string group)
    signal ask(string group, string key, string label, string kind)

    /** The head of a group, to scroll to. */
    function headOf(group: string): Item {
        return group === "price" ? price : group === "kits" ? kits : group === "batting" ? batting : stock;
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
        open: root.open === "price"
        onClicked: root.toggled("price")
    }
    Item {
        visible: root.open === "price"
        width: parent.width
        height: Theme.gap
    }
    Loader {
        active: root.open === "price" && PriceModel.known
        visible: active
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        sourceComponent: PriceSheet {
            onAsk: (key, label, kind) => root.ask("price", key, label, kind)
        }
    }
    Item {
        visible: root.open === "price"
        width: parent.width
        height: Theme.gap
    }
    GroupHead {
        id: kits
        visible: ShopModel.count > 0
        width: parent.width
        text: qsTr("Kits for a class")
        summary: KitsModel.headSays
        open: root.open === "kits"
        onClicked: root.toggled("kits")
    }
    Item {
        visible: root.open === "kits"
        width: parent.width
        height: Theme.gap
    }
    Loader {
        active: root.open === "kits"
        visible: active
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        sourceComponent: KitsSheet {
            onAsk: (key, label, kind) => root.ask("kits", key, label, kind)
        }
    }
    Item {
        visible: root.open === "kits"
        width: parent.width
        height: Theme.gap
    }
    GroupHead {
        id: batting
        visible: BattingModel.known
        width: parent.width
        //: batting bought cut from the roll, or ready cut in packages
        text: qsTr("Batting: roll or package")
        summary: BattingModel.headSays
        open: root.open === "batting"
        onClicked: root.toggled("batting")
    }
    Item {
        visible: root.open === "batting"
        width: parent.width
        height: Theme.gap
    }
    Loader {
        active: root.open === "batting" && BattingModel.known
        visible: active
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        sourceComponent: BattingSheet {
            onAsk: (key, label, kind) => root.ask("batting", key, label, kind)
        }
    }
    Item {
        visible: root.open === "batting"
        width: parent.width
        height: Theme.gap
    }
    GroupHead {
        id: stock
        visible: ShopModel.count > 0
        width: parent.width
        text: qsTr("Cloth you have")
        summary: StockModel.headSays
        open: root.open === "stock"
        onClicked: root.toggled("stock")
    }
    Item {
        visible: root.open === "stock"
        width: parent.width
        height: Theme.gap
    }
    Loader {
        active: root.open === "stock"
        visible: active
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        sourceComponent: StockSheet {
            onAsk: (key, label, kind) => root.ask("stock", key, label, kind)
        }
    }
    Item {
        visible: root.open === "stock"
        width: parent.width
        height: Theme.gap
    }
    Item {
        width: parent.width
        height: Theme.margin
    }
}
