// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Theme

/** What she wants the piece to come to, and what she will have, as far as it is one of a few: each of it drawn. */
Flickable {
    id: root

    /** "table", or "blocks". */
    property string about: "table"

    readonly property string shape: FitModel.drawing.shape === "round" ? "-round" : ""
    /** What is pictured, by the wish's key: a choice's two values. What the piece does at its ends and sides is chosen there. */
    readonly property var scenes: ({
        "set": ["set-piece" + shape, "set-mats" + shape],
        "mat-size": ["mat-small", "mat-large"],
        "mat-ends": ["mats-sides", "mats-ends"],
        "leaf": ["leaf-out", "leaf-in"],
        "fine": ["sizes-few", "sizes-all"],
        "widen": ["sashing-kept", "sashing-wider"]
    })

    /** Few pictures stand large, many small. */
    readonly property real pictureMost: {
        let many = 0;
        for (let i = 0; i < WouldFit.wishes.length; ++i)
            many += stands(WouldFit.wishes[i].key) ? 1 : 0;
        return many > 2 ? 10.5 : about === "blocks" ? 13 : 18;
    }

    function stands(key: string): bool {
        return scenes[key] !== undefined && (key === "fine" || key === "widen") === (about === "blocks");
    }
    /** So much room there is for it; only whole rows are in sight. */
    property real room: 0
    /** Where the last of them ends: set by hand, since who binds to what a column is just setting out brings Qt 6.4 down. */
    property real whole: 0

    function measure() {
        let most = 0;
        for (let i = 0; i < all.count; ++i) {
            const row = all.itemAt(i);
            if (row?.visible && rows.y + row.y + row.height <= room)
                most = Math.max(most, rows.y + row.y + row.height);
        }
        whole = most > 0 ? most + Theme.mm(1) : room;
    }

    height: whole
    onRoomChanged: measure()
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentHeight: rows.y + rows.height

    Column {
        id: rows
        // A pin stands up out of the first row.
        y: Theme.mm(1.8)
        width: root.width
        spacing: Theme.mm(2.4)
        onPositioningComplete: root.measure()

        Repeater {
            id: all
            // By number: a row that was just pressed is not made anew by what it changed.
            model: WouldFit.wishes.length
            FitWish {
                required property int index
                visible: root.stands(wish.key ?? "")
                width: rows.width
                pictureMost: root.pictureMost
                wish: WouldFit.wishes[index] ?? ({})
                scenes: root.scenes[wish.key ?? ""] ?? []
                onPicked: (key, value) => WouldFit.pick(key, value)
            }
        }
    }
}
