// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * What would fit: layouts hung side by side on a line, nearest first. A press shows one on the table; one button takes
 * it, the other leaves all as it was. What is looked for is changed at the table.
 */
Item {
    id: root
    objectName: "layouts"

    property string face: "front"
    /** What is wanted lies open: of the "table" or of its "blocks". */
    property bool wishing: false
    property string about: "table"

    signal closed()
    /** Asks for the field of what stands in the way. */
    signal mendWanted()

    function begin() {
        wishing = false;
        WouldFit.begin();
        line.positionViewAtBeginning();
    }
    /** Closes the page of wishes; false when it was not open. */
    function leave(): bool {
        const lay = wishing;
        wishing = false;
        about = "table";
        return lay;
    }

    /** The line goes along the foot of the page, and the buttons stand at its end. */
    readonly property bool flat: !wishing && !Theme.small && width > Theme.mm(130)
    readonly property real lineWidth: flat ? width - buttons.width - Theme.gapTargets : width

    Word {
        id: title
        // Where the line needs the room its way in said the same, and so does the table where that is set.
        visible: !root.flat && !root.wishing && !Theme.small
        width: parent.width
        cap: Theme.small ? Theme.capWord : Theme.capHead
        bold: true
        text: qsTr("What would fit")
    }
    FitWanted {
        id: wanted
        visible: !root.wishing
        x: line.x
        y: title.visible ? title.implicitHeight + Theme.mm(1) : -Theme.margin
        width: line.width
        height: implicitHeight
        onClicked: root.wishing = true
    }
    GridView {
        id: line
        objectName: "line"
        /** More hang on it than are in sight: below them is room for the sign that says so. */
        readonly property bool goesOn: count > across * rows
        readonly property int across: Math.max(1, Math.floor(width / Theme.mm(Theme.small ? 37 : 42)))
        readonly property real endsAt: root.flat ? root.height + Theme.margin : buttons.y
        readonly property real room: Math.max(1, endsAt - y - Theme.mm(goesOn ? 7 : 2))
        /** Whole rows, as many as leave the pieces large. */
        readonly property int rows: Math.max(1, Math.floor((endsAt - y - Theme.mm(7)) / (labels + Theme.mm(16))))
        property real labels: Theme.mm(20)

        /** Room for the words under the pieces: what the most of them take. */
        function measure() {
            let most = Theme.mm(14);
            for (let i = 0; i < contentItem.children.length; ++i)
                most = Math.max(most, (contentItem.children[i] as FitLayoutPiece)?.labelWanted ?? 0);
            labels = most;
        }

        visible: !root.wishing && count > 0
        x: root.flat && Theme.left ? root.width - root.lineWidth : -Theme.margin
        y: wanted.y + wanted.height + Theme.mm(1)
        width: root.lineWidth + (root.flat ? 1 : 2) * Theme.margin
        height: cellHeight * rows
        cellWidth: Math.floor(width / across)
        cellHeight: Math.floor(Math.min(room / rows, Math.max(labels + Theme.mm(16), cellWidth * 0.7 + labels)))
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        snapMode: GridView.SnapToRow
        // All that hang here are made at once: the list is short.
        cacheBuffer: 0
        model: WouldFit
        delegate: FitLayoutPiece {
            width: line.cellWidth
            height: line.cellHeight
            face: root.face
            labelRoom: line.labels
            onLabelWantedChanged: line.measure()
        }
    }
    Item {
        id: foot
        x: line.x
        y: line.y + line.height
        width: line.width
        height: Theme.mm(7)
    }
    MoreBelow {
        over: line
        within: foot
    }
    Item {
        id: wishesFoot
        y: wishes.y + wishes.height
        width: parent.width
        height: Theme.mm(7)
    }
    MoreBelow {
        over: wishes
        within: wishesFoot
    }
    CautionLine {
        id: none
        visible: !root.wishing && text !== ""
        y: line.y + Theme.gap
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
        about: root.about
        y: 0
        width: parent.width
        room: Math.max(1, turn.y - y - Theme.mm(2))
    }
    CutButton {
        id: turn
        visible: root.wishing
        y: buttons.y - height - Theme.gap
        width: parent.width
        height: Math.max(Theme.control, contentHeight)
        //: leads to what is wanted of the blocks, or back to what is wanted at the table
        text: root.about === "table" ? qsTr("The blocks") : qsTr("The table")
        onClicked: root.about = root.about === "table" ? "blocks" : "table"
    }
    Item {
        id: buttons
        readonly property real both: Math.max(Theme.target, take.visible ? take.contentHeight : 0)
        x: root.flat && !Theme.left ? root.width - width : 0
        anchors.bottom: parent.bottom
        width: root.flat ? Theme.mm(Theme.small ? 40 : 46) : parent.width
        height: root.flat ? parent.height : both

        CutButton {
            id: back
            x: !root.flat && !root.wishing && Theme.left ? take.width + Theme.gap : 0
            y: root.flat ? parent.height - height : 0
            width: root.wishing || root.flat ? parent.width : (parent.width - Theme.gap) * 0.36
            height: root.flat ? Math.max(Theme.control, Math.min(Theme.targetLeast, parent.height * 0.35)) : parent.height
            kind: root.wishing ? "action" : "outline"
            text: root.wishing ? qsTr("Show what fits") : qsTr("Back")
            onClicked: if (!root.leave())
                root.closed()
        }
        CutButton {
            id: take
            visible: !root.wishing
            x: root.flat || Theme.left ? 0 : back.width + Theme.gap
            width: !visible ? 0 : root.flat ? parent.width : parent.width - back.width - Theme.gap
            height: root.flat ? parent.height - back.height - Theme.gap : parent.height
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
