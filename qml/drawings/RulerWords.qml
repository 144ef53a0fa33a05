// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import Matside.Parts
import "rulerlay.js" as RulerLay

/** The names in the picture of a cut: rulers, what is kept, fold, selvages. They stand on bare cloth or a margin. */
Item {
    id: root

    /** The layout of the picture (rulerlay.js), null when nothing is shown. */
    property var lie: null
    property string firstText
    property string secondText
    /** Where the first ruler's name goes when it stands beside the ruler; below 0: at the ruler's foot. */
    property real nameY: -1
    property color ground: Theme.colors.front

    /** Where an item of width `w` starts when its point `at` (0 start, 0.5 middle, 1 end) lies at `x`. */
    function place(x: real, w: real, at: real): real {
        const start = x - at * w;
        return Theme.left ? width - start - w : start;
    }

    visible: lie !== null

    readonly property var laid: lie ?? RulerLay.nothing()
    readonly property real mm: Theme.pxPerMm
    readonly property bool edgeCut: laid.v.on === "cut-edge"
    readonly property bool glass: lie !== null && !laid.v.mat
    readonly property real firstFrom: Math.max(0, laid.firstLeft)
    /** The bare part of the first ruler, beside the cloth; its name stands there when there is room. */
    readonly property real bare: edgeCut && glass ? laid.edge - firstFrom : 0
    readonly property bool clothAtLeft: laid.v.on === "fold"
    /** Where the cloth leaves the sheet: its edges are named there. */
    readonly property real behind: clothAtLeft ? 2.7 * mm : width - 2.7 * mm
    readonly property bool firstBeside: bare > firstWide + 3 * mm
    /** Measured by itself: a width taken from the laid words would lead back to them. */
    readonly property real firstWide: Math.ceil(firstWhole.advanceWidth) + 1

    TextMetrics {
        id: firstWhole
        font: firstName.font
        text: root.firstText
    }

    Word {
        id: firstName
        visible: root.glass && text !== "" && (root.firstBeside || !root.laid.v.second)
        text: root.firstText
        horizontalAlignment: !narrow ? Text.AlignHCenter : Theme.left ? Text.AlignLeft : Text.AlignRight
        readonly property bool narrow: !root.firstBeside
            && (root.laid.butt - root.firstFrom < root.firstWide + root.mm || root.laid.firstTop > root.laid.cutTop)
        width: narrow ? Math.max(root.mm * 12, Math.min(root.firstWide, root.firstFrom - 3 * root.mm)) : root.firstWide
        x: narrow ? root.place(root.firstFrom - 2 * root.mm, width, 1)
             : root.firstBeside ? root.place(root.firstFrom + root.bare / 2, width, 0.5)
             : root.place((root.firstFrom + root.laid.butt) / 2, width, 0.5)
        y: narrow ? (root.nameY >= 0 ? root.nameY : root.clothAtLeft ? (root.laid.firstTop + root.laid.base - height) / 2
                                     : root.laid.base - height)
             : root.firstBeside || root.laid.firstTop > root.laid.cutTop ? Math.max(0, root.laid.firstTop) + 4 * root.mm
             : Math.max(root.mm * 1.5, root.laid.cutTop - 8.4 * root.mm)
        Accessible.ignored: true
    }
    Word {
        id: secondName
        readonly property bool fits: root.laid.blade - root.laid.butt > longest.advanceWidth + 3 * root.mm
        visible: root.glass && root.laid.v.second && text !== ""
        text: root.secondText
        horizontalAlignment: Text.AlignHCenter
        width: fits ? Math.min(implicitWidth, root.laid.blade - root.laid.butt - 3 * root.mm) : implicitWidth
        // Over a ruler too narrow for it the name ends at the blade.
        x: fits ? root.place((root.laid.butt + root.laid.blade) / 2, width, 0.5)
           : root.place(root.laid.blade - 2 * root.mm, width, 1)
        // Inside the ruler's end where that stands clear of the cloth, otherwise over it.
        y: !fits ? Math.max(0, Math.min(root.laid.cutTop, root.laid.secondTop) - height - root.mm)
           : Math.max(root.mm * 1.5, Math.min(root.laid.secondTop + root.mm * 0.6, root.laid.cutTop - height), root.laid.cutTop - height - 2 * root.mm)
        Accessible.ignored: true
    }
    TextMetrics {
        id: longest
        font: secondName.font
        text: secondName.text.split(" ").reduce((a, b) => b.length > a.length ? b : a, "")
    }
    Rectangle {
        // The ruler's name on the cloth's print.
        visible: firstName.visible && firstName.narrow && root.clothAtLeft
        x: firstName.x - root.mm
        y: firstName.y - root.mm * 0.2
        z: -1
        width: firstName.width + 2 * root.mm
        height: firstName.height + root.mm * 0.6
        color: root.ground
    }
    Rectangle {
        visible: kept.visible
        x: kept.x - root.mm
        y: kept.y - root.mm * 0.2
        width: kept.implicitWidth + 2 * root.mm
        height: kept.implicitHeight + root.mm * 0.6
        color: root.ground
    }
    Word {
        id: kept
        readonly property bool above: root.laid.v.second && root.laid.firstTop - root.laid.cutTop > 16 * root.mm
        /** A band is low: the word stands in its middle, or not at all. */
        readonly property real tall: root.laid.foot - root.laid.cutTop
        visible: root.edgeCut && root.laid.blade - root.laid.edge > implicitWidth + 3 * root.mm && tall > implicitHeight + root.mm
        wrapMode: Text.NoWrap
        bold: true
        //: the part of the cloth that is kept
        text: qsTr("keep")
        x: root.place((root.laid.edge + (above ? root.laid.butt : root.laid.blade)) / 2, implicitWidth, 0.5)
        y: root.laid.cutTop + Math.min(7.6 * root.mm, (tall - implicitHeight) / 2)
        Accessible.ignored: true
    }
    Rectangle {
        // A long word reaches under the cutter: it stands before it then.
        visible: folds.visible && !root.clothAtLeft && root.behind - folds.implicitWidth < (root.lie?.blade ?? 0) + 12 * root.mm
        x: folds.x - root.mm
        y: folds.y + root.mm * 0.4
        width: folds.implicitWidth + 2 * root.mm
        height: folds.implicitHeight - root.mm * 0.4
        color: Theme.colors.paper
        Rectangle {
            // The tone of cloth that is not kept.
            anchors.fill: parent
            opacity: 0.42
            color: root.ground
        }
    }
    Word {
        id: folds
        visible: root.laid.v.on !== "outline"
        wrapMode: Text.NoWrap
        bold: true
        //: the folded edge of the cloth, or that it lies unfolded
        text: root.laid.v.folded ? qsTr("fold") : qsTr("one layer")
        x: root.place(root.behind, implicitWidth, root.clothAtLeft ? 0 : 1)
        y: root.laid.v.named || root.laid.v.folded ? root.laid.foot - implicitHeight - root.mm * 1.6
           // Over the cutter where the cloth is low.
           : Math.min(root.laid.cutTop - root.mm * 1.6, root.laid.foot - root.mm * 15) - implicitHeight
        Accessible.ignored: true
    }
    Word {
        visible: root.laid.v.named
                 && (root.clothAtLeft || root.laid.blade + root.mm < root.behind - implicitWidth)
        wrapMode: Text.NoWrap
        //: the cut ends of a cloth folded across, end on end, for strips along its selvage
        text: root.laid.v.along ? (root.laid.v.folded ? qsTr("cut ends") : qsTr("cut end"))
              : root.laid.v.folded ? qsTr("selvages") : qsTr("selvage")
        // Where a ruler reaches over their place they are named beyond the blade.
        readonly property bool beyond: root.clothAtLeft && root.behind + implicitWidth + 2 * root.mm > root.firstFrom
        x: beyond ? root.place(root.laid.clothEnd + 3.4 * root.mm, implicitWidth, 0)
           : root.place(root.behind, implicitWidth, root.clothAtLeft ? 0 : 1)
        y: root.laid.cutTop - implicitHeight - 2 * root.mm
        Accessible.ignored: true
    }
    Word {
        visible: root.laid.v.on === "outline" || root.laid.v.on === "fold"
        wrapMode: Text.NoWrap
        //: cloth that falls away
        text: qsTr("waste")
        x: root.place(root.laid.clothEnd + 3.4 * root.mm, implicitWidth, 0)
        y: root.laid.cutTop + 7 * root.mm
        Accessible.ignored: true
    }
}
