// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** Four sides in order, each with its second reference; then the block is measured and judged if it is off. */
StepPage {
    id: root

    readonly property bool ruled: StepModel.ruler.show && !StepModel.finished

    RulerDrawing {
        id: drawing
        anchors.fill: parent
        visible: root.ruled
        view: StepModel.ruler
        clothRole: StepModel.clothRole
        accessibleName: TrimModel.title + ". " + TrimModel.figure.text + " " + TrimModel.firstSays + ". " + TrimModel.checkSays
    }
    Column {
        visible: root.ruled && TrimModel.trimming
        x: Theme.left ? parent.width - width - Theme.margin : Theme.margin
        y: Theme.margin
        width: Theme.mm(22)
        Repeater {
            model: 4
            Row {
                id: side
                required property int index
                spacing: Theme.mm(1.4)
                Word {
                    bold: side.index + 1 === TrimModel.side
                    text: side.index + 1
                    color: side.index + 1 > TrimModel.side ? Theme.colors.inkSoft : Theme.colors.ink
                }
                Pictogram {
                    visible: side.index + 1 < TrimModel.side
                    name: "tick"
                    width: Theme.mm(5)
                    ink: Theme.colors.ink
                    ground: Theme.colors.paper
                }
            }
        }
    }
    ApartDrawing {
        id: apart
        anchors.fill: parent
        visible: ready && !StepModel.finished
        view: TrimModel.apart
        accessibleName: qsTr("The strip comes apart down the middle of each gap; blocks off it so far: %1").arg(off)
    }
    InlineLength {
        visible: !drawing.visible && !apart.visible
        anchors.centerIn: parent
        width: parent.width - 4 * Theme.margin
        horizontalAlignment: Text.AlignHCenter
        cap: Theme.capHead
        text: StepModel.finished ? StepModel.elsewhereText : StepModel.doesText
    }
}
