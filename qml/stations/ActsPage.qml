// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "acts.js" as Acts

/**
 * What is to be done, one vignette after the other, each with its sentence. All of them are seen at once where they
 * find room; where not they stand on several leaves, and none is ever cut through. The targets take the last place
 * of the sheet at the hand, or on an upright screen its foot.
 */
Item {
    id: root

    property string heading
    /** [{draws, says, minds}], in the order in which they are done. */
    property var acts: []
    /** Drawings of the page's own in the stead of vignettes, by what they draw: Components. */
    property var drawings: ({})
    property color ground: Theme.colors.paper
    default property alias targets: foot.data

    property int leaf: 0
    readonly property bool upright: height > width
    /** The way on to the next leaf stands at the foot, not beside the heading. */
    readonly property bool turnsBelow: heading === "" || width < Theme.mm(90)
    readonly property real line: Math.round(Theme.margin)
    /** In rows its words left the pictures no room: one stands under the other, the targets beside them. */
    readonly property bool listed: listedAt === sheetKey
    readonly property string sheetKey: width + " " + height + " " + Theme.pxPerMm + " " + acts.map(act => act.says).join(" ")
    property string listedAt
    /** On several leaves each would hold few: they stand larger then. */
    readonly property bool larger: largerAt === sheetKey
    property string largerAt
    readonly property bool aside: !upright && (Theme.small || listed)
    readonly property bool beside: aside || upright && acts.length > 2
    /** It has targets of its own. */
    property bool held: true
    readonly property real asideWidth: Math.min(Theme.mm(52), width / 3)
    readonly property real rowCell: (width - (columns - 1) * line) / columns
    readonly property real footWidth: upright ? width : aside ? asideWidth : rowCell
    readonly property int columns: upright || aside ? 1 : larger ? 2 : Acts.columns(acts.length + 1, width / Theme.mm(46))
    readonly property real cellWidth: aside ? width - (held ? asideWidth + line : 0) : rowCell
    readonly property real headRoom: heading === "" ? 0 : Math.max(head.implicitHeight + Theme.gap, turnsBelow ? 0 : Theme.control + Theme.mm(1))
    /** Where each stands, and on which leaf; {leaves, cells: [{x, y, pic, leaf}]}. */
    property var laid: ({ leaves: 1, cells: [] })

    onActsChanged: leaf = 0
    readonly property bool mirrored: Theme.left
    onMirroredChanged: lay()
    onWidthChanged: lay()
    onHeightChanged: lay()
    onHeadRoomChanged: lay()
    onColumnsChanged: lay()
    onBesideChanged: lay()

    function lay() {
        place(false);
    }
    /** `settled`: every width and height is known, so that another way of laying may be taken. */
    function place(settled: bool) {
        const words = [];
        for (let i = 0; i < cells.count; ++i)
            words.push(cells.itemAt(i)?.wordsHeight ?? 0);
        const sheet = { width: root.width, height: root.height - root.headRoom, line: root.line, air: Theme.mm(1.6), gap: Theme.mm(4),
                        cell: root.cellWidth, columns: root.columns, least: Theme.mm(Theme.small ? 10 : 13), most: Theme.mm(48), upright: root.upright || root.aside,
                        beside: root.beside, left: root.mirrored, from: root.aside && root.mirrored && root.held ? root.footWidth + root.line : 0,
                        targets: root.aside ? 0 : foot.implicitHeight };
        let found = Acts.lay(words, sheet);
        if (found.leaves > 1 && root.turnsBelow)
            found = Acts.lay(words, Object.assign({}, sheet, { height: sheet.height - turn.height - (turn.over ? Theme.gapTargets : Theme.gap) }));
        // Five of them ought to be seen at once; where three or fewer are, they fill the leaf.
        const few = found.leaves > Math.ceil(root.acts.length / 5);
        const sparse = found.leaves > 1 && root.columns > 2 && Math.ceil(root.acts.length / found.leaves) <= 3;
        if (!root.upright && !root.aside && (few || sparse)) {
            if (settled && few)
                root.listedAt = root.sheetKey;
            else if (settled)
                root.largerAt = root.sheetKey;
            else
                otherwise.restart();
            return;
        }
        root.laid = found;
        root.leaf = Math.min(root.leaf, found.leaves - 1);
    }
    /** The first act of a leaf, counted from 1. */
    function firstOf(at: int): int {
        return root.laid.cells.findIndex(cell => cell.leaf === at) + 1;
    }

    // Not while the widths are being reckoned that hang on it.
    Timer {
        id: otherwise
        interval: 0
        onTriggered: root.place(true)
    }
    Word {
        id: head
        readonly property real side: root.turnsBelow ? 0 : turn.width + Theme.gap
        x: Theme.left && turn.visible ? side : 0
        width: parent.width - side
        // A long one would take the room of what it heads.
        cap: root.turnsBelow ? Theme.capWord : Theme.capHead
        bold: true
        text: root.heading
    }
    Repeater {
        id: cells
        model: root.acts.length
        onCountChanged: root.lay()
        ActCell {
            required property int index
            readonly property var at: root.laid.cells[index] ?? null
            visible: at !== null && at.leaf === root.leaf
            x: at?.x ?? 0
            y: root.headRoom + (at?.y ?? 0)
            width: root.cellWidth
            height: implicitHeight
            act: root.acts[index] ?? null
            ground: root.ground
            number: root.acts.length > 1 ? index + 1 : 0
            beside: root.beside
            pictureHeight: at?.pic ?? Theme.mm(13)
            drawn: root.drawings[act?.draws ?? ""] ?? null
            onWordsHeightChanged: root.lay()
        }
    }
    Column {
        id: foot
        x: root.upright || Theme.left ? 0 : parent.width - width
        y: parent.height - height
        width: root.footWidth
        spacing: Theme.gapTargets
        onImplicitHeightChanged: root.lay()
    }
    CutButton {
        id: turn
        objectName: "turn"
        readonly property bool last: root.leaf + 1 >= root.laid.leaves
        visible: root.laid.leaves > 1
        x: Theme.left ? 0 : parent.width - width
        // Under the acts, over the targets.
        readonly property bool over: root.upright && foot.implicitHeight > 0
        y: root.turnsBelow ? (over ? foot.y - Theme.gapTargets : parent.height) - height : 0
        width: Theme.mm(42)
        height: Theme.control
        kind: "action"
        cap: Theme.capWord
        //: on a sheet of numbered pictures that stand on several leaves: to the first picture
        text: last ? qsTr("Back to 1")
            //: the same: to the leaf that begins with picture %1
            : qsTr("On to %1").arg(root.firstOf(root.leaf + 1))
        onClicked: root.leaf = last ? 0 : root.leaf + 1
    }
}
