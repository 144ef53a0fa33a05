// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Drawings

/** A join in section with its back strip doubled, filled or pared; an edge with scallops. */
PartCase {
    id: test
    name: "SectionDrawing, EdgeDrawing"

    Component {
        id: section
        SectionDrawing {
            width: 760
            height: 430
            seam: test.figure("", "1", "2", "in")
            fold: test.figure("", "5", "16", "in")
            held: test.figure("", "5", "32", "in")
        }
    }
    Component {
        id: edge
        EdgeDrawing {
            width: 700
            height: 700
            phase: "last"
        }
    }

    function join(more: var): var {
        return Object.assign({ backed: true, doubled: false, filled: false, seamMm: 12.7, finishedMm: 25.4, allowanceMm: 12.7,
                               foldMm: 7.9, catchMm: 4, loftMm: 3 }, more);
    }
    function piece(more: var): var {
        return Object.assign({ alongMm: 533.4, acrossMm: 533.4, columns: 3, rows: 3, blockAlongMm: 152.4, blockAcrossMm: 152.4,
                               sashingMm: 25.4, outsideMm: 12.7, seamMm: 6.35, radiusMm: 0, bitesMm: 12.7, depthMm: 25.4,
                               scallopsAlong: 3, scallopsAcross: 3 }, more);
    }
    function near(p: color, q: color): bool {
        return Math.abs(p.r - q.r) + Math.abs(p.g - q.g) + Math.abs(p.b - q.b) < 0.06;
    }
    /** How many of the pixels down a column are of a colour. */
    function downColumn(seen: var, x: real, top: real, foot: real, colour: color): int {
        let count = 0;
        for (let y = Math.ceil(top); y < foot; ++y)
            if (near(seen.pixel(Math.round(x), y), colour))
                ++count;
        return count;
    }
    function words(item: Item): string {
        const out = [];
        const look = child => {
            if (!child.visible)
                return;
            if (child.text !== undefined && child.contentWidth !== undefined)
                out.push(child.text);
            for (let i = 0; i < child.children.length; ++i)
                look(child.children[i]);
        };
        look(item);
        return out.join(" ");
    }

    function test_aDoubledStripHasNothingTurnedUnder() {
        const turned = createTemporaryObject(section, test, { view: join({}) });
        const doubled = createTemporaryObject(section, test, { view: join({ doubled: true, foldMm: 0 }) });
        verify(words(turned).includes("fold under"));
        verify(!words(doubled).includes("fold under") && words(doubled).includes("catch"));
        // The catch is to scale: 4 mm past the second seam.
        fuzzyCompare((doubled.foldAt - doubled.lie.seamB) / (doubled.lie.seamB - doubled.lie.seamA), 4 / 25.4, 1e-6);
        compare(overflowing(doubled).length, 0);
        waitForRendering(doubled);
        const g = doubled.lie;
        const seen = grabImage(doubled);
        // Past the seam lies cloth of the back, up to the fold and no farther.
        verify(downColumn(seen, doubled.foldAt - 4, g.foot, g.foot + 3 * g.cloth, Theme.colors.back) > 2);
        compare(downColumn(seen, doubled.foldAt + 6, g.foot + 2, g.foot + 3 * g.cloth, Theme.colors.back), 0);
    }
    function test_whatIsFilledLiesBetweenTheAllowances() {
        const s = createTemporaryObject(section, test, { view: join({ finishedMm: 38.1 }) });
        const g = s.lie, x = (g.edgeA + g.edgeB) / 2;
        fuzzyCompare((g.edgeB - g.edgeA) / g.scale, 12.7, 1e-6);
        waitForRendering(s);
        compare(downColumn(grabImage(s), x, g.top, g.foot, Theme.colors.batting), 0);
        s.view = join({ finishedMm: 38.1, filled: true });
        waitForRendering(s);
        tryVerify(() => downColumn(grabImage(s), x, g.top, g.foot, Theme.colors.batting) > 0.4 * g.batting);
    }
    function test_whatATestJoinLeavesIsSeenAndMeasured() {
        const s = createTemporaryObject(section, test, { view: join({ tested: true, gapMm: 4.8, finishedMm: 30.2 }),
                                                         gap: test.figure("", "3", "16", "in") });
        const stops = () => {
            const g = s.lie, seen = grabImage(s);
            let count = 0;
            for (let x = Math.min(g.gapA, g.gapB) + 4; x < Math.max(g.gapA, g.gapB) - 4; ++x)
                count += downColumn(seen, x, g.top, g.foot, Theme.colors.stop);
            return count;
        };
        fuzzyCompare((s.lie.gapB - s.lie.gapA) / s.lie.scale, 4.8, 1e-6);
        fuzzyCompare(s.lie.gapA, s.lie.edgeA, 1e-6);
        verify(words(s).includes("gap") && !words(s).includes("catch") && !words(s).includes("fold under"));
        compare(overflowing(s).length, 0);
        waitForRendering(s);
        tryVerify(() => stops() > 40);
        s.view = join({ tested: true, gapMm: -3.2, finishedMm: 22.2 });
        verify(words(s).includes("overlap"));
        fuzzyCompare((s.lie.gapA - s.lie.gapB) / s.lie.scale, 3.2, 1e-6);
        waitForRendering(s);
        tryVerify(() => stops() > 40);
        // Beside batting laid in, all that is left lies on its far side.
        s.view = join({ tested: true, filled: true, gapMm: 2, finishedMm: 40 });
        fuzzyCompare((s.lie.gapB - s.lie.gapA) / s.lie.scale, 2, 1e-6);
        verify(s.lie.gapA > s.lie.edgeA);
        s.view = join({ tested: true, gapMm: 0 });
        verify(!words(s).includes("gap") && !words(s).includes("overlap"));
    }
    function test_aCurvedEdgeSaysHowItCurves() {
        const e = createTemporaryObject(edge, test, { view: piece({ depthMm: 0, radiusMm: 100 }), curve: test.figure("4", "", "", "in") });
        verify(words(e).includes("radius"));
        // From the centre of the corner's arc out to the arc itself.
        fuzzyCompare(Math.hypot(e.bow.cx - e.bow.x1, e.bow.cy - e.bow.y1) / e.scale_, 100, 1e-6);
        fuzzyCompare((e.bow.cx - e.x0) / e.scale_, 100, 1e-6);
        e.view = piece({});
        verify(words(e).includes("deep") && !words(e).includes("radius"));
        fuzzyCompare((e.bow.y - e.bow.y1) / e.scale_, 25.4, 1e-6);
        e.curve = null;
        verify(!words(e).includes("deep"));
    }
    function test_theSeamIsCountedFromTheStrip() {
        // Larger allowances on the blocks: the strip's edge lies inside theirs.
        const wide = createTemporaryObject(section, test, { view: join({ finishedMm: 38.1, allowanceMm: 19.05 }) });
        fuzzyCompare((wide.lie.stripA - wide.lie.seamA) / wide.lie.scale, 12.7, 1e-6);
        fuzzyCompare((wide.lie.edgeA - wide.lie.stripA) / wide.lie.scale, 6.35, 1e-6);
    }
    function test_scallopsAreDrawnToScale() {
        const e = createTemporaryObject(edge, test, { view: piece({}) });
        waitForRendering(e);
        const seen = grabImage(e);
        const x = mm => Math.round(e.x0 + mm * e.scale_), y = mm => Math.round(e.y0 + mm * e.scale_);
        const chord = (533.4 - 50.8) / 3;
        const ground = seen.pixel(2, 2);
        // A crown reaches the raw edge and is bound there; an inside point lies 25.4 mm inside it.
        verify(near(seen.pixel(x(25.4 + chord / 2), y(3)), Theme.colors.binding));
        verify(near(seen.pixel(x(25.4 + chord), y(10)), ground));
        verify(near(seen.pixel(x(25.4 + chord), y(18)), ground));
        verify(!near(seen.pixel(x(25.4 + chord), y(29)), ground));
        // In the corner stands an inside point too.
        verify(near(seen.pixel(x(12), y(12)), ground));
        // Where the edge passes the outline it is drawn in the blade's colour, and nowhere when it does not.
        const blades = picture => {
            let count = 0;
            for (let px = 0; px < 700; px += 1)
                if (near(picture.pixel(px, y(20)), Theme.colors.blade))
                    ++count;
            return count;
        };
        verify(blades(seen) > 4);
        e.view = piece({ depthMm: 10, bitesMm: 0 });
        tryVerify(() => blades(grabImage(e)) === 0);
    }
}
