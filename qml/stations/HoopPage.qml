// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Theme

/** The strip end to end, to scale; the figure of the place under the finger; what the next block takes. */
WidePage {
    id: root
    objectName: "hoop-page"

    heading: HoopModel.title
    telling: HoopModel.figureSays
    figure: HoopModel.figure
    // Centre by centre along the strip; its head says which strip that is.
    tally: HoopModel.marking ? qsTr("%1 of %2").arg(HoopModel.position + 1).arg(HoopModel.view.places.length)
                             : qsTr("%1 of %2").arg(StepModel.done + 1).arg(StepModel.count)
    aside: "HoopAside.qml"
    sides: ({ zero: "HoopZero.qml", strip: "HoopStrips.qml", drawup: "HoopDrawUp.qml", stops: "HoopStops.qml", hoops: "HoopChoice.qml" })
    // What is drawn beside the column is what she chooses from: it takes the height.
    sideMm: root.drawnUp ? 108 : root.hoops !== null && root.racked ? 98 : root.racked ? 84 : 140
    /** What the layers have of an upright page: the figure and the targets below them come first. */
    readonly property real layersMm: Math.max(50, Math.min(StepModel.trial ? 92 : 78, root.height / Theme.pxPerMm - 122))
    sceneMm: root.acted ? 90 : HoopModel.layering ? layersMm : 50
    figureMm: root.acted || HoopModel.layering ? 48 : 62
    // At the machine the pedal belongs to the machine.
    pedal: !StepModel.doing.startsWith("stitch")
    over: sheet.item as Item
    // What is pressed is done to the block in hand: she sees that one first.
    showFirst: HoopModel.elsewhereSays
    onHandWanted: HoopModel.showInHand()

    /** The block whose log is opened. */
    property string logged

    onScanned: by => {
        if (strip.scanEnabled)
            HoopModel.scan(by);
    }

    /** The strip to scale does not show what is done to it: that is drawn beside it, or beneath where the page is narrow. */
    readonly property bool acted: !StepModel.finished && shownBeside(StepModel.doing)

    function shownBeside(doing: string): bool {
        return doing === "trim-patches" || doing === "press-block" || doing === "measure-test";
    }

    /** A block in hand that is stitched has its strip already. */
    readonly property bool choosing: HoopModel.stripCount > 1 && !HoopModel.marking
        && StepModel.doing !== "trim-patches" && StepModel.doing !== "press-block"
    readonly property HoopChoice hoops: root.sidePage as HoopChoice
    /** What the column is about is drawn beside it: the strips, what their gaps yield, the hoops, the draw-up. */
    readonly property string rack: root.sheet !== "work" ? "" : root.hoops !== null && root.hoops.open < 0 ? "HoopRack.qml"
        : root.side === "strip" && root.choosing ? "StripRack.qml"
        : root.side === "strip" && HoopModel.gapWays.length > 0 ? "GapWays.qml" : ""
    readonly property bool drawnUp: root.side === "drawup" && root.sheet === "work" && HoopModel.drawUpSays.length > 0
    readonly property bool racked: root.rack !== "" || root.drawnUp

    Loader {
        id: rack
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * x
        height: parent.height - 2 * y
        source: root.rack
    }
    Connections {
        target: rack.item
        ignoreUnknownSignals: true
        function onMended(row: int) {
            root.hoops.open = row;
        }
    }
    DrawnInBlock {
        x: Theme.margin
        y: Theme.margin
        width: parent.width - 2 * x
        height: parent.height - 2 * y
        visible: root.drawnUp
        view: visible ? HoopModel.drawnUp : null
        accessibleName: HoopModel.drawUpSays
    }
    StripDrawing {
        id: strip
        visible: !root.racked && !lay.visible
        readonly property bool beside: parent.width > 1.5 * parent.height
        readonly property bool shared: root.acted
        x: shared && beside && Theme.left ? act.width + 2 * Theme.margin : 0
        width: shared && beside ? parent.width - act.width - 2 * Theme.margin : parent.width
        height: shared && !beside ? parent.height * 0.54 : parent.height
        view: HoopModel.view
        at: HoopModel.position
        hooped: StepModel.doing !== "press-block"
        // The thread will not last: that is said where the eye is, before the machine is started.
        warns: HoopModel.bobbinDue !== ""
        head: StepModel.finished ? (root.small ? qsTr("Pictures and notes") : "") : warns ? HoopModel.bobbinDue : HoopModel.head
        headOpens: root.small || warns
        sent: StepModel.doing === "stitch-block" ? HoopModel.sentShort : ""
        over: HoopModel.overSays.replace(/ (?=[^{]*\})/g, "\u00a0").replace(/[{}]/g, "")
        nextFigure: HoopModel.marking ? HoopModel.second : null
        scanEnabled: !StepModel.finished && root.sheet !== "wrong" && (HoopModel.marking || StepModel.doing === "stitch-block")
        accessibleName: HoopModel.head + ". " + HoopModel.title + ": " + HoopModel.figure.text
        onScanned: place => HoopModel.position = place
        // On a low screen the bobbin stands first among what opens there.
        onOpened: root.openSide(root.small ? "more" : "stops")
    }
    LayUp {
        id: lay
        anchors.fill: parent
        // Nothing is hooped or marked yet.
        visible: HoopModel.layering && !root.racked && !StepModel.finished
        view: HoopModel.view
        lengthFigure: HoopModel.stripLength
        widthFigure: visible ? HoopModel.figure : null
        head: HoopModel.stripSays
        headOpens: root.small
        accessibleName: StepModel.doesText + " " + HoopModel.figure.text + " × " + HoopModel.stripLength.text
        onOpened: root.openSide("more")
    }
    ActSketch {
        id: act
        x: !strip.beside || Theme.left ? Theme.margin : parent.width - width - Theme.margin
        y: strip.beside ? Theme.margin : strip.height + Theme.gap
        width: strip.beside ? parent.width * 0.44 : parent.width - 2 * Theme.margin
        height: parent.height - y - Theme.margin
        visible: root.acted && !root.racked
        kind: StepModel.doing
        accessibleName: StepModel.doesText
    }
    /** Opens the log of a block. */
    function logBlock(block: string) {
        root.logged = block;
        root.openSide("log");
    }
    Connections {
        target: StepModel
        function onStitched(block: string) {
            root.logBlock(block);
        }
    }
    // Made when it is opened: most visits to this station open neither.
    Loader {
        id: sheet
        parent: root
        anchors.fill: parent
        z: 1
        source: root.side === "log" ? "LogSheet.qml" : root.side === "gallery" ? "GalleryPage.qml" : ""
        onLoaded: {
            const log = item as LogSheet;
            if (log)
                log.block = root.logged;
        }
    }
    Connections {
        target: sheet.item
        ignoreUnknownSignals: true
        function onDone() {
            root.openSide("");
        }
        function onClosed() {
            root.openSide("");
        }
    }
}
