// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "edges.js" as Edges

/**
 * The piece's outline with its blocks, to scale and never mirrored: its readings on sides and diagonals, or the
 * binding laid round with the places of its joins, or rounded corners and how they bite.
 */
Item {
    id: root

    /** {alongMm, acrossMm, columns, rows, blockAlongMm, blockAcrossMm, sashingMm, outsideMm, seamMm, radiusMm, bitesMm,
     *  depthMm, scallopsAlong, scallopsAcross, framed} */
    property var view: null
    /** "square": readings; "frame": not bound yet; "bind": binding and joins; else the finished edge. */
    property string phase
    /** Six {says, figure}; empty for none. */
    property var readings: []
    /** [{side, fromMm, figure}], the first where the binding closes. */
    property var joins: []
    /** Each with its distance from the corner it is measured from: the left one, at the sides the upper. */
    property bool figured: false
    /** More than 0: only its top left corner, so many millimetres of it. */
    property real cornerMm: 0
    /** That corner runs on to the sheet's far sides, however wide it is. */
    property bool wide: false
    /** Of a curved edge: the radius of its corners, or how deep its scallops are; null to say neither. */
    property var curve: null
    /** Its scallops are counted on its top and at its left. */
    property bool counted: false
    property string accessibleName

    readonly property bool curved: (curve?.valid ?? false) && w > 0 && phase !== "square" && phase !== "frame"
    /** Where the curve's reading ends and its plate lies. */
    readonly property var bow: curved ? Edges.bow(view, x0, y0, scale_, w, h) : null
    readonly property bool measuring: phase === "square" && readings.length === 6
    readonly property real pad: measuring ? Theme.mm(6) : phase === "bind" ? (figured ? Theme.mm(17) : Theme.mm(11)) : Theme.mm(4)
    readonly property real padSide: measuring ? Theme.mm(10) : pad
    /** The widest of the plates with figures at the left side, and at the right one. */
    property real widestLeft: 0
    property real widestRight: 0
    readonly property bool plated: phase === "bind" && figured
    readonly property real padLeft: plated ? Math.max(Theme.mm(8), widestLeft + Theme.mm(5)) : padSide
    readonly property real padRight: plated ? Math.max(Theme.mm(8), widestRight + Theme.mm(5)) : padSide

    function measureTags() {
        let left = 0, right = 0;
        for (let i = 0; i < tags.count; ++i) {
            const side = root.joins[i]?.side ?? 0, wide = tags.itemAt(i)?.width ?? 0;
            left = side === 3 ? Math.max(left, wide) : left;
            right = side === 1 ? Math.max(right, wide) : right;
        }
        widestLeft = left;
        widestRight = right;
    }
    readonly property bool near: cornerMm > 0
    readonly property real scale_: near ? Math.max(0, Math.min(width, height) - pad) / cornerMm : view && view.alongMm > 0 && view.acrossMm > 0
                                   ? Math.max(0, Math.min((width - padLeft - padRight) / view.alongMm, (height - 2 * pad) / view.acrossMm)) : 0
    readonly property real w: view ? view.alongMm * scale_ : 0
    readonly property real h: view ? view.acrossMm * scale_ : 0
    readonly property real x0: near && wide ? pad : near ? (width - Math.min(width, height)) / 2 + pad : padLeft + (width - padLeft - padRight - w) / 2
    readonly property real y0: near ? pad : (height - h) / 2

    clip: near
    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        anchors.fill: parent
        shows: [root.view, root.phase, root.joins, root.figured, root.measuring, root.w, root.curved]
        mirrored: false
        Accessible.ignored: true
        onPrinting: context => {
            if (root.w <= 0)
                return;
            const g = { x: root.x0, y: root.y0, w: root.w, h: root.h, s: root.scale_ };
            Edges.piece(context, DyedColors.forWork, root.view, g, root.phase !== "square" && root.phase !== "frame", unit);
            if (root.measuring)
                Edges.diagonals(context, Theme.colors, g, unit);
            if (root.bow)
                Edges.bowed(context, Theme.colors, root.bow, Theme.pxPerMm, unit);
            if (root.phase === "bind" && root.figured)
                Edges.reaches(context, Theme.colors, g, root.joins, Theme.pxPerMm, unit);
            if (root.phase === "bind")
                Edges.joins(context, DyedColors.forWork, root.view, g, root.joins, Theme.pxPerMm, unit);
        }
    }
    // Each reading beside what it was read on.
    Repeater {
        model: root.measuring ? 6 : 0
        Rectangle {
            id: plate
            required property int index
            // What nobody read is no reading.
            visible: root.readings[index]?.taken ?? true
            readonly property var at: Edges.readingAt(index, root.x0, root.y0, root.w, root.h, width, height)
            x: Math.max(0, Math.min(root.width - width, at[0]))
            y: Math.max(0, Math.min(root.height - height, at[1]))
            width: length.implicitWidth + Theme.mm(2)
            height: length.implicitHeight + Theme.mm(1)
            color: Theme.colors.raised
            FigureText {
                id: length
                anchors.centerIn: parent
                figure: root.readings[plate.index]?.figure ?? null
                cap: Theme.mm(5)
                showUnit: false
                showLean: false
            }
        }
    }
    Rectangle {
        objectName: "curve"
        visible: root.bow !== null
        x: Math.max(0, Math.min(root.width - width, (root.bow?.x ?? 0) - width / 2))
        y: Math.max(0, Math.min(root.height - height, (root.bow?.deep ?? false) ? root.bow.y + Theme.mm(5) : (root.bow?.y ?? 0) - height / 2))
        width: bent.implicitWidth + Theme.mm(2)
        height: bent.implicitHeight + Theme.mm(1)
        color: Theme.colors.raised
        Row {
            id: bent
            anchors.centerIn: parent
            spacing: Theme.mm(1.4)
            // "radius 12 in", but "1 in deep".
            layoutDirection: root.bow?.deep ? Qt.LeftToRight : Qt.RightToLeft
            FigureText {
                figure: root.curve
                cap: Theme.mm(5)
            }
            Word {
                anchors.verticalCenter: parent.verticalCenter
                wrapMode: Text.NoWrap
                //: how deep the scallops are cut
                text: root.bow?.deep ? qsTr("deep")
                    //: of a rounded corner
                    : qsTr("radius")
            }
        }
    }
    Repeater {
        model: root.counted && root.w > 0 ? [root.view.scallopsAlong, root.view.scallopsAcross] : []
        Rectangle {
            id: count
            required property int modelData
            required property int index
            x: root.x0 + (index === 0 ? root.w / 2 : root.view.depthMm * root.scale_ + Theme.mm(5)) - width / 2
            y: root.y0 + (index === 0 ? root.view.depthMm * root.scale_ + Theme.mm(5) : root.h / 2) - height / 2
            width: number.implicitWidth + Theme.mm(3)
            height: number.implicitHeight + Theme.mm(2)
            color: Theme.colors.raised
            FigureText {
                id: number
                anchors.centerIn: parent
                figure: ({ whole: String(count.modelData), text: String(count.modelData) })
                cap: Theme.mm(5)
                accessibleIgnored: true
            }
        }
    }
    Repeater {
        id: tags
        model: root.phase === "bind" ? root.joins.length : 0
        Rectangle {
            id: tag
            required property int index
            readonly property real air: Theme.mm(root.figured ? 3.6 : 1.6)
            readonly property var at: Edges.tagAt(root.joins[index] ?? null, root.x0, root.y0, root.scale_, root.w, root.h, width, height, air, index > 0 ? tags.itemAt(0) : null)
            x: Math.max(0, Math.min(root.width - width, at[0]))
            y: at[1]
            width: Math.max(Theme.mm(8), row.implicitWidth + Theme.mm(2))
            height: root.figured ? Math.max(Theme.mm(8), row.implicitHeight + Theme.mm(1.6)) : Theme.mm(8)
            color: index === 0 ? Theme.colors.ink : Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: Theme.key
            onWidthChanged: root.measureTags()
            Component.onCompleted: root.measureTags()
            Row {
                id: row
                anchors.centerIn: parent
                spacing: Theme.mm(2.4)
                Word {
                    anchors.verticalCenter: parent.verticalCenter
                    bold: !root.figured
                    color: tag.index === 0 ? Theme.colors.raised : Theme.colors.ink
                    //: the place where the binding begins and closes
                    text: tag.index === 0 ? qsTr("begin") : tag.index
                    wrapMode: Text.NoWrap
                }
                FigureText {
                    visible: root.figured
                    figure: root.joins[tag.index]?.figure ?? null
                    cap: Theme.mm(5)
                    color: tag.index === 0 ? Theme.colors.raised : Theme.colors.ink
                    showUnit: false
                    showLean: false
                }
            }
        }
    }
}
