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

    spacing: Theme.gap

    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: [[true, qsTr("pins in")], [false, qsTr("pins out")]]
            Item {
                id: count
                required property var modelData
                readonly property bool going: modelData[0]
                readonly property int value: going ? EdgeModel.pinsIn : EdgeModel.pinsOut
                width: root.wide ? (root.width - Theme.gap) / 2 : root.width
                height: root.wide ? Theme.mm(18) : Theme.small ? Theme.step : Theme.mm(15)
                StepButton {
                    id: less
                    width: Theme.mm(15)
                    height: parent.height
                    sign: "-"
                    enabled: count.value > 0
                    accessibleName: qsTr("%1 less").arg(count.modelData[1])
                    onStepped: EdgeModel.nudgePins(count.going, -1)
                }
                Flow {
                    x: less.width + (room - width) / 2
                    anchors.verticalCenter: parent.verticalCenter
                    readonly property real room: more.x - less.width
                    width: root.wide ? Math.max(name.implicitWidth, number.implicitWidth)
                                     : name.implicitWidth + spacing + number.implicitWidth + 1
                    spacing: root.wide ? 0 : Theme.gap
                    Word {
                        id: name
                        width: implicitWidth
                        height: root.wide ? implicitHeight : number.implicitHeight
                        verticalAlignment: Text.AlignVCenter
                        wrapMode: Text.NoWrap
                        text: count.modelData[1]
                    }
                    Word {
                        id: number
                        objectName: count.going ? "pins-in" : "pins-out"
                        width: root.wide ? name.implicitWidth : implicitWidth
                        horizontalAlignment: Text.AlignHCenter
                        wrapMode: Text.NoWrap
                        cap: Theme.capInText
                        bold: true
                        text: count.value
                    }
                }
                StepButton {
                    id: more
                    x: parent.width - width
                    width: Theme.mm(15)
                    height: parent.height
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
            width: foot.beside ? Theme.mm(52) : parent.width
            height: Math.max(foot.beside ? Theme.targetLeast : Theme.mm(15), implicitHeight)
            visible: !EdgeModel.pinsMatch
            text: root.none ? qsTr("No pins were used") : qsTr("I know where they are")
            onHeld: EdgeModel.explainPins()
        }
    }
}
