// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Shapes
import Matside.Theme

/** What a measure says: verdict and remedy, printed solid with a pinked lower edge. */
Item {
    id: root

    property string head
    property string verdict
    property string remedy
    property var figure: null

    readonly property real tooth: Theme.mm(3.4)
    readonly property real figureWidth: figure !== null ? length.implicitWidth + Theme.gap : 0

    implicitWidth: Theme.column
    implicitHeight: words.y + words.height + Theme.mm(3.5) + tooth / 2

    Accessible.role: Accessible.AlertMessage
    Accessible.name: [head, verdict, figure ? figure.text ?? "" : "", remedy].filter(t => t !== "").join(". ")

    // Set as large as the longest word allows, so that no word is ever broken.
    readonly property real verdictCap: Math.max(Theme.capHead, Math.min(Theme.capSecond, Theme.capSecond * words.width / Math.max(1, longest.advanceWidth)))
    readonly property real remedyCap: remedy.length <= 12 ? Math.min(Theme.capThird, verdictCap) : Theme.capHead

    TextMetrics {
        id: longest
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Theme.fontSize(Theme.capSecond)
        text: root.verdict.split(" ").reduce((a, b) => b.length > a.length ? b : a, "")
    }

    function pinked(w: real, h: real, tooth: real): var {
        const count = Math.max(1, Math.round(w / tooth)), step = w / count;
        const points = [Qt.point(0, 0), Qt.point(w, 0), Qt.point(w, h - tooth / 2)];
        for (let i = count; i > 0; --i)
            points.push(Qt.point((i - 0.5) * step, h), Qt.point((i - 1) * step, h - tooth / 2));
        points.push(Qt.point(0, 0));
        return points;
    }

    Shape {
        ShapePath {
            fillColor: Theme.colors.ink
            strokeColor: "transparent"
            strokeWidth: 0
            PathPolyline { path: root.pinked(root.width, root.height, root.tooth) }
        }
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
        Word {
            width: parent.width
            text: root.verdict
            bold: true
            cap: root.verdictCap
            lineHeight: cap * 1.4
            color: Theme.colors.raised
            Accessible.ignored: true
        }
        Word {
            width: parent.width
            visible: text !== ""
            text: root.remedy
            bold: true
            cap: root.remedyCap
            lineHeight: cap * 1.4
            color: Theme.colors.raised
            Accessible.ignored: true
        }
    }
}
