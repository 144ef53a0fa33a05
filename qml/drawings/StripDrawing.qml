// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "strips.js" as Strips

/**
 * The hoop strip end to end, to scale, with the frame at the place under the finger. A finger, a knuckle or
 * the arrow keys move it from place to place; where the hand lifts it stays. The zero end is a black stop
 * with a 0; measured from the right it lies mirrored, its lettering does not.
 */
Fingertip {
    id: root

    /** {drawnIn, lengthMm, widthMm, blockAlongMm, blockAcrossMm, frameAlongMm, frameAcrossMm, barMm,
     * stepMm, tails, places: [{block, startMm, centreMm, alongMm, stitched, next}], patches} */
    property var view: null
    /** The hoop is on the strip: it is taken off before an iron comes near. */
    property bool hooped: true
    /** Which place lies under the frame. */
    property int at: 0
    property bool scanEnabled: true
    property string head
    /** What the machine is told, at the other end of the head where there is room. */
    property string sent
    /** Words at the far end when a block no longer fits there; empty when all fit. */
    property string over
    /** Figure in the outline after this one. */
    property var nextFigure: null
    property string accessibleName

    /** A place was chosen. */
    signal scanned(int place)
    signal opened()

    readonly property bool ready: (view?.lengthMm ?? 0) > 0 && width > 0 && height > 0
    readonly property real mm: Theme.pxPerMm
    readonly property var lie: ready ? Strips.lay(view, width, height, mm, zero.implicitWidth, headHeight,
                                                 tooFar.visible ? tooFar.implicitHeight + mm : 1.6 * mm) : null
    readonly property var places: view?.places ?? []
    readonly property var here: places[at] ?? null
    /** The line above the strip; pressing it may open more. */
    readonly property real headHeight: Math.max(headLine.height + Theme.mm(1.6), Theme.mm(7.4))
    property bool headOpens: false
    /** What the head says is to be minded before the machine is started. */
    property bool warns: false
    readonly property real widest: Theme.mm(30)

    Accessible.role: Accessible.Slider
    Accessible.name: accessibleName
    activeFocusOnTab: scanEnabled

    /** Where an item of width `w` starts when its middle lies at `x` of the right-handed sheet. */
    function middle(x: real, w: real): real {
        return (Theme.left ? width - x : x) - w / 2;
    }
    function px(lengthMm: real): real {
        return lie ? lie.x0 + lengthMm * lie.k : 0;
    }
    /** The finger is at `x` of this item; too wide a contact is a forearm or the cloth itself. */
    function scan(x: real, contact: real) {
        if (!scanEnabled || !lie || contact > widest || places.length === 0)
            return;
        const place = Strips.nearest(view, lie, Theme.left ? width - x : x);
        if (place !== at)
            root.scanned(place);
    }

    Keys.onPressed: event => {
        const step = ({ [Qt.Key_Right]: Theme.left ? -1 : 1, [Qt.Key_Left]: Theme.left ? 1 : -1 })[event.key];
        event.accepted = step !== undefined && scanEnabled;
        if (event.accepted && places[at + step] !== undefined)
            root.scanned(at + step);
    }

    listening: scanEnabled
    pushed: true
    onStruck: at => root.scan(at.x, contact)

    PrintCanvas {
        anchors.fill: parent
        shows: [root.lie, root.view]
        Accessible.ignored: true
        onPrinting: context => {
            if (root.lie)
                Strips.paint(context, DyedColors.forWork, root.view, root.lie, unit);
        }
    }
    StripHead {
        id: headLine
        width: parent.width
        text: root.head
        aside: root.sent
        opens: root.headOpens
        warns: root.warns
        onOpened: root.opened()
    }
    Word {
        id: zero
        visible: root.ready
        x: root.middle((root.lie?.x0 ?? 0) - root.unit * 18 - Theme.mm(1) - implicitWidth / 2, implicitWidth)
        y: root.lie ? root.lie.tapeTop + (root.lie.tape - height) / 2 : 0
        bold: true
        text: "0"
    }
    readonly property real unit: Theme.pxPerMm / 5.87

    // A paper tag at each block's top left, as it will be pinned.
    Repeater {
        model: root.ready ? root.places.length : 0
        Rectangle {
            id: tag
            required property int index
            // Read out once: a place is a map, which is made anew for every look into it.
            readonly property string block: root.places[index]?.block ?? ""
            readonly property real from: root.px(root.places[index]?.startMm ?? 0)
            readonly property bool chosen: index === root.at
            readonly property bool fits: width < (root.lie?.bw ?? 0) * 0.72
            visible: block !== "" && (fits || chosen)
            x: Theme.left ? root.width - from - (root.lie?.bw ?? 0) : from
            y: root.lie ? root.lie.mid - root.lie.bh / 2 : 0
            width: name.implicitWidth + Theme.mm(2)
            height: name.implicitHeight + Theme.mm(0.4)
            color: chosen ? Theme.colors.ink : Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: Theme.mm(0.3)
            Word {
                id: name
                anchors.centerIn: parent
                color: tag.chosen ? Theme.colors.raised : Theme.colors.ink
                bold: tag.chosen
                text: tag.block
                wrapMode: Text.NoWrap
            }
        }
    }
    // Figure of the place that follows: a paper flag that stands on the tape at that centre, for it is read there.
    Rectangle {
        id: following
        readonly property var place: root.places[root.at + 1] ?? null
        visible: root.ready && place !== null && !(place?.stitched ?? true) && (root.nextFigure?.valid ?? false)
                 && number.implicitWidth < (root.lie?.bw ?? 0) - Theme.mm(1)
        x: root.middle(root.px(place?.centreMm ?? 0), width)
        y: root.lie ? root.lie.tapeTop - height - Theme.mm(3.4) : 0
        width: Math.max(number.implicitWidth, nextWord.visible ? nextWord.implicitWidth : 0) + Theme.mm(2)
        height: flag.height + Theme.mm(1.6)
        color: Theme.colors.raised
        border.color: Theme.colors.ink
        border.width: Theme.mm(0.3)
        Rectangle {
            x: (parent.width - width) / 2
            y: parent.height
            width: Theme.mm(0.6)
            height: Theme.mm(3.4)
            color: Theme.colors.ink
        }
        Column {
            id: flag
            anchors.centerIn: parent
            width: parent.width - Theme.mm(2)
            Word {
                id: nextWord
                anchors.horizontalCenter: parent.horizontalCenter
                visible: (root.lie?.bh ?? 0) > Theme.mm(24)
                text: qsTr("next")
            }
            FigureText {
                id: number
                anchors.horizontalCenter: parent.horizontalCenter
                figure: root.nextFigure
                cap: Theme.capInText
                showUnit: false
                showLean: false
            }
        }
    }

    // The frame, its pointer to the tape and its grip: what moves is only moved, never painted anew.
    Item {
        id: frame
        visible: root.ready && root.here !== null && root.hooped
        width: (root.view?.frameAlongMm ?? 0) * (root.lie?.k ?? 0)
        height: (root.view?.frameAcrossMm ?? 0) * (root.lie?.k ?? 0)
        x: root.middle(root.px(root.here?.centreMm ?? 0), width)
        y: root.lie ? root.lie.mid - height / 2 : 0

        PrintCanvas {
            anchors.fill: parent
            shows: [frame.width, frame.height, root.view?.barMm]
            Accessible.ignored: true
            onPrinting: context => Strips.frame(context, Theme.colors, width, height,
                                                Math.max(Theme.mm(1.4), (root.view?.barMm ?? 3) * (root.lie?.k ?? 1)), unit)
        }
    }
    // A pin at the place itself, its thread down to the tape.
    ThreadDown {
        id: pointer
        readonly property bool drawn: root.view?.drawnIn ?? false
        visible: frame.visible
        x: root.middle(root.px((drawn ? root.here?.startMm : root.here?.centreMm) ?? 0), width)
        y: root.lie ? root.lie.mid - head / 2 : 0
        height: root.lie ? root.lie.tapeTop + root.lie.tape - y : 0
    }
    ChalkWedge {
        id: grip
        visible: frame.visible && root.scanEnabled
        x: Math.max(0, Math.min(root.width - width, pointer.x + (pointer.width - width) / 2))
        y: root.lie ? root.lie.tapeTop + Theme.mm(0.6) - height : 0
        held: drag.active
    }
    Word {
        id: tooFar
        visible: root.over.length > 0
        x: Theme.left ? Theme.margin : parent.width - width - Theme.margin
        y: root.lie ? Math.min(root.height - height, root.lie.tapeTop + root.lie.tape + Theme.mm(1)) : 0
        width: parent.width - 2 * Theme.margin
        horizontalAlignment: Theme.left ? Text.AlignLeft : Text.AlignRight
        color: Theme.colors.stop
        text: root.over
    }
    DragHandler {
        id: drag
        target: null
        enabled: root.scanEnabled
        dragThreshold: 2
        yAxis.enabled: false
        onActiveChanged: active ? Contacts.claim(root) : Contacts.release(root)
        onCentroidChanged: {
            if (active && Contacts.holder === root)
                root.scan(centroid.position.x, Math.max(centroid.ellipseDiameters.width, centroid.ellipseDiameters.height));
        }
    }
    FocusOutline { visible: root.activeFocus && root.scanEnabled }
}
