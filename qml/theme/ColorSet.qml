// SPDX-License-Identifier: MIT
import QtQuick

/** One complete set of colours: a tone for every use, and a tone and a mark for every drawing role. */
QtObject {
    required property color paper // ground of drawings and of the band
    required property color raised // ground of figures and targets
    required property color ink // words and key lines
    required property color inkSoft // stations not in use, asides
    required property color line // fringe and pin holes of the band; targets not yet possible
    required property color accent // line in use, rings, stops
    required property color action // the one solid target
    required property color actionInk // words on the solid target
    required property color caution // always with a mark or words as well
    required property color stop // always with words as well
    required property color front // cloth of the front
    required property color frontMark
    required property color back // cloth of the back
    required property color backMark
    required property color batting // the layer between
    required property color battingMark
    required property color patchA // first patch
    required property color patchAMark
    required property color patchB // second patch
    required property color patchBMark
    required property color stitched // stitched outline
    required property color echo // echo line inside the outline
    required property color seam // seam, laddered
    required property color fold // fold, long dash and two dots
    required property color blade // blade, chevrons away from the body
    required property color rulerBody // tint of a ruler; overprints what lies beneath
    required property real rulerAlpha // 0 to 1: how strongly a ruler tints
    required property color rulerMark // graduations
    required property color hoop // hoop frame
    required property color hoopMark
    required property color waste // cloth that falls away
    required property color wasteMark
    required property color table // table top
    required property color tableMark
    required property color sashing // sashing cloth
    required property color sashingMark
    required property color binding // binding band
    required property real lineScale // 1 or more: how much wider lines are drawn
}
