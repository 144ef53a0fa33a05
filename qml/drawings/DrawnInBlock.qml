// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "striplets.js" as Striplets

/** A block as it was sent, dotted, and as it came, drawn in: each measure stands at the arrows of its way: along the strip, which lies level, at the side, across it under the block. */
Item {
    id: root

    /** {along, across, alongSays, acrossSays, alongMm, acrossMm} */
    property var view: null
    property string accessibleName

    readonly property real side: Math.max(along.implicitWidth, alongWord.implicitWidth) + Theme.mm(3)
    readonly property real foot: across.implicitHeight + key.height + Theme.mm(5)
    readonly property real room: Math.max(1, width - side)
    readonly property var lie: (view?.alongMm ?? 0) > 0 && height > foot ? Striplets.layDrawn(view, room, height - foot) : null

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    PrintCanvas {
        x: Theme.left ? root.side : 0
        width: root.room
        height: Math.max(1, root.height - root.foot)
        shows: [root.lie]
        mirrored: false
        Accessible.ignored: true
        onPrinting: context => {
            if (root.lie)
                Striplets.drawnIn(context, DyedColors.forWork, root.lie, unit);
        }
    }
    component Percent: Word {
        cap: root.width < Theme.mm(90) ? Theme.capInText : Theme.capThird
        bold: true
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
    Row {
        x: (Theme.left ? root.side : 0) + (root.room - width) / 2
        y: (root.lie ? root.lie.y + root.lie.h : 0) + Theme.mm(1.6)
        spacing: Theme.mm(2)
        Percent {
            id: across
            text: root.view?.acrossSays ?? ""
        }
        Word {
            anchors.verticalCenter: parent.verticalCenter
            //: across the strip
            text: qsTr("across")
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Column {
        readonly property real past: (root.lie ? root.lie.x + root.lie.w : 0) + Theme.mm(2)
        x: Theme.left ? root.width - past - width : past
        y: (root.lie ? root.lie.y + root.lie.h / 2 : 0) - height / 2
        Percent {
            id: along
            text: root.view?.alongSays ?? ""
        }
        Word {
            id: alongWord
            //: along the strip
            text: qsTr("along")
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }
    Column {
        id: key
        y: root.height - height
        width: root.width
        KeyTo {
            dotted: true
            //: the block's outline as the machine was told it
            text: qsTr("as sent")
        }
        KeyTo {
            //: the stitched block, smaller than it was sent; %1 is 2, 5, 10 or 20
            text: root.view ? qsTr("as it came, difference × %1").arg(Striplets.times(root.view)) : ""
        }
    }
    component KeyTo: Item {
        id: line
        property bool dotted: false
        property string text
        width: key.width
        height: words.implicitHeight
        PrintCanvas {
            id: sample
            x: Theme.left ? parent.width - width : 0
            y: Theme.mm(2.4)
            width: Theme.mm(11)
            height: Theme.mm(1.6)
            shows: line.dotted
            Accessible.ignored: true
            onPrinting: context => Striplets.sample(context, Theme.colors, line.dotted, width, height, unit)
        }
        Word {
            id: words
            x: Theme.left ? 0 : sample.width + Theme.mm(2.4)
            width: parent.width - sample.width - Theme.mm(2.4)
            horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
            text: line.text
        }
    }
}
