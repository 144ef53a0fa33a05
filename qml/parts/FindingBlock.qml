// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/**
 * What a measure says: verdict and remedy, printed solid with a pinked lower edge. The verdict is read standing
 * up, from 1 m: never under 22 minutes of arc there. Lengths in braces are set stacked, and never broken.
 */
Item {
    id: root

    property string head
    property string verdict
    property string remedy
    property var figure: null
    /** The largest the verdict is set, and the least. */
    property real mostCap: Theme.capSecond
    property real leastCap: Theme.capInText
    /** The same of the remedy, where it is longer than a word or two. */
    property real mostRemedyCap: Theme.small ? Theme.capWord : Theme.capHead

    readonly property string verdictShown: whole(verdict)
    readonly property string remedyShown: whole(remedy)
    readonly property real tooth: Theme.mm(3.4)
    readonly property real figureWidth: figure !== null ? length.implicitWidth + Theme.gap : 0

    implicitWidth: Theme.column
    implicitHeight: words.y + words.height + Theme.mm(3.5) + tooth / 2

    Accessible.role: Accessible.AlertMessage
    Accessible.name: [head, verdictShown, figure ? figure.text ?? "" : "", remedyShown].filter(t => t !== "").join(". ")

    // As large as its longest word and two lines allow, a hair less, so that no word is ever broken.
    readonly property real verdictCap: Math.max(root.leastCap, Math.min(root.mostCap,
                                                Theme.capSecond * 0.96 * words.width / Math.max(1, longest),
                                                Theme.capSecond * 1.7 * words.width / Math.max(1, inOneLine)))
    readonly property real remedyCap: remedy.length <= 12 ? Math.min(Theme.capThird, verdictCap) : mostRemedyCap
    // Measured anew once the lettering is set: asking alone does not wait for it.
    readonly property real longest: metrics.font.pixelSize <= 0 ? 1 : Math.max(...verdictShown.split(" ").map(word => metrics.advanceWidth(word)))
    readonly property real inOneLine: metrics.font.pixelSize <= 0 ? 1 : metrics.advanceWidth(verdictShown)

    function whole(text: string): string {
        return text.replace(/\{[^}]*\}/g, length => length.replace(/(\d) /g, "$1\u00a0")).replace(/[{}]/g, "");
    }

    FontMetrics {
        id: metrics
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(Theme.capSecond)
    }

    function pinked(w: real, h: real, tooth: real): var {
        const count = Math.max(1, Math.round(w / tooth)), step = w / count;
        const points = [Qt.point(0, 0), Qt.point(w, 0), Qt.point(w, h - tooth / 2)];
        for (let i = count; i > 0; --i)
            points.push(Qt.point((i - 0.5) * step, h), Qt.point((i - 1) * step, h - tooth / 2));
        points.push(Qt.point(0, 0));
        return points;
    }

    Cutout {
        anchors.fill: parent
        fill: Theme.colors.ink
        corners: root.pinked(width, height, root.tooth)
    }
    FigureText {
        id: length
        visible: root.figure !== null
        x: root.width - Theme.margin - width
        y: words.y + words.height / 2 - height / 2
        figure: root.figure
        cap: root.figure && (root.figure.whole ?? "") === "" ? Theme.mm(19) : Theme.capSecond
        color: Theme.colors.raised
        showUnit: false
        accessibleIgnored: true
    }
    Column {
        id: words
        x: Theme.margin
        y: Theme.mm(4)
        width: root.width - 2 * Theme.margin - root.figureWidth
        spacing: Theme.mm(1)
        Word {
            width: parent.width
            visible: text !== ""
            text: root.head
            color: Theme.colors.raised
            Accessible.ignored: true
        }
        InlineLength {
            width: parent.width
            text: root.verdict
            bold: true
            cap: root.verdictCap
            lengthCap: cap
            lineShare: 1.4
            color: Theme.colors.raised
            Accessible.ignored: true
        }
        InlineLength {
            width: parent.width
            visible: text !== ""
            text: root.remedy
            bold: true
            cap: root.remedyCap
            lengthCap: Math.max(cap, Theme.capWord * 1.2)
            lineShare: 1.4
            color: Theme.colors.raised
            Accessible.ignored: true
        }
    }
}
