// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Theme

StationCase {
    id: test
    name: "Light and hand"
    view: "settings"

    function cleanup() {
        Look.colourSet = "day";
        Session.leftHanded = false;
    }
    /** Takes in hand what stands at the place under that name. */
    function take(title: string) {
        press(pressables().find(item => item.accessibleName.startsWith(title)));
        tryVerify(() => called("Done"));
        wait(60);
    }
    function test_theLightChangesAtOnce() {
        verify(called("Light: Day"));
        take("Light");
        press(called("Lamp"));
        compare(Look.colourSet, "lamp");
        tryCompare(Theme, "set", "lamp");
        verify(called("Light: Lamp"), "its state is said at the place");
        press(called("Done"));
        tryVerify(() => !called("Done"));
    }
    function test_backToTheShelf() {
        press(called("Back to the shelf"));
        tryCompare(Session, "view", "shelf");
    }
    function sketches(): var {
        return all(item => item.scene !== undefined && item.inks !== undefined);
    }
    /** The colour of a place of an item, as it stands on the screen. */
    function colourAt(picture: var, item: var, x: real, y: real): string {
        const at = item.mapToItem(null, x, y);
        return picture.pixel(Math.round(at.x), Math.round(at.y)).toString();
    }
    function test_everyChoiceIsDrawn() {
        let choices = 0;
        for (const title of ["Language", "Light", "Read aloud", "Window for helpers", "Cutting hand", "Movement", "Page-turn pedal"]) {
            take(title);
            const picture = grabImage(window.contentItem);
            for (const sketch of sketches()) {
                const ground = colourAt(picture, sketch, 2, 2);
                let drawn = 0;
                for (let x = 3; x < sketch.width - 2; x += 3)
                    for (let y = 3; y < sketch.height - 2; y += 3)
                        drawn += colourAt(picture, sketch, x, y) !== ground ? 1 : 0;
                verify(drawn > 40, sketch.scene + " " + sketch.words + ": " + drawn);
                ++choices;
            }
            verifySizes(title);
            press(called("Done"));
            tryVerify(() => !called("Done"));
        }
        compare(choices, Language.choices.length + 14);
    }
    /** The bar as long as a bank card is whole, whatever the screen. */
    function test_theCardIsWhole_data() {
        return screens;
    }
    function test_theCardIsWhole(data) {
        resize(data);
        take("Size of the screen");
        const bar = all(item => item.cardMm !== undefined)[0];
        verify(bar.width >= bar.cardMm * Look.pxPerMm);
        verifySizes(data.tag + ", size of the screen");
        resize(screens[0]);
    }
    /** Nothing at the place moves when something is taken in hand, and that stays in sight. */
    function test_theThingInHandStaysInSight() {
        for (const title of ["Light", "Cutting hand"]) {
            const lies = () => pressables().find(item => item.accessibleName.startsWith(title)).mapToItem(null, 0, 0);
            const was = lies();
            take(title);
            compare(lies(), was);
            const drawer = called("Done").parent, top = drawer.mapToItem(null, 0, 0).y;
            const picture = was.y + pressables().find(item => item.accessibleName.startsWith(title)).height * 0.6;
            verify(picture <= top || was.y >= top + drawer.height, title);
            press(called("Done"));
            tryVerify(() => !called("Done"));
        }
    }
    function test_aLightIsDrawnInItsOwnColours() {
        take("Light");
        const lights = sketches().filter(sketch => sketch.scene === "light");
        compare(lights.length, 3);
        const grounds = () => {
            const picture = grabImage(window.contentItem);
            return lights.map(sketch => colourAt(picture, sketch, 3, 3));
        };
        const byDay = grounds();
        compare(byDay, [Theme.day, Theme.lamp, Theme.contrast].map(set => set.paper.toString()));
        press(called("Lamp"));
        tryCompare(Theme, "set", "lamp");
        settle();
        compare(grounds(), byDay);
    }
    function test_aHandIsChosenByItsPicture() {
        take("Cutting hand");
        verify(called("Right").Accessible.checked);
        const left = called("Left").mapToItem(null, 0, 0);
        press(called("Left"));
        compare(Session.leftHanded, true);
        settle();
        verify(called("Left").Accessible.checked && !called("Right").Accessible.checked);
        // They stay where they are: a second touch at the same place undoes nothing.
        compare(called("Left").mapToItem(null, 0, 0), left);
        verify(called("Left").mapToItem(null, 0, 0).x < called("Right").mapToItem(null, 0, 0).x);
        // The pin lies on the chosen one alone, of what is in hand.
        const pins = all(item => item.objectName === "pin");
        compare(pins.length, 1);
        compare(pins.filter(pin => pin.parent === called("Left")).length, 1);
    }
}
