// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "bundles.js" as Bundles

/** The kits of a class as bundles of folded cloths on a shelf: one a student, one's own with a label, spare ones dotted. */
Item {
    id: root

    /** [{kind: "student", "yours" or "spare", count}]; without any, empty bundles are dotted. */
    property var bundles: []
    /** The colours of the cloths in a kit. */
    property var colours: []
    property string accessibleName

    /** The kind that is in hand, or nothing. */
    property string held

    /** How high the shelf is, its boards and what is written under them with it: more kits move nothing. */
    property real room: Theme.mm(48)
    property int boards: 2

    implicitHeight: room
    height: implicitHeight

    readonly property real board: Theme.mm(2.6)
    readonly property real under: board + Theme.capWord * 1.62
    readonly property var lies: width > 0
                                ? Bundles.lay(bundles.length > 0 ? bundles : [{ kind: "empty", count: 4 }], width, room, boards,
                                              Theme.mm(13), Theme.mm(34), under, board + Theme.mm(2.4)) : []

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        mirrored: false
        shows: [root.lies, root.colours, root.held]
        Accessible.ignored: true
        onPrinting: context => {
            Bundles.boards(context, Theme.colors, root.lies, width, root.board, root.held, unit);
            for (const lie of root.lies)
                Bundles.bundle(context, Theme.colors, lie, root.colours, lie.kind === "spare" || lie.kind === "empty", unit);
        }
    }
    Repeater {
        model: root.lies.length
        Word {
            required property int index
            readonly property var lie: root.lies[index] ?? null
            x: Math.max(0, Math.min(root.width - width, (lie?.x ?? 0) + ((lie?.w ?? 0) - width) / 2))
            y: (lie?.y ?? 0) + (lie?.h ?? 0) + root.board
            visible: text !== ""
            bold: true
            wrapMode: Text.NoWrap
            //: under the bundle that is the teacher's own kit
            text: lie?.kind === "yours" ? qsTr("yours") : (lie?.times ?? 1) > 1 ? "× " + lie.times : ""
            Accessible.ignored: true
        }
    }
}
