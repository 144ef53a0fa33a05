// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * What is measured on the trial, reading by reading; it is taken into the plan once she has read what it was made to
 * teach: what was only planned is not passed off as measured.
 */
Item {
    id: root

    /** The reading in hand. */
    property int held: 0
    property string error

    signal turned(int reading)
    signal enter(string name, string title, string text)

    /** The test join's readings stand on its section. */
    readonly property bool drawn: StepModel.trialKind === "test-join"

    function firstToRead(): int {
        for (let at = 0; at < StepModel.trialFields.length; ++at)
            if (!StepModel.trialFields[at].taken)
                return at;
        return 0;
    }

    StepHead {
        id: head
        width: parent.width
    }
    Flickable {
        id: roll
        y: head.implicitHeight + Theme.mm(1)
        width: parent.width
        readonly property real room: parent.height - y - take.height - (wrong.visible ? wrong.height + Theme.gap : 0)
        // What would just not fit takes of the air over the action, rather than be cut off at its foot.
        height: room - (rows.height > room - Theme.gapTargets ? Theme.gap : Theme.gapTargets)
        clip: true
        contentHeight: rows.height
        boundsBehavior: Flickable.StopAtBounds

        Column {
            id: rows
            width: roll.width
            spacing: Theme.gap

            // On a small screen what is in hand stands first.
            InlineLength {
                visible: !Theme.small
                width: parent.width
                text: StepModel.doesText
            }
            KeyLine {
                visible: !Theme.small
                width: parent.width
            }
            TrialReading {
                width: parent.width
                held: root.held
                onTurned: reading => root.turned(reading)
                onEnter: (name, title, text) => root.enter(name, title, text)
            }
            InlineLength {
                visible: Theme.small
                width: parent.width
                text: StepModel.doesText
            }
            Column {
                width: parent.width
                visible: !root.drawn
                Repeater {
                    model: root.drawn ? 0 : StepModel.trialFields.length
                    ChoiceRow {
                        required property int index
                        readonly property var reading: StepModel.trialFields[index] ?? null
                        width: rows.width
                        chosen: index === root.held
                        text: reading?.says ?? ""
                        detail: "{" + (reading?.text ?? "") + "}" + (reading?.taken ?? true ? "" : " ?")
                        onClicked: root.turned(index)
                    }
                }
            }
        }
    }
    MoreBelow { over: roll }
    Word {
        id: wrong
        visible: text !== ""
        anchors.bottom: take.top
        anchors.bottomMargin: Theme.gap
        width: parent.width
        color: Theme.colors.stop
        text: root.error
    }
    CutButton {
        id: take
        objectName: "action"
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.target
        kind: "action"
        confirms: true
        // What the trial takes is made at another station first: the target leads there.
        readonly property bool elsewhere: StepModel.waitsAt >= 0
        // Nothing is taken as measured that she has not read.
        readonly property bool read: StepModel.trialUnread === 0
        enabled: (StepModel.canGoNext && read) || elsewhere
        reason: enabled || !read ? "" : StepModel.waiting
        text: elsewhere ? StepModel.waiting : read ? qsTr("Take these measures")
            //: of the readings of the trial; short: it stands on a button that can be pressed once all are read
            : qsTr("%n still to read", "", StepModel.trialUnread)
        onClicked: {
            if (elsewhere) {
                FitModel.sentToMend = StepModel.waitsAt === 0;
                Session.station = StepModel.waitsAt;
                return;
            }
            const answer = StepModel.takeTrial();
            root.error = answer.ok ? "" : answer.says;
            if (answer.ok)
                root.turned(0);
        }
    }
    // Another trial begins with its first reading that is wanted.
    readonly property string kind: StepModel.trialKind
    onKindChanged: {
        error = "";
        turned(firstToRead());
    }
    Component.onCompleted: turned(firstToRead())
}
