// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The reading in hand, stepped or typed, of the six on the drawing beside it. What is pressed keeps its place while
 * the verdict over the drawing follows; then the readings go with the block.
 */
Item {
    id: root

    /** The reading in hand, 0 to 5 as the model has them. */
    property int held: 0

    signal turned(int reading)
    signal closed()
    signal enter(string name, string title, string text)

    /** What is wrong with a typed reading, or nothing. */
    function take(name: string, text: string): string {
        return BlockMeasure.enter(parseInt(name), text);
    }

    /** The readings ask for the common size: that is the one thing to do here. */
    readonly property bool asksCommon: BlockMeasure.mayTakeCommon && BlockMeasure.kind === "common-size"
    /** The readings disagree: this one leads out of it. */
    readonly property int toRead: BlockMeasure.toRead
    /** What it means was in sight, as much of it as the list holds: she is led there before she takes it. */
    readonly property bool commonSeen: list.contentY + list.height >= meaning.y + Math.min(meaning.height, list.height) - 1

    function inOne(lines: var): string {
        return lines.join(" ");
    }
    /** Brings what a common size means into sight. */
    function showCommon() {
        laid.start();
    }
    function keep() {
        BlockMeasure.save();
        root.closed();
    }
    /** Takes the doubtful reading in hand and asks for it. */
    function readIt() {
        const at = root.toRead;
        root.turned(at);
        root.enter(String(at), BlockMeasure.readings[at].says, "");
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
            spacing: Theme.mm(2)

            Word {
                width: parent.width
                bold: true
                text: qsTr("Block %1: outer stitches").arg(BlockMeasure.block)
            }
            ReadingInHand {
                width: parent.width
                held: root.held
                onTurned: reading => root.turned(reading)
                onEnter: (name, title, text) => root.enter(name, title, text)
            }
            InlineLength {
                id: meaning
                objectName: "meaning"
                width: parent.width
                visible: text !== ""
                text: root.inOne(BlockMeasure.commonLines)
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
                // While something is to be done here, that stands alone.
                visible: root.toRead < 0 && !root.asksCommon
                // How to read stands there until she has; the rates are those of the test of misreadings.
                text: BlockMeasure.measured ? qsTr("The limits are common practice; no published ones are known.")
                      : (Session.units === "mm" ? qsTr("A side misread by 6 mm is noticed four times in five, by 10 mm always.")
                                                : qsTr("A side misread by 1/4 in is noticed four times in five, by 3/8 in always."))
            }
        }
    }
    // Beside the one thing to do: where that is the common size, the readings alone; else the way to what it means.
    CutButton {
        id: common
        objectName: "common"
        visible: quiet || (BlockMeasure.mayTakeCommon && (root.asksCommon || !root.commonSeen))
        // Readings that disagree can be kept all the same, once all six were read.
        readonly property bool quiet: root.toRead >= 0 && BlockMeasure.mayKeep
        anchors.bottom: done.top
        anchors.bottomMargin: Theme.gap
        width: parent.width
        height: Theme.control
        //: on a button: the block's readings are kept, and the common size is not taken
        text: quiet ? qsTr("Keep these readings") : root.asksCommon ? qsTr("Keep only the readings") : qsTr("See the common size")
        onClicked: {
            if (root.asksCommon || quiet)
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
        // Nothing was read: then there is nothing to keep, and the block goes on as it was.
        readonly property bool unread: !root.asksCommon && !BlockMeasure.measured
        readonly property bool again: root.toRead >= 0
        // Some are still to be read: then this is not the one thing to do.
        readonly property bool wanting: !again && (unread || (!root.asksCommon && BlockMeasure.asShownSays !== ""))
        kind: wanting ? "outline" : "action"
        confirms: true
        guardMs: 400
        enabled: again || BlockMeasure.mayKeep
        // What nobody read yet is kept only as what she says it is.
        //: on a button: %1 is the one of a block's six readings to be taken again, or for the first time: "top"
        text: again ? (BlockMeasure.mayKeep ? qsTr("Read again: %1") : qsTr("Read: %1")).arg(BlockMeasure.readings[root.toRead].says)
              : root.asksCommon ? (root.commonSeen ? qsTr("Take the common size") : qsTr("See the common size"))
                              : unread ? (TrimModel.way === "measure" ? qsTr("Back without measuring")
                                          //: on a button: the block is trimmed by the planned figures
                                          : qsTr("Not measured: reckon with the plan"))
                              : BlockMeasure.asShownSays !== "" ? qsTr("The rest is as shown") : qsTr("Keep these readings")
        onClicked: {
            if (again)
                root.readIt();
            else if (unread)
                root.closed();
            else if (!root.asksCommon)
                root.keep();
            else if (root.commonSeen)
                root.takeCommon();
            else
                root.showCommon();
        }
    }
}
