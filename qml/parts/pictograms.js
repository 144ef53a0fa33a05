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
    ]
};

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
