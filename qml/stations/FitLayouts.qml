// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * What would fit: layouts, nearest first. A press shows one on the table; one button takes it, the other
 * leaves all as it was. What is looked for is changed on a page of its own.
 */
Item {
    id: root
    objectName: "layouts"

    property string face: "front"
    /** What is wanted lies open. */
    property bool wishing: false
    /** Which measure of the table is being set there: "along", "across" or "". */
    readonly property string marked: wishing ? wishes.marked : ""

    signal ask(string key, string label, string kind, string text)
    signal closed()
    /** Asks for the field of what stands in the way. */
    signal mendWanted()

    function begin() {
        wishing = false;
        WouldFit.begin();
        list.positionViewAtBeginning();
    }
    /** Closes the page of wishes; false when it was not open. */
    function leave(): bool {
        const lay = wishing;
        wishing = false;
        return lay;
    }

    Word {
        id: title
        // A small screen keeps the room for the list: its way in said the same.
        visible: root.wishing || !Theme.small
        width: parent.width
        cap: Theme.small ? Theme.capWord : Theme.capHead
        bold: true
        text: root.wishing ? qsTr("What is wanted") : qsTr("What would fit")
    }
    FitWanted {
        id: wanted
        visible: !root.wishing
        x: -Theme.margin
        y: title.visible ? title.implicitHeight + Theme.mm(1) : -Theme.margin
        width: parent.width + 2 * Theme.margin
        height: implicitHeight
        onClicked: root.wishing = true
    }
    ListView {
        id: list
        visible: !root.wishing && count > 0
        x: -Theme.margin
        y: wanted.y + wanted.height
        width: parent.width + 2 * Theme.margin
        height: Math.max(0, buttons.y - y - Theme.gap)
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: WouldFit
        delegate: FitLayoutRow {
            width: list.width
            face: root.face
            // The one chosen has more to say and grows: it stays in sight whole.
            onHeightChanged: if (chosen)
                list.positionViewAtIndex(index, ListView.Contain)
        }
    }
    MoreBelow { over: list }
    MoreBelow { over: wishes }
    KeyLine {
        visible: !root.wishing
        x: -Theme.margin
        y: list.y + Math.min(list.height, list.contentHeight)
        width: list.width
    }
    CautionLine {
        id: none
        visible: !root.wishing && text !== ""
        y: list.y + Theme.gap
        width: parent.width
        height: implicitHeight
        text: WouldFit.noneSays
    }
    CutButton {
        visible: none.visible && StepModel.waitsAt === 0
        y: none.y + none.height + Theme.gap
        width: parent.width
        height: Math.max(Theme.control, contentHeight)
        //: leads to the field that must be mended first
        text: qsTr("Mend it")
        onClicked: root.mendWanted()
    }
    FitWishes {
        id: wishes
        visible: root.wishing
        y: title.implicitHeight + Theme.mm(1)
        width: parent.width
        height: Math.max(0, buttons.y - y - Theme.gap)
        onAsk: (key, label, kind, text) => root.ask(key, label, kind, text)
    }
    Item {
        id: buttons
        anchors.bottom: parent.bottom
        width: parent.width
        height: Math.max(Theme.target, take.visible ? take.contentHeight : 0)

        CutButton {
            id: back
            x: Theme.left ? take.width + Theme.gap : 0
            width: root.wishing ? parent.width : (parent.width - Theme.gap) * 0.36
            height: parent.height
            kind: root.wishing ? "action" : "outline"
            text: root.wishing ? qsTr("Show what fits") : qsTr("Back")
            onClicked: if (!root.leave())
                root.closed()
        }
        CutButton {
            id: take
            visible: !root.wishing
            x: Theme.left ? 0 : back.width + Theme.gap
            width: visible ? parent.width - back.width - Theme.gap : 0
            height: parent.height
            kind: "action"
            enabled: WouldFit.canTake
            //: layout: how many blocks across and down, their size and the sashing between them
            text: qsTr("Take this layout")
            // A low screen has no room to say it.
            reason: Session.readOnly ? qsTr("Open for reading only.") : Theme.small ? "" : qsTr("Press one to see it on the table.")
            onClicked: if (WouldFit.take())
                root.closed()
        }
    }
}
