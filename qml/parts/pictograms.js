// SPDX-License-Identifier: MIT
.pragma library

// The printed signs on a field of 48 by 44. Each is a list of layers, painted in order:
// path; `line` = stroke width, none for a solid; `cut` = painted in the ground's colour; `dash`.

const signs = {
    Fit: [
        { path: "M2 6 H46 V34 H2 Z", line: 3.4 },
        { path: "M9 13 H39 V27 H9 Z" },
        { path: "M19 12 V28 M29 12 V28", line: 2.4, cut: true },
        { path: "M7 36 V43 M41 36 V43", line: 3.4 }
    ],
    Shop: [
        { path: "M4 3 H21 V41 H4 Z" },
        { path: "M1 3 H24 M1 41 H24", line: 3.4 },
        { path: "M21 9 H43 C46 15 40 19 43 25 C46 31 40 33 43 37 H21 Z", line: 3.4 },
        { path: "M9 9 V35 M15.5 9 V35", line: 2, cut: true }
    ],
    Cut: [
        { path: "M3 2 H22 V42 H3 Z", line: 3.4 },
        { path: "M4 11 H12 M4 20 H15 M4 29 H12", line: 3 },
        { path: "M24.5 2 V42", line: 3, dash: [5, 3] },
        { path: "M24.5 27 A11.5 11.5 0 1 1 47.5 27 A11.5 11.5 0 1 1 24.5 27 Z" },
        { path: "M32.4 27 A3.6 3.6 0 1 1 39.6 27 A3.6 3.6 0 1 1 32.4 27 Z", cut: true }
    ],
    Hoop: [
        { path: "M0 8 H48 M0 36 H48", line: 2.6 },
        { path: "M5.5 3.5 H42.5 V40.5 H5.5 Z" },
        { path: "M12.5 10.5 H35.5 V33.5 H12.5 Z", cut: true },
        { path: "M24 13 L29 18 L24 23 L19 18 Z M24 22 L29 27 L24 32 L19 27 Z" }
    ],
    Trim: [
        { path: "M2 4 H34 V40 H2 Z" },
        { path: "M7.5 9.5 H28.5 V34.5 H7.5 Z", line: 2.2, cut: true },
        { path: "M39 2 V42 M46 2 V42 M39 8 L46 2 M39 16 L46 9 M39 24 L46 17 M39 32 L46 25 M39 40 L46 33", line: 2.2 }
    ],
    Join: [
        { path: "M1 6 H17 V38 H1 Z M31 6 H47 V38 H31 Z" },
        { path: "M19 6 H29 V38 H19 Z", line: 2.4 },
        { path: "M24 11 V15 M24 20 V24 M24 29 V33", line: 2.6 }
    ],
    Edge: [
        { path: "M4 42 V4 H46 V17 H17 V42 Z" },
        { path: "M3 3 L18 18", line: 2.6, cut: true },
        { path: "M22 22 H46 M22 22 V42", line: 2.6, dash: [4, 3] }
    ],
    undo: [{ path: "M10 14 H32 A10 10 0 0 1 32 34 H18 M20 4 L10 14 L20 24", line: 3.8 }],
    back: [{ path: "M44 22 H8 M22 7 L7 22 L22 37", line: 4.4 }],
    // The last stitch of a line taken out; a tape rolled in to its end.
    unpicked: [
        { path: "M44 13 H11 M21 2 L10 13 L21 24", line: 4.4 },
        { path: "M2 37 H13 M18 37 H29", line: 4.4 },
        { path: "M34 37 H48", line: 4.4, dash: [3.4, 3.4] }
    ],
    rolledIn: [
        { path: "M23 22 A3 3 0 0 1 29 22 A6 6 0 0 1 17 22 A9 9 0 0 1 35 22 A12 12 0 0 1 11 22 A15 15 0 0 1 41 22 A18 18 0 0 1 7 22", line: 3 },
        { path: "M7 21 V42", line: 3 },
        { path: "M1 40.5 H15", line: 4.4 }
    ],
    plus: [{ path: "M24 6 V38 M8 22 H40", line: 4.6 }],
    tick: [{ path: "M7 23 L19 35 L42 8", line: 5 }],
    warning: [
        { path: "M2 41 L24 3 L46 41 Z" },
        { path: "M22 16 H26 V29 H22 Z M22 32.5 H26 V36.5 H22 Z", cut: true }
    ],
    aloud: [
        { path: "M2 15 H11 L23 5 V39 L11 29 H2 Z" },
        { path: "M29 15 A10 10 0 0 1 29 29 M34 8 A19 19 0 0 1 34 36", line: 3.6 }
    ],
    gear: [
        { path: "M20.5 2 H27.5 L28.6 8 L33.2 10 L38.2 6.5 L43 11.4 L39.6 16.4 L41.5 20.8 L47.5 22 V26 L41.5 27.2 L39.6 31.6 L43 36.6 L38.2 41 L33.2 37.8 L28.6 39.6 L27.5 43 H20.5 L19.4 39.6 L14.8 37.8 L9.8 41 L5 36.6 L8.4 31.6 L6.5 27.2 L0.5 26 V22 L6.5 20.8 L8.4 16.4 L5 11.4 L9.8 6.5 L14.8 10 L19.4 8 Z" },
        { path: "M16 23.5 A8 8 0 1 1 32 23.5 A8 8 0 1 1 16 23.5 Z", cut: true }
    ],
    below: [
        { path: "M8 16 L24 32 L40 16", line: 6 }
    ],
    shelf: [
        { path: "M1 20 H47 M1 42 H47", line: 3.4 },
        { path: "M5 8 H20 V18 H5 Z M23 4 H34 V18 H23 Z M12 28 H28 V40 H12 Z M31 25 H42 V40 H31 Z" },
        { path: "M5 13 H20 M28.5 4 V18 M12 34 H28", line: 2, cut: true }
    ],
    // The heads of groups.
    price: [
        { path: "M1 6 H47 M6 6 V12 M15 6 V10 M24 6 V12 M33 6 V10 M42 6 V12", line: 2.6 },
        { path: "M2 16 H24 L20 20 L24 24 L20 28 L24 32 L20 36 L24 40 H2 Z" },
        { path: "M29 16 H46 V40 H29 L25 36 L29 32 L25 28 L29 24 L25 20 Z", line: 2.6 }
    ],
    kits: [
        { path: "M7 18 H45 V25 H7 A3.5 3.5 0 0 1 7 18 Z M7 27 H45 V34 H7 A3.5 3.5 0 0 1 7 27 Z M7 36 H45 V43 H7 A3.5 3.5 0 0 1 7 36 Z" },
        { path: "M21.5 17 V44", line: 3.6, cut: true },
        { path: "M21.5 16 C14 1 3 5 7 12 C10 17 17 16 21.5 16 Z M21.5 16 C29 1 40 5 36 12 C33 17 26 16 21.5 16 Z", line: 2.8 }
    ],
    batting: [
        { path: "M3 19 A15 15 0 1 1 33 19 A15 15 0 1 1 3 19 Z", line: 3 },
        { path: "M9.5 19 A8.5 8.5 0 1 1 26.5 19 A8.5 8.5 0 1 1 9.5 19 Z", line: 2.4 },
        { path: "M15 19 A3 3 0 1 1 21 19 A3 3 0 1 1 15 19 Z" },
        { path: "M18 34 H46 V42 H8", line: 3 },
        { path: "M20 38 H44", line: 2, dash: [4, 3] }
    ],
    stock: [
        { path: "M3 5 H34 L45 15 V24 H3 Z", line: 3 },
        { path: "M34 5 V15 H45 Z" },
        { path: "M3 25 H45 V40 H7 A7.5 7.5 0 0 1 3 25 Z" },
        { path: "M9 33 H42", line: 2, cut: true, dash: [4, 3] }
    ],
    figures: [
        { path: "M12 6 H38 M18 15 H38 M12 24 H38", line: 3.4 },
        { path: "M6 33 H44 M6 40 H44", line: 2.8 }
    ],
    file: [
        { path: "M8 2 H29 L40 13 V42 H8 Z", line: 3.2 },
        { path: "M29 2 V13 H40 Z" },
        { path: "M14 20 H22 V28 H14 Z M26 31 H34 V38 H26 Z" },
        { path: "M26.5 20.5 H33.5 V27.5 H26.5 Z M14.5 31.5 H21.5 V37.5 H14.5 Z", line: 2 }
    ],
    shade: [
        { path: "M3 4 H45 V40 H3 Z", line: 3.4 },
        { path: "M3 4 H24 V40 H3 Z" },
        { path: "M24 11 A11 11 0 0 0 24 33 Z", cut: true },
        { path: "M24 11 A11 11 0 0 1 24 33 Z" }
    ],
    note: [
        { path: "M4 2 H44 V30 L32 42 H4 Z", cut: true },
        { path: "M5.5 3.5 H42.5 V29 L31 40.5 H5.5 Z", line: 3.4 },
        { path: "M31 41 V29 H43 Z" },
        { path: "M12 12 H36 M12 20 H36 M12 28 H25", line: 3.2 }
    ],
    table: [
        { path: "M1 12 H47 V18 H1 Z" },
        { path: "M7 18 V43 M41 18 V43", line: 3.6 },
        { path: "M13 6 H35 V34 H13 Z", cut: true },
        { path: "M15 7 H33 V29 L28.5 33 L24 29 L19.5 33 L15 29 Z", line: 3 },
        { path: "M19 12 H29 V22 H19 Z" }
    ],
    blocks: [
        { path: "M3 3 H21 V20 H3 Z M27 24 H45 V41 H27 Z" },
        { path: "M28.5 4.5 H43.5 V18.5 H28.5 Z M4.5 25.5 H19.5 V39.5 H4.5 Z", line: 3 }
    ],
    seam: [
        { path: "M1 12 H20 V38 M47 12 H28 V38", line: 4.2 },
        { path: "M14 22 H34", line: 3, dash: [5, 2.5] }
    ],
    sashing: [
        { path: "M3.5 6.5 H14.5 V37.5 H3.5 Z M33.5 6.5 H44.5 V37.5 H33.5 Z", line: 3 },
        { path: "M19 2 H29 V42 H19 Z" }
    ],
    strip: [
        { path: "M0 11 H48 M0 33 H48", line: 3 },
        { path: "M6 17 H18 V27 H6 Z M30 17 H42 V27 H30 Z" },
        { path: "M24 6 V38", line: 2.6, dash: [4, 3] }
    ],
    cloths: [
        { path: "M8 4 H45 V14 H8 A5 5 0 0 1 8 4 Z M8 30 H45 V40 H8 A5 5 0 0 1 8 30 Z" },
        { path: "M8 18.5 H43.5 V25.5 H8 A3.5 3.5 0 0 1 8 18.5 Z", line: 3 },
        { path: "M9 9 H44 M9 35 H44", line: 1.8, cut: true }
    ],
    rulers: [
        { path: "M13 2 H35 V42 H13 Z", line: 3.2 },
        { path: "M14 9 H22 M14 16 H27 M14 23 H22 M14 30 H27 M14 37 H22", line: 2.6 }
    ],
    // Cloth that covers what is below, one corner lifted; and folded back from what it covered.
    covered: [
        { path: "M5 3 H43 V21 L23 41 H5 Z" },
        { path: "M44 20 H22 V42 Z", cut: true },
        { path: "M41 23.5 H25.5 V39 Z", line: 3 }
    ],
    uncovered: [
        { path: "M5 3 H43 L5 41 Z" },
        { path: "M10 9 H31 L10 30 Z", cut: true },
        { path: "M43 10 V41 H12", line: 2.6, dash: [4, 4] }
    ]
};
signs.hoop = signs.Hoop;
signs.edge = signs.Edge;

/** Paints the sign; true when there is one of that name. */
function paint(context, name, ink, ground) {
    const layers = signs[name];
    if (!layers)
        return false;
    for (const layer of layers) {
        context.beginPath();
        context.path = layer.path;
        const colour = layer.cut ? ground : ink;
        if (layer.line === undefined) {
            context.fillStyle = colour;
            context.fill();
            continue;
        }
        context.strokeStyle = colour;
        context.lineWidth = layer.line;
        context.lineJoin = "miter";
        context.lineCap = "butt";
        context.setLineDash((layer.dash ?? []).map(d => d / layer.line));
        context.stroke();
    }
    return true;
}
