// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import "lengths.js" as Lengths

/**
 * A sentence with lengths in it: words quiet, lengths speak up. Lengths are written in braces,
 * "Lay the {7 1/4} line on the edge", or handed over in `parts`, a list of strings and figures.
 * Wraps between words at the width given; a length never parts from its punctuation.
 */
Flow {
    id: root

    property string text
    property var parts: []
    property real cap: Theme.capWord
    property real lengthCap: Theme.capInText
    property bool bold: false
    property color color: Theme.colors.ink
    property color lengthColor: color

    readonly property var tokens: parts.length > 0 ? Lengths.tokensOf(parts) : Lengths.tokens(text)
    readonly property bool anyLength: tokens.some(t => t.figure !== null)
    readonly property bool anyFraction: tokens.some(t => t.figure !== null && (t.figure.num ?? "") !== "")
    readonly property real lineHeight: anyFraction ? Math.max(2.34 * Theme.capNumeralLeast, lengthCap * 1.5) + Theme.mm(0.6)
                                     : anyLength ? lengthCap * 1.36 : Theme.fontSize(cap) * 1.2

    spacing: Theme.fontSize(cap) * 0.3

    Accessible.role: Accessible.StaticText
    Accessible.name: Lengths.spoken(parts.length > 0 ? parts.map(p => typeof p === "string" ? p : p.text ?? "").join(" ") : text)
    Accessible.ignored: tokens.length === 0

    Repeater {
        model: root.tokens
        delegate: Item {
            id: token
            required property var modelData
            readonly property var figure: modelData.figure

            implicitWidth: before.advance + (figure ? length.implicitWidth : 0) + after.advance
            implicitHeight: root.lineHeight

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
                y: token.height / 2 + cap / 2 - baselineOffset
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
