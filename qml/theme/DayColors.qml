// SPDX-License-Identifier: MIT
import QtQuick

/** Daylight: warm paper and blue-black ink. */
ColorSet {
    paper: "#ece7da"
    raised: "#faf7ef"
    ink: "#191b22"
    inkSoft: "#3f4147"
    line: "#7f786a"
    accent: "#173b6c"
    action: "#173b6c"
    actionInk: "#faf7ef"
    caution: "#6a3f00"
    stop: "#8c1420"
    front: "#ddcda9"
    frontMark: "#75643e"
    back: "#b9cbd8"
    backMark: "#2f557b"
    batting: "#f6f1e4"
    battingMark: "#7c7464"
    patchA: "#de9c77"
    patchAMark: "#6e2a12"
    patchB: "#f7ebc9"
    patchBMark: "#7c6430"
    stitched: "#191b22"
    echo: "#6b4e23"
    seam: "#173b6c"
    fold: "#08544c"
    blade: "#a8121f"
    rulerBody: "#5dabc6"
    rulerAlpha: 0.16
    rulerMark: "#17384a"
    hoop: "#2b2e36"
    hoopMark: "#ece7da"
    waste: "#e6dfcf"
    wasteMark: "#746c5c"
    table: "#cda77d"
    tableMark: "#74491f"
    sashing: "#efe3c6"
    sashingMark: "#7a6a45"
    binding: "#1d4e57"
    lineScale: 1
}
