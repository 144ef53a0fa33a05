// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "marking.js" as Marking

/** The layers of a hoop strip being laid up on each other, numbered as they go down, with the strip's size. */
Item {
    id: root

    /** {lengthMm, widthMm} */
    property var view: null
    property var lengthFigure: null
    property var widthFigure: null
    property string head
    property bool headOpens: false
    property string accessibleName

    signal opened()

    readonly property bool beside: width >= Theme.mm(140)
    readonly property real keyWidth: beside ? Math.min(Theme.mm(72), width * 0.42) : width - 2 * Theme.margin
    readonly property real upper: title.visible ? title.height + Theme.mm(1) : Theme.mm(2)
    readonly property real roomWide: Math.max(1, beside ? width - keyWidth - 3 * Theme.margin : width - 2 * Theme.margin)
    readonly property real roomHigh: Math.max(1, height - upper - Theme.mm(2) - (beside ? 0 : key.height + Theme.gap))
    readonly property var lie: (view?.lengthMm ?? 0) > 0 ? Marking.layStrip(view, roomWide, roomHigh, Theme.pxPerMm, across.width + Theme.mm(1), along.height / 2 + Theme.mm(7)) : null
    /** Where the sheet of the strip starts. */
    readonly property real sheet: beside && Theme.left ? keyWidth + 2 * Theme.margin : Theme.margin

    /** Where an item of width `w` starts whose middle lies at `x` of the right-handed sheet. */
    function middle(x: real, w: real): real {
        return sheet + (Theme.left ? roomWide - x : x) - w / 2;
    }

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    StripHead {
        id: title
        visible: root.head !== ""
        width: parent.width
        text: root.head
        opens: root.headOpens
        onOpened: root.opened()
    }
    PrintCanvas {
        x: root.sheet
        y: root.upper
        width: root.roomWide
        height: root.roomHigh
        shows: [root.lie, along.width, across.height]
        Accessible.ignored: true
        onPrinting: context => {
            if (!root.lie)
                return;
            Marking.layers(context, DyedColors.forWork, root.lie, Theme.pxPerMm, unit);
            Marking.sizes(context, Theme.colors, root.lie, along.width + Theme.mm(3), across.height + Theme.mm(2), Theme.pxPerMm, unit);
        }
    }
    FigureText {
        id: along
        visible: root.lie !== null
        x: root.middle(root.lie ? root.lie.x + root.lie.w / 2 : 0, width)
        y: root.upper + (root.lie ? root.lie.y + root.lie.h + Theme.mm(5.5) : 0) - height / 2
        width: implicitWidth
        height: implicitHeight
        figure: root.lengthFigure
        cap: Theme.capInText
        showLean: false
    }
    FigureText {
        id: across
        visible: root.lie !== null
        x: root.middle(root.lie ? root.lie.x - Theme.mm(2) - width / 2 : 0, width)
        y: root.upper + (root.lie ? root.lie.y + root.lie.h / 2 : 0) - height / 2
        width: implicitWidth
        height: implicitHeight
        figure: root.widthFigure
        cap: Theme.capInText
        showUnit: false
        showLean: false
    }
    component Turn: Rectangle {
        id: disc
        property int number: 1
        width: Theme.mm(8)
        height: width
        radius: width / 2
        color: Theme.colors.ink
        Word {
            anchors.centerIn: parent
            bold: true
            color: Theme.colors.raised
            text: disc.number
            Accessible.ignored: true
        }
    }
    Repeater {
        model: root.lie ? [(root.lie.batting + root.lie.x + root.lie.w) / 2, (root.lie.front + root.lie.batting) / 2 + Theme.mm(2), (root.lie.x + root.lie.front) / 2] : []
        Turn {
            required property real modelData
            required property int index
            number: index + 1
            x: root.middle(modelData, width)
            y: root.upper + root.lie.y + root.lie.h * 0.36 - height / 2
        }
    }
    Column {
        id: key
        x: root.beside ? (Theme.left ? Theme.margin : root.width - width - Theme.margin) : Theme.margin
        y: root.beside ? root.upper + Math.max(0, (root.height - root.upper - height) / 2) : root.height - height - Theme.mm(2)
        width: root.keyWidth
        spacing: Theme.mm(root.beside ? 0.8 : 1.4)
        Repeater {
            // As they go down.
            model: [
                //: how the backing lies on the table when a hoop strip is laid up
                qsTr("backing, wrong side up"),
                qsTr("batting"),
                //: how the front lies on the batting
                qsTr("front, right side up")]
            Item {
                id: line
                required property string modelData
                required property int index
                width: key.width
                height: Math.max(sign.height, says.implicitHeight)
                Turn {
                    id: sign
                    number: line.index + 1
                    x: Theme.left ? line.width - width : 0
                    anchors.verticalCenter: parent.verticalCenter
                }
                Word {
                    id: says
                    x: Theme.left ? 0 : sign.width + Theme.mm(2)
                    width: line.width - sign.width - Theme.mm(2)
                    anchors.verticalCenter: parent.verticalCenter
                    horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
                    text: line.modelData
                }
            }
        }
    }
}
