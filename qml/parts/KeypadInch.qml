// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import "unrolled.js" as Unrolled

/**
 * One inch of tape, magnified, with her ruler's marks on it and a key at each: the finest below, the others above.
 * Where it is too long it lies in two halves below each other.
 */
Item {
    id: root

    /** List of {num, den, text}, in their order. */
    property var marks: []
    /** {lines, last}: how many lines it lies in and the last mark of a line. */
    property var lie: null
    /** The fraction now in the entry. */
    property string num
    property string den

    signal picked(var mark)

    readonly property int lines: Math.max(1, lie?.lines ?? 1)
    readonly property int last: Math.max(1, lie?.last ?? 1)
    readonly property real keyWidth: Math.max(Theme.step, Math.min(Theme.mm(18), (2 * width - Theme.gap * (last - 1)) / (last + 1)))
    /** From mark to mark. */
    readonly property real pitch: (keyWidth + Theme.gap) / 2
    readonly property real line: (height - (lines - 1) * Theme.gap) / lines
    readonly property real keyHeight: Math.max(Theme.step, Math.min(Theme.mm(16), (line - Theme.mm(5)) / 2))
    readonly property real tape: Math.max(0, line - 2 * keyHeight)
    /** Which mark is in the entry, from 1; 0 for none. */
    readonly property int at: num === "" ? 0 : marks.findIndex(mark => String(mark.num) === num && String(mark.den) === den) + 1

    Printed {
        // The tape's ends reach into the margins.
        x: -Theme.mm(1.6)
        y: -Theme.mm(1)
        width: root.width + Theme.mm(3.2)
        height: root.height + Theme.mm(2)
        readonly property var shows: [root.marks, root.lie, root.at, root.keyHeight, root.tape, root.pitch, Theme.set]
        onShowsChanged: again()
        Accessible.ignored: true
        onPrinting: context => {
            context.translate(-x, -y);
            for (let i = 0; i < root.lines; ++i)
                Unrolled.inch(context, Theme.colors, {
                    from: i * root.last, to: i < root.lines - 1 ? root.last : root.marks.length + 1 - i * root.last,
                    y: i * (root.line + Theme.gap) + root.keyHeight, high: root.tape, pitch: root.pitch,
                    shift: -Theme.gap / 2, marks: root.marks, at: root.at
                }, Theme.pxPerMm);
        }
    }
    Repeater {
        model: root.marks.length
        KeypadKey {
            required property int index
            readonly property int place: index + 1
            readonly property int row: root.lines > 1 && place > root.last ? 1 : 0
            width: root.keyWidth
            height: root.keyHeight
            x: (place - row * root.last) * root.pitch - width / 2 - Theme.gap / 2
            y: row * (root.line + Theme.gap) + (place % 2 === 1 ? root.line - height : 0)
            mark: root.marks[index] ?? null
            chosen: root.at === place
            onClicked: root.picked(mark)
        }
    }
}
