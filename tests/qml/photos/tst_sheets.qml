// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Core
import Matside.Desk
import Matside.Stations
import Matside.Theme

TestCase {
    id: test
    name: "PhotoSheets"
    width: 1280
    height: 1280
    visible: true
    when: windowShown

    readonly property var screens: [{ tag: "wide", width: 1160, height: 800 }, { tag: "upright", width: 680, height: 1280 },
                                    { tag: "8 in", width: 907, height: 600 }]

    Component {
        id: sheet
        LogSheet {
            property int doneCount: 0
            onDone: ++doneCount
        }
    }
    Component {
        id: page
        GalleryPage {
            property int closedCount: 0
            onClosed: ++closedCount
        }
    }

    function init() {
        failOnWarning(new RegExp(".?"));
        Theme.pxPerMm = 5.87;
        Theme.pause = 0;
        Desk.startAgain();
        Desk.camera("serves");
    }
    function press(item: Item) {
        if (item.guardShown)
            wait(item.guardMs + 50); // it takes no finger that was meant for what stood there before
        mouseClick(item, item.width / 2, item.height / 2);
    }
    function made(screen: var): Item {
        const log = createTemporaryObject(sheet, test, { width: screen.width, height: screen.height, block: Desk.nextBlock() });
        verify(log);
        wait(30);
        return log;
    }

    function test_samePlannedIsOnePress_data() { return screens; }
    function test_samePlannedIsOnePress(screen) {
        const log = made(screen);
        const action = findChild(log, "log-it");
        verify(action.enabled);
        verify(action.height >= Theme.mm(20) && action.y + action.height <= log.height);
        for (const name of ["flag", "leave"])
            verify(findChild(log, name).height >= Theme.mm(20));
        press(action);
        compare(log.doneCount, 1);
        compare(Desk.notes("A1"), 1);
    }
    function test_minusAndPlus() {
        const log = made(screens[0]);
        BlockLog.stepAlong(-1);
        verify(!BlockLog.asPlanned);
        compare(findChild(log, "along").figure.text, BlockLog.along.text);
        press(findChild(log, "log-it"));
        compare(log.doneCount, 1);
    }
    function test_theWholeSheetIsTheShutter() {
        const log = made(screens[0]);
        press(findChild(log, "front"));
        compare(log.over, "photo");
        const shutter = findChild(log, "shutter");
        verify(shutter.visible && shutter.enabled);
        compare(findChild(log, "photo").headText, "Tap anywhere: the front of block A1");
        compare(findChild(log, "photo").scene, "held");
        verify(shutter.width >= log.width && shutter.height >= log.height);
        mouseClick(shutter, 40, 200);
        tryCompare(log, "over", "");
        verify(BlockLog.front.toString() !== "");
        press(findChild(log, "log-it"));
        compare(log.doneCount, 1);
    }
    function test_whatTheCameraDoesIsSaid_data() {
        return [{ tag: "stalls", drawn: "blank" }, { tag: "refuses", drawn: "torn" }, { tag: "vanishes", drawn: "unplugged" }, { tag: "cut", drawn: "torn" }];
    }
    function test_whatTheCameraDoesIsSaid(manner) {
        const log = made(screens[0]);
        Desk.camera(manner.tag);
        press(findChild(log, "front"));
        const finder = findChild(log, "photo");
        verify(finder.headText.startsWith("Tap anywhere"), finder.headText);
        mouseClick(findChild(log, "shutter"), 40, 200);
        tryVerify(() => findChild(log, "says").text !== "");
        compare(log.over, "photo"); // she stays where she can try again
        // A tap is spoken of exactly where it takes a picture.
        tryVerify(() => !finder.headText.startsWith("Keeping"));
        compare(finder.headText.startsWith("Tap anywhere to try again: "), findChild(log, "shutter").enabled);
        compare(finder.scene, manner.drawn);
        verify(findChild(log, "says").height > 0);
        press(findChild(findChild(log, "photo"), "back"));
        compare(log.over, "");
        press(findChild(log, "log-it"));
        compare(log.doneCount, 1);
    }
    function test_withoutACameraAPictureIsChosen() {
        Desk.unplug();
        const log = made(screens[0]);
        press(findChild(log, "front"));
        const list = findChild(log, "pictures");
        verify(list.visible);
        tryCompare(list, "count", 3);
        verify(findChild(log, "photo").headText.startsWith("Choose a picture"));
        wait(60);
        for (let row = 0; row < list.count; ++row) {
            if (BlockLog.front.toString() !== "")
                break;
            const item = list.itemAtIndex(row);
            if (item?.name === "2") {
                verify(item.height >= Theme.mm(20));
                press(item);
                tryCompare(log, "over", "");
            }
        }
        verify(BlockLog.front.toString() !== "");
    }
    function test_flagsByTouch() {
        const log = made(screens[0]);
        press(findChild(log, "flag"));
        const flags = findChild(log, "flags");
        compare(flags.count, BlockLog.flags.length);
        press(flags.itemAt(0));
        verify(BlockLog.flags[0].chosen);
        verify(flags.itemAt(0).Accessible.checked && findChild(flags.itemAt(0), "pin").visible);
        verify(!findChild(flags.itemAt(1), "pin").visible);
        press(findChild(log, "flagged"));
        press(findChild(log, "log-it"));
        compare(Gallery.history("A1")[0].flagsSays, BlockLog.flags[0].says);
    }
    /** Every card and the tag have a place of their own on every screen, the pictures all of one size. */
    function test_flagsLieApart_data() { return screens; }
    function test_flagsLieApart(screen) {
        const log = made(screen);
        press(findChild(log, "flag"));
        const flags = findChild(log, "flags");
        const items = [findChild(log, "words"), findChild(log, "flagged")];
        for (let i = 0; i < flags.count; ++i)
            items.push(flags.itemAt(i));
        for (const a of items) {
            verify(a.x >= 0 && a.y >= 0 && a.x + a.width <= log.width && a.y + a.height <= log.height, a);
            for (const b of items)
                verify(a === b || a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y, a + " on " + b);
        }
        for (let i = 0; i < flags.count; ++i)
            verify(findChild(flags.itemAt(i), "sketch").height >= Theme.mm(12), flags.itemAt(i).says);
    }
    function test_aNoteIsFoundAndStaysInSight_data() { return screens; }
    function test_aNoteIsFoundAndStaysInSight(screen) {
        const log = made(screen);
        compare(findChild(log, "flag").text, "Flag or note");
        compare(findChild(log, "kept").text, "");
        press(findChild(log, "flag"));
        findChild(log, "words").text = "Thread snapped in the corner";
        press(findChild(log, "flagged"));
        const kept = findChild(log, "kept");
        compare(kept.text, "Thread snapped in the corner");
        const front = findChild(log, "front");
        verify(kept.visible && kept.y >= front.y + front.height && kept.y + kept.height <= log.height);
        press(findChild(log, "log-it"));
        const gallery = createTemporaryObject(page, test, { width: screen.width, height: screen.height });
        const grid = findChild(gallery, "grid");
        tryVerify(() => grid.count === Gallery.count && grid.itemAtIndex(0) !== null);
        verify(findChild(grid.itemAtIndex(0), "note").visible);
        verify(!findChild(grid.itemAtIndex(1), "note").visible);
    }
    function test_galleryFollowsTheLayout_data() { return screens; }
    function test_galleryFollowsTheLayout(screen) {
        press(findChild(made(screens[0]), "log-it"));
        const gallery = createTemporaryObject(page, test, { width: screen.width, height: screen.height });
        const grid = findChild(gallery, "grid");
        tryVerify(() => grid.count === Gallery.count && grid.itemAtIndex(0) !== null);
        compare(grid.itemAtIndex(0).block, "A1");
        verify(grid.itemAtIndex(0).width >= Theme.mm(20));
        press(grid.itemAtIndex(0));
        compare(gallery.open, "A1");
        verify(gallery.leave());
        press(findChild(gallery, "close"));
        compare(gallery.closedCount, 1);
    }
}
