// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import "lengths.js" as Lengths

/**
 * A sentence with lengths in it: words quiet, lengths speak up. Lengths are written in braces,
 * "Lay the {7 1/4} line on the edge", or handed over in `parts`, a list of strings and figures.
 * Wraps between words at the width given; a length never parts from its punctuation, a size never at its "×". A line is
 * only as high as what stands on it.
 */
Item {
    id: root

    property string text
    property var parts: []
    property real cap: Theme.capWord
    property real lengthCap: Theme.capInText
    property bool bold: false
    /** A line's height to the capitals', where no length stands on it. */
    property real lineShare: 1.62
    property color color: Theme.colors.ink
    property color lengthColor: color
    property int horizontalAlignment: Text.AlignLeft

    readonly property var tokens: parts.length > 0 ? Lengths.tokensOf(parts) : Lengths.tokens(text)
    readonly property real space: Theme.fontSize(cap) * 0.3
    readonly property real plainLine: cap * lineShare
    property real laidHeight: 0
    property real naturalWidth: 0

    implicitWidth: naturalWidth
    implicitHeight: laidHeight

    Accessible.role: Accessible.StaticText
    Accessible.name: Lengths.spoken(parts.length > 0 ? parts.map(p => typeof p === "string" ? p : p.text ?? "").join(" ") : text)
    Accessible.ignored: tokens.length === 0

    onWidthChanged: lay()
    onSpaceChanged: lay()
    onHorizontalAlignmentChanged: lay()

    /** Sets the tokens in lines, each line centred on the middle of its words. */
    function lay() {
        const limit = width > 0 ? width + 0.5 : 1e9;
        const wide = at => repeater.itemAt(at)?.implicitWidth ?? 0;
        // What a token takes with the rest of its size: "18 × 12 in".
        const whole = at => {
            let most = wide(at);
            for (let k = at + 1; k + 1 < repeater.count && tokens[k]?.before === "×" && !tokens[k].figure; k += 2)
                most += 2 * space + wide(k) + wide(k + 1);
            return most <= limit ? most : wide(at);
        };
        let y = 0, natural = 0, line = [], used = 0;
        const flush = () => {
            const high = line.reduce((most, t) => Math.max(most, t.implicitHeight), plainLine);
            const slack = Math.max(0, width - used);
            let x = horizontalAlignment === Text.AlignRight ? slack : horizontalAlignment === Text.AlignHCenter ? slack / 2 : 0;
            for (const t of line) {
                t.x = x;
                t.y = y + (high - t.implicitHeight) / 2;
                x += t.implicitWidth + space;
            }
            y += high;
            line = [];
            used = 0;
        };
        for (let i = 0; i < repeater.count; ++i) {
            const t = repeater.itemAt(i);
            if (!t)
                continue;
            natural += (natural > 0 ? space : 0) + t.implicitWidth;
            if (line.length > 0 && used + space + whole(i) > limit)
                flush();
            used += (line.length > 0 ? space : 0) + t.implicitWidth;
            line.push(t);
        }
        if (line.length > 0)
            flush();
        laidHeight = y;
        naturalWidth = natural;
    }

    // As many items as tokens: where only words or figures change, as under a moving finger, none is made anew.
    Repeater {
        id: repeater
        model: root.tokens.length
        onCountChanged: root.lay()
        delegate: Item {
            id: token
            required property int index
            readonly property var modelData: root.tokens[index] ?? null
            readonly property var figure: modelData?.figure ?? null
            /** The length and what follows it, if there is one: most tokens are words alone. */
            property Item set: null
            property bool laid: false

            implicitWidth: before.advance + (set?.implicitWidth ?? 0)
            implicitHeight: Math.max(root.plainLine, set ? set.implicitHeight + Theme.mm(0.9) : 0)
            onImplicitWidthChanged: if (laid) root.lay()
            onImplicitHeightChanged: if (laid) root.lay()
            // All are laid once they are there; after that each for itself.
            Component.onCompleted: laid = true

            Word {
                id: before
                readonly property real advance: text === "" ? 0 : implicitWidth
                y: token.height / 2 + cap / 2 - baselineOffset
                text: token.modelData?.before ?? ""
                cap: root.cap
                bold: root.bold
                color: root.color
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            Repeater {
                model: token.figure !== null ? 1 : 0
                delegate: Item {
                    id: figureSet
                    x: before.advance
                    implicitWidth: length.implicitWidth + after.advance
                    implicitHeight: length.implicitHeight
                    Component.onCompleted: token.set = figureSet
                    Component.onDestruction: token.set = null

                    FigureText {
                        id: length
                        y: token.height / 2 - capTop - cap / 2
                        figure: token.figure
                        cap: root.lengthCap
                        color: root.lengthColor
                        accessibleIgnored: true
                    }
                    Word {
                        id: after
                        readonly property real advance: text === "" ? 0 : implicitWidth
                        x: length.implicitWidth
                        // It stands on the length's line, so that a full stop is one.
                        y: length.y + length.footLine - baselineOffset
                        text: token.modelData?.after ?? ""
                        cap: root.cap
                        bold: root.bold
                        color: root.color
                        wrapMode: Text.NoWrap
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
}
