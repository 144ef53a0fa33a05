// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/**
 * The band is the selvage of the screen: fringe on the outside, pin holes inside, the stations
 * printed on it and undo at its foot. Folded, only the present station and undo are shown over the
 * drawing; pressing the station opens the whole band until one is chosen.
 */
FocusScope {
    id: root

    /** List of {name, station}: the word and the number of the station; signs go by number. */
    property var stations: []
    property int current: -1
    property bool canUndo: false
    property string undoText
    property bool canShelf: true
    property bool folded: false
    property bool open: false
    /** The step can be read out: a cell for it stands over undo. */
    property bool reads: false

    signal chosen(int station)
    signal undo()
    signal shelf()
    signal read()

    readonly property var signs: ["Fit", "Shop", "Cut", "Hoop", "Trim", "Join", "Edge"]
    readonly property bool whole: !folded || open
    readonly property bool tall: height > Theme.mm(170)
    readonly property real undoHeight: Theme.mm(tall ? 18.75 : 15)
    readonly property real shelfHeight: canShelf && whole ? Theme.mm(tall ? 15 : 13.2) : 0
    readonly property real readHeight: reads && !open ? Theme.mm(tall ? 15 : 13.2) : 0
    readonly property real footHeight: undoHeight + readHeight
    readonly property real cellHeight: whole ? (height - footHeight - shelfHeight) / Math.max(1, stations.length) : Theme.targetLeast
    readonly property var shown: whole ? stations : stations.filter(s => s.station === current)

    implicitWidth: Theme.band
    onFoldedChanged: open = false
    onCurrentChanged: open = false
    Keys.onEscapePressed: event => {
        event.accepted = root.open;
        root.open = false;
    }

    function take(station: int) {
        if (folded && !open) {
            open = true;
            return;
        }
        open = false;
        if (station !== current)
            chosen(station);
    }

    Selvage {
        visible: root.whole
        anchors.fill: parent
    }
    Rectangle {
        visible: !root.whole
        width: root.width
        height: root.cellHeight + Theme.key
        color: Theme.colors.paper
    }
    Rectangle {
        visible: !root.whole
        y: root.height - height
        width: root.width
        height: root.footHeight
        color: Theme.colors.paper
    }

    BandCell {
        visible: root.canShelf && root.whole
        width: root.width
        height: root.shelfHeight
        sign: "shelf"
        //: where the projects are kept
        text: qsTr("Shelf")
        onClicked: {
            root.open = false;
            root.shelf();
        }
    }
    KeyLine {
        visible: root.canShelf && root.whole
        y: root.shelfHeight - height
        width: root.width
    }
    Column {
        y: root.shelfHeight
        width: root.width
        Repeater {
            model: root.shown
            BandCell {
                required property var modelData
                width: root.width
                height: root.cellHeight
                text: modelData.name
                sign: root.signs[modelData.station] ?? ""
                here: modelData.station === root.current
                onClicked: root.take(modelData.station)
            }
        }
    }
    // Folded, the station says that more lies behind it, with the sign of every row that opens.
    Word {
        objectName: "opens"
        visible: !root.whole && root.shown.length > 0
        x: Theme.left ? Theme.mm(1.2) : root.width - width - Theme.mm(1.2)
        y: root.shelfHeight + (root.cellHeight - height) * 0.38
        width: implicitWidth
        wrapMode: Text.NoWrap
        bold: true
        color: Theme.colors.paper
        text: Theme.left ? "\u2039" : "\u203a"
        Accessible.ignored: true
    }
    KeyLine {
        visible: root.readHeight > 0
        y: root.height - root.footHeight
        width: root.width
    }
    BandCell {
        objectName: "read"
        visible: root.readHeight > 0
        y: root.height - root.footHeight + Theme.key
        width: root.width
        height: root.readHeight - Theme.key
        sign: "aloud"
        //: reads the step out; one short word on a narrow cell
        text: qsTr("Read")
        accessibleName: qsTr("Read this step aloud")
        Accessible.role: Accessible.Button
        onClicked: root.read()
    }
    KeyLine {
        y: root.height - root.undoHeight
        width: root.width
    }
    BandCell {
        y: root.height - root.undoHeight + Theme.key
        width: root.width
        height: root.undoHeight - Theme.key
        deed: true
        sign: "undo"
        text: qsTr("Undo")
        enabled: root.canUndo
        accessibleName: root.undoText !== "" ? root.undoText : text
        onClicked: root.undo()
    }
    KeyLine {
        visible: root.whole
        vertical: true
        x: Theme.left ? 0 : root.width - width
        height: root.height
    }
}
