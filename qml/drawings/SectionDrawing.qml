// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "sections.js" as Sections
import "printing.js" as Printing

/** A join in section, to scale across: how deep the seam, how much is folded under, how far the fold catches. */
Item {
    id: root

    /**
     * {backed, doubled, filled, seamMm, finishedMm, allowanceMm, foldMm, catchMm, loftMm}; of a test join {tested, gapMm} as well: the
     * gap its edges leave is hatched and measured in the stead of the fold, or where they lie over each other.
     */
    property var view: null
    property var seam: null
    property var fold: null
    property var held: null
    property var gap: null
    property string first: "A"
    property string second: "B"
    property string accessibleName
    /** What is read of a test join, as SectionReadings has it: its plates stand in the stead of the figures. */
    property var readings: []
    property int inHand: 0

    signal taken(int reading)

    readonly property bool reading: readings.length > 0

    readonly property bool ready: (view?.finishedMm ?? 0) > 0 && width > 0 && height > 0
    readonly property real mm: Theme.pxPerMm
    /** Pixels to one millimetre of the join. */
    readonly property real drawn: ready ? chosen() : 0
    readonly property var lie: ready ? Sections.lay(view, width, height, mm, drawn, caught.width, reading ? 22 * mm : note.height,
                                                    reading ? (height < 70 * mm ? 9 : 25) * mm : 0) : null
    readonly property real foldAt: lie ? lie.seamB + view.catchMm * lie.scale : 0
    readonly property real underAt: lie ? foldAt - view.foldMm * lie.scale : 0
    readonly property bool tested: view?.tested ?? false
    readonly property bool apart: ready && tested && view.gapMm !== 0
    readonly property real footY: lie ? lie.foot + 2.6 * lie.cloth : 0

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    /** Left of it there is room for so many pixels of words. */
    function scaleAt(words: real): real {
        return Sections.scale(view, width, mm, words);
    }
    /** The seam's word stands beside its figure, unless the join would be drawn much smaller for that. */
    function chosen(): real {
        const beside = scaleAt(sewn.beside - 0.9 * mm), above = scaleAt(Math.max(seamWord.implicitWidth, seamFigure.implicitWidth));
        return beside >= 0.75 * above ? beside : above;
    }
    function place(x: real, w: real, at: real): real {
        const start = x - at * w;
        return Theme.left ? width - start - w : start;
    }

    PrintCanvas {
        anchors.fill: parent
        shows: [root.lie, root.view]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie)
                return;
            const c = DyedColors.forWork, g = root.lie, u = unit;
            Sections.paint(context, c, root.view, g, width, u);
            if (root.reading)
                return;
            const above = g.top - 3.2 * g.cloth - 5 * root.mm;
            Printing.strokeLine(context, g.seamA, above - 3 * root.mm, g.seamA, g.top - 2 * g.cloth, c.ink, 1.4 * u);
            Printing.strokeLine(context, g.stripA, above - 3 * root.mm, g.stripA, g.top, c.ink, 1.4 * u);
            Printing.measure(context, c, g.seamA, g.stripA, above, 0, u);
            if (root.apart)
                for (const x of [g.gapA, g.gapB])
                    Printing.strokeLine(context, x, g.top - 3 * u, x, root.footY + 8 * root.mm, c.stop, 2 * u);
            if (root.apart)
                Sections.measureGap(context, c, g, root.footY + 5 * root.mm, root.mm, u);
            if (!root.view.backed || root.tested)
                return;
            Printing.strokeLine(context, g.seamB, g.foot, g.seamB, root.footY + 8 * root.mm, c.ink, 1.4 * u);
            Printing.strokeLine(context, root.foldAt, g.foot, root.foldAt, root.footY + g.foldRow + 3 * root.mm, c.ink, 1.4 * u);
            Printing.measure(context, c, g.seamB, root.foldAt, root.footY + 5 * root.mm, 0, u);
            if (root.view.doubled)
                return;
            Printing.strokeLine(context, root.underAt, root.footY - 2 * root.mm, root.underAt, root.footY + g.foldRow + 3 * root.mm, c.ink, 1.4 * u);
            Printing.measure(context, c, root.underAt, root.foldAt, root.footY + g.foldRow, 0, u);
        }
    }
    Word {
        id: note
        visible: !root.reading
        x: Theme.left ? Theme.margin : parent.width - width - Theme.margin
        y: Theme.mm(1)
        width: parent.width * 0.5 - Theme.margin
        horizontalAlignment: Theme.left ? Text.AlignLeft : Text.AlignRight
        color: Theme.colors.inkSoft
        //: how much larger than life the section is drawn
        text: root.ready ? qsTr("%1 times true size, cloth drawn thicker").arg((Math.round(root.drawn / root.mm * 10) / 10).toLocaleString(Qt.locale(), "f", 1)) : ""
    }
    Grid {
        id: sewn
        // The word beside its figure, or above it where the seam stands too near the edge.
        readonly property real beside: seamWord.implicitWidth + columnSpacing + seamFigure.implicitWidth
        columns: beside + Theme.mm(4) > (root.lie?.seamA ?? 0) ? 1 : 2
        horizontalItemAlignment: Theme.left ? Grid.AlignLeft : Grid.AlignRight
        verticalItemAlignment: Grid.AlignVCenter
        columnSpacing: Theme.mm(1.6)
        visible: root.ready && !root.reading
        x: root.place((root.lie?.seamA ?? 0) - Theme.mm(3), width, 1)
        y: root.lie ? root.lie.top - 3.2 * root.lie.cloth - Theme.mm(5) - height / 2 : 0
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        Word {
            id: seamWord
            text: qsTr("seam")
        }
        FigureText {
            id: seamFigure
            figure: root.seam
            cap: Theme.mm(7)
            showUnit: false
            showLean: false
        }
    }
    Grid {
        id: parted
        objectName: "parted"
        readonly property real from: Math.max(root.lie?.gapA ?? 0, root.lie?.gapB ?? 0) + Theme.mm(7)
        // The word beside its figure, or below it and the arrows where the gap lies too near the edge.
        readonly property bool beside: from + partedFigure.implicitWidth + columnSpacing + partedWord.implicitWidth <= root.width - Theme.mm(1)
        columns: beside ? 2 : 1
        columnSpacing: Theme.mm(1.6)
        visible: root.apart && !root.reading
        x: Math.max(0, Math.min(root.place(beside ? from : from - Theme.mm(10), width, 0), root.width - width))
        y: root.footY + (beside ? Theme.mm(5) - height / 2 : Theme.mm(8))
        horizontalItemAlignment: Theme.left ? Grid.AlignRight : Grid.AlignLeft
        verticalItemAlignment: Grid.AlignVCenter
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        FigureText {
            id: partedFigure
            figure: root.gap
            cap: Theme.mm(7)
            showUnit: false
            showLean: false
        }
        Word {
            id: partedWord
            bold: true
            wrapMode: Text.NoWrap
            //: by how much the two allowances inside a sashing lie over each other
            text: (root.view?.gapMm ?? 0) < 0 ? qsTr("overlap")
                //: what is left between the two allowances inside a sashing
                : qsTr("gap")
        }
    }
    Row {
        id: caught
        visible: root.ready && root.view.backed && !root.tested && !root.reading
        x: root.lie?.narrow ? root.place(Math.min(root.lie?.seamB ?? 0, root.underAt) - Theme.mm(3), width, 1) : root.place(root.foldAt + Theme.mm(3), width, 0)
        y: root.footY + Theme.mm(5) - height / 2
        spacing: Theme.mm(1.6)
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        FigureText {
            figure: root.held
            cap: Theme.mm(7)
            showUnit: false
            showLean: false
        }
        Word {
            anchors.verticalCenter: parent.verticalCenter
            //: how far the fold passes the seam, so that the ditch stitching catches it
            text: qsTr("catch")
        }
    }
    Row {
        visible: root.ready && root.view.backed && !root.view.doubled && !root.tested && !root.reading
        x: root.place(root.underAt - Theme.mm(3), width, 1)
        y: root.footY + (root.lie?.foldRow ?? 0) - height / 2
        spacing: Theme.mm(1.6)
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        Word {
            anchors.verticalCenter: parent.verticalCenter
            // Left of the measure there may be no room for all of it on one line.
            width: Math.min(implicitWidth, Math.max(Theme.mm(12), root.underAt - Theme.mm(4) - parent.spacing - folded.implicitWidth))
            horizontalAlignment: Theme.left ? Text.AlignLeft : Text.AlignRight
            text: qsTr("fold under")
        }
        FigureText {
            id: folded
            figure: root.fold
            cap: Theme.mm(7)
            showUnit: false
            showLean: false
        }
    }
    Repeater {
        model: root.ready ? [[root.first, 0], [root.second, 1]] : []
        Rectangle {
            id: mark
            required property var modelData
            x: root.place(modelData[1] === 0 ? Theme.margin : root.width - Theme.margin, width, modelData[1])
            y: root.lie ? root.lie.middle - height / 2 : 0
            width: tag.implicitWidth + Theme.mm(3)
            height: tag.implicitHeight + Theme.mm(1)
            color: Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: Theme.key
            Word {
                id: tag
                anchors.centerIn: parent
                bold: true
                text: mark.modelData[0]
                wrapMode: Text.NoWrap
            }
        }
    }
    SectionReadings {
        anchors.fill: parent
        visible: root.reading
        lie: root.reading ? root.lie : null
        readings: root.readings
        held: root.inHand
        onTaken: reading => root.taken(reading)
    }
}
