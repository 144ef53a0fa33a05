// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts
import Matside.Theme

/**
 * What stands in the way, said in full above the groups; a press leads to its field. A caution stops nothing:
 * until it is pressed it takes two lines, or says the first thing of it, and the groups keep their place.
 */
Item {
    id: root

    required property int index
    required property string at
    required property string says
    required property bool caution
    required property var offers

    property bool open: false
    /** It has a field to lead to. */
    property bool leads: false

    /** So many more are folded under it. */
    property int more: 0
    /** The height of what stands beside it. */
    property real least: 0

    signal turned()
    signal led()

    readonly property real textX: mark.x + mark.width + Theme.gap

    /** It would take too much of the list. */
    readonly property bool lengthy: caution && (whole.lineCount > 2 || more > 0) && /[;.!?](\s|$)/.test(says)
    readonly property string gist: lengthy ? (says.match(/^.*?(?=[;.!?](\s|$))/)?.[0] ?? says) + " …" : says
    //: after the first of several cautions; %1 is how many more there are
    readonly property string others: more > 0 ? " " + qsTr("and %1 more").arg(more) : ""

    implicitHeight: head.height + (row.visible ? row.implicitHeight : 0)
    height: implicitHeight

    Pressable {
        id: head
        enabled: root.caution || root.leads
        width: parent.width
        height: Math.max(Theme.step, root.least, line.height + Theme.mm(1))
        inList: true
        accessibleName: root.says + root.others
        Accessible.role: Accessible.Button
        Accessible.checkable: root.caution
        Accessible.checked: root.open
        onClicked: {
            if (root.caution)
                root.turned();
            else
                root.led();
        }

        Rectangle {
            anchors.fill: parent
            color: head.pressed ? Theme.colors.ink : Theme.colors.raised
        }
        KeyLine {
            width: parent.width
        }
        Pictogram {
            id: mark
            x: Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            name: "warning"
            width: Theme.mm(6)
            ink: line.color
            ground: Theme.colors.raised
        }
        Word {
            id: line
            x: root.textX
            anchors.verticalCenter: parent.verticalCenter
            width: sign.x - x - Theme.gap
            bold: true
            color: head.pressed ? Theme.colors.raised : root.caution ? Theme.colors.caution : Theme.colors.stop
            //: the head of a line that warns of something but stops nothing
            text: root.open ? qsTr("Look at this") : root.gist + root.others
            Accessible.ignored: true
        }
        Word {
            id: whole
            visible: false
            width: line.width
            bold: true
            text: root.says
        }
        CoverSign {
            id: sign
            visible: root.caution || root.leads
            x: parent.width - width - Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            open: root.open
            ink: line.color
            ground: head.pressed ? Theme.colors.ink : Theme.colors.raised
        }
        FocusOutline { visible: head.keyboardFocus }
    }
    ProblemRow {
        id: row
        visible: root.caution ? root.open : root.offers.length > 0
        x: Theme.margin
        y: head.height
        width: parent.width - 2 * x
        index: root.index
        at: root.at
        says: root.caution ? root.says : ""
        caution: root.caution
        offers: root.offers
    }
}
