// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One hoop: where each size is measured, and its sizes. */
Flickable {
    id: root

    property int row: -1
    property string measured: "outside"
    /** Asked anew when the shelf changes. */
    readonly property var sizes: row >= 0 && HoopShelf.current > -2 ? HoopShelf.measures(row) : []

    signal enter(string name, string title, string text)
    signal closed()

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            bold: true
            text: qsTr("A hoop’s name is not its field. Measure all three.")
        }
        HoopDrawing {
            width: parent.width
            height: implicitHeight
            measured: root.measured
            accessibleName: qsTr("where the %1 is measured").arg(root.measured)
        }
        Row {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: [[false, qsTr("two rings")], [true, qsTr("magnetic")]]
                CutButton {
                    required property var modelData
                    width: (rows.width - Theme.gap) / 2
                    height: Theme.control
                    inList: true
                    text: modelData[1]
                    onClicked: HoopShelf.setMagnetic(root.row, modelData[0])
                }
            }
        }
        Repeater {
            model: root.sizes
            Stepper {
                required property var modelData
                width: rows.width
                label: modelData.says
                figure: modelData.known ? modelData.figure : null
                valueText: modelData.known ? "" : qsTr("not measured")
                onLess: step(-1)
                onMore: step(1)
                onAskKeypad: {
                    root.measured = modelData.key.split("-")[0];
                    root.enter(modelData.key, modelData.says, figure ? spokenValue : "");
                }
                function step(by: int) {
                    root.measured = modelData.key.split("-")[0];
                    HoopShelf.nudge(root.row, modelData.key, by);
                }
            }
        }
        Word {
            width: parent.width
            //: bracket: the arm that carries the hoop; on that side the strip would run into the machine
            text: qsTr("Side of the machine’s bracket")
        }
        Row {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: [["left", qsTr("left")], ["right", qsTr("right")]]
                CutButton {
                    required property var modelData
                    width: (rows.width - Theme.gap) / 2
                    height: Theme.control
                    inList: true
                    text: modelData[1]
                    onClicked: HoopShelf.setBracket(root.row, modelData[0])
                }
            }
        }
        HoldButton {
            width: parent.width
            visible: root.row !== HoopShelf.current
            text: qsTr("Hold to take it off the shelf")
            onHeld: {
                HoopShelf.remove(root.row);
                root.closed();
            }
        }
        CutButton {
            width: parent.width
            height: Theme.targetLeast
            text: qsTr("All hoops")
            onClicked: root.closed()
        }
    }
}
