// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The words under the figure: cloth, one line, one caution, the check. What does not fit gives way, the check
 * first, then the caution's later sentences, then its words down to its mark; a press shows them all. A
 * caution is said once; after that its mark stands for it until another is due.
 */
Item {
    id: root

    /** Width of the first line, shorter beside the figure's tab. */
    property real firstWidth: width
    /** So far down the figure's tab reaches beside them: a finger there is meant for the tab. */
    property real tabHeight: 0
    signal notes()

    Fingertip {
        width: Math.min(root.width - Theme.mm(18), root.firstWidth)
        height: Math.min(root.height, root.tabHeight)
        listening: beneath.listening
        onStruck: root.notes()
    }
    Fingertip {
        id: beneath
        y: root.tabHeight
        width: root.width
        height: Math.max(0, root.height - y)
        listening: root.more || StepModel.mayTryAfterAll
        onStruck: root.notes()
    }

    /** The step was done: its caution has been heard. */
    function heard() {
        const said = Object.assign({}, root.said);
        said[StepModel.caution] = true;
        root.said = said;
    }
    property var said: ({})

    readonly property bool finished: StepModel.finished
    /** Nothing is cut before the block is measured. */
    readonly property bool idle: siding && TrimModel.way === "measure" && TrimModel.anywayText === ""
    readonly property string caution: finished || idle ? "" : StepModel.caution
    readonly property string firstCaution: (caution.match(/^.*?[.!?:](?=\s|$)/) ?? [caution])[0]
    readonly property string check: finished ? "" : siding ? TrimModel.checkSays : StepModel.check
    readonly property bool siding: StepModel.sided && !finished
    /** What is said at the end; by itself what comes next, elsewhere. */
    property string closing: StepModel.elsewhereText
    readonly property string line: finished ? closing
        : siding ? TrimModel.firstSays + (TrimModel.second.valid ? " " + qsTr("and {%1} %2").arg(TrimModel.second.text).arg(TrimModel.secondSays) : "")
        : StepModel.figure.valid && StepModel.firstLine.length > 0 ? StepModel.firstLine : StepModel.doesText
    /** What a figure is that no ruler shows: "fold under". */
    readonly property string named: finished || StepModel.ruler.show || !StepModel.figure.valid ? ""
                                    : StepModel.workingSentence(StepModel.figure.key).split(":")[0]
    readonly property real air: Theme.mm(Theme.small ? 1 : 1.8)

    readonly property bool clothed: StepModel.clothName.length > 0 && !finished
    readonly property real markWidth: Theme.mm(8)
    /** It may have to stand on the first line, beside the tab. */
    readonly property real cautionWidth: clothed || named !== "" ? width : firstWidth
    // On a low screen the last to go: then it stands with the rest that a press shows.
    readonly property bool untriedDue: StepModel.notTried && !finished
    readonly property bool untriedHere: untriedDue && untried.implicitHeight <= height - above
    /** What stands over the one line: the cloth, and what the figure is. */
    readonly property real above: (clothed ? cloth.height + air : 0) + (named !== "" ? name.implicitHeight + air : 0)
    readonly property real room: height - above - (untriedHere ? untried.implicitHeight + air : 0)
    /** The height at which every word is shown. */
    readonly property real wanted: above + says.implicitHeight + (untriedDue ? untried.implicitHeight + air : 0)
                                   + (due ? wholeCaution.implicitHeight + air : 0)
                                   + (check !== "" ? wholeCheck.implicitHeight + air : 0)
    readonly property bool due: caution !== "" && !(said[caution] ?? false)
    readonly property bool briefFits: due && briefCaution.implicitHeight <= room
    readonly property bool lineShown: says.implicitHeight <= room - (briefFits ? briefCaution.implicitHeight + air : 0)
    readonly property real spare: room - (lineShown ? says.implicitHeight + air : 0)
    readonly property string cautionAs: caution === "" ? "" : due && wholeCaution.implicitHeight <= spare ? "whole"
                                        : briefFits ? "brief" : "mark"
    readonly property real cautionHeight: cautionAs === "whole" ? wholeCaution.implicitHeight + air
                                          : cautionAs === "brief" ? briefCaution.implicitHeight + air : 0
    /** Where the line gave way the mark stands in the check's place. */
    readonly property bool checkClear: lineShown || above > 0 || cautionAs !== "mark"
    readonly property bool checkShown: check !== "" && checkClear && wholeCheck.implicitHeight <= spare - cautionHeight
    /** Under all that is shown there is room for the mark with a word beside it. */
    readonly property real shownHeight: above + (lineShown ? says.implicitHeight + air : 0) + (untriedHere ? untried.implicitHeight + air : 0)
                                        + (checkShown ? wholeCheck.implicitHeight + air : 0)
    readonly property bool markNamed: cautionAs === "mark" && height - shownHeight >= shortly.implicitHeight + Theme.mm(1.6)
    readonly property bool more: !lineShown || cautionAs === "mark" || cautionAs === "brief" || (check !== "" && !checkShown)
                                 || (untriedDue && !untriedHere)

    // Measured, not shown.
    Word {
        id: wholeCaution
        visible: false
        width: root.cautionWidth - root.markWidth
        text: root.caution
    }
    Word {
        id: briefCaution
        visible: false
        width: wholeCaution.width
        text: root.firstCaution
    }
    Word {
        id: shortly
        visible: false
        text: sign.brief
    }
    InlineLength {
        id: wholeCheck
        visible: false
        width: root.width
        text: root.check
    }

    Item {
        id: cloth
        visible: root.clothed
        width: root.firstWidth
        height: Math.max(swatch.height, clothName.implicitHeight)
        SwatchPinked {
            id: swatch
            width: Theme.mm(9)
            height: Theme.mm(7)
            colour: StepModel.clothColour
        }
        Word {
            id: clothName
            x: swatch.width + Theme.gap
            width: parent.width - x - (root.caution !== "" ? Theme.control : 0)
            // A long word reaches into the room kept for the mark, rather than be broken.
            wrapMode: Text.WordWrap
            text: StepModel.clothName
        }
    }
    Column {
        y: root.clothed ? cloth.height + root.air : 0
        width: root.width
        spacing: root.air

        Word {
            id: name
            visible: root.named !== ""
            width: root.clothed ? parent.width : root.firstWidth - (root.caution !== "" ? Theme.control : 0)
            text: root.named
        }
        InlineLength {
            id: says
            visible: root.lineShown
            // The mark stands at the end of the first line where no cloth does.
            width: root.clothed || root.caution === "" ? parent.width : root.firstWidth - Theme.control
            text: root.line
        }
        Word {
            id: untried
            visible: root.untriedHere
            width: parent.width
            color: Theme.colors.caution
            text: qsTr("Not tried yet")
        }
        CautionLine {
            visible: root.cautionAs === "whole" || root.cautionAs === "brief"
            width: root.cautionWidth
            text: root.cautionAs === "brief" ? root.firstCaution : root.caution
        }
        InlineLength {
            visible: root.checkShown
            width: parent.width
            color: Theme.colors.inkSoft
            text: root.check
        }
    }
    MindSign {
        id: sign
        visible: root.cautionAs === "mark"
        alone: !root.markNamed
        room: root.clothed ? root.firstWidth - clothName.x - clothName.implicitWidth - Theme.gap : 0
        width: !root.markNamed ? Theme.control + (named ? nameWidth : 0) : y < root.tabHeight ? root.firstWidth : root.width
        x: root.markNamed ? 0 : root.firstWidth - width
        // Never nearer than 3 mm to the targets below.
        y: Math.min(root.markNamed ? root.shownHeight : ((root.clothed ? cloth.height : says.plainLine) - height) / 2,
                    root.height - height - Theme.mm(1.6))
        onClicked: root.notes()
        CautionLine {
            visible: root.markNamed
            width: parent.width
            // Its target may reach up beside the cloth; the word stands under it.
            y: parent.height - shortly.implicitHeight
            text: root.caution
            folded: true
            brief: sign.brief
        }
    }
}
