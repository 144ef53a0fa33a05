// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Which blocks next, in section and on the layout; the marks of a long sashing; a row on the tape. */
WidePage {
    id: root
    objectName: "join-page"
    sceneMm: StepModel.finished ? 118 : noted.visible ? 71 : 64

    property int mark: 0
    readonly property bool sewing: StepModel.doing === "join-short" || StepModel.doing === "test-join" || StepModel.trial
    /** Something stands beside the step at hand. */
    readonly property bool beside: StepModel.doing === "join-short" || JoinModel.marking || JoinModel.measuring
                                   || JoinModel.tested || JoinModel.mayLay
    /** What the test join taught stands beside the section: it shows the join as it was sewn. */
    readonly property bool told: side === "test" && JoinModel.tested
    /** The test join lies there to be measured: its readings stand on the section. */
    readonly property bool reading: StepModel.doing === "test-join" && sheet === "trial"
    /** A long sashing is marked; where the sheet is wide, its fold is seen in section beside it. */
    readonly property bool marked: JoinModel.marking && JoinModel.marks.length > 0 && !StepModel.finished
    readonly property bool folding: marked && !upright && !small && !covered && JoinModel.held.valid
    readonly property var names: atHand(JoinModel.blocks)

    function atHand(blocks: var): var {
        return blocks.filter(block => block.now);
    }

    heading: JoinModel.title
    telling: JoinModel.tells
    figure: JoinModel.figure
    aside: "JoinAside.qml"
    sides: ({ gauge: "JoinGauge.qml", map: "JoinLayout.qml", row: "JoinRow.qml", test: "JoinTest.qml", ways: "JoinWays.qml" })
    onScanned: by => {
        if (JoinModel.marking)
            root.mark = Math.max(0, Math.min(JoinModel.marks.length - 1, root.mark + by));
    }

    NotedLine {
        id: noted
        width: parent.width
        lines: root.upright || root.small ? 1 : 2
        text: root.reading || StepModel.finished ? "" : JoinModel.remembered
    }
    SectionDrawing {
        // Beside the marked sashing it stands over the figure of the fold.
        x: root.folding && Theme.left ? parent.width - width : 0
        y: noted.height
        width: root.folding ? parent.width * 0.4 : parent.width
        height: parent.height - y - (more.visible ? more.height + Theme.gap : 0)
        visible: (root.sewing || root.folding) && !StepModel.finished
        view: root.told ? JoinModel.testSection : root.reading ? JoinModel.trialSection : JoinModel.section
        readings: root.reading ? StepModel.trialFields : []
        inHand: root.heldTrial
        onTaken: reading => root.heldTrial = reading
        seam: root.told ? JoinModel.testSeam : JoinModel.seam
        gap: JoinModel.testGap
        fold: JoinModel.fold
        held: JoinModel.held
        first: root.names.length === 2 ? root.names[0].block : root.folding ? root.names[0]?.block.charAt(0) ?? "A" : "A"
        second: root.names.length === 2 ? root.names[1].block : root.folding ? root.names[root.names.length - 1]?.block.charAt(0) ?? "B" : "B"
        accessibleName: root.reading ? qsTr("Section of the test join, with what is read of it")
                        : root.told ? (JoinModel.testSection.gapMm < 0 ? qsTr("Section of the test join: seam %1, overlap %2")
                                     : JoinModel.testSection.gapMm > 0 ? qsTr("Section of the test join: seam %1, gap %2")
                                     : qsTr("Section of the test join: seam %1, the edges meet")).arg(JoinModel.testSeam.text).arg(JoinModel.testGap.text)
                        : !JoinModel.held.valid ? qsTr("Section of a join: seam %1").arg(JoinModel.seam.text)
                        : !JoinModel.fold.valid ? qsTr("Section of a join: seam %1, back strip doubled, catch %2").arg(JoinModel.seam.text).arg(JoinModel.held.text)
                        : qsTr("Section of a join: seam %1, fold under %2, catch %3").arg(JoinModel.seam.text)
                          .arg(JoinModel.fold.text).arg(JoinModel.held.text)
    }
    MarkTape {
        x: root.folding && !Theme.left ? parent.width * 0.4 : 0
        width: parent.width * (root.folding ? 0.6 : 1)
        height: parent.height - (more.visible ? more.height + Theme.gap : 0)
        visible: root.marked
        marks: JoinModel.marks
        lengthMm: JoinModel.rowMm
        at: root.mark
        piece: EdgeModel.view
        //: over the tape on which the match marks of a long sashing are read, from the row's raw left end
        says: qsTr("Match marks: the middle of each short sashing")
        accessibleName: qsTr("Match marks from the row’s raw end, now at %1").arg(JoinModel.marks[root.mark]?.figure?.text ?? "")
        onScanned: mark => root.mark = mark
    }
    RowTape {
        anchors.fill: parent
        anchors.bottomMargin: more.visible ? more.height + Theme.gap : 0
        visible: JoinModel.measuring && !StepModel.finished
        view: EdgeModel.view
        blocks: JoinModel.blocks
        // One row alone has no long sashing whose length it sets.
        figure: JoinModel.rows > 1 ? JoinModel.figure : null
        markMm: Session.units === "mm" ? 50 : 25.4
        group: Session.units === "mm" ? 2 : 12
        accessibleName: qsTr("Layout of the blocks; next: %1").arg(JoinModel.title)
    }
    JoinMap {
        x: Theme.margin
        width: parent.width - 2 * Theme.margin
        height: parent.height - Theme.mm(2) - (more.visible ? more.height + Theme.gap : 0)
        visible: !root.sewing && !root.marked && !JoinModel.measuring && !StepModel.finished && !act.visible && cell >= Theme.mm(3)
        columns: JoinModel.columns
        rows: JoinModel.rows
        blocks: JoinModel.blocks
        accessibleName: qsTr("Layout of the blocks; next: %1").arg(JoinModel.title)
    }
    ActSketch {
        id: act
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * Theme.margin
        height: parent.height - 2 * Theme.margin - (more.visible ? more.height + Theme.gap : 0)
        visible: kind === "join-long" && !StepModel.finished
        kind: StepModel.doing
        accessibleName: StepModel.doesText
    }
    // All rows are joined: what they have become.
    EdgeDrawing {
        anchors.fill: parent
        visible: StepModel.finished
        view: EdgeModel.view
        phase: "square"
        accessibleName: StepModel.elsewhereText
    }
    CutButton {
        id: more
        objectName: "more"
        // On a low screen what stands beside opens from the drawing.
        visible: root.small && !StepModel.finished && root.beside
        x: Theme.left ? parent.width - width - Theme.gap : Theme.gap
        y: parent.height - height - Theme.gap
        width: Theme.mm(30)
        height: Theme.control
        text: qsTr("More")
        onClicked: root.openSide("more")
    }
}
