// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Theme

/** Light and dark: come to from Shop and from Fit, a cloth given another colour, the faces in grey. */
StationCase {
    name: "LightAndDark"
    station: 1

    function open(): var {
        press(byName("shop-shades"));
        tryVerify(() => byName("shade-back"));
        settle();
        return byName("shade-page");
    }

    function test_sizes_data() {
        return screens;
    }
    /** Every size, both hands: the scale, a cloth's palette, the way to a photograph. */
    function test_sizes(data) {
        resize(data);
        for (const left of [false, true]) {
            Session.leftHanded = left;
            open();
            verifySizes(data.tag + ", light and dark");
            verify(byName("shade-back").height >= Theme.mm(20) - 0.3);
            verify(printed(null).includes(ShadeModel.says.replace(/\s+/g, " ")), ShadeModel.says);
            ClothColour.cloth = ShadeModel.cloths[0].id;
            settle();
            verifySizes(data.tag + ", a cloth");
            for (const name of ["shade-photo", "shade-leave"])
                verify(byName(name).height >= Theme.mm(20) - 0.3, name);
            press(byName("shade-photo"));
            settle();
            verifySizes(data.tag + ", a photograph");
            verify(printed(byName("shade-finder")).includes("not kept"));
            press(byName("back"));
            tryVerify(() => byName("shade-leave"));
            press(byName("shade-leave"));
            tryVerify(() => byName("shade-back"));
            press(byName("shade-back"));
            tryVerify(() => byName("shop-shades"));
        }
        Session.leftHanded = false;
    }
    /** A cloth is pressed, a snip of the palette, then the one thing to do; undo takes it back. */
    function test_clothGetsItsColour() {
        open();
        const first = ShadeModel.cloths[0], name = first.name + ", " + first.says;
        called(first.name).press();
        tryVerify(() => byName("shade-palette"));
        verify(!byName("shade-take"), "there is nothing to take yet");
        compare(byName("shade-palette").clothRole, first.print, "the card is of the cloth in hand");
        const snip = ClothColour.palette[16];
        press(called(snip.says.split(",")[0] + ", " + snip.says.split(", ")[1]));
        compare(ClothColour.colour, snip.value);
        tryVerify(() => byName("pin"), 1000, "the snip in hand is pinned");
        tryVerify(() => byName("shade-take"));
        press(byName("shade-take"));
        tryVerify(() => byName("shade-back"));
        verify(ShadeModel.cloths.some(cloth => cloth.name === first.name && cloth.colour === snip.value));
        Session.undo();
        verify(ShadeModel.cloths.some(cloth => cloth.name === first.name && cloth.colour === first.colour));
        verify(name !== "");
    }
    /** The steps go one at a time, and leaving keeps nothing. */
    function test_stepsThatAreNotTaken() {
        open();
        const first = ShadeModel.cloths[0];
        called(first.name).press();
        tryVerify(() => byName("shade-palette"));
        const before = ClothColour.colour;
        press(called("lightness less"));
        verify(ClothColour.colour !== before);
        press(byName("shade-leave"));
        tryVerify(() => byName("shade-back"));
        compare(ShadeModel.cloths[0].colour, first.colour);
        verify(!Session.canUndo);
    }
    /** Pixel by pixel: in grey no colour is left on either face, in colour there is. */
    function test_facesInGrey() {
        open();
        const coloured = () => {
            const image = grabImage(window.contentItem);
            let most = 0;
            for (const name of ["front-shades", "back-shades"]) {
                const face = byName(name), at = face.mapToItem(null, 0, 0);
                // The binding and the ground, clear of the ink round it.
                for (let x = face.width * 0.1; x < face.width * 0.9; x += 5)
                    for (let y = face.height * 0.4; y < face.height * 0.6; y += 5) {
                        const px = Math.round(at.x + x), py = Math.round(at.y + y);
                        const parts = [image.red(px, py), image.green(px, py), image.blue(px, py)];
                        most = Math.max(most, Math.max(...parts) - Math.min(...parts));
                    }
            }
            return most;
        };
        tryVerify(() => coloured() === 0, 5000);
        press(byName("shade-grey"));
        tryVerify(() => coloured() > 15, 5000);
        press(byName("shade-grey"));
        tryVerify(() => coloured() === 0, 5000);
    }
    /** Escape closes one thing at a time. */
    function test_leavesOneByOne() {
        const page = open();
        ClothColour.cloth = ShadeModel.cloths[0].id;
        press(byName("shade-photo"));
        tryVerify(() => byName("shade-finder"));
        verify(page.leave() && !byName("shade-finder") && byName("shade-palette"));
        verify(page.leave() && byName("shade-back"));
        verify(!page.leave());
    }
    function test_fromFit() {
        Session.station = 0;
        settle();
        byName("fit-shades").press();
        tryVerify(() => byName("shade-page"));
        settle();
        verifySizes("light and dark at Fit");
        press(byName("shade-back"));
        tryVerify(() => byName("fit-shades"));
    }
}
