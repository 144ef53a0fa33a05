// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The cutting table with the piece of cloth under two tapes: its corner is drawn out by the finger, its two sides are stepped where the tapes are read, and it is added from there. */
Item {
    id: root

    /** How high all of it may be. */
    property real room: 0

    signal ask(string key, string label, string kind, string text)

    readonly property var remnant: StockModel.remnant
    readonly property var length: StockModel.amounts[1] ?? null
    readonly property var breadth: StockModel.amounts[2] ?? null
    readonly property real tableX: breadth ? wide.width + Theme.gap : 0
    /** On a low page the steps lie one over the other beside the table, which has all the height. */
    readonly property bool stepsBeside: Theme.small && breadth !== null && width > Theme.mm(130)
    /** Room for the grip at the right of the longest cloth. */
    readonly property real grip: Theme.mm(10)
    /** The button stands on the wood beside the cloth where there is room, else under the table. */
    readonly property bool onWood: table.width - addWidth > Theme.mm(stepsBeside ? 44 : 52)
    readonly property real addWidth: Math.max(Theme.mm(Theme.small ? 30 : 38), add.leastWidth + Theme.mm(3), Math.min(Theme.mm(46), longest + Theme.mm(4)))
    /** No word of the cloth's name is broken. */
    readonly property real longest: letters.font.pixelSize > 0 ? Math.max(1, ...name.split(" ").map(word => letters.advanceWidth(word))) : 1
    /** What the cloth on the table is called. */
    readonly property string name: {
        const choices = StockModel.amounts[0]?.choices ?? [];
        for (let i = 0; i < choices.length; ++i)
            if (choices[i].value === StockModel.amounts[0].value)
                return choices[i].says;
        return "";
    }
    /** The cloth's name stands on the wood too, or over the table. */
    readonly property real over: onWood ? 0 : label.height + Theme.mm(1)
    readonly property real under: stepsBeside ? 0 : along.implicitHeight + Theme.mm(1.5)

    implicitHeight: Math.max(along.y + along.height, wide.y + wide.height, onWood ? 0 : add.y + add.height)
    height: implicitHeight

    FontMetrics {
        id: letters
        font: said.font
    }
    ClothFill {
        id: table
        x: root.tableX
        y: root.over
        width: parent.width - x
        height: Math.max(Theme.mm(31), root.stepsBeside ? wide.height + along.height + Theme.gap : wide.implicitHeight - root.under, root.room - root.under - root.over)
        role: "table"
    }
    DimensionSteps {
        id: wide
        visible: root.breadth !== null
        enabled: !Session.readOnly
        y: root.stepsBeside ? 0 : root.over + Math.max(0, (table.height - height) / 2)
        width: root.stepsBeside ? Theme.mm(64) : Math.min(Theme.mm(36), root.width * 0.36)
        height: implicitHeight
        upright: !root.stepsBeside
        amount: root.breadth ?? ({})
        onNudged: (key, steps) => StockModel.nudge(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    TapedCloth {
        id: cloth
        visible: root.length !== null
        x: table.x + Theme.mm(2)
        y: table.y + Theme.mm(4)
        width: Math.max(1, Math.min(table.width - Theme.mm(4) - (root.onWood ? root.addWidth + Theme.mm(4) : 0) - root.grip, height * 1.5))
        height: table.height - Theme.mm(6)
        clothRole: root.remnant.print ?? "front"
        colour: root.remnant.colour ?? ""
        lengthMm: root.remnant.lengthMm ?? 0
        widthMm: root.remnant.widthMm ?? 0
        roomLengthMm: root.remnant.roomLengthMm ?? 0
        roomWidthMm: root.remnant.roomWidthMm ?? 0
        inches: root.length?.figure?.unit === "in"
        accessibleName: ((root.remnant.lengthSays ?? "") + " × " + (root.remnant.widthSays ?? "")).replace(/[{}]/g, "")
    }
    CornerGrip {
        visible: root.length !== null
        enabled: visible && !Session.readOnly
        // The cloth grows up and to the right, for either hand; the grip stands beside the corner, not on the cloth.
        rising: true
        x: cloth.x + cloth.cornerX + cloth.lengthMm * cloth.k + Theme.mm(0.4)
        y: Math.max(table.y - Theme.mm(2), cloth.y + cloth.cornerY - cloth.widthMm * cloth.k - height / 2)
        accessibleName: qsTr("size of the cloth: drag, or use the arrow keys")

        property real fromLength: 0
        property real fromWidth: 0
        property real scaleThen: 1
        onStarted: {
            fromLength = cloth.lengthMm;
            fromWidth = cloth.widthMm;
            scaleThen = cloth.k;
        }
        onMoved: (dx, dy) => StockModel.dragTo(Math.max(0, fromLength + dx / scaleThen), Math.max(0, fromWidth - dy / scaleThen))
        onStepped: (along, across) => {
            if (along !== 0)
                StockModel.nudge("length", along);
            if (across !== 0)
                StockModel.nudge("width", across);
        }
    }
    DimensionSteps {
        id: along
        visible: root.length !== null
        enabled: !Session.readOnly
        x: root.stepsBeside ? 0 : table.x
        y: root.stepsBeside ? wide.height + Theme.gap : table.y + table.height + Theme.mm(1.5)
        width: root.stepsBeside ? wide.width : Math.min(table.width, Math.max(cloth.width, Theme.mm(86)))
        height: implicitHeight
        amount: root.length ?? ({})
        onNudged: (key, steps) => StockModel.nudge(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    Rectangle {
        id: label
        x: root.onWood ? add.x : table.x
        y: root.onWood ? Theme.mm(3) : 0
        width: root.onWood ? add.width : table.width
        height: said.implicitHeight + Theme.mm(2)
        color: Theme.colors.raised
        border.color: Theme.colors.ink
        border.width: Theme.keyThin
        Word {
            id: said
            x: Theme.mm(1.5)
            y: Theme.mm(1)
            width: parent.width - 2 * x
            bold: true
            text: root.name
        }
    }
    CutButton {
        id: add
        x: root.onWood ? cloth.x + cloth.width + root.grip + Theme.mm(2) : 0
        y: root.onWood ? Math.min(table.height - height - Theme.mm(3), label.y + label.height + Theme.gap) : Math.max(along.y + along.height, table.y + table.height) + Theme.gap
        width: root.onWood ? Math.min(Theme.mm(66), table.x + table.width - x - Theme.mm(3)) : parent.width
        height: Math.max(root.onWood ? Math.min(Theme.targetLeast, table.height - label.height - Theme.mm(9)) : Theme.control, Theme.control, contentHeight)
        enabled: StockModel.whyNot === "" && !Session.readOnly
        text: StockModel.addText
        reason: StockModel.whyNot
        onClicked: StockModel.add()
        Rectangle {
            z: -1
            visible: !add.enabled
            anchors.fill: parent
            color: Theme.colors.paper
        }
    }
}
