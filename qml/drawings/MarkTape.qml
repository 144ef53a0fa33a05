// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** The long sashing as a tape from the row's raw left end, with the match marks to draw on it. */
Fingertip {
    id: root

    /** [{figure, mm}] */
    property var marks: []
    property real lengthMm: 0
    property int at: 0
    property string accessibleName

    signal scanned(int mark)

    readonly property real from: Theme.mm(10)
    readonly property real k: lengthMm > 0 ? (width - from - Theme.mm(6)) / lengthMm : 0
    /** Above the tape there is room for the large figure of the mark in hand, whatever the height. */
    readonly property real tapeY: Math.max(height * 0.52, Theme.mm(21))

    pushed: true
    onStruck: at => root.scan(at.x)

    Accessible.role: Accessible.Slider
    Accessible.name: accessibleName

    function middle(lengthMm: real, w: real): real {
        const x = from + lengthMm * k;
        return (Theme.left ? width - x : x) - w / 2;
    }
    function scan(x: real) {
        let best = 0, least = Infinity;
        root.marks.forEach((mark, i) => {
            const away = Math.abs(root.from + mark.mm * root.k - (Theme.left ? root.width - x : x));
            if (away < least) {
                least = away;
                best = i;
            }
        });
        if (root.marks.length > 0 && best !== root.at)
            root.scanned(best);
    }

    Rectangle {
        x: Theme.left ? parent.width - root.from - width : root.from
        y: root.tapeY
        width: root.lengthMm * root.k
        height: Theme.mm(14)
        color: Theme.colors.sashing
        border.color: Theme.colors.ink
        border.width: Theme.key
    }
    Rectangle {
        x: Theme.left ? parent.width - root.from : root.from - width
        y: root.tapeY - Theme.mm(0.6)
        width: Theme.mm(3)
        height: Theme.mm(15.2)
        color: Theme.colors.ink
    }
    Word {
        x: Theme.left ? parent.width - root.from + Theme.mm(4) : root.from - Theme.mm(4) - width
        y: root.tapeY + Theme.mm(7) - height / 2
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
            height: Theme.mm(14)
            Rectangle {
                anchors.fill: parent
                color: mark.now ? Theme.colors.accent : Theme.colors.ink
            }
            FigureText {
                visible: mark.now || root.marks.length * Theme.mm(16) < root.width
                x: (mark.width - width) / 2
                y: -height - Theme.mm(mark.now ? 3 : 2)
                figure: mark.held?.figure ?? null
                cap: mark.now ? Theme.mm(12) : Theme.capInText
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
