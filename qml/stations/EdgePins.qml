// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Pins in and pins out: until they agree, or she says why not, the piece is not finished. */
Column {
    id: root

    readonly property bool none: EdgeModel.pinsIn === 0 && EdgeModel.pinsOut === 0
    readonly property bool wide: width > Theme.mm(100)
    /** Three digits stand here. */
    readonly property real digits: Theme.mm(17)

    spacing: Theme.gap

    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: [[true, qsTr("pins in")], [false, qsTr("pins out")]]
            // The number has a place of its own between its buttons; the word never shares it.
            Item {
                id: count
                required property var modelData
                readonly property bool going: modelData[0]
                readonly property int value: going ? EdgeModel.pinsIn : EdgeModel.pinsOut
                width: root.wide ? (root.width - Theme.gap) / 2 : root.width
                height: less.y + less.height
                Word {
                    id: name
                    y: root.wide ? 0 : (less.height - height) / 2
                    width: root.wide ? parent.width : less.x - Theme.gap
                    horizontalAlignment: root.wide ? Text.AlignHCenter : Text.AlignLeft
                    text: count.modelData[1]
                }
                StepButton {
                    id: less
                    x: root.wide ? 0 : more.x - width - root.digits
                    y: root.wide ? name.height : 0
                    width: root.wide ? Theme.mm(15) : Theme.step
                    sign: "-"
                    enabled: count.value > 0
                    accessibleName: qsTr("%1 less").arg(count.modelData[1])
                    onStepped: EdgeModel.nudgePins(count.going, -1)
                }
                Word {
                    objectName: count.going ? "pins-in" : "pins-out"
                    x: less.x + less.width
                    y: less.y
                    width: more.x - x
                    height: less.height
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    wrapMode: Text.NoWrap
                    cap: Theme.capInText
                    bold: true
                    text: count.value
                }
                StepButton {
                    id: more
                    x: parent.width - width
                    y: less.y
                    width: less.width
                    sign: "+"
                    accessibleName: qsTr("%1 more").arg(count.modelData[1])
                    onStepped: EdgeModel.nudgePins(count.going, 1)
                }
            }
        }
    }
    Flow {
        id: foot
        readonly property bool beside: root.wide && hold.visible
        width: parent.width
        spacing: Theme.gap
        Word {
            width: foot.beside ? parent.width - hold.width - Theme.gap : parent.width
            bold: EdgeModel.pinsMatch
            color: EdgeModel.pinsMatch || root.none ? Theme.colors.ink : Theme.colors.stop
            text: EdgeModel.pinsSay
        }
        HoldButton {
            id: hold
            objectName: "pins-known"
            width: foot.beside ? parent.width * 0.58 : parent.width
            height: Math.max(foot.beside ? Theme.targetLeast : Theme.mm(15), implicitHeight)
            visible: !EdgeModel.pinsMatch
            text: root.none ? qsTr("No pins were used") : qsTr("I know where they are")
            onHeld: EdgeModel.explainPins()
        }
    }
}
