// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "pricing.js" as Pricing

/** A price as one strip of cloth beside a tape, cut into its parts to scale, each with its name and amount. It never lies mirrored: a tape is read from its left. */
Item {
    id: root

    /** [{key, says, value, from, share}]; the cloth's has `cloths` [{print, from, share}] too. */
    property var parts: []
    /** [{share, says}] */
    property var tape: []
    property string totalSays
    property string total

    readonly property bool upright: width < Theme.mm(150)
    readonly property real tapeDeep: Theme.mm(upright ? 15 : 8.4)
    readonly property real clothDeep: Theme.mm(15)
    readonly property real foot: tapeDeep + clothDeep
    readonly property real end: foot + Theme.mm(6)
    readonly property real run: upright ? labels.height : width - Theme.key
    readonly property real line: Theme.capWord * 1.62
    /** As much room as each label has: below the strip, or beside it one under the other. */
    readonly property real pitch: upright ? 3 * line + Theme.mm(4) : labels.width / Math.max(1, parts.length)
    /** Where each label lies along the strip, {at, width}: at its part, as far as its neighbours let it. */
    property var lies: []

    function place() {
        const all = [];
        for (let i = 0; i < cells.count; ++i) {
            const cell = cells.itemAt(i);
            if (cell?.part)
                all.push({ at: cell.part.from * run, least: cell.least, whole: cell.whole, most: Math.max(cell.whole, cell.wanted) });
        }
        // Each has room for its amount; what is left over goes to words that would be broken, then to long names.
        const sumOf = key => all.reduce((sum, label) => sum + label[key], 0);
        const [low, high] = sumOf("whole") > labels.width ? ["least", "whole"] : ["whole", "most"];
        const most = sumOf(high), least = sumOf(low);
        const given = most > least ? Math.max(0, Math.min(1, (labels.width - least) / (most - least))) : 0;
        let from = 0;
        const laid = all.map((label, i) => {
            if (upright)
                return { at: i * pitch, width: labels.width };
            const lie = { at: Math.max(from, label.at), width: label[low] + given * (label[high] - label[low]) };
            from = lie.at + lie.width;
            return lie;
        });
        for (let i = laid.length - 1, to = labels.width; i >= 0 && !upright; to = laid[i].at, --i)
            laid[i].at = Math.max(0, Math.min(laid[i].at, to - laid[i].width));
        lies = laid;
    }

    Timer {
        id: later
        interval: 0 // once all of it was told
        onTriggered: root.place()
    }
    onPartsChanged: later.restart()
    onPitchChanged: later.restart()
    onUprightChanged: later.restart()
    onRunChanged: later.restart()

    implicitHeight: upright ? labels.height + Theme.gap + sum.height : end + Theme.mm(1) + Math.max(labels.height, sum.height)
    height: implicitHeight

    PrintCanvas {
        width: root.upright ? root.end + Theme.mm(1) : root.width
        height: root.upright ? root.run + Theme.key : root.end + Theme.mm(1)
        mirrored: false
        shows: [root.parts, root.tape, root.lies, root.run]
        Accessible.ignored: true
        onPrinting: context => {
            context.translate(Theme.key / 2, Theme.key / 2);
            if (root.upright)
                context.transform(0, 1, 1, 0, 0, 0);
            const places = root.parts.map((part, i) => (root.lies[i]?.at ?? 0) + Theme.mm(root.upright ? 4 : 1.2));
            Pricing.paint(context, Theme.colors, root.parts, root.tape, places,
                          { tape: root.tapeDeep, foot: root.foot, end: root.end }, root.run - Theme.key, unit);
        }
    }
    Repeater {
        model: root.tape
        Word {
            required property var modelData
            readonly property real at: modelData.share * root.run
            // The figure at the very end keeps inside the tape.
            x: root.upright ? Theme.mm(1) : Math.min(at + Theme.mm(0.8), root.width - width)
            y: root.upright ? Math.min(at + Theme.mm(0.4), root.run - height) : Theme.mm(0.4)
            visible: modelData.says !== "" && at + (root.upright ? height : width) < root.run
            text: modelData.says
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Item {
        id: labels
        x: root.upright ? root.end + Theme.mm(2) : 0
        y: root.upright ? 0 : root.end + Theme.mm(1)
        width: root.width - x - (root.upright ? 0 : sum.width + Theme.margin)
        height: root.upright ? root.pitch * root.parts.length : childrenRect.height
        Repeater {
            id: cells
            model: root.parts.length
            Item {
                id: label
                required property int index
                readonly property var part: root.parts[index] ?? null
                readonly property real least: value.implicitWidth + air
                /** Breaks no word. */
                readonly property real whole: Math.max(value.implicitWidth, longest + 2) + air
                readonly property real longest: letters.font.pixelSize > 0 ? Math.max(0, ...says.text.split(" ").map(word => letters.advanceWidth(word))) : 0
                /** On one line, where there is room for it. */
                readonly property real wanted: says.implicitWidth + air
                readonly property real air: Theme.mm(2)
                x: root.upright ? 0 : root.lies[index]?.at ?? 0
                y: root.upright ? root.lies[index]?.at ?? 0 : 0
                width: root.lies[index]?.width ?? root.pitch
                height: root.upright ? root.pitch : says.y + says.height
                onLeastChanged: later.restart()
                onWholeChanged: later.restart()
                onWantedChanged: later.restart()

                Accessible.role: Accessible.StaticText
                //: spoken: %1 is a part of the price, %2 its amount
                Accessible.name: qsTr("%1: %2").arg(part?.says ?? "").arg(part?.value ?? "")

                FontMetrics {
                    id: letters
                    font: says.font
                }
                FigureText {
                    id: value
                    figure: ({ whole: label.part?.value ?? "", text: label.part?.value ?? "" })
                    cap: root.parts.length > 4 ? Theme.capHead : Theme.capInText
                    accessibleIgnored: true
                }
                Word {
                    id: says
                    y: value.implicitHeight + Theme.mm(1)
                    width: parent.width - label.air
                    text: label.part?.says ?? ""
                    Accessible.ignored: true
                }
            }
        }
    }
    Column {
        id: sum
        x: root.width - width
        y: root.upright ? labels.height + Theme.gap : root.end + Theme.mm(1)
        width: Theme.mm(48)
        spacing: Theme.mm(1)

        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("%1: %2").arg(root.totalSays).arg(root.total)

        FigureText {
            anchors.right: parent.right
            figure: ({ whole: root.total, text: root.total })
            cap: Theme.capSecond
            availableWidth: sum.width
            accessibleIgnored: true
        }
        DoubleRule { width: parent.width }
        Word {
            width: parent.width
            horizontalAlignment: Text.AlignRight
            bold: true
            text: root.totalSays
            Accessible.ignored: true
        }
    }
}
