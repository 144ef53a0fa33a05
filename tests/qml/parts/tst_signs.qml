// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "Pictogram, SwatchPinked, Selvage, SheetColumn"

    Component {
        id: sign
        Pictogram {
            width: 96
            height: 88
            ink: "#ff0000"
            ground: "#00ff00"
        }
    }
    Component {
        id: swatch
        SwatchPinked {
            width: 60
            height: 40
        }
    }
    Component {
        id: selvage
        Selvage {
            width: 117
            height: 300
        }
    }
    Component {
        id: column
        SheetColumn {
            height: 300
            Rectangle {
                width: 10
                height: 10
            }
        }
    }

    /** How many pixels of the picture satisfy `is`, every third looked at. */
    function count(picture: var, w: int, h: int, is: var): int {
        let found = 0;
        for (let y = 0; y < h; y += 3)
            for (let x = 0; x < w; x += 3)
                if (is(picture.pixel(x, y)))
                    ++found;
        return found;
    }

    function test_everySignIsPrinted_data() {
        return ["Fit", "Shop", "Cut", "Hoop", "Trim", "Join", "Edge", "undo", "back", "plus", "tick", "warning", "gear", "shelf"].map(tag => ({ tag }));
    }
    function test_everySignIsPrinted(data) {
        const s = createTemporaryObject(sign, test, { name: data.tag });
        waitForRendering(s);
        const red = count(grabImage(s), 96, 88, p => p.r > 0.8 && p.g < 0.2);
        verify(red > 15, data.tag + " printed " + red);
        verify(red < 32 * 29 * 0.8, data.tag + " is no blot");
    }
    function test_noSignOfThatName() {
        const s = createTemporaryObject(sign, test, { name: "nobody" });
        waitForRendering(s);
        compare(count(grabImage(s), 96, 88, p => p.r > 0.8 && p.g < 0.2), 0);
    }
    function test_swatchShowsItsOwnColour() {
        const s = createTemporaryObject(swatch, test, { colour: "#2040c0" });
        waitForRendering(s);
        const p = grabImage(s).pixel(30, 20);
        fuzzyCompare(p.b, 0xc0 / 255, 0.02);
        const points = s.outline(60, 40, 4);
        verify(points.every(q => q.x >= 0 && q.x <= 60 && q.y >= 0 && q.y <= 40));
    }
    function test_fringeIsOnTheOutside_data() {
        return [{ tag: "right hand", left: false }, { tag: "left hand", left: true }];
    }
    function test_fringeIsOnTheOutside(data) {
        Theme.left = data.left;
        const s = createTemporaryObject(selvage, test);
        waitForRendering(s);
        const picture = grabImage(s);
        let outer = 0, inner = 0;
        for (let y = 0; y < 300; ++y) {
            outer += picture.pixel(data.left ? 115 : 1, y).r < 0.75 ? 1 : 0;
            inner += picture.pixel(data.left ? 2 : 114, y).r < 0.75 ? 1 : 0;
        }
        verify(outer > inner, outer + " " + inner);
    }
    function test_columnHoldsItsContents() {
        const c = createTemporaryObject(column, test);
        compare(c.implicitWidth, Math.ceil(Theme.mm(76)));
        fuzzyCompare(c.innerWidth, Theme.mm(68), 1);
    }
}
