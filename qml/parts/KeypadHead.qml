// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** What is being entered: its name, the value as typed, what is wrong with it and what would do. */
Column {
    id: root

    property string title
    /** Height of the value's capitals. */
    property real cap: Theme.capSecond
    property var figure: null
    /** True while the value stands as it was: the first key replaces it. */
    property bool untouched: false
    property string error
    property var offers: []

    signal offerTaken(int index)

    spacing: Theme.mm(1.6)

    Word {
        width: root.width
        visible: text !== ""
        text: root.title
        bold: true
        cap: Theme.capHead
    }
    Item {
        width: root.width
        height: value.implicitHeight + Theme.mm(2.4)
        FigureText {
            id: value
            figure: root.figure
            cap: root.cap
            color: root.untouched ? Theme.colors.inkSoft : Theme.colors.ink
            availableWidth: root.width
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: root.error !== "" ? Theme.keyBold : Theme.key
            color: root.error !== "" ? Theme.colors.caution : Theme.colors.ink
        }
    }
    CautionLine {
        width: root.width
        text: root.error
    }
    Flow {
        width: root.width
        spacing: Theme.gap
        visible: root.offers.length > 0
        Repeater {
            model: root.offers
            CutButton {
                required property var modelData
                width: Math.min(implicitWidth, root.width)
                height: Math.max(Theme.step, contentHeight)
                text: modelData.says
                onClicked: root.offerTaken(modelData.index)
            }
        }
    }
}
