// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Cloth she has already: a piece is measured on the cutting table and added to the shelf under it; the cloths of the piece lie folded at its side. */
Item {
    id: root

    /** So much of the page is in sight at once. */
    property real room: 0

    signal ask(string key, string label, string kind, string text)

    readonly property bool beside: width > Theme.mm(118) && !Theme.small
    readonly property real own: beside ? width - stack.width - Theme.margin * 2 : width
    /** Which cloth it is a piece of. */
    readonly property var choice: StockModel.amounts[0] ?? ({})

    implicitHeight: Math.max(room, shelf.y + shelf.height, beside ? stack.y + stack.height : 0)
    height: implicitHeight

    StockPiece {
        id: piece
        x: root.beside && Theme.left ? root.width - width : 0
        width: root.own
        room: root.beside ? root.room - shelf.height - Theme.gap : Theme.small ? root.room - Theme.mm(4) : Math.min(Theme.mm(96), root.room - shelf.height - stack.height - 4 * Theme.gap - (piece.onWood ? 0 : Theme.control + Theme.gap))
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    StockStack {
        id: stack
        enabled: !Session.readOnly
        x: root.beside && !Theme.left ? root.width - width : 0
        // On a low page it is the next thing, whole.
        y: root.beside ? 0 : Math.max(piece.height + Theme.gap, Theme.small ? root.room + 2 * Theme.gap : 0)
        room: root.beside ? root.room : Math.ceil(stack.cloths.length / Math.max(1, Math.floor((root.width + Theme.gap) / Theme.mm(35)))) * Theme.control + Theme.mm(3)
        accessibleName: root.choice.says ?? ""
        cloths: root.choice.choices ?? []
        value: root.choice.value
        onChosen: value => StockModel.pick(value)
    }
    StockShelf {
        id: shelf
        x: piece.x
        y: (root.beside ? piece.height : stack.y + stack.height) + Theme.gap
        width: root.own
    }
}
