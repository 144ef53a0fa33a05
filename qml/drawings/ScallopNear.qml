// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "scallops.js" as Scallops

/** One scallop close to: how many of them there are, its chord over it, its depth beside it, its radius in it. */
Item {
    id: root

    /** {count, chord, radius, chordMm, radiusMm} */
    property var way: null
    property var depth: null
    property real depthMm: 0
    property real seamMm: 0
    property string says
    property string accessibleName

    readonly property real crown: head.height + chord.height + Theme.mm(5.2)
    readonly property real side: deep.width + Theme.mm(5)
    /** Too narrow for the words beside the figures. */
    readonly property bool tight: width < Theme.mm(50)
    readonly property var lie: (way?.radiusMm ?? 0) > 0 && width > side && height > crown
                               ? Scallops.lay(way, depthMm, width, height, crown, side, Theme.mm(2)) : null
    readonly property var half: lie ? Scallops.onRadius(lie, 0.42) : null

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName
    clip: true

    PrintCanvas {
        anchors.fill: parent
        shows: [root.lie, root.seamMm]
        mirrored: false
        Accessible.ignored: true
        onPrinting: context => {
            if (root.lie)
                Scallops.paint(context, DyedColors.forWork, root.lie, root.seamMm * root.lie.q / root.way.chordMm, Theme.pxPerMm, unit);
        }
    }
    Row {
        id: head
        height: count.implicitHeight
        x: Theme.mm(2)
        y: Theme.mm(1)
        spacing: Theme.mm(2)
        FigureText {
            id: count
            figure: ({ whole: String(root.way?.count ?? ""), text: "" })
            cap: Theme.capInText
            accessibleIgnored: true
        }
        Word {
            anchors.bottom: parent.bottom
            wrapMode: Text.NoWrap
            text: root.says
            Accessible.ignored: true
        }
    }
    /** A figure on a plate, its "a scant" small before it and its name over it. */
    component Plate: Rectangle {
        id: plate
        property var figure: null
        property string label
        width: row.width + Theme.mm(1.6)
        height: row.height + Theme.mm(0.6)
        color: Theme.colors.raised
        Column {
            id: row
            anchors.centerIn: parent
            Word {
                visible: text !== ""
                anchors.horizontalCenter: parent.horizontalCenter
                wrapMode: Text.NoWrap
                text: plate.label
                Accessible.ignored: true
            }
            Row {
                anchors.horizontalCenter: parent.horizontalCenter
                spacing: Theme.mm(1.2)
                Word {
                    visible: text !== ""
                    anchors.verticalCenter: parent.verticalCenter
                    wrapMode: Text.NoWrap
                    text: root.tight ? "" : plate.figure?.lean ?? ""
                    Accessible.ignored: true
                }
                FigureText {
                    figure: plate.figure
                    cap: Theme.mm(5)
                    showUnit: false
                    showLean: false
                    accessibleIgnored: true
                }
            }
        }
    }
    Plate {
        id: chord
        visible: root.lie !== null
        x: Math.max(0, Math.min(root.width - width, (root.lie?.mid ?? 0) - width / 2))
        y: head.y + head.height + Theme.mm(0.4)
        figure: root.way?.chord ?? null
    }
    Plate {
        id: deep
        visible: root.lie !== null
        x: Math.min(root.width - width, root.lie ? root.lie.x2 + 0.16 * root.lie.q + Theme.mm(4.4) : 0)
        y: Math.max(0, (root.lie ? (root.lie.crown + root.lie.level) / 2 : 0) - height / 2)
        figure: root.depth
    }
    Plate {
        visible: root.lie !== null
        x: Math.max(0, Math.min(root.width - width, (root.half?.x ?? 0) - width / 2))
        y: Math.min(root.height - height - Theme.mm(1), (root.half?.y ?? 0) - height / 2)
        figure: root.way?.radius ?? null
        //: the radius of an arc, short: over the figure on a drawing
        label: root.tight ? "" : qsTr("radius")
    }
}
