// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme
import "fractions.js" as Fractions

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
    /** What is wrong stands in the title's place. */
    property bool titleGives: false
    /** Kept free for what is wrong while nothing is. */
    property real saidRoom: 0

    /** As high as the value stands at the most: a fraction alone. */
    readonly property real most: Fractions.stack(cap, true, Theme.capNumeralLeast, Theme.pxPerMm)
    readonly property real twoLines: 2 * Theme.capWord * title.lineShare + Theme.mm(0.6)
    /** Its height with nothing wrong. */
    readonly property real bare: name.height + spacing + shown.height + spacing

    signal offerTaken(int index)

    spacing: Theme.mm(1.6)

    Item {
        id: name
        width: root.width
        height: root.titleGives ? Math.max(root.twoLines, title.implicitHeight, instead.height) : title.implicitHeight
        Word {
            id: title
            width: parent.width
            visible: !instead.visible
            text: root.title
            bold: true
            cap: Theme.capHead
        }
        CautionLine {
            id: instead
            width: parent.width
            height: implicitHeight
            text: root.titleGives ? root.error : ""
        }
    }
    Item {
        id: shown
        width: root.width
        height: Math.max(root.most, value.implicitHeight) + Theme.mm(2.4)
        FigureText {
            id: value
            // Digits stay where they are, with a fraction and without.
            y: Math.max(0, (root.most - implicitHeight) / 2)
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
    Item {
        width: root.width
        height: Math.max(root.saidRoom, said.implicitHeight)
        CautionLine {
            id: said
            width: parent.width
            height: implicitHeight
            text: root.titleGives ? "" : root.error
        }
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
