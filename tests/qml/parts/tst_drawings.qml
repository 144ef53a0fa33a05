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
            width: 120
            height: 80
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
    function test_pieceShowsItsColours() {
        const p = createTemporaryObject(picture, test, { columns: 6, rows: 3, frontColour: "#c9bda2", backColour: "#48607a", bindingColour: "#7a2030" });
        waitForRendering(p);
        const seen = grabImage(p);
        verify(near(seen.pixel(27, 37), Qt.rgba(0xc9 / 255, 0xbd / 255, 0xa2 / 255, 1)), seen.pixel(27, 37));
    }
}
