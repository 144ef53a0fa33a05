// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import Matside.Parts
import "rulerlay.js" as RulerLay
import "rulers.js" as Rulers

/**
 * The picture of a cut, to scale: which line of which ruler lies on which edge, where the fold is and
 * where the blade runs. Mirrored for the left hand; its lettering is not.
 */
Item {
    id: root

    /**
     * {show, layers, firstName, firstLengthIn, firstWidthIn, lineIn, lineFigure, on, secondName,
     * secondLengthIn, secondWidthIn, secondFigure, keepIn, cutLengthIn, clothLengthIn, fence, along};
     * lengths in inches, for drawing only. `on` is "cut-edge", "outline" or "fold".
     */
    property var view: null
    property string clothRole: "front"
    property string accessibleName

    readonly property bool shown: view !== null && view.show === true && width > 0 && height > 0
    readonly property real mm: Theme.pxPerMm
    readonly property real labelWidth: Math.max(lineLength.implicitWidth, lineWords.implicitWidth)
    readonly property var lie: shown && view ? RulerLay.lay(view, width, height, mm, labelWidth) : null
    readonly property var laid: lie ?? RulerLay.nothing()
    readonly property bool alongEdge: shown && view?.on !== "fold"
    readonly property bool measured: shown && (view?.on ?? "cut-edge") === "cut-edge"
    readonly property bool second: laid.v.second
    readonly property bool mat: laid.v.mat
    readonly property real blade: laid.blade
    readonly property real butt: laid.butt
    readonly property real lineAt: laid.line

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    /** Where an item of width `w` starts when its point `at` (0 start, 0.5 middle, 1 end) lies at `x`. */
    function place(x: real, w: real, at: real): real {
        const start = x - at * w;
        return Theme.left ? width - start - w : start;
    }

    PrintCanvas {
        id: sheet
        anchors.fill: parent
        readonly property real firstGap: lineMeasure.implicitWidth + root.mm * 4
        readonly property real secondGap: secondMeasure.implicitWidth + root.mm * 4
        shows: [root.lie, root.clothRole, firstGap, secondGap]
        Accessible.ignored: true
        onPrinting: context => {
            if (root.lie)
                Rulers.paint(context, Theme.colors, Object.assign({}, root.lie, { gaps: [firstGap, secondGap] }), root.clothRole, unit);
        }
    }

    // On the mat's lines the words stand on bare paper.
    Rectangle {
        visible: root.mat && lineLength.visible
        x: lineLength.x - root.mm
        y: lineLength.y - root.mm * 0.4
        width: lineLength.implicitWidth + 2 * root.mm
        height: lineLength.implicitHeight + root.mm * 0.8
        color: Theme.colors.paper
    }
    Rectangle {
        visible: root.mat && lineWords.visible
        x: lineWords.x - root.mm
        y: lineWords.y - root.mm * 0.4
        width: lineWords.implicitWidth + 2 * root.mm
        height: lineWords.implicitHeight + root.mm * 0.8
        color: Theme.colors.paper
    }
    Rectangle {
        visible: root.mat && lineMeasure.visible
        x: lineMeasure.x - root.mm
        y: lineMeasure.y - root.mm * 0.4
        width: lineMeasure.implicitWidth + 2 * root.mm
        height: lineMeasure.implicitHeight + root.mm * 0.8
        color: Theme.colors.paper
    }

    // The line in use, said beside it.
    FigureText {
        id: lineLength
        visible: root.alongEdge && lineWords.where !== "none"
        figure: root.view?.lineFigure ?? null
        showUnit: false
        cap: Theme.capInText
        color: Theme.colors.accent
        accessibleIgnored: true
        x: root.place(lineWords.at, implicitWidth, lineWords.end)
        y: lineWords.startY - implicitHeight - root.mm * 0.6
    }
    Word {
        id: lineWords
        readonly property string where: root.laid.where
        /** Which end of the words stands at the line: they stand left of it, or out on the waste. */
        readonly property real end: where === "waste" ? 0 : 1
        readonly property real at: where === "waste" ? root.laid.clothEnd + root.mm * 3.4 : where === "beside" ? Math.max(root.labelWidth + root.mm, Math.min(root.lineAt, root.laid.firstLeft) - root.mm * 2.7)
                                                      : root.lineAt - root.mm * 2.7
        readonly property real startY: where === "above" ? root.laid.firstTop - implicitHeight - root.mm * 0.8
                                  : root.laid.foot - root.laid.cutTop < root.mm * 36 ? root.laid.cutTop - implicitHeight - root.mm * 3
                                  : (root.laid.cutTop + root.laid.foot) / 2
        visible: root.alongEdge && where !== "none" && text !== ""
        wrapMode: Text.NoWrap
        horizontalAlignment: Theme.left === (end === 1) ? Text.AlignLeft : Text.AlignRight
        //: where the ruler's line lies: two short lines, broken by hand
        text: !root.shown ? "" : root.view?.on === "outline" ? qsTr("on the outer\nstitches") : root.view?.fence === "mat" ? qsTr("mat lines\nfrom here") : qsTr("on the\ncut edge")
        color: Theme.colors.accent
        x: root.place(at, implicitWidth, end)
        y: startY
        Accessible.ignored: true
    }

    RulerWords {
        anchors.fill: parent
        lie: root.lie
        nameY: lineWords.visible && lineWords.where === "beside" ? lineWords.y + lineWords.implicitHeight + root.mm * 2.4 : -1
        firstText: root.view?.firstName ?? ""
        secondText: root.view?.secondName ?? ""
        ground: Theme.colors[root.clothRole === "patch" ? "patchA" : root.clothRole] ?? Theme.colors.front
    }

    FigureText {
        id: lineMeasure
        readonly property real from: root.second ? root.lineAt : root.laid.edge
        readonly property real to: root.second ? root.butt : root.blade
        readonly property bool apart: to - from <= sheet.firstGap + root.laid.measureSlack
        visible: root.measured
        figure: root.view?.lineFigure ?? null
        showUnit: false
        cap: Theme.capInText
        accessibleIgnored: true
        x: root.place(apart ? from - root.mm * 2 : (from + to) / 2, implicitWidth, apart ? 1 : 0.5)
        y: root.laid.measureY - capTop - cap / 2
    }
    FigureText {
        id: secondMeasure
        readonly property bool apart: root.blade - root.butt <= sheet.secondGap + root.laid.measureSlack
        visible: root.measured && root.second
        figure: root.view?.secondFigure ?? null
        showUnit: false
        cap: Theme.capInText
        accessibleIgnored: true
        x: root.place(apart ? root.blade + root.mm * 2 : (root.butt + root.blade) / 2, implicitWidth, apart ? 0 : 0.5)
        y: root.laid.measureY - capTop - cap / 2
    }
}
