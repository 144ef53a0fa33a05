// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * Square corners, rounded ones, a circle or scallops, each drawn; the piece beside shows the one in force. The bias
 * it takes, and what it cuts into.
 */
Flickable {
    id: root

    signal enter(string name, string title, string text)

    readonly property bool free: EdgeModel.cornersFixed.length === 0
    readonly property bool scalloped: EdgeModel.corner === "scalloped"

    /** What is wrong with a typed radius or depth, or nothing. */
    function take(name: string, text: string): string {
        return name === "depth" ? EdgeModel.enterDepth(text) : EdgeModel.enterRadius(text);
    }
    /** Cut shapes wholly outside the clip are drawn all the same without a graphics card: Qt 6.4.2. */
    function seen(item: Item): bool {
        return item.y < contentY + height && item.y + item.height > contentY;
    }

    /** Not cut through by the page's foot: such a line comes up when it is pushed up. */
    function whole(item: Item): bool {
        return item.y < contentY || item.y + item.height <= contentY + height + Theme.mm(1);
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Item { // a pin stands up out of the first row
            width: parent.width
            height: root.free ? kinds.height + Theme.mm(1.6) : 0
            visible: root.free
            DrawnChoice {
                id: kinds
                y: Theme.mm(1.6)
                width: parent.width
                height: implicitHeight
                pictureMost: 20
                accessibleName: qsTr("Corners")
                choices: [{ value: "square", says: qsTr("square"), scene: "corner-square" },
                          { value: "rounded", says: qsTr("rounded"), scene: "corner-rounded" },
                          EdgeModel.squarePiece ? { value: "circle", says: qsTr("circle"), scene: "corner-circle" }
                                                : { value: "circle", says: qsTr("round ends"), scene: "corner-ends" },
                          { value: "scalloped", says: qsTr("scallops"), scene: "corner-scalloped" }]
                value: EdgeModel.corner
                onChosen: value => EdgeModel.setCorner(value)
            }
        }
        Word {
            width: parent.width
            visible: !root.free
            text: EdgeModel.cornersFixed
        }
        // Cut, the bias is past: what is still to be minded comes first.
        CautionLine {
            width: parent.width
            visible: text !== ""
            text: root.free ? "" : EdgeModel.biteShort.replace(/[{}]/g, "")
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
        // The figures of the curve itself stand at the drawing.
        Repeater {
            model: EdgeModel.bendLines
            InlineLength {
                id: bend
                required property string modelData
                width: rows.width
                opacity: root.whole(bend) ? 1 : 0
                text: modelData
            }
        }
        CautionLine {
            width: parent.width
            visible: text !== ""
            text: root.free ? EdgeModel.biteSays.replace(/[{}]/g, "") : ""
        }
    }
}
