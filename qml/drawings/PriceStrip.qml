// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "pricing.js" as Pricing

/**
 * A price as a strip of cloth that hangs along a tape, cut into its parts to scale, each with a label at its side, and
 * the price as a tag tied where it ends. A touch on a label, the tag or the cloth takes that in hand.
 */
Item {
    id: root

    /** [{key, says, value, from, share, amount}]; the cloth's has `cloths` [{print, from, share}] too. */
    property var parts: []
    /** [{share, says}] */
    property var tape: []
    /** {value, asked, share} */
    property var tag: null
    /** On the tag: what it tells while nothing else is asked, and then. */
    property string priceSays
    property string askedSays
    readonly property string tagSays: tag?.asked ? askedSays : priceSays
    /** The amount the tag is taken in hand for. */
    property int tagAmount: -1
    /** The amount in hand. */
    property int held: -1
    /** So much room at the side is another's, but for the tag at its head; 0 where the tag hangs under the strip. */
    property real aside: 0
    /** How high that is, the tag left out. */
    property real asideDeep: 0
    property string accessibleName

    signal taken(int amount)

    readonly property bool beside: aside > 0
    readonly property real gap: beside ? Theme.mm(Theme.small ? 3 : 8) : Theme.mm(5)
    readonly property real clothDeep: Theme.mm(!beside ? 15 : Theme.small ? 11 : 22)
    readonly property real tapeDeep: Theme.mm(3) + Math.max(Theme.mm(7), widestMark)
    readonly property real leads: Theme.mm(!beside ? 6 : Theme.small ? 4 : 8)
    /** The outer edge of the tape, from the labels' side. */
    readonly property real edge: width - aside - gap
    readonly property real labels: edge - tapeDeep - clothDeep - leads
    /** The tag and where its eye is; from the labels' side as all here. */
    readonly property real tagWide: beside ? aside : Math.min(width, Theme.mm(66))
    readonly property real tagDeep: Theme.mm(!Theme.small ? 24 : beside ? 18.6 : 20)
    readonly property real tagTop: beside ? 0 : run + Theme.mm(7)

    readonly property bool stacked: !fits
    readonly property real least: Theme.small ? Theme.control : Theme.mm(15)
    readonly property real between: Theme.mm(Theme.small ? 3.1 : 4)
    readonly property real rows: topOf(parts.length) - between
    readonly property real run: beside ? Math.max(rows, asideDeep + tagDeep + Theme.gap + Theme.mm(1)) : rows

    property bool fits: true
    /** How high each label is. */
    property var deeps: []
    property real valueRoom: 0
    property real widestMark: 0

    /** Mirrored for the left hand: `x` of what lies `at` from the labels' side. */
    function side(at: real, wide: real): real {
        return Theme.left ? width - at - wide : at;
    }
    function deepOf(i: int): real {
        return deeps[i] ?? least;
    }
    function topOf(i: int): real {
        let at = 0;
        for (let k = 0; k < i; ++k)
            at += deepOf(k) + (k === 0 ? between * 0.7 : between);
        return at;
    }
    function middle(i: int): real {
        return topOf(i) + deepOf(i) / 2;
    }
    /** Room for each label's words and for the widest amount. */
    function measure() {
        const all = [];
        let wide = 0, whole = true;
        for (let i = 0; i < plates.count; ++i) {
            const plate = plates.itemAt(i) as AmountPlate;
            if (!plate)
                continue;
            // What is only told is no target, and may be low.
            all.push(plate.told ? Math.max(Theme.mm(Theme.small ? 7 : 10), plate.wanted - Theme.mm(2)) : Math.max(least, plate.wanted));
            wide = Math.max(wide, plate.valueWidth);
            whole = whole && (plate.stacked || plate.whole);
        }
        valueRoom = wide;
        deeps = all;
        if (!whole)
            fits = false;
    }

    onWidthChanged: {
        fits = true;
        later.restart();
    }
    Timer {
        id: later
        interval: 0 // once all of it was told
        onTriggered: root.measure()
    }
    function measureMarks() {
        let wide = 0;
        for (let i = 0; i < marks.count; ++i)
            wide = Math.max(wide, marks.itemAt(i)?.implicitWidth ?? 0);
        widestMark = wide;
    }

    implicitHeight: beside ? run : run + Theme.mm(7) + tagDeep
    height: implicitHeight

    Accessible.role: Accessible.Grouping
    Accessible.name: accessibleName

    // A clear edge all round: painted between two pixels a line at one edge would show again at the other.
    PrintCanvas {
        id: sheet
        readonly property real clear: Math.ceil(Theme.mm(0.4))
        y: -clear
        width: parent.width
        height: Math.ceil(parent.height) + 2 * clear
        shows: [root.parts, root.tape, root.tag, root.held, root.edge, root.run, root.deeps, root.tapeDeep, root.tagTop, tagPress.solid]
        Accessible.ignored: true
        onPrinting: context => {
            const c = Theme.colors, line = Theme.key / 2;
            context.translate(0, sheet.clear);
            context.save();
            // Along the strip is down, across it from the tape's outer edge to the labels.
            context.translate(root.edge, line);
            context.rotate(Math.PI / 2);
            Pricing.paint(context, c, root.parts, root.tape, root.parts.map((part, i) => root.middle(i)),
                          { tape: root.tapeDeep, foot: root.tapeDeep + root.clothDeep, end: root.edge - root.labels },
                          root.run - Theme.key, root.held, root.tag?.share ?? 1, unit);
            context.restore();
            Pricing.tag(context, c, { x: root.beside ? root.width - root.tagWide : root.edge - root.tagWide, y: root.tagTop, w: root.tagWide - line, h: root.tagDeep - line, eyeLast: !root.beside },
                        root.edge, root.edge - root.tapeDeep - root.clothDeep, (root.tag?.share ?? 1) * (root.run - Theme.key), tagPress.solid, unit);
        }
    }
    Repeater {
        id: marks
        model: root.tape
        Word {
            required property var modelData
            readonly property real at: modelData.share * root.run
            x: root.side(root.edge - Theme.mm(1) - width, width)
            y: at + Theme.mm(0.2)
            visible: text !== "" && at + height < root.run
            text: modelData.says
            wrapMode: Text.NoWrap
            onImplicitWidthChanged: root.measureMarks()
            Component.onCompleted: root.measureMarks()
            Accessible.ignored: true
        }
    }
    // A finger on the cloth itself takes the nearest part in hand; what is spoken are the labels.
    Fingertip {
        x: root.side(root.edge - root.tapeDeep - root.clothDeep, width)
        width: root.tapeDeep + root.clothDeep
        height: root.run
        pushed: true
        onStruck: at => {
            if (contact > Theme.mm(30))
                return;
            const amount = Pricing.partAt(root.parts, at.y / root.run);
            if (amount >= 0)
                root.taken(amount);
        }
    }
    Repeater {
        id: plates
        model: root.parts.length
        AmountPlate {
            required property int index
            readonly property var part: root.parts[index] ?? null
            x: root.side(0, width)
            y: root.topOf(index)
            width: root.labels
            height: root.deepOf(index)
            says: part?.says ?? ""
            value: part?.value ?? ""
            valueRoom: root.valueRoom
            stacked: root.stacked
            told: (part?.amount ?? -1) < 0
            bare: !((part?.share ?? 0) > 0)
            inHand: !told && part?.amount === root.held
            onClicked: root.taken(part.amount)
            onWantedChanged: later.restart()
            onWholeChanged: later.restart()
            onValueWidthChanged: later.restart()
        }
    }
    Pressable {
        id: tagPress
        readonly property bool solid: (root.held === root.tagAmount) !== pressed
        x: root.side(root.beside ? root.width - root.tagWide : root.edge - root.tagWide, width)
        y: root.tagTop
        width: root.tagWide
        height: root.tagDeep
        inList: true
        accessibleName: root.tagSays + ": " + (root.tag?.value ?? "")
        Accessible.role: Accessible.RadioButton
        Accessible.checkable: true
        Accessible.checked: root.held === root.tagAmount
        onClicked: root.taken(root.tagAmount)

        Column {
            // Beside the eye, which is at the end of the strip.
            readonly property bool eyeLeft: root.beside !== Theme.left
            x: eyeLeft ? Theme.mm(12) : Theme.mm(3)
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - Theme.mm(15)
            spacing: Theme.mm(0.8)
            FigureText {
                figure: ({ whole: root.tag?.value ?? "", text: root.tag?.value ?? "" })
                cap: Theme.small ? Theme.capThird : Theme.mm(10)
                availableWidth: parent.width
                color: tagPress.solid ? Theme.colors.raised : Theme.colors.ink
                accessibleIgnored: true
            }
            Word {
                width: parent.width
                bold: true
                text: root.tagSays
                color: tagPress.solid ? Theme.colors.raised : Theme.colors.ink
                Accessible.ignored: true
            }
        }
        FocusOutline { visible: tagPress.keyboardFocus }
    }
}
