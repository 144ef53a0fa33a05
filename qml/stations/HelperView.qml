// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The step at hand without buttons, as large as its window allows, to be read from further away. */
Item {
    id: root

    readonly property int station: Session.station
    readonly property bool stepped: Session.view === "station" && station > 1
    readonly property bool working: stepped && !StepModel.finished
    readonly property bool trimming: StepModel.sided
    readonly property string heading: station === 3 ? HoopModel.title : station === 4 ? TrimModel.title
                                      : station === 5 ? JoinModel.title : station === 6 ? EdgeModel.heading : ""
    readonly property string telling: station === 3 ? HoopModel.figureSays : trimming ? TrimModel.firstSays
                                      : station === 5 ? JoinModel.tells : station === 6 ? EdgeModel.tells : ""
    readonly property var figure: station === 3 ? HoopModel.figure : station === 4 ? TrimModel.figure
                                  : station === 5 ? JoinModel.figure : StepModel.figure
    readonly property bool figured: working && (figure?.valid ?? false)
    /** What the figure is, where neither a ruler shows it nor the line under it says so: "tucked under". */
    readonly property string named: {
        const name = figured && !ruled ? StepModel.workingSentence(figure.key ?? "").split(":")[0].trim() : "";
        return telling.includes(name) ? "" : name;
    }

    readonly property bool upright: height > width
    readonly property bool ruled: working && StepModel.ruler.show
    readonly property bool striped: working && station === 3 && (HoopModel.view?.lengthMm ?? 0) > 0
    readonly property bool drawn: ruled || striped
    /** Words stand as high as the window lets them, and never under what is read at the table. */
    readonly property real cap: Math.max(Theme.capWord, Math.min(height, width * 0.8) * 0.032)
    readonly property real air: cap * 0.9

    Accessible.role: Accessible.Grouping
    Accessible.name: (heading !== "" ? heading : StepModel.title)

    Item {
        id: scene
        visible: root.drawn
        x: root.upright || !Theme.left ? 0 : parent.width - width
        width: root.upright ? parent.width : parent.width * 0.52
        height: root.upright ? parent.height * 0.42 : parent.height
        clip: true

        RulerDrawing {
            anchors.fill: parent
            visible: root.ruled
            view: StepModel.ruler
            clothRole: StepModel.clothRole
            accessibleName: StepModel.spoken.replace(/[{}]/g, "")
        }
        StripDrawing {
            anchors.fill: parent
            visible: root.striped && !root.ruled
            view: HoopModel.view
            at: HoopModel.position
            hooped: !HoopModel.layering
            head: HoopModel.head
            over: HoopModel.overSays.replace(/ (?=[^{]*\})/g, "\u00a0").replace(/[{}]/g, "")
            scanEnabled: false
            accessibleName: HoopModel.head
        }
    }
    KeyLine {
        visible: scene.visible && !root.upright
        vertical: true
        x: Theme.left ? scene.x : scene.width
        height: parent.height
    }
    Column {
        id: words
        x: (scene.visible && !root.upright && !Theme.left ? scene.width : 0) + Theme.margin * 1.5
        y: scene.visible && root.upright ? scene.height + Theme.margin : Math.max(Theme.margin, (parent.height - height * scale) / 2)
        // In a window too low for them all the words are set smaller, and none is lost.
        readonly property real room: root.height - Theme.margin - (scene.visible && root.upright ? scene.height + Theme.margin : Theme.margin)
        scale: Math.min(1, room / Math.max(1, implicitHeight))
        transformOrigin: Item.TopLeft
        width: parent.width - (scene.visible && !root.upright ? scene.width : 0) - 3 * Theme.margin
        spacing: root.air

        Word {
            width: parent.width
            cap: root.cap * 1.35
            bold: true
            text: !root.stepped ? Session.projectName : StepModel.finished ? qsTr("Nothing left to do here")
                  : root.heading !== "" ? root.heading : StepModel.title
        }
        Word {
            visible: root.working && StepModel.count > 1
            width: parent.width
            cap: root.cap
            color: Theme.colors.inkSoft
            text: qsTr("%1 of %2").arg(StepModel.done + 1).arg(StepModel.count)
        }
        Item {
            readonly property bool beside: number.implicitWidth + root.air + name.implicitWidth <= width
            visible: root.figured
            width: parent.width
            height: number.implicitHeight + (beside || root.named === "" ? 0 : name.contentHeight)
            FigureText {
                id: number
                figure: root.figure
                cap: Math.max(Theme.capSecond, Math.min(root.height * 0.16, words.width * 0.2))
                availableWidth: words.width
            }
            Word {
                id: name
                objectName: "figure-name"
                x: parent.beside ? number.implicitWidth + root.air : 0
                y: parent.beside ? number.footLine - baselineOffset : number.implicitHeight
                width: Math.min(implicitWidth, parent.width)
                cap: root.cap * 1.35
                text: root.named
            }
        }
        InlineLength {
            visible: text !== ""
            width: parent.width
            cap: root.cap
            lengthCap: root.cap * 1.5
            text: !root.stepped ? qsTr("No step is at hand.") : StepModel.finished ? StepModel.elsewhereText
                  : root.telling !== "" ? root.telling
                  : root.figured && StepModel.firstLine.length > 0 ? StepModel.firstLine : StepModel.doesText
        }
        Item {
            visible: root.working && StepModel.caution !== ""
            width: parent.width
            height: caution.implicitHeight
            Pictogram {
                id: mark
                name: "warning"
                width: root.cap * 1.3
                y: root.cap * 0.2
                ink: Theme.colors.caution
                ground: Theme.colors.paper
            }
            Word {
                id: caution
                x: mark.width + root.cap * 0.7
                width: parent.width - x
                cap: root.cap
                color: Theme.colors.caution
                text: StepModel.caution
            }
        }
        InlineLength {
            visible: root.working && text !== ""
            width: parent.width
            cap: root.cap
            color: Theme.colors.inkSoft
            text: root.trimming ? TrimModel.checkSays : StepModel.check
        }
    }
}
