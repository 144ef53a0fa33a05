// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import "lengths.js" as Lengths

/**
 * A sentence with lengths in it: words quiet, lengths speak up. Lengths are written in braces,
 * "Lay the {7 1/4} line on the edge", or handed over in `parts`, a list of strings and figures.
 * Wraps between words at the width given; a length never parts from its punctuation. A line is
 * only as high as what stands on it.
 */
Item {
    id: root

    property string text
    property var parts: []
    property real cap: Theme.capWord
    property real lengthCap: Theme.capInText
    property bool bold: false
    property color color: Theme.colors.ink
    property color lengthColor: color
    property int horizontalAlignment: Text.AlignLeft

    readonly property var tokens: parts.length > 0 ? Lengths.tokensOf(parts) : Lengths.tokens(text)
    readonly property real space: Theme.fontSize(cap) * 0.3
    readonly property real plainLine: cap * 1.62
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
            if (line.length > 0 && used + space + t.implicitWidth > limit)
                flush();
            used += (line.length > 0 ? space : 0) + t.implicitWidth;
            line.push(t);
        }
        if (line.length > 0)
            flush();
        laidHeight = y;
        naturalWidth = natural;
    }

    Repeater {
        id: repeater
        model: root.tokens
        onCountChanged: root.lay()
        delegate: Item {
            id: token
            required property var modelData
            readonly property var figure: modelData.figure

            implicitWidth: before.advance + (figure ? length.implicitWidth : 0) + after.advance
            implicitHeight: Math.max(root.plainLine, figure ? length.implicitHeight + Theme.mm(0.9) : 0)
            onImplicitWidthChanged: root.lay()
            onImplicitHeightChanged: root.lay()
            Component.onCompleted: root.lay()

            Word {
                id: before
                readonly property real advance: text === "" ? 0 : implicitWidth
                y: token.height / 2 + cap / 2 - baselineOffset
                text: token.modelData.before
                cap: root.cap
                bold: root.bold
                color: root.color
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            FigureText {
                id: length
                x: before.advance
                y: token.height / 2 - capTop - cap / 2
                visible: token.figure !== null
                figure: token.figure
                cap: root.lengthCap
                color: root.lengthColor
                accessibleIgnored: true
            }
            Word {
                id: after
                readonly property real advance: text === "" ? 0 : implicitWidth
                x: before.advance + (token.figure ? length.implicitWidth : 0)
                // What follows a length stands on its line, so that a full stop is one.
                y: token.figure ? length.y + length.footLine - baselineOffset : token.height / 2 + cap / 2 - baselineOffset
                text: token.modelData.after
                cap: root.cap
                bold: root.bold
                color: root.color
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
}
