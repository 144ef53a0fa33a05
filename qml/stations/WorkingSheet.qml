// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** The sum behind a figure, in the trade's words, down to what was entered. Each further figure opens its own. */
Item {
    id: root

    property string figureKey
    property var trail: []

    signal closed()

    function show(key: string) {
        trail = [];
        figureKey = key;
        list.positionViewAtBeginning();
    }
    function deeper(key: string) {
        trail = trail.concat([figureKey]);
        figureKey = key;
    }
    function back() {
        if (trail.length === 0) {
            closed();
            return;
        }
        const last = trail[trail.length - 1];
        trail = trail.slice(0, trail.length - 1);
        figureKey = last;
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
    }
    InlineLength {
        id: sentence
        width: parent.width
        text: root.figureKey.length > 0 ? StepModel.workingSentence(root.figureKey) : ""
        cap: Theme.capHead
        bold: true
    }
    ListView {
        id: list
        y: sentence.height + Theme.gap
        width: parent.width
        height: parent.height - y - close.height - Theme.gapTargets
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.figureKey.length > 0 ? StepModel.workingFor(root.figureKey) : []
        delegate: ChoiceRow {
            required property var modelData
            width: list.width
            text: modelData.name
            detail: modelData.text
            inList: true
            enabled: modelData.figureKey.length > 0
            onClicked: root.deeper(modelData.figureKey)
        }
    }
    CutButton {
        id: close
        anchors.bottom: parent.bottom
        width: parent.width
        height: Theme.targetLeast
        kind: "outline"
        text: root.trail.length > 0 ? qsTr("Back to the sum before") : qsTr("Back to the work")
        onClicked: root.back()
    }
}
