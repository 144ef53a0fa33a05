// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * What is wanted, as it would lie: the table with the piece or the mats on it, or the smallest block in the largest.
 * What changes it stands under it, led to where it changes.
 */
Item {
    id: root

    /** "table", or "blocks". */
    property string about: "table"
    /** The side of the table whose measure was set last: "along", "across" or "". */
    property string marked

    signal ask(string key, string label, string kind, string text)

    readonly property var lie: drawing.lie
    /** The amounts that are set here, as WouldFit tells them. */
    readonly property var amounts: {
        const all = [];
        for (let i = 0; i < WouldFit.wishes.length; ++i) {
            const wish = WouldFit.wishes[i];
            if (wish.kind !== "choice" && ofBlocks(wish.key) === (about === "blocks"))
                all.push(wish);
        }
        // The sides' stands under the side, the ends' under the end; the sizes of the blocks before what washing takes.
        return about === "table" ? all.reverse() : all.slice(1).concat(all.slice(0, 1));
    }
    readonly property bool paired: amounts.length > 1 && (Theme.small ? reveals && width > Theme.mm(66) : width > Theme.mm(119))
    /** What shows of a table is set: the way to let the piece hang over stands with it. */
    readonly property bool reveals: amounts.length > 0 && amounts[0].key.startsWith("reveal")
    readonly property real each: paired ? Math.floor((width - 2 * Theme.margin - Theme.gapTargets) / 2) : width - 2 * Theme.margin
    property real tallest: 0

    function ofBlocks(key: string): bool {
        return key === "washing" || key === "least" || key === "most" || key === "blocks";
    }
    function amountOf(key: string): var {
        for (let i = 0; i < WouldFit.wishes.length; ++i)
            if (WouldFit.wishes[i].key === key)
                return WouldFit.wishes[i];
        return null;
    }
    function noteSide(key: string) {
        marked = key.endsWith("-along") ? "along" : key.endsWith("-across") ? "across" : "";
    }
    function measure() {
        let most = 0;
        for (let i = 0; i < setters.count; ++i)
            most = Math.max(most, setters.itemAt(i)?.implicitHeight ?? 0);
        tallest = most;
    }

    onVisibleChanged: if (!visible) marked = ""

    InlineLength {
        id: says
        // On a low page the figures are told where they are set.
        visible: !Theme.small || root.about === "table" && !root.reveals
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        bold: true
        text: qsTr("Wanted: %1").arg(WouldFit.wishSays)
    }
    TableDrawing {
        id: drawing
        visible: root.about === "table"
        y: says.visible ? says.y + says.implicitHeight : 0
        width: root.width
        height: Math.max(1, under.y - y - Theme.mm(2))
        view: WouldFit.wantedView
        mats: WouldFit.wantedMats
        toCome: true
        // A low page has the figures only where they are set.
        figured: !Theme.small
        marked: root.marked
        accessibleName: WouldFit.wishSays.replace(/[{}]/g, "")
    }
    BlockSpan {
        visible: root.about === "blocks"
        x: Theme.margin
        y: drawing.y + Theme.gap
        width: root.width - 2 * Theme.margin
        height: Math.max(1, under.y - y - Theme.gap)
        least: root.amountOf("least")?.figure?.mm ?? 0
        most: root.amountOf("most")?.figure?.mm ?? 0
        accessibleName: (root.amountOf("least")?.figure?.text ?? "") + " – " + (root.amountOf("most")?.figure?.text ?? "")
    }
    Item {
        id: under
        readonly property int across: root.paired ? 2 : 1
        readonly property int lines: Math.ceil(root.amounts.length / across)
        x: Theme.margin
        y: root.height - height - Theme.gap
        width: parent.width - 2 * Theme.margin
        height: lines * root.tallest + Math.max(0, lines - 1) * Theme.mm(2)

        Repeater {
            id: setters
            // By number: a step that was just pressed is not made anew by what it changed.
            model: root.amounts.length
            WishSetter {
                required property int index
                readonly property int place: Theme.left ? under.across - 1 - index % under.across : index % under.across
                x: place * (root.each + Theme.gapTargets)
                y: Math.floor(index / under.across) * (root.tallest + Theme.mm(2))
                width: root.each
                height: root.tallest
                wish: root.amounts[index] ?? ({})
                onImplicitHeightChanged: root.measure()
                Component.onCompleted: root.measure()
                onNudged: (key, steps) => {
                    root.noteSide(key);
                    WouldFit.nudge(key, steps);
                }
                onPicked: (key, value) => {
                    root.noteSide(key);
                    WouldFit.pick(key, value);
                }
                onAsk: (key, label, kind, text) => {
                    root.noteSide(key);
                    root.ask(key, label, kind, text);
                }
            }
        }
    }
    // Led to the bare wood at the side, and at the end.
    Repeater {
        // Always there: one that went while the rows above are laid out would take the program with it.
        model: 2
        Item {
            id: lead
            required property int index
            visible: root.about === "table" && root.lie !== null && WouldFit.wantedMats.length === 0 && root.paired
            readonly property var piece: root.lie?.piece ?? ({ x: 0, y: 0, w: 0, h: 0 })
            readonly property var table: root.lie?.table ?? piece
            readonly property bool ends: index === 1
            readonly property real foot: under.y - Theme.mm(1)
            readonly property real goalX: ends ? (table.x + table.w + piece.x + piece.w) / 2 : Theme.margin + root.each * 0.5
            readonly property real goalY: drawing.y + (ends ? table.y + table.h * 0.72 : (table.y + table.h + piece.y + piece.h) / 2)
            x: Theme.left ? root.width - goalX : goalX
            Rectangle {
                x: -width / 2
                y: lead.goalY
                width: Theme.key
                height: Math.max(0, lead.foot - y)
                color: Theme.colors.accent
            }
            Rectangle {
                x: -width / 2
                y: lead.goalY - height / 2
                width: Theme.mm(2.6)
                height: width
                radius: width / 2
                color: Theme.colors.raised
                border.color: Theme.colors.accent
                border.width: Theme.keyBold
            }
        }
    }
}
