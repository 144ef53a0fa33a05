// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme

PartCase {
    name: "Theme"

    // Relative luminance and contrast ratio: WCAG 2.2, definitions of those terms.
    function luminance(c: color): real {
        const part = v => v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        return 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b);
    }
    function contrast(a: color, b: color): real {
        const x = luminance(a), y = luminance(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    function test_contrastOfKnownPair() {
        // Black on white is 21:1 (WCAG 2.2, definition of contrast ratio).
        fuzzyCompare(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21, 0.001);
    }

    function test_wordsAndLines_data() {
        return [{ tag: "day" }, { tag: "lamp" }, { tag: "contrast" }];
    }
    function test_wordsAndLines(data) {
        Theme.set = data.tag;
        const c = Theme.colors;
        // Words: 7:1, WCAG 2.2 SC 1.4.6.
        for (const ground of ["paper", "raised"])
            for (const word of ["ink", "inkSoft", "accent", "caution", "stop"])
                verify(contrast(c[word], c[ground]) >= 7, data.tag + ": " + word + " on " + ground + " " + contrast(c[word], c[ground]));
        verify(contrast(c.actionInk, c.action) >= 7, "words on the action");
        verify(contrast(c.ink, c.table) >= 7, "reveals on the table");
        // Marks and lines: 3:1, WCAG 2.2 SC 1.4.11.
        for (const role of ["front", "back", "batting", "patchA", "patchB", "sashing", "waste", "table"])
            verify(contrast(c[role + "Mark"], c[role]) >= 3, data.tag + ": mark of " + role);
        for (const line of ["stitched", "echo", "seam", "fold", "blade", "accent"])
            verify(contrast(c[line], c.front) >= 3, data.tag + ": " + line + " on the front");
    }

    function test_unknownSetIsDay() {
        Theme.set = "noon";
        compare(Theme.colors, Theme.day);
    }
    function test_millimetres() {
        Theme.pxPerMm = 4;
        compare(Theme.mm(25), 100);
        compare(Theme.target, 100);
        Theme.small = true;
        compare(Theme.target, 80);
    }
    function test_capHeightDecidesTheSize() {
        compare(Theme.fontSize(75), 100);
        verify(Theme.fontSize(0) >= 1);
    }
    function test_reducedMotion() {
        verify(Theme.motion > 0 && Theme.motion < 150);
        Theme.reducedMotion = true;
        compare(Theme.motion, 0);
    }
    function test_bothFacesAreEmbedded() {
        compare(Theme.regularFace.status, FontLoader.Ready);
        compare(Theme.boldFace.status, FontLoader.Ready);
        compare(Theme.boldFace.name, Theme.regularFace.name);
    }
}
