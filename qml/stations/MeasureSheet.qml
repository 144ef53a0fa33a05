// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * Six readings to step. They keep their places while the verdict, over the drawing beside them, follows; then
 * they go with the block.
 */
Item {
    id: root

    signal closed()
    signal enter(string name, string title, string text)

    /** What is wrong with a typed reading, or nothing. */
    function take(name: string, text: string): string {
        return BlockMeasure.enter(parseInt(name), text);
    }

    /** The readings ask for the common size: that is the one thing to do here. */
    readonly property bool asksCommon: BlockMeasure.mayTakeCommon && BlockMeasure.kind === "common-size"
    /** What it means was in sight, as much of it as the list holds: she is led there before she takes it. */
    readonly property bool commonSeen: list.contentY + list.height >= meaning.y + Math.min(meaning.height, list.height) - 1

    /** Brings what a common size means into sight. */
    function showCommon() {
        laid.start();
    }
    function keep() {
        BlockMeasure.save();
        root.closed();
    }
    function takeCommon() {
        BlockMeasure.takeCommonSize();
        if (!BlockMeasure.mayTakeCommon)
            root.closed();
    }
    // A turn later: the list is laid out only when it is shown.
    Timer {
        id: laid
        interval: 1
        onTriggered: list.contentY = Math.max(0, Math.min(meaning.y, list.contentHeight - list.height))
    }

    MoreBelow {
        z: 1
        over: list
    }
    Flickable {
        id: list
        width: parent.width
        height: parent.height - done.height - Theme.gap - (common.visible ? common.height + Theme.gap : 0)
        clip: true
        contentHeight: rows.height
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: rows
            width: list.width
            // Close enough that both diagonals are seen without rolling.
            spacing: Theme.mm(1.2)

            Word {
                width: parent.width
                bold: true
                text: qsTr("Block %1: outer stitches").arg(BlockMeasure.block)
            }
            Grid {
                id: six
                width: parent.width
                columns: Math.max(1, Math.min(3, Math.floor((width + columnSpacing) / (2 * Theme.step + Theme.gap + columnSpacing))))
                columnSpacing: Theme.gap
                rowSpacing: Theme.mm(1.4)
                /** Counts them as they are made: what is asked of a neighbour is asked again. */
                property int made: 0
                readonly property real each: (width - (columns - 1) * columnSpacing) / columns

                /** The steppers in the row of one: they share one level. */
                function beside(index: int): var {
                    const first = index - index % columns, row = [];
                    for (let at = first; made > 0 && at < Math.min(6, first + columns); ++at)
                        row.push(steppers.itemAt(at));
                    return row.filter(one => one);
                }

                Repeater {
                    id: steppers
                    model: 6
                    onItemAdded: ++six.made
                    Stepper {
                        required property int index
                        readonly property var reading: BlockMeasure.readings[index]
                        width: six.each
                        // Short enough to stand beside its figure; the drawing shows both diagonals.
                        label: index < 4 ? reading.says : index === 4 ? qsTr("from top left") : qsTr("from top right")
                        figure: reading.figure
                        noted: false
                        stacked: six.beside(index).some(one => !one.besideFits)
                        headLeast: Math.max(0, ...six.beside(index).map(one => one.headWanted))
                        reckoned: BlockMeasure.measured && !reading.taken
                        problem: reading.suspect ? qsTr("measure this one again first") : ""
                        onLess: BlockMeasure.nudge(index, -1)
                        onMore: BlockMeasure.nudge(index, 1)
                        onAskKeypad: root.enter(String(index), reading.says, spokenValue)
                    }
                }
            }
            InlineLength {
                id: meaning
                objectName: "meaning"
                width: parent.width
                visible: BlockMeasure.commonSays.length > 0
                text: BlockMeasure.commonSays
            }
            CutButton {
                width: parent.width
                height: Theme.targetLeast
                visible: BlockMeasure.mayTakeCommon && !root.asksCommon
                text: qsTr("Take the common size")
                onClicked: root.takeCommon()
            }
            Word {
                width: parent.width
                color: Theme.colors.inkSoft
                // The rates are those of the test of misreadings.
                text: qsTr("The limits are common practice; no published ones are known.") + " "
                      + (Session.units === "mm" ? qsTr("A side misread by 6 mm is noticed four times in five, by 10 mm always.")
                                                : qsTr("A side misread by 1/4 in is noticed four times in five, by 3/8 in always."))
            }
        }
    }
    // Beside the one thing to do: where that is the common size, the readings alone; else the way to what it means.
    CutButton {
        id: common
        objectName: "common"
        visible: BlockMeasure.mayTakeCommon && (root.asksCommon || !root.commonSeen)
        anchors.bottom: done.top
        anchors.bottomMargin: Theme.gap
        width: parent.width
        height: Theme.control
        //: on a button: the block's readings are kept, and the common size is not taken
        text: root.asksCommon ? qsTr("Keep only the readings") : qsTr("See the common size")
        onClicked: {
            if (root.asksCommon)
                root.keep();
            else
                root.showCommon();
        }
    }
    CutButton {
        id: done
        objectName: "done"
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        kind: "action"
        confirms: true
        enabled: BlockMeasure.mayKeep
        //: of a block's six readings
        reason: enabled ? "" : qsTr("read all six first")
        text: root.asksCommon ? (root.commonSeen ? qsTr("Take the common size") : qsTr("See the common size"))
                              : BlockMeasure.measured ? qsTr("Keep these readings") : qsTr("All six are as shown")
        onClicked: {
            if (!root.asksCommon)
                root.keep();
            else if (root.commonSeen)
                root.takeCommon();
            else
                root.showCommon();
        }
    }
}
