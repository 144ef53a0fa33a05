// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The piece on its table, over the whole page, with what changes it at its edges; under it a chest of drawers with
 * everything else she decides and all that follows. What is pulled out stands beside the drawing, or under it.
 */
FocusScope {
    id: root
    objectName: "fit-page"

    readonly property bool upright: height > width
    /** A drawer is out, or a sum or the layouts lie open: they take a column's room. */
    readonly property bool opened: shows !== "fields" || fields.openGroup !== ""
    readonly property bool aside: opened && !upright && (shows !== "layouts" || wishing || Theme.small)
    /** The column leaves the larger half of a small screen to the drawing. */
    readonly property real columnWidth: wishing ? Math.min(Theme.column, width * 0.5) : Theme.small ? Math.min(Theme.column, width * 0.5) : Math.min(Theme.mm(105), width * 0.6)
    /** The chest as it stands under the drawing: whole rows of drawers, and nothing at the piece's edges is covered. */
    readonly property real wantedChest: opened ? height * (wishing ? (WouldFit.wantedMats.length > 0 ? 0.52 : 0.43) : shows === "layouts" ? 0.55 : 0.5)
                                               : fields.wholeRows(Math.min(height - scene.least, Math.max(fields.leastChest, height * (Theme.small ? 0.38 : 0.43))))
    /** The foot of the chest, where the sign stands that it goes on. */
    readonly property bool whole: !opened && chest > fields.saidHeight + fields.foot - 1
    readonly property real foot: whole && chest < fields.contentHeight - 1 && !(fields.seam && chest > fields.saidHeight + fields.tallest - 1) ? fields.foot : 0
    property real chest: 0
    /** What stands in the column: "fields", "working", "layouts"; or "shade", light and dark over all of it. */
    property string shows: "fields"
    /** What is wanted of the layouts is set, at the table. */
    readonly property bool wishing: shows === "layouts" && ((layouts.item as FitLayouts)?.wishing ?? false)
    /** The face that lies up while layouts are looked at. */
    property string face: "front"

    function leave(): bool {
        if (keypad.open) {
            keypad.close();
            return true;
        }
        if (shows === "layouts") {
            if (!(layouts.item as FitLayouts)?.leave())
                closeLayouts();
            return true;
        }
        if (shows === "shade" && (shade.item as ShadePage)?.leave())
            return true;
        const lay = shows !== "fields";
        shows = "fields";
        return lay;
    }
    function begin(pointer: string, label: string, kind: string, text: string) {
        keypad.ask(pointer, label, kind, text);
    }
    function explain(keys: var) {
        shows = "working";
        (sum.item as WorkingSheet).show(keys);
    }
    /** Pulls a drawer out. */
    function openSide(name: string) {
        fields.openGroup = name;
    }
    /** The layouts that would fit, each to be seen on the table. */
    function openLayouts() {
        shows = "layouts";
        (layouts.item as FitLayouts).begin();
    }
    /** Brings what stands in the way into view, at its field. */
    function mend() {
        if (shows === "layouts")
            closeLayouts();
        fields.toMend();
    }
    function closeLayouts() {
        WouldFit.leave();
        face = "front";
        shows = "fields";
    }

    Component.onCompleted: {
        if (FitModel.sentToMend)
            mend();
        FitModel.sentToMend = false;
    }

    Binding {
        target: root
        property: "chest"
        value: root.wantedChest
        when: !scene.busy
        restoreMode: Binding.RestoreNone
    }
    FitScene {
        id: scene
        visible: root.shows !== "shade" && !root.wishing
        enabled: !keypad.open
        x: root.aside && Theme.left ? column.width : 0
        width: root.width - (root.aside ? column.width : 0)
        height: root.aside ? root.height : root.height - root.chest
        face: root.face
        bare: root.shows === "layouts"
        opened: root.opened
        upright: root.upright
        onWorking: root.explain(["size.finished.along", "size.finished.across"])
        onAsk: (pointer, label, kind, text) => root.begin(pointer, label, kind, text)
        onTurned: root.face = root.face === "front" ? "back" : "front"
    }
    Later {
        id: wishes
        visible: root.wishing
        enabled: !keypad.open
        x: scene.x
        width: scene.width
        height: scene.height
        wanted: root.wishing
        source: "WishScene.qml"
    }
    Binding {
        target: wishes.item
        property: "about"
        value: (layouts.item as FitLayouts)?.about ?? "table"
        when: wishes.item !== null
    }
    Connections {
        target: wishes.item
        ignoreUnknownSignals: true
        function onAsk(key: string, label: string, kind: string, text: string) {
            root.begin(key, label, kind, text);
        }
    }
    // The keypad lies over it: what is covered takes no focus.
    SheetColumn {
        id: column
        visible: root.shows !== "shade"
        enabled: !keypad.open
        // Below the drawing its own line falls on the band's: one key line, not two.
        x: root.aside ? Theme.left ? 0 : root.width - width : Theme.left ? 0 : -Theme.key
        y: root.aside ? 0 : scene.height
        width: root.aside ? root.columnWidth : root.width + Theme.key
        height: root.height - y

        FieldsSheet {
            id: fields
            visible: root.shows === "fields"
            x: -Theme.margin
            y: -Theme.margin
            width: parent.width + 2 * Theme.margin
            height: parent.height + 2 * Theme.margin - root.foot
            onAsk: (pointer, label, kind, text) => root.begin(pointer, label, kind, text)
            onWorking: key => root.explain([key])
            onLayouts: root.openLayouts()
            onShades: root.shows = "shade"
        }
        Item {
            id: foot
            x: fields.x + (fields.width - width) / 2
            y: fields.y + fields.height + root.foot - height
            width: root.foot > 0 ? fields.width : Theme.mm(9)
            height: fields.foot
        }
        MoreBelow {
            over: fields
            within: root.whole ? foot : fields
            height: root.whole ? fields.foot : Theme.mm(7)
        }
        Later {
            id: layouts
            anchors.fill: parent
            wanted: root.shows === "layouts"
            source: "FitLayouts.qml"
        }
        Binding {
            target: layouts.item
            property: "face"
            value: root.face
            when: layouts.item !== null
        }
        Connections {
            target: layouts.item
            ignoreUnknownSignals: true
            function onClosed() {
                root.closeLayouts();
            }
            function onMendWanted() {
                root.mend();
            }
        }
        Later {
            id: sum
            anchors.fill: parent
            wanted: root.shows === "working"
            source: "WorkingSheet.qml"
        }
        Connections {
            target: sum.item
            ignoreUnknownSignals: true
            function onClosed() {
                root.shows = "fields";
            }
        }
        KeyLine {
            visible: !root.aside
            x: -Theme.margin
            y: -Theme.margin
            width: column.width
        }
    }
    Loader {
        id: shade
        anchors.fill: parent
        active: root.shows === "shade"
        focus: active
        source: "ShadePage.qml"
    }
    Connections {
        target: shade.item
        ignoreUnknownSignals: true
        function onClosed() {
            root.shows = "fields";
        }
    }
    EntrySheet {
        id: keypad
        home: column
        ruler: FitModel.marks(asked)
        onGiven: (pointer, text) => {
            const answer = root.shows === "layouts" ? WouldFit.enter(pointer, text) : FitModel.enter(pointer, text);
            error = answer.ok ? "" : answer.says;
            if (answer.ok)
                close();
        }
        onClosed: root.forceActiveFocus()
    }
}
