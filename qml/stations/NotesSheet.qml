// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** All the words of the step at hand: what to mind, what to do, where the ruler lies, what to check. */
Item {
    id: root

    signal closed()

    Flickable {
        id: roll
        readonly property real room: parent.height - close.height - Theme.gap
        /** Where the last of the words ends that stand whole: set by hand, since who binds to what a column is just setting out brings Qt 6.4 down. */
        property real whole: room
        width: parent.width
        height: whole
        onRoomChanged: measure()

        function measure() {
            let most = 0;
            for (let i = 0; i < words.children.length; ++i) {
                const part = words.children[i] as Item;
                if (part !== null && part.visible && part.y + part.height <= room - Theme.mm(7))
                    most = Math.max(most, part.y + part.height);
            }
            whole = words.height <= room || most <= 0 ? room : most;
        }
        contentHeight: words.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: words
            width: roll.width
            spacing: Theme.gap
            onPositioningComplete: roll.measure()
            // What can hurt is read first.
            CautionLine {
                width: parent.width
                text: StepModel.caution
            }
            InlineLength {
                width: parent.width
                bold: true
                text: StepModel.doesText
            }
            Repeater {
                model: StepModel.figure.valid ? StepModel.lies : []
                InlineLength {
                    required property string modelData
                    width: words.width
                    lengthCap: Theme.capHead
                    text: modelData
                }
            }
            Word {
                visible: StepModel.notTried
                width: parent.width
                color: Theme.colors.caution
                text: qsTr("Not tried yet: the trial may change this figure.")
            }
            TrialSays {
                visible: StepModel.trial || StepModel.notTried
                width: parent.width
            }
            CutButton {
                objectName: "try-after-all"
                visible: StepModel.mayTryAfterAll
                height: visible ? Theme.targetLeast : 0
                width: parent.width
                text: qsTr("Make the trial after all")
                onClicked: {
                    StepModel.takeTrialBack();
                    root.closed();
                }
            }
            Word {
                visible: text !== ""
                width: parent.width
                text: StepModel.check
            }
        }
    }
    Item {
        id: foot
        y: roll.height
        width: parent.width
        height: Theme.mm(7)
    }
    MoreBelow {
        over: roll
        within: foot
    }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        kind: "action"
        text: qsTr("On with the work")
        onClicked: root.closed()
    }
}
