// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/**
 * How many are made, as strips: made ones solid, the next one bold. When the strips do not fit in
 * `availableWidth` (px, 0 for endless) it is said in words.
 */
Item {
    id: root

    property int total: 0
    property int done: 0
    property real availableWidth: 0

    readonly property real strip: Theme.mm(2.4)
    readonly property real pitch: Theme.mm(3.75)
    readonly property real stripsWidth: Math.max(0, total - 1) * pitch + strip + Theme.key
    readonly property bool asStrips: total <= 24 && (availableWidth <= 0 || stripsWidth <= availableWidth)
    //: a tally that is too long to draw: so many made of so many
    readonly property string words: qsTr("%1 of %2").arg(done).arg(total)

    implicitWidth: asStrips ? stripsWidth : says.implicitWidth
    implicitHeight: asStrips ? Theme.mm(6.2) : says.implicitHeight

    Accessible.role: Accessible.StaticText
    Accessible.name: words
    Accessible.ignored: total <= 0

    Repeater {
        model: root.asStrips ? root.total : 0
        Rectangle {
            required property int index
            x: Theme.key / 2 + index * root.pitch
            width: root.strip
            height: Theme.mm(6.2)
            color: index < root.done ? Theme.colors.ink : Theme.colors.raised
            border.color: Theme.colors.ink
            border.width: index === root.done ? Theme.keyBold : Theme.mm(0.3) * Theme.colors.lineScale
        }
    }
    Word {
        id: says
        visible: !root.asStrips && root.total > 0
        text: root.words
        bold: true
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
