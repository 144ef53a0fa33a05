// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "fractions.js" as Fractions

// A Loader of Qt 6.4 cannot make bound components, so what it makes reaches this file's ids unqualified.
// qmllint disable unqualified

/**
 * A figure set large: whole number, stacked fraction, unit. `figure` holds the fields
 * {minus, whole, num, den, unit, lean, text}. When `availableWidth` (px, 0 for endless) does not
 * hold it, the unit drops to the line below; only when the bare number does not fit either is it
 * set smaller, and never under the size of a length among words.
 */
Item {
    id: root

    property var figure: null
    property real cap: Theme.capFigure
    property color color: Theme.colors.ink
    property real availableWidth: 0
    property bool showUnit: true
    property bool showLean: true
    property string accessibleName: root.figure ? root.figure.text ?? "" : ""
    property bool accessibleIgnored: false

    readonly property real footLine: number.y + number.height
    readonly property real capTop: number.y

    readonly property string wholeText: (figure?.minus ? "\u2212" : "") + (figure?.whole ?? "")
    readonly property bool hasFraction: (figure?.num ?? "") !== ""
    readonly property bool hasWhole: wholeText !== ""
    readonly property string unitText: showUnit ? figure?.unit ?? "" : ""
    readonly property string leanText: showLean ? figure?.lean ?? "" : ""
    readonly property bool large: cap >= Theme.capSecond

    /** Width at the asked cap, measured without the unit: everything scales with the cap. */
    readonly property real bareAtCap: measured?.implicitWidth ?? 0
    /** What measures it; only a figure that has to fit is measured. */
    property Item measured: null
    readonly property real setCap: availableWidth > 0 && bareAtCap > availableWidth
                                   ? Math.max(Math.min(cap, Theme.capInText), cap * availableWidth / bareAtCap) : cap
    readonly property real bareWidth: (hasWhole ? number.implicitWidth : 0)
                                      + (hasWhole && hasFraction ? setCap * 0.085 : 0)
                                      + (hasFraction ? fraction.implicitWidth : 0)
    readonly property real unitGap: Math.min(Theme.mm(2.4), setCap * 0.3)
    readonly property bool unitBelow: unitText !== "" && availableWidth > 0
                                      && leanWidth + bareWidth + unitGap + unit.implicitWidth > availableWidth
    readonly property bool leanAbove: leanText !== "" && large

    /** How high a fraction beside it stands; known before there is one. */
    readonly property real stack: Fractions.stack(setCap, !hasWhole, Theme.capNumeralLeast, Theme.pxPerMm)
    // A large figure keeps its place whether or not it has a fraction.
    readonly property real over: hasFraction || large ? Math.max(0, (stack - setCap) / 2) : 0
    readonly property real leanHeight: leanAbove ? leanWord.implicitHeight + Theme.mm(1) : 0
    readonly property real leanWidth: leanText !== "" && !leanAbove ? leanWord.implicitWidth + Theme.mm(1.4) : 0

    implicitWidth: Math.max(leanWidth + bareWidth + (unitText !== "" && !unitBelow ? unitGap + unit.implicitWidth : 0),
                            leanAbove ? leanWord.implicitWidth : 0)
    implicitHeight: leanHeight + 2 * over + setCap + (unitBelow ? Math.max(0, unit.implicitHeight - over / 2) : 0)

    Accessible.role: Accessible.StaticText
    Accessible.name: accessibleName
    Accessible.ignored: accessibleIgnored

    Repeater {
        model: root.availableWidth > 0 ? 1 : 0
        delegate: Item {
            id: measuring
            visible: false
            implicitWidth: whole.implicitWidth + (root.hasWhole && root.hasFraction ? root.cap * 0.085 : 0)
                           + (root.hasFraction ? part.implicitWidth : 0)
            Component.onCompleted: root.measured = measuring
            Component.onDestruction: root.measured = null

            Numeral {
                id: whole
                cap: root.cap
                text: root.wholeText
            }
            Fraction {
                id: part
                cap: root.cap
                num: root.figure?.num ?? ""
                den: root.figure?.den ?? ""
                alone: !root.hasWhole
            }
        }
    }

    // Most figures have not all of their parts. Words take their own place in it: theirs hangs on their baseline.
    Later {
        id: leanWord
        wanted: root.leanText !== ""
        sourceComponent: Word {
            y: root.leanAbove ? 0 : root.footLine - baselineOffset
            text: root.leanText
            color: root.color
            bold: root.leanAbove
            cap: root.leanAbove ? Theme.capHead : Theme.capWord
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Numeral {
        id: number
        x: root.leanWidth
        y: root.leanHeight + root.over
        cap: root.setCap
        text: root.wholeText
        color: root.color
    }
    Later {
        id: fraction
        x: root.leanWidth + (root.hasWhole ? number.implicitWidth + root.setCap * 0.085 : 0)
        y: number.y + root.setCap / 2 - root.stack / 2
        wanted: root.hasFraction
        sourceComponent: Fraction {
            cap: root.setCap
            num: root.figure?.num ?? ""
            den: root.figure?.den ?? ""
            alone: !root.hasWhole
            color: root.color
        }
    }
    Later {
        id: unit
        wanted: root.unitText !== ""
        sourceComponent: Word {
            x: root.unitBelow ? root.leanWidth : root.leanWidth + root.bareWidth + root.unitGap
            y: root.unitBelow ? number.y + root.setCap + root.over / 2 : root.footLine - baselineOffset
            text: root.unitText
            color: root.color
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
}
