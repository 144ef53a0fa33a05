// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme
import "striplets.js" as Striplets

/** A hoop strip with what its gaps yield, the first gap measured beneath it; what it comes to stands beside that, or above where it is narrow. */
Item {
    id: root

    /** {lengthMm, widthMm, alongMm, acrossMm, tails, sashMm, starts, gaps, lost, gap} */
    property var way: null
    /** The longest of those compared, with what would lie past its end: all are drawn to one scale. */
    property real longestMm: 1
    /** What it is called, where it is narrow. */
    property string says
    /** Kept free before the first line there. */
    property real lead: 0
    /** What it comes to, the last of it seen in the drawing as well. */
    property var details: []
    property color ink: Theme.colors.ink

    readonly property bool narrow: width < Theme.mm(90)
    readonly property var scale: Striplets.scaleOf(longestMm, width, Theme.pxPerMm)
    readonly property var first: way && way.gaps.length > 0 ? way.gaps[0] : null
    readonly property real from: first ? scale.x0 + first.fromMm * scale.k : 0
    readonly property real to: first ? scale.x0 + first.toMm * scale.k : 0
    readonly property real head: narrow ? words.implicitHeight + Theme.mm(1) : 0
    readonly property real foot: Math.max(figure.implicitHeight + Theme.mm(3.4), narrow ? 0 : words.implicitHeight + Theme.mm(1))
    readonly property var lie: way && width > 0 ? Striplets.layGaps(way, scale, Math.max(Theme.mm(6), height - head - foot), Theme.pxPerMm) : null
    readonly property real under: head + (lie?.high ?? 0)

    PrintCanvas {
        y: root.head
        width: root.width
        height: root.height - y
        shows: [root.way, root.lie, root.ink]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie)
                return;
            const dyes = DyedColors.forWork;
            Striplets.gaps(context, dyes, root.way, root.lie, unit);
            if (root.first)
                Striplets.gapMeasure(context, Object.assign({}, dyes, { ink: root.ink }), root.from, root.to, root.lie.high * 0.7, root.lie.high + Theme.mm(2.4), unit);
        }
    }
    FigureText {
        id: figure
        readonly property real kept: Math.max(0, Math.min(root.width - width, (root.from + root.to - width) / 2))
        visible: root.first !== null
        x: Theme.left ? root.width - kept - width : kept
        y: root.under + Theme.mm(3.4)
        width: implicitWidth
        height: implicitHeight
        figure: root.way?.gap ?? null
        cap: root.narrow ? Theme.mm(5) : Theme.capInText
        color: root.ink
        showLean: false
        showUnit: !root.narrow
        accessibleIgnored: true
    }
    Word {
        id: words
        readonly property real past: root.narrow ? 0 : figure.kept + figure.width + Theme.mm(4)
        x: Theme.left ? 0 : past + indent
        readonly property real indent: root.narrow ? root.lead : 0
        y: root.narrow ? 0 : root.under + Theme.mm(1)
        width: root.width - past - indent
        horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
        color: root.ink
        text: (!root.narrow ? root.details : root.details.length > 1 ? root.details.slice(0, 2) : [root.says, ...root.details]).join(", ")
        Accessible.ignored: true
    }
}
