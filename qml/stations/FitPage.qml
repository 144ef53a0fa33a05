// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * The piece on its table, and every figure that follows while the finger is still on the control. Wide, the
 * figures stand under the drawing; upright or on a small screen they head the list of what she decides.
 */
FocusScope {
    id: root
    objectName: "fit-page"

    readonly property bool upright: height > width
    readonly property bool ample: !upright && height > Theme.mm(115)
    /** The column takes what its steppers need; on a small screen it leaves the larger half to the drawing. */
    readonly property real columnWidth: Theme.small ? Math.min(Theme.column, width * 0.5) : Math.min(Theme.mm(105), width * 0.66)
    /** What stands in the column: "fields", "working", "layouts"; or "shade", light and dark over all of it. */
    property string shows: "fields"
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

    Item {
        id: scene
        visible: root.shows !== "shade"
        enabled: !keypad.open
        x: root.upright || !Theme.left ? 0 : column.width
        width: root.width - (root.upright ? 0 : column.width)
        height: root.upright ? root.height * 0.4 : root.height

        Word {
            id: name
            /** Her own words, of any length: the shelf has them whole. */
            readonly property bool preview: true
            x: Theme.margin
            y: Theme.margin
            width: parent.width - 2 * Theme.margin - (turn.visible ? turn.width + Theme.gap : 0)
            cap: Theme.small || turn.visible ? Theme.capWord : Theme.capHead
            bold: true
            // A name may be longer than any room: beside the button it has two lines.
            maximumLineCount: turn.visible ? 2 : 4
            elide: Text.ElideRight
            text: Session.projectName
        }
        CutButton {
            id: turn
            // On a small screen the list has no room to spare: what would fit is asked for up here.
            readonly property bool opens: root.shows !== "layouts"
            visible: opens ? Theme.small && root.shows === "fields" : FitModel.drawing.reversible
            x: parent.width - width - Theme.margin
            y: Theme.mm(2)
            width: Math.min(implicitWidth, parent.width * 0.45)
            height: visible ? Math.max(Theme.control, contentHeight) : 0
            //: the other face of the piece, in the drawing
            text: opens ? qsTr("What would fit") : root.face === "front" ? qsTr("Show the back") : qsTr("Show the front")
            onClicked: {
                if (opens)
                    root.openLayouts();
                else
                    root.face = root.face === "front" ? "back" : "front";
            }
        }
        TableDrawing {
            id: drawing
            y: Math.max(name.y + name.height, turn.visible ? turn.y + turn.height : 0)
            width: parent.width
            height: (root.ample ? parent.height * 0.6 : parent.height) - y
            view: FitModel.drawing
            mats: FitModel.mats
            face: root.face
            marked: (layouts.item as FitLayouts)?.marked ?? ""
            dragEnabled: !Session.readOnly && root.shows !== "layouts"
            accessibleName: mats.length > 0
                //: place mats: so many, and their two sides
                ? qsTr("%1 mats on the table, each %2 by %3").arg(mats.length).arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
                : qsTr("The piece on the table, %1 by %2").arg(FitModel.finishedAlong.text).arg(FitModel.finishedAcross.text)
            onDragged: (alongMm, acrossMm) => FitModel.dragCorner(alongMm, acrossMm)
            onReleased: FitModel.endDrag()
            onStepped: (along, across) => {
                if (along !== 0)
                    FitModel.nudge("/blocks/columns", along);
                if (across !== 0)
                    FitModel.nudge("/blocks/rows", across);
            }
        }
        Rectangle {
            visible: root.ample
            y: drawing.y + drawing.height
            width: parent.width
            height: parent.height - y
            color: Theme.colors.raised

            FiguresList {
                id: figures
                anchors.fill: parent
                visible: root.ample
                onWorking: key => root.explain([key])
            }
            MoreBelow { over: figures }
            KeyLine {
                width: parent.width
            }
        }
    }
    // The keypad lies over it: what is covered takes no focus.
    SheetColumn {
        id: column
        visible: scene.visible
        enabled: !keypad.open
        // Upright its own line falls on the band's: one key line, not two.
        x: root.upright ? (Theme.left ? 0 : -Theme.key) : Theme.left ? 0 : root.width - width
        y: root.upright ? scene.height : 0
        width: root.upright ? root.width + Theme.key : root.columnWidth
        height: root.height - y

        FitHead {
            id: head
            visible: root.shows === "fields"
            width: parent.width
            onWorking: root.explain(["size.finished.along", "size.finished.across"])
            onAsk: (pointer, label, kind, text) => root.begin(pointer, label, kind, text)
        }
        FieldsSheet {
            id: fields
            visible: root.shows === "fields"
            y: head.implicitHeight + Theme.gap
            x: -Theme.margin
            width: parent.width + 2 * Theme.margin
            height: parent.height + Theme.margin - y
            withFigures: !root.ample
            onAsk: (pointer, label, kind, text) => root.begin(pointer, label, kind, text)
            onWorking: key => root.explain([key])
            onLayouts: root.openLayouts()
            onShades: root.shows = "shade"
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
            function onAsk(key: string, label: string, kind: string, text: string) {
                root.begin(key, label, kind, text);
            }
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
            visible: root.upright
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
