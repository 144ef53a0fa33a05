// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Drawings

PartCase {
    id: test
    name: "ClothFill, TableDrawing, PiecePicture"

    Component {
        id: cloth
        ClothFill {
            width: 120
            height: 90
            outlined: false
        }
    }
    Component {
        id: table
        TableDrawing {
            id: t
            width: 680
            height: 430
            accessibleName: "table with the runner"
            property var heard: []
            onDragged: (along, across) => heard.push([along, across])
            onStepped: (along, across) => heard.push([along, across])
        }
    }
    Component {
        id: picture
        PiecePicture {
            width: implicitWidth
            height: implicitHeight
        }
    }

    function runner(more: var): var {
        return Object.assign({
            shape: "rect", tableAlongMm: 1524, tableAcrossMm: 914.4, finishedAlongMm: 1219.2, finishedAcrossMm: 609.6, columns: 6, rows: 3,
            trimmedAlongMm: 203.2, trimmedAcrossMm: 203.2, outlineAlongMm: 177.8, outlineAcrossMm: 177.8, sashingMm: 25.4, edgeMm: 12.7,
            revealAlong: figure("6", "", "", "in"), revealAcross: figure("6", "", "", "in"), corner: null
        }, more);
    }
    function near(p: color, q: color): bool {
        return Math.abs(p.r - q.r) + Math.abs(p.g - q.g) + Math.abs(p.b - q.b) < 0.06;
    }

    function test_everyRoleHasItsToneAndMark_data() {
        return ["front", "back", "batting", "sashing", "patchA", "patchB", "waste", "table"].map(tag => ({ tag }));
    }
    function test_everyRoleHasItsToneAndMark(data) {
        const c = createTemporaryObject(cloth, test, { role: data.tag });
        waitForRendering(c);
        const seen = grabImage(c);
        let tone = 0, other = 0;
        for (let y = 0; y < 90; y += 2)
            for (let x = 0; x < 120; x += 2)
                near(seen.pixel(x, y), Theme.colors[data.tag]) ? ++tone : ++other;
        verify(tone > 0.3 * 60 * 45, data.tag + " tone " + tone);
        verify(other > 20, data.tag + " mark " + other);
    }
    function test_restIsPaleAndPlain() {
        const c = createTemporaryObject(cloth, test, { role: "rest" });
        waitForRendering(c);
        const seen = grabImage(c);
        verify(near(seen.pixel(10, 10), seen.pixel(77, 53)));
    }
    function test_scale() {
        const t = createTemporaryObject(table, test, { view: runner({}) });
        // One scale for everything: the table's and the piece's proportions are their own.
        fuzzyCompare(t.lie.table.w / t.lie.piece.w, 1524 / 1219.2, 1e-6);
        fuzzyCompare(t.lie.piece.w / t.lie.piece.h, 2, 1e-6);
        fuzzyCompare(t.lie.piece.x - t.lie.table.x, t.lie.table.x + t.lie.table.w - t.lie.piece.x - t.lie.piece.w, 1e-6);
    }
    function test_roundAndHanging() {
        const round = createTemporaryObject(table, test, { view: runner({ shape: "round", tableAlongMm: 1219, tableAcrossMm: 1219, finishedAlongMm: 600, finishedAcrossMm: 600 }) });
        verify(round.lie.round);
        const hangs = createTemporaryObject(table, test, { view: runner({ finishedAlongMm: 1930, revealAlong: Object.assign(figure("8", "", "", "in"), { minus: true }) }) });
        verify(hangs.lie.piece.w > hangs.lie.table.w);
        verify(hangs.lie.piece.x > 0);
    }
    function test_withoutASizeItSaysSo() {
        const t = createTemporaryObject(table, test);
        verify(!t.ready);
        compare(t.lie, null);
    }
    function test_cornerDrag_data() {
        return [{ tag: "right hand", left: false }, { tag: "left hand", left: true }];
    }
    function test_cornerDrag(data) {
        Theme.left = data.left;
        const t = createTemporaryObject(table, test, { view: runner({}), dragEnabled: true });
        waitForRendering(t);
        const p = t.lie.piece, k = t.lie.k;
        const x = data.left ? t.width - p.x - p.w : p.x + p.w, y = p.y + p.h;
        const out = data.left ? -1 : 1;
        mousePress(t, x, y);
        mouseMove(t, x + out * 10, y);
        mouseMove(t, x + out * 40, y);
        mouseRelease(t, x + out * 40, y);
        verify(t.heard.length > 0);
        const [along, across] = t.heard[t.heard.length - 1];
        // The corner goes out 40 px on one side; the piece grows on both.
        fuzzyCompare(along, 1219.2 + 2 * 40 / k, 2 * 12 / k);
        fuzzyCompare(across, 609.6, 2 * 3 / k);
    }
    function test_cornerByArrowKeys() {
        const t = createTemporaryObject(table, test, { view: runner({}), dragEnabled: true });
        for (let i = 0; i < t.children.length; ++i)
            if (t.children[i].held !== undefined)
                t.children[i].forceActiveFocus();
        keyClick(Qt.Key_Right);
        keyClick(Qt.Key_Up);
        compare(t.heard, [[1, 0], [0, -1]]);
    }
    function test_tableIsSeen() {
        const t = createTemporaryObject(table, test, { view: runner({}) });
        waitForRendering(t);
        const seen = grabImage(t), g = t.lie;
        verify(near(seen.pixel(Math.round(g.piece.x + 2), Math.round(g.piece.y + g.piece.h / 2)), Theme.colors.binding));
        compare(t.Accessible.name, "table with the runner");
    }
    /** A bound piece of two blocks with a patch each, 160 by 80 px. */
    function hung(made: var): var {
        const p = createTemporaryObject(picture, test, {
            toScale: 0.4, made,
            view: { finishedAlongMm: 400, finishedAcrossMm: 200, columns: 2, rows: 1, sashingMm: 0, edgeMm: 0, outlineAlongMm: 200, outlineAcrossMm: 200 },
            face: { block: "#c9bda2", sashing: "#c9bda2", binding: "#7a2030", back: "#48607a", bound: true, patches: [[{ colour: "#206040", widthMm: 80, heightMm: 80 }]], at: [] }
        });
        waitForRendering(p);
        return p;
    }
    function test_pieceShowsItsColours() {
        const p = hung([false, false]), seen = grabImage(p);
        verify(near(seen.pixel(p.air + 16, p.height - p.air - 22), Qt.rgba(0xc9 / 255, 0xbd / 255, 0xa2 / 255, 1)));
// Its corner is turned up and shows the other face.
        verify(near(seen.pixel(p.width - p.air - 10, p.height - p.air - 10), Qt.rgba(0x48 / 255, 0x60 / 255, 0x7a / 255, 1)));
    }
    function test_pieceIsToScale() {
        const p = hung([]);
        compare(p.implicitWidth - 2 * p.air, 160);
        compare(p.implicitHeight - p.drop - p.air, 80);
    }
    function test_stitchedBlocksAreToldFromThoseToCome() {
        const green = Qt.rgba(0x20 / 255, 0x60 / 255, 0x40 / 255, 1);
        const p = hung([true, false]), seen = grabImage(p);
        const patch = block => {
            let found = 0;
            for (let x = 0; x < 80; x += 1)
                for (let y = 10; y < 70; y += 1)
                    found += near(seen.pixel(p.air + 80 * block + x, p.drop + y), green) ? 1 : 0;
            return found;
        };
        verify(patch(0) > 200, patch(0));
        compare(patch(1), 0);
    }
}
