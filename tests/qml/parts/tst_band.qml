// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "Band"
    height: 800

    readonly property var seven: ["Fit", "Shop", "Cut", "Hoop", "Trim", "Join", "Edge"].map((name, station) => ({ name, station }))

    Component {
        id: made
        Band {
            id: band
            width: Theme.band
            height: 800
            stations: test.seven
            current: 2
            canUndo: true
            readonly property SignalSpy chosenSpy: SignalSpy {
                target: band
                signalName: "chosen"
            }
            readonly property SignalSpy undoSpy: SignalSpy {
                target: band
                signalName: "undo"
            }
            readonly property SignalSpy shelfSpy: SignalSpy {
                target: band
                signalName: "shelf"
            }
            readonly property SignalSpy readSpy: SignalSpy {
                target: band
                signalName: "read"
            }
        }
    }

    function cell(item: Item, text: string): Item {
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i];
            if (child.sign !== undefined && child.text === text && child.visible)
                return child;
            const inside = cell(child, text);
            if (inside)
                return inside;
        }
        return null;
    }

    function test_choosesAStation() {
        const band = createTemporaryObject(made, test);
        mouseClick(cell(band, "Join"));
        compare(band.chosenSpy.signalArguments[0][0], 5);
        mouseClick(cell(band, "Cut")); // already here
        compare(band.chosenSpy.count, 1);
        mouseClick(cell(band, "Shelf"));
        compare(band.shelfSpy.count, 1);
    }
    function test_presentStationIsSolid() {
        const band = createTemporaryObject(made, test);
        verify(cell(band, "Cut").solid);
        verify(!cell(band, "Fit").solid);
    }
    function test_undo() {
        const band = createTemporaryObject(made, test, { undoText: "Undo: strip 2 cut" });
        mouseClick(cell(band, "Undo"));
        compare(band.undoSpy.count, 1);
        compare(cell(band, "Undo").Accessible.name, "Undo: strip 2 cut");
        band.canUndo = false;
        mouseClick(cell(band, "Undo"));
        compare(band.undoSpy.count, 1);
    }
    function test_readsAloud() {
        const band = createTemporaryObject(made, test);
        compare(cell(band, "Read"), null);
        band.reads = true;
        for (const name of ["Shelf", "Undo", "Read"].concat(seven.map(s => s.name))) {
            const c = cell(band, name);
            verify(c.height >= Theme.mm(11.6) - 1, name + " " + c.height / Theme.pxPerMm);
        }
        compare(overflowing(band), []);
        mouseClick(cell(band, "Read"));
        compare(band.readSpy.count, 1);
        compare(cell(band, "Read").Accessible.name, "Read this step aloud");
        // Folded it stays over undo; the opened band needs its room.
        band.folded = true;
        verify(cell(band, "Read").y + cell(band, "Read").height <= cell(band, "Undo").y + 1);
        band.open = true;
        compare(cell(band, "Read"), null);
    }
    function test_cellsAreLargeEnough() {
        const band = createTemporaryObject(made, test);
        for (const name of ["Shelf", "Undo"].concat(seven.map(s => s.name))) {
            const c = cell(band, name);
            verify(c.height >= Theme.mm(11.6) - 1 && c.width >= Theme.mm(20) - 0.01, name + " " + c.height);
        }
        compare(overflowing(band), []);
    }
    function test_foldedIsOneButton() {
        const band = createTemporaryObject(made, test, { folded: true });
        verify(cell(band, "Cut") && cell(band, "Undo"));
        compare(cell(band, "Fit"), null);
        // It looks as if it opens, until it is open.
        const sign = findChild(band, "opens");
        verify(sign.visible && sign.x + sign.width <= band.width && sign.x >= band.width / 2);
        mouseClick(cell(band, "Cut"));
        verify(band.open);
        verify(!sign.visible);
        tryVerify(() => cell(band, "Hoop").y > 0);
        compare(band.chosenSpy.count, 0);
        mouseClick(cell(band, "Hoop"));
        compare(band.chosenSpy.signalArguments[0][0], 3);
        verify(!band.open);
    }
    function test_keyboardReachesEveryCell() {
        const band = createTemporaryObject(made, test);
        cell(band, "Shelf").forceActiveFocus();
        const seen = [];
        for (let i = 0; i < 9; ++i) {
            for (const name of ["Shelf", "Undo"].concat(seven.map(s => s.name)))
                if (cell(band, name).activeFocus)
                    seen.push(name);
            keyClick(Qt.Key_Tab);
        }
        compare(seen, ["Shelf", "Fit", "Shop", "Cut", "Hoop", "Trim", "Join", "Edge", "Undo"]);
    }
}
