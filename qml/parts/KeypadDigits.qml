// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import "unrolled.js" as Unrolled

/** The digits along a strip of tape, from 0 to 9, or along two of it; at their end what takes back and what clears. */
Item {
    id: root

    /** {columns, rows, apart}: as many keys in a row; `apart`: what takes back stands elsewhere. */
    property var lie: null
    property bool decimal: false

    signal typed(string character)
    signal rubbed()
    signal cleared()

    readonly property int columns: lie?.columns ?? 6
    readonly property int rows: lie?.rows ?? 2
    readonly property int perRow: columns === 12 ? 10 : 5
    readonly property int tapes: 10 / perRow
    readonly property real keyWidth: Math.max(Theme.step, Math.min(Theme.mm(22), (width - (columns - 1) * Theme.gap) / columns))
    readonly property real keyHeight: Math.max(Theme.step, Math.min(Theme.mm(18), (height - (rows - 1) * Theme.gap) / rows))

    function across(column: int): real {
        return column * (keyWidth + Theme.gap);
    }
    function down(row: int): real {
        return row * (keyHeight + Theme.gap);
    }

    Printed {
        readonly property real over: Theme.mm(1)
        readonly property var shows: [root.keyWidth, root.keyHeight, root.perRow, Theme.set]
        x: -Theme.mm(2)
        y: -over
        width: root.across(root.perRow) - Theme.gap + 2 * Theme.mm(2)
        height: root.down(root.tapes) - Theme.gap + 2 * over
        onShowsChanged: again()
        Accessible.ignored: true
        onPrinting: context => {
            for (let i = 0; i < root.tapes; ++i)
                Unrolled.strip(context, Theme.colors, {
                    y: root.down(i), w: width, high: root.keyHeight + 2 * over, first: i === 0, last: i === root.tapes - 1,
                    from: -x, key: root.keyWidth, gap: Theme.gap, keys: root.perRow
                }, Theme.pxPerMm);
        }
    }
    Repeater {
        model: 10
        KeypadKey {
            required property int index
            x: root.across(index % root.perRow)
            y: root.down(Math.floor(index / root.perRow))
            width: root.keyWidth
            height: root.keyHeight
            text: String(index)
            onClicked: root.typed(text)
        }
    }
    KeypadKey {
        visible: root.decimal
        y: root.down(2)
        width: root.keyWidth
        height: root.keyHeight
        text: Qt.locale().decimalPoint
        accessibleName: qsTr("decimal point")
        onClicked: root.typed(".")
    }
    KeypadRub {
        visible: !(root.lie?.apart ?? false)
        x: root.across(root.rows === 3 ? 3 : root.perRow)
        y: root.down(root.rows === 3 ? 2 : 0)
        width: root.keyWidth
        height: root.keyHeight
        onClicked: root.rubbed()
    }
    KeypadRub {
        visible: !(root.lie?.apart ?? false)
        all: true
        x: root.across(root.rows === 1 ? 11 : root.rows === 3 ? 4 : root.perRow)
        y: root.down(root.rows - 1)
        width: root.keyWidth
        height: root.keyHeight
        onClicked: root.cleared()
    }
}
