// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "matching.js" as Matching
import "tapes.js" as Tapes

/**
 * The long sashing between its rows, under a tape from the row's raw left end, with the match marks to draw on it:
 * each meets the middle of a short sashing. A row's own left and right are never mirrored.
 */
Fingertip {
    id: root

    /** [{figure, mm}] */
    property var marks: []
    property real lengthMm: 0
    property int at: 0
    /** As EdgeDrawing has it. */
    property var piece: null
    /** What is read on the tape. */
    property string says
    property string accessibleName

    signal scanned(int mark)

    readonly property real from: Theme.mm(9)
    readonly property real k: lengthMm > 0 ? (width - from - Theme.mm(6)) / lengthMm : 0
    readonly property bool low: height < Theme.mm(56)
    /** Above the tape there is room for the large figure of the mark in hand, whatever the height. */
    readonly property real tapeY: told.height + Theme.mm(low ? 17 : 20)
    readonly property real tape: Theme.mm(6)
    readonly property real sashing: Theme.mm(low ? 7 : 9)
    /** What is left for the rows; over little of it only the lower one is seen. */
    readonly property real spare: height - tapeY - tape - sashing - Theme.mm(3)
    readonly property bool both: spare > Theme.mm(13)
    readonly property real row: Math.max(0, Math.min(Theme.mm(17), both ? spare / 2 : spare))
    readonly property real upperY: tapeY + tape + Theme.mm(1)
    readonly property real sashingY: upperY + (both ? row : 0)

    pushed: true
    onStruck: at => root.scan(at.x)

    Accessible.role: Accessible.Slider
    Accessible.name: accessibleName

    function middle(lengthMm: real, w: real): real {
        return from + lengthMm * k - w / 2;
    }
    function scan(x: real) {
        let best = 0, least = Infinity;
        root.marks.forEach((mark, i) => {
            const away = Math.abs(root.from + mark.mm * root.k - x);
            if (away < least) {
                least = away;
                best = i;
            }
        });
        if (root.marks.length > 0 && best !== root.at)
            root.scanned(best);
    }

    PrintCanvas {
        anchors.fill: parent
        mirrored: false
        shows: [root.marks, root.k, root.piece, root.row, root.sashingY, root.tapeY]
        Accessible.ignored: true
        onPrinting: context => {
            if (!(root.k > 0))
                return;
            const c = DyedColors.forWork, u = unit, over = root.piece;
            const g = { x: root.from, span: root.lengthMm * root.k, marks: root.marks.map(mark => root.from + mark.mm * root.k),
                        sashing: (over?.sashingMm ?? 0) * root.k, outside: Math.min((over?.outsideMm ?? 0) * root.k, root.row / 3) };
            Tapes.lay(context, c, g.x, root.tapeY, 0, g.span, root.tape, 0, 1, false, u);
            if (root.both)
                Matching.row(context, c, g, root.upperY, root.row, true, u);
            Matching.sashing(context, c, g, root.sashingY, root.sashing, u);
            if (root.row > Theme.mm(3))
                Matching.row(context, c, g, root.sashingY + root.sashing, root.row, false, u);
        }
    }
    Word {
        id: told
        x: root.from
        y: Theme.mm(1)
        width: root.width - x - Theme.mm(3)
        color: Theme.colors.inkSoft
        text: root.says
        Accessible.ignored: true
    }
    Word {
        x: root.from - Theme.mm(2.6) - width
        y: root.tapeY + (root.tape - height) / 2
        bold: true
        text: "0"
    }
    Repeater {
        model: root.marks.length
        Item {
            id: mark
            required property int index
            readonly property var held: root.marks[index] ?? null
            readonly property bool now: index === root.at
            x: root.middle(held?.mm ?? 0, width)
            y: root.tapeY
            width: Theme.mm(now ? 1 : 0.5)
            height: root.tape
            Rectangle {
                anchors.fill: parent
                color: mark.now ? Theme.colors.accent : Theme.colors.ink
            }
            // The mark that is drawn on the sashing.
            Rectangle {
                y: root.sashingY - root.tapeY
                width: parent.width
                height: root.sashing
                color: mark.now ? Theme.colors.accent : Theme.colors.ink
            }
            FigureText {
                visible: mark.now || root.marks.length * Theme.mm(16) < root.width
                x: (mark.width - width) / 2
                y: -height - Theme.mm(mark.now ? 1.6 : 1)
                figure: mark.held?.figure ?? null
                cap: Theme.mm(mark.now ? (root.low ? 9 : 12) : 6.5)
                color: mark.now ? Theme.colors.accent : Theme.colors.ink
                showUnit: false
                showLean: mark.now
            }
        }
    }
    DragHandler {
        id: drag
        target: null
        dragThreshold: 2
        yAxis.enabled: false
        onActiveChanged: active ? Contacts.claim(root) : Contacts.release(root)
        onCentroidChanged: if (active && Contacts.holder === root) root.scan(centroid.position.x)
    }
}
