// SPDX-License-Identifier: MIT
import QtQuick

/** By lamp: dark grounds, every mark a light line. Lines keep 3:1, words 7:1. */
ColorSet {
    paper: "#19140f"
    raised: "#241d16"
    ink: "#f6e7cb"
    inkSoft: "#d3c0a0"
    line: "#8a7a62"
    accent: "#a9c8ea"
    action: "#1d3d62"
    actionInk: "#f6e7cb"
    caution: "#ffb95c"
    stop: "#ffa197"
    front: "#453a2b"
    frontMark: "#b09c77"
    back: "#2e3d4c"
    backMark: "#8fb1cf"
    batting: "#2b251d"
    battingMark: "#9b8d75"
    patchA: "#5e3423"
    patchAMark: "#e6a586"
    patchB: "#53472f"
    patchBMark: "#e3d2a0"
    stitched: "#f6e7cb"
    echo: "#c9a86e"
    seam: "#a9c8ea"
    fold: "#74d2be"
    blade: "#ff8a78"
    rulerBody: "#8cc3d4"
    rulerAlpha: 0.13
    rulerMark: "#bfe0ea"
    hoop: "#c9bba0"
    hoopMark: "#19140f"
    waste: "#211b14"
    wasteMark: "#93836a"
    table: "#35281a"
    tableMark: "#a5825b"
    sashing: "#3d3124"
    sashingMark: "#c0ab7e"
    binding: "#86bec4"
    lineScale: 1
}
