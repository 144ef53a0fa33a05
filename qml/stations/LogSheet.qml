// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * A block off the hoop: a picture of each face beside its outline by plus and minus from what was planned.
 * Same as planned logs it with one press. Nothing has to be typed.
 */
Item {
    id: root
    objectName: "sheet-log"

    /** The block to log, "A1". */
    property string block
    /** The strip it lies on, where that is not on record yet. */
    property int strip: 0
    /** What lies over the sheet: "" nothing, "photo", "flags". */
    property string over

    readonly property bool upright: height > width
    readonly property bool low: !upright && height < Theme.mm(124)
    readonly property real side: upright ? width : low ? Theme.mm(86) : Theme.column

    /** It is saved, or she went back without. */
    signal done()

    function leave(): bool {
        const lay = root.over !== "";
        root.over = "";
        return lay;
    }
    function photograph(face: int) {
        BlockLog.face = face;
        root.over = "photo";
    }
    function takeUp() {
        if (!root.visible)
            return;
        BlockLog.strip = root.strip;
        BlockLog.block = root.block;
    }
    onBlockChanged: takeUp()
    onVisibleChanged: takeUp()
    Component.onCompleted: takeUp()

    Connections {
        target: BlockLog
        enabled: root.visible
        function onSaved() {
            root.over = "";
            root.done();
        }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
    }
    Item {
        id: seen
        visible: root.over === ""
        x: root.upright || !Theme.left ? 0 : root.side
        width: root.upright ? root.width : root.width - root.side
        height: root.upright ? root.height - body.height - 2 * Theme.margin : root.height

        Word {
            id: head
            x: Theme.margin
            y: Theme.margin
            width: parent.width - 2 * Theme.margin
            cap: Theme.capHead
            bold: true
            //: %1 is "Block A1", %2 where it was stitched
            text: BlockLog.placeSays === "" ? BlockLog.head : qsTr("%1: %2").arg(BlockLog.head).arg(BlockLog.placeSays)
        }
        // The table both lie on.
        ClothFill {
            id: table
            y: head.y + head.height + Theme.gap
            width: parent.width
            height: kept.y - y - Theme.gap
            role: "table"
            outlined: false
        }
        LogFace {
            id: front
            readonly property real gap: Theme.gap
            readonly property real edge: Theme.small ? Theme.mm(0.8) : Theme.gap
            objectName: "front"
            x: (parent.width - 2 * width - gap) / 2
            y: table.y + (table.height - height) / 2
            width: Math.min((parent.width - 2 * edge - gap) / 2, Math.max(leastWidth, rear.leastWidth, (table.height - 2 * Theme.gap - lineHeight) / Math.min(1.5, share)))
            height: Math.min(table.height - 2 * Theme.gap, width * Math.min(1.5, share) + wordHeight)
            says: qsTr("Front")
            view: HoopModel.view
            picture: BlockLog.front
            onClicked: root.photograph(0)
        }
        LogFace {
            id: rear
            objectName: "rear"
            x: front.x + front.width + front.gap
            y: front.y
            width: front.width
            height: front.height
            says: qsTr("Back face")
            back: true
            view: HoopModel.view
            picture: BlockLog.back
            onClicked: root.photograph(1)
        }
        Word {
            id: kept
            objectName: "kept"
            x: Theme.margin
            y: trouble.y - (text === "" ? 0 : height + Theme.gap)
            width: parent.width - 2 * Theme.margin
            text: [...BlockLog.flags].filter(flag => flag.chosen).map(flag => flag.says).concat(BlockLog.words.trim() === "" ? [] : [BlockLog.words.trim()]).join(". ")
        }
        CautionLine {
            id: trouble
            x: Theme.margin
            y: parent.height - (text === "" ? 0 : height) - Theme.gap
            width: parent.width - 2 * Theme.margin
            text: BlockLog.problem
        }
    }
    Rectangle {
        visible: root.over === ""
        x: root.upright || Theme.left ? 0 : root.width - width
        y: root.upright ? root.height - height : 0
        width: root.side
        height: root.upright ? body.height + 2 * Theme.margin : root.height
        color: Theme.colors.raised

        KeyLine {
            x: root.upright || !Theme.left ? 0 : parent.width - width
            vertical: !root.upright
            width: root.upright ? parent.width : implicitWidth
            height: root.upright ? implicitHeight : parent.height
        }
        Column {
            id: body
            readonly property bool beside: root.upright || root.low
            x: Theme.margin
            y: Math.max(Theme.margin, parent.height - height - Theme.margin)
            width: parent.width - 2 * Theme.margin
            spacing: root.low ? Theme.gap : Theme.mm(4)

            InlineLength {
                width: parent.width
                text: BlockLog.plannedSays
            }
            Flow {
                width: parent.width
                spacing: Theme.gapTargets
                Stepper {
                    id: along
                    objectName: "along"
                    stacked: !across.besideFits
                    width: body.beside ? (body.width - Theme.gapTargets) / 2 : body.width
                    //: the stitched outline's size along the strip
                    label: qsTr("along")
                    figure: BlockLog.along
                    askable: false
                    onLess: BlockLog.stepAlong(-1)
                    onMore: BlockLog.stepAlong(1)
                }
                Stepper {
                    id: across
                    objectName: "across"
                    stacked: !along.besideFits
                    width: body.beside ? (body.width - Theme.gapTargets) / 2 : body.width
                    //: the stitched outline's size across the strip
                    label: qsTr("across")
                    figure: BlockLog.across
                    askable: false
                    onLess: BlockLog.stepAcross(-1)
                    onMore: BlockLog.stepAcross(1)
                }
            }
            CutButton {
                objectName: "log-it"
                width: parent.width
                height: Theme.target
                kind: "action"
                guardShown: true
                confirms: true
                enabled: BlockLog.canSave
                text: BlockLog.asPlanned ? qsTr("Same as planned") : qsTr("Log these measures")
                onClicked: BlockLog.save()
            }
            Row {
                width: parent.width
                spacing: Theme.gapTargets
                CutButton {
                    objectName: "flag"
                    width: (body.width - Theme.gapTargets) / 2
                    height: Theme.targetLeast
                    //: marks something worth remembering of a block, or writes it in words
                    text: qsTr("Flag or note")
                    onClicked: root.over = "flags"
                }
                CutButton {
                    objectName: "leave"
                    width: (body.width - Theme.gapTargets) / 2
                    height: Theme.targetLeast
                    text: qsTr("Not now")
                    onClicked: root.done()
                }
            }
        }
    }
    PhotoSheet {
        objectName: "photo"
        visible: root.over === "photo"
        anchors.fill: parent
        onClosed: root.over = ""
    }
    LogFlags {
        visible: root.over === "flags"
        anchors.fill: parent
        onClosed: root.over = ""
    }
}
