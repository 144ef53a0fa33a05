// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Core
import Matside.Desk
import Matside.Stations
import Matside.Theme

/** A cloth's colour off a photograph: taken or chosen, tapped, kept as the cloth's and nowhere else. */
TestCase {
    id: test
    name: "ClothPhotographs"
    width: 1280
    height: 1280
    visible: true
    when: windowShown

    readonly property var screens: [{ tag: "wide", width: 1160, height: 800 }, { tag: "upright", width: 680, height: 1280 },
                                    { tag: "8 in", width: 907, height: 600 }]

    Component {
        id: sheet
        ShadeCloth {}
    }

    function init() {
        failOnWarning(new RegExp(".?"));
        Theme.pxPerMm = 5.87;
        Desk.startAgain();
        Desk.camera("two");
    }
    function cleanup() {
        ClothColour.cloth = "";
    }
    function press(item: Item) {
        mouseClick(item, item.width / 2, item.height / 2);
    }
    function made(screen: var): Item {
        ClothColour.cloth = "ground";
        const cloth = createTemporaryObject(sheet, test, { width: screen.width, height: screen.height });
        verify(cloth);
        wait(30);
        return cloth;
    }

    function test_tapTheCloth_data() {
        return screens;
    }
    function test_tapTheCloth(screen) {
        const cloth = made(screen);
        press(findChild(cloth, "shade-photo"));
        const shutter = findChild(cloth, "shutter");
        tryVerify(() => shutter.visible && shutter.enabled);
        mouseClick(shutter, 40, 200);
        tryVerify(() => cloth.tapping);
        const finger = findChild(cloth, "shade-tap");
        tryVerify(() => finger.listening && finger.width > Theme.mm(30));
        // The left half is of one cloth, the right of the other; they are 3 to 2.
        verify(Math.abs(finger.width / finger.height - 1.5) < 0.02);
        const at = finger.mapToItem(cloth, 0, 0);
        verify(at.x >= 0 && at.y >= 0 && at.x + finger.width <= cloth.width && at.y + finger.height <= cloth.height);
        mouseClick(finger, finger.width * 0.25, finger.height * 0.5);
        compare(ClothColour.colour, Desk.left);
        mouseClick(finger, finger.width * 0.8, finger.height * 0.2);
        compare(ClothColour.colour, Desk.right);
        verify(findChild(cloth, "shade-picture-says").text !== "");
        const take = findChild(cloth, "shade-take");
        verify(take.visible && take.height >= Theme.mm(20));
        press(take);
        compare(ClothColour.cloth, "");
        verify(Session.canUndo);
        compare(Desk.notes("A1"), 0);
    }
    function test_whatTheCameraDoesIsSaid_data() {
        return [{ tag: "stalls" }, { tag: "refuses" }, { tag: "cut" }];
    }
    function test_whatTheCameraDoesIsSaid(manner) {
        const cloth = made(screens[0]);
        Desk.camera(manner.tag);
        press(findChild(cloth, "shade-photo"));
        press(findChild(cloth, "shutter"));
        const finder = findChild(cloth, "shade-finder");
        tryVerify(() => finder.says !== "");
        verify(!cloth.tapping);
        press(findChild(cloth, "back"));
        compare(cloth.over, "");
    }
    function test_aPictureIsChosen() {
        Desk.unplug();
        const cloth = made(screens[0]);
        press(findChild(cloth, "shade-photo"));
        const list = findChild(cloth, "pictures");
        tryVerify(() => list.count > 0 && list.itemAtIndex(0));
        press(list.itemAtIndex(0));
        tryVerify(() => cloth.tapping);
        press(findChild(cloth, "shade-leave"));
        verify(!cloth.tapping);
        compare(ClothColour.cloth, "ground");
    }
}
