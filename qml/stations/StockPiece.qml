// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The piece of cloth being entered as it lies under the tape, its two measures set where they are read, and the button that adds it. */
Item {
    id: root

    signal ask(string key, string label, string kind, string text)

    readonly property var remnant: StockModel.remnant
    readonly property var length: StockModel.amounts[1] ?? null
    readonly property var breadth: StockModel.amounts[2] ?? null

    implicitHeight: add.y + add.height
    height: implicitHeight

    DimensionSteps {
        id: breadth
        visible: root.breadth !== null
        enabled: !Session.readOnly
        width: Math.min(Theme.mm(34), root.width * 0.36)
        height: Math.max(implicitHeight, cloth.height - cloth.deep)
        upright: true
        amount: root.breadth ?? ({})
        onNudged: (key, steps) => StockModel.nudge(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    TapedCloth {
        id: cloth
        visible: root.length !== null
        x: breadth.width + Theme.mm(1)
        width: parent.width - x
        height: Math.max(Theme.mm(56), breadth.implicitHeight + deep)
        clothRole: root.remnant.print ?? "front"
        colour: root.remnant.colour ?? ""
        lengthMm: root.remnant.lengthMm ?? 0
        widthMm: root.remnant.widthMm ?? 0
        roomLengthMm: root.remnant.roomLengthMm ?? 0
        roomWidthMm: root.remnant.roomWidthMm ?? 0
        inches: root.length?.figure?.unit === "in"
        accessibleName: ((root.remnant.lengthSays ?? "") + " × " + (root.remnant.widthSays ?? "")).replace(/[{}]/g, "")
    }
    DimensionSteps {
        id: along
        visible: root.length !== null
        enabled: !Session.readOnly
        x: Math.min(cloth.x, parent.width - width)
        y: cloth.height + Theme.mm(1.5)
        width: Math.min(parent.width, Math.max(parent.width - cloth.x, Theme.mm(76)))
        height: implicitHeight
        amount: root.length ?? ({})
        onNudged: (key, steps) => StockModel.nudge(key, steps)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    CutButton {
        id: add
        y: along.y + along.height + Theme.gap
        width: parent.width
        height: Math.max(Theme.control, contentHeight)
        enabled: StockModel.whyNot === "" && !Session.readOnly
        text: StockModel.addText
        reason: StockModel.whyNot
        onClicked: StockModel.add()
    }
}
