// SPDX-License-Identifier: MIT
import QtQuick

/** High contrast: white ground, lines 1.35 times as wide. */
ColorSet {
    paper: "#ffffff"
    raised: "#ffffff"
    ink: "#000000"
    inkSoft: "#1c1c1c"
    line: "#4a4a4a"
    accent: "#00246b"
    action: "#00246b"
    actionInk: "#ffffff"
    caution: "#5a3200"
    stop: "#7d0012"
    front: "#f1e6c8"
    frontMark: "#4d3f1c"
    back: "#d9e6f0"
    backMark: "#0f3a66"
    batting: "#ffffff"
    battingMark: "#55503f"
    patchA: "#f3be9f"
    patchAMark: "#571a05"
    patchB: "#fff7dc"
    patchBMark: "#5a4510"
    stitched: "#000000"
    echo: "#5a3a0a"
    seam: "#00246b"
    fold: "#00453e"
    blade: "#9b0014"
    rulerBody: "#7fb9cc"
    rulerAlpha: 0.22
    rulerMark: "#0a2533"
    hoop: "#000000"
    hoopMark: "#ffffff"
    waste: "#ffffff"
    wasteMark: "#4a4a4a"
    table: "#ebd3b4"
    tableMark: "#573711"
    sashing: "#fbf4e0"
    sashingMark: "#5c4c22"
    binding: "#003940"
    lineScale: 1.35
}
