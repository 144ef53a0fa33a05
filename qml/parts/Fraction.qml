// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import "fractions.js" as Fractions

/**
 * A stacked fraction beside a whole number whose digits stand `cap` px high, or standing alone.
 * Its own numerals are 0.53 of that (0.62 alone), never under the floor for words; it is centred on
 * the middle of the item, which is the middle of the whole number.
 */
Item {
    id: root

    property string num
    property string den
    property real cap: Theme.capInText
    property bool alone: false
    property color color: Theme.colors.ink

    readonly property real numeral: Fractions.numeral(cap, alone, Theme.capNumeralLeast)
    readonly property real bar: Fractions.bar(numeral, Theme.pxPerMm)
    readonly property real air: Fractions.air(numeral, Theme.pxPerMm)
    /** How high it stands. */
    readonly property real stack: 2 * numeral + 2 * air + bar

    implicitWidth: Math.max(top.implicitWidth, foot.implicitWidth)
    implicitHeight: stack

    Numeral {
        id: top
        x: (root.width - width) / 2
        cap: root.numeral
        text: root.num
        color: root.color
    }
    Rectangle {
        y: root.numeral + root.air
        width: root.width
        height: root.bar
        color: root.color
    }
    Numeral {
        id: foot
        x: (root.width - width) / 2
        y: root.numeral + 2 * root.air + root.bar
        cap: root.numeral
        text: root.den
        color: root.color
    }
}
