// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/**
 * Square corners, rounded ones, a circle or scallops: the edge over the blocks, the bias it takes, and what it
 * cuts into.
 */
Flickable {
    id: root

    signal enter(string name, string title, string text)

    readonly property bool free: EdgeModel.cornersFixed.length === 0
    readonly property bool scalloped: EdgeModel.corner === "scalloped"
    /** Drawn whole where the whole edge is curved. */
    readonly property bool curved: scalloped || EdgeModel.corner === "circle"

    /** What is wrong with a typed radius or depth, or nothing. */
    function take(name: string, text: string): string {
        return name === "depth" ? EdgeModel.enterDepth(text) : EdgeModel.enterRadius(text);
    }
    /** Cut shapes wholly outside the clip are drawn all the same without a graphics card: Qt 6.4.2. */
    function seen(item: Item): bool {
        return item.y < contentY + height && item.y + item.height > contentY;
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Grid {
            id: kinds
            width: parent.width
            columns: 2
            spacing: Theme.gap
            visible: root.free
            Repeater {
                model: [["square", qsTr("square")], ["rounded", qsTr("rounded")], ["circle", EdgeModel.squarePiece ? qsTr("circle") : qsTr("round ends")],
                        ["scalloped", qsTr("scallops")]]
                CutButton {
                    required property var modelData
                    readonly property bool now: EdgeModel.corner === modelData[0]
                    width: (rows.width - Theme.gap) / 2
                    height: Theme.targetLeast
                    bold: now
                    text: now ? qsTr("%1 now").arg(modelData[1]) : modelData[1]
                    onClicked: EdgeModel.setCorner(modelData[0])
                }
            }
        }
        Word {
            width: parent.width
            visible: !root.free
            text: EdgeModel.cornersFixed
        }
        // Nothing is chosen any more: what it comes to is read first.
        InlineLength {
            width: parent.width
            visible: !root.free
            text: EdgeModel.cornerSays
        }
        EdgeDrawing {
            width: parent.width
            height: Theme.mm(56)
            view: EdgeModel.view
            phase: "last"
            cornerMm: root.curved ? 0 : Math.max(EdgeModel.view.radiusMm * 1.4, EdgeModel.view.outsideMm * 5, 60)
            accessibleName: EdgeModel.cornerSays.replace(/[{}]/g, "")
        }
        Stepper {
            id: radius
            opacity: root.seen(radius) ? 1 : 0
            visible: EdgeModel.corner === "rounded" && root.free
            height: visible ? implicitHeight : 0
            width: parent.width
            label: qsTr("radius")
            figure: EdgeModel.radius
            onLess: EdgeModel.nudgeRadius(-1)
            onMore: EdgeModel.nudgeRadius(1)
            onAskKeypad: root.enter("radius", qsTr("Radius of the corners"), spokenValue)
        }
        Stepper {
            id: depth
            opacity: root.seen(depth) ? 1 : 0
            visible: root.scalloped && root.free
            height: visible ? implicitHeight : 0
            width: parent.width
            label: qsTr("depth")
            figure: EdgeModel.depth
            onLess: EdgeModel.nudgeDepth(-1)
            onMore: EdgeModel.nudgeDepth(1)
            onAskKeypad: root.enter("depth", qsTr("Depth of the scallops"), spokenValue)
        }
        Repeater {
            model: root.scalloped && root.free ? [[true, qsTr("scallops along")], [false, qsTr("scallops across")]] : []
            Stepper {
                id: count
                required property var modelData
                readonly property int now: modelData[0] ? EdgeModel.scallopsAlong : EdgeModel.scallopsAcross
                opacity: root.seen(count) ? 1 : 0
                height: implicitHeight
                width: rows.width
                label: modelData[1]
                valueText: now
                askable: false
                canLess: now > 1
                onLess: EdgeModel.nudgeScallops(modelData[0], -1)
                onMore: EdgeModel.nudgeScallops(modelData[0], 1)
            }
        }
        InlineLength {
            width: parent.width
            visible: root.free
            text: EdgeModel.cornerSays
        }
        CautionLine {
            width: parent.width
            visible: text !== ""
            text: EdgeModel.biteSays.replace(/[{}]/g, "")
        }
    }
}
