// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Drawings

PartCase {
    id: test
    name: "RulerDrawing"

    Component {
        id: made
        RulerDrawing {
            width: 717
            height: 700
            accessibleName: "where the rulers lie"
        }
    }

    function two(more: var): var {
        return Object.assign({
            show: true, layers: 2, firstName: "square", firstLengthIn: 12.5, firstWidthIn: 12.5, lineIn: 7.25, lineFigure: figure("7", "1", "4", "in"),
            on: "cut-edge", secondName: "long", secondLengthIn: 24, secondWidthIn: 6, secondFigure: figure("6", "", "", "in"),
            keepIn: 13.25, cutLengthIn: 20.25, clothLengthIn: 120, fence: "long-enough"
        }, more);
    }
    function one(more: var): var {
        return two(Object.assign({ firstName: "long", firstLengthIn: 24, firstWidthIn: 6, lineIn: 4.5, keepIn: 4.5, secondName: "", secondWidthIn: 0, secondLengthIn: 0, secondFigure: null }, more));
    }
    function near(p: color, q: color): bool {
        return Math.abs(p.r - q.r) + Math.abs(p.g - q.g) + Math.abs(p.b - q.b) < 0.08;
    }

    function test_twoRulersAddUp() {
        // The line on the cut edge and the width of the butted ruler make the strip (trade practice: 7 1/4 + 6 = 13 1/4).
        const g = createTemporaryObject(made, test, { view: two({}) }).lie;
        fuzzyCompare(g.butt - g.line, 7.25 * g.k, 1e-6);
        fuzzyCompare(g.blade - g.butt, 6 * g.k, 1e-6);
        fuzzyCompare(g.line, g.edge, 1e-6);
        fuzzyCompare(g.foot - g.cutTop, 20.25 * g.k, 1e-6);
        verify(g.firstLeft >= 0 && g.blade < 717);
    }
    function test_everythingIsOnTheSheet_data() {
        return [{ tag: "two rulers", view: two({}) }, { tag: "one ruler", view: one({}) },
                { tag: "long names", view: two({ firstName: "großes Quadrat", secondName: "langes breites Lineal" }) },
                { tag: "one ruler, long name", view: one({ firstName: "langes breites Lineal" }) },
                { tag: "narrow strip", view: one({ lineIn: 1.5, keepIn: 1.5, lineFigure: figure("1", "1", "2", "in") }) },
                { tag: "one layer, slid", view: one({ layers: 1, cutLengthIn: 42, fence: "slide" }) },
                { tag: "strip turned", view: one({ layers: 1, firstLengthIn: 12.5, firstWidthIn: 12.5, lineIn: 8.5, keepIn: 8.5, cutLengthIn: 2.5 }) },
                { tag: "straighten", view: one({ on: "fold", lineIn: 0, keepIn: 0, lineFigure: null }) },
                { tag: "trim", view: one({ on: "outline", layers: 1, firstLengthIn: 12.5, firstWidthIn: 12.5, lineIn: 0.5, keepIn: 8, cutLengthIn: 10 }) },
                { tag: "mat", view: one({ fence: "mat", firstName: "", firstLengthIn: 0, firstWidthIn: 0, lineIn: 20, keepIn: 20 }) }];
    }
    function test_everythingIsOnTheSheet(data) {
        for (const left of [false, true]) {
            Theme.left = left;
            const d = createTemporaryObject(made, test, { view: data.view });
            waitForRendering(d);
            const g = d.lie;
            verify(g.blade > 0 && g.blade < 717, data.tag + " blade " + g.blade);
            verify(g.foot > g.cutTop && g.foot < 700 && g.cutTop > 0, data.tag + " cloth " + g.cutTop + ".." + g.foot);
            compare(overflowing(d), [], data.tag);
            // The blade is where the layout says, on the other side for the other hand.
            const x = Math.round(left ? 717 - g.blade : g.blade);
            const seen = grabImage(d);
            const y = Math.round(Math.max(g.head, 0) + 6);
            verify([x - 1, x, x + 1].some(a => near(seen.pixel(a, y), Theme.colors.blade)), data.tag + " blade not at " + x);
        }
    }
    function test_letteringIsNotTurnedOver() {
        Theme.left = true;
        const d = createTemporaryObject(made, test, { view: two({}) });
        // The measure under the second ruler stands under its mirrored middle, and reads forward: no item is flipped.
        const look = item => {
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                compare(child.scale, 1);
                compare(child.transform.length, 0);
                look(child);
            }
        };
        look(d);
    }
    function test_nothingToShow() {
        const d = createTemporaryObject(made, test, { view: two({ show: false }) });
        compare(d.lie, null);
        const none = createTemporaryObject(made, test);
        compare(none.lie, null);
        compare(none.Accessible.name, "where the rulers lie");
    }
    function test_changesWithTheView() {
        const d = createTemporaryObject(made, test, { view: two({}) });
        const before = d.lie.k;
        d.view = one({ cutLengthIn: 42, layers: 1, fence: "slide" });
        verify(d.lie.k < before);
    }
}
