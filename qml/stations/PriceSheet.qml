// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The price as a strip of cloth cut into what it is made of; each part is taken in hand there, and it is cut anew in sight of the finger. */
Column {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(130)
    readonly property bool roomy: beside && !Theme.small
    /** The amount in hand. */
    property int held: 0

    readonly property string besidesSay: {
        const lines = [];
        for (let i = 0; i < PriceModel.besides.length; ++i)
            //: %1 is what is counted, %2 its amount
            lines.push(qsTr("%1: %2").arg(PriceModel.besides[i].says).arg(PriceModel.besides[i].value));
        return lines.join("\n");
    }

    readonly property var names: {
        const all = [];
        for (let i = 0; i < PriceModel.amounts.length; ++i)
            all.push(PriceModel.amounts[i].says);
        return all;
    }

    spacing: Theme.gap

    Item {
        width: parent.width
        height: strip.y + strip.height

        PriceStrip {
            id: strip
            y: root.beside ? 0 : inHand.height + Theme.gapTargets
            width: parent.width
            aside: root.beside ? Theme.mm(root.roomy ? 63 : 47) : 0
            asideDeep: (root.roomy ? Theme.gapTargets : Theme.gap) + inHand.height + (root.roomy ? Theme.gap + Math.max(said.height, 3 * Theme.capWord * 1.62) : 0)
            parts: PriceModel.parts
            tape: PriceModel.tape
            tag: PriceModel.tag
            priceSays: qsTr("the price")
            askedSays: PriceModel.amounts[tagAmount].says
            tagAmount: PriceModel.amounts.length - 1
            held: root.held
            accessibleName: qsTr("the price")
            onTaken: amount => root.held = amount
        }
        AmountInHand {
            id: inHand
            enabled: !Session.readOnly
            x: root.beside && !Theme.left ? parent.width - width : 0
            // The price itself comes first.
            y: root.beside ? strip.tagDeep + (root.roomy ? Theme.gapTargets : Theme.gap) : 0
            // Above the strip, where they do not stand side by side: longer amounts take more room there.
            width: root.beside ? strip.aside : parent.width
            amount: PriceModel.amounts[root.held] ?? null
            names: root.names
            onNudged: (key, steps) => PriceModel.nudge(key, steps)
            onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
        }
        Word {
            id: said
            visible: root.roomy
            x: inHand.x
            y: inHand.y + inHand.height + Theme.gap
            width: inHand.width
            text: PriceModel.unpaidSays !== "" ? PriceModel.unpaidSays : root.besidesSay
        }
    }
    Word {
        width: parent.width
        visible: !root.roomy && text !== ""
        bold: true
        text: PriceModel.unpaidSays
    }
    Word {
        width: parent.width
        visible: !root.roomy || PriceModel.unpaidSays !== ""
        text: root.besidesSay
    }
    Word {
        width: parent.width
        color: Theme.colors.inkSoft
        text: PriceModel.notesSay
    }
}
