// SPDX-License-Identifier: MIT
pragma Singleton
import QtQuick

/**
 * Colours, sizes and type of every screen. Physical sizes are millimetres on the calibrated screen;
 * the ready sizes below are pixels. Type is measured by its cap height, never by its body.
 */
QtObject {
    id: theme

    /** "day", "lamp" or "contrast"; anything else is taken as day. */
    property string set: "day"
    /** Pixels to the millimetre of this screen, from the settings. */
    property real pxPerMm: 5.87
    /** True when the cutting hand is the left one: screens and drawings are mirrored, lettering never. */
    property bool left: false
    property bool reducedMotion: false
    /** True on a screen of about 8 in: targets take their least size and the band may fold. */
    property bool small: false

    readonly property ColorSet day: DayColors {}
    readonly property ColorSet lamp: LampColors {}
    readonly property ColorSet contrast: ContrastColors {}
    readonly property ColorSet colors: set === "lamp" ? lamp : set === "contrast" ? contrast : day

    /** The cloths the piece at hand is cut of: of "front", "back", "batting", "sashing" and "binding" each {print, colour}; drawings of it show them. */
    property var cloths: ({})

    readonly property int motion: reducedMotion ? 0 : 120
    /** Milliseconds in which a second tap is taken for a slip of the hand, not for a second wish. */
    readonly property int slip: 700
    /** So long nothing more is ticked off or confirmed, after it was and after it came up; tests that tap fast set it to 0. */
    property int pause: slip

    // Whole pixels: a drawing painted between two pixels shows its far edge again as a hair line at the near one.
    readonly property real band: Math.ceil(mm(20))
    readonly property real column: Math.ceil(mm(76))
    readonly property real margin: mm(4)
    readonly property real gap: mm(3)
    readonly property real gapTargets: mm(6)
    readonly property real target: mm(small ? 20 : 25)
    readonly property real targetLeast: mm(20)
    readonly property real control: mm(11.6)
    readonly property real step: mm(13)
    readonly property real chamfer: mm(1.6)
    readonly property real focusGap: mm(0.8)
    readonly property real key: mm(0.42) * colors.lineScale
    readonly property real keyThin: mm(0.22) * colors.lineScale
    readonly property real keyBold: mm(0.8) * colors.lineScale

    readonly property real capFigure: mm(25)
    readonly property real capSecond: mm(12)
    readonly property real capThird: mm(8)
    readonly property real capInText: mm(6.5)
    readonly property real capAction: mm(6)
    readonly property real capHead: mm(5.4)
    readonly property real capWord: mm(4)
    /** No numeral of a fraction is drawn smaller, so that it stays as legible as a word. */
    readonly property real capNumeralLeast: mm(3.94)

    readonly property FontLoader regularFace: FontLoader { source: "fonts/Regular.font" }
    readonly property FontLoader boldFace: FontLoader { source: "fonts/Bold.font" }
    readonly property string family: regularFace.name

    /** Pixels of so many millimetres. */
    function mm(millimetres: real): real {
        return millimetres * pxPerMm;
    }

    /** The font size, in pixels, whose capitals stand `cap` pixels high: B612 stands 0.75 of its size. */
    function fontSize(cap: real): int {
        return Math.max(1, Math.round(cap / 0.75));
    }
}
