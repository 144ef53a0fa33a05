// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings

/** The strip end to end, to scale; the figure of the place under the finger; what the next block takes. */
WidePage {
    id: root
    objectName: "hoop-page"

    heading: HoopModel.title
    telling: HoopModel.figureSays
    figure: HoopModel.figure
    aside: "HoopAside.qml"
    sides: ({ zero: "HoopZero.qml", strip: "HoopStrips.qml", stops: "HoopStops.qml", hoops: "HoopChoice.qml" })
    // At the machine the pedal belongs to the machine.
    pedal: !StepModel.doing.startsWith("stitch")
    over: side === "log" ? log : gallery
    onScanned: by => {
        if (strip.scanEnabled)
            HoopModel.scan(by);
    }

    StripDrawing {
        id: strip
        anchors.fill: parent
        view: HoopModel.view
        at: HoopModel.position
        head: StepModel.finished ? "" : HoopModel.head
        headOpens: root.small
        over: HoopModel.overSays.replace(/[{}]/g, "")
        nextFigure: HoopModel.marking ? HoopModel.second : null
        scanEnabled: !StepModel.finished && (HoopModel.marking || StepModel.doing === "stitch-block")
        accessibleName: HoopModel.head + ". " + HoopModel.title + ": " + HoopModel.figure.text
        onScanned: place => HoopModel.position = place
        onOpened: root.openSide("more")
    }
    /** Opens the log of a block. */
    function logBlock(block: string) {
        log.block = block;
        root.openSide("log");
    }
    Connections {
        target: StepModel
        function onStitched(block: string) {
            root.logBlock(block);
        }
    }
    LogSheet {
        id: log
        parent: root
        anchors.fill: parent
        z: 1
        visible: root.side === "log"
        onDone: root.openSide("")
    }
    GalleryPage {
        id: gallery
        parent: root
        anchors.fill: parent
        z: 1
        visible: root.side === "gallery"
        onClosed: root.openSide("")
    }
}
