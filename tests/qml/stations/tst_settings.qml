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
    function test_theLightChangesAtOnce() {
        press(called("Lamp"));
        compare(Look.colourSet, "lamp");
        tryCompare(Theme, "set", "lamp");
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
        compare(sketches().length, Language.choices.length + 14);
        resize({ width: 1280, height: 1600 }); // all of them in sight
        const picture = grabImage(window.contentItem);
        for (const sketch of sketches()) {
            const ground = colourAt(picture, sketch, 2, 2);
            let drawn = 0;
            for (let x = 3; x < sketch.width - 2; x += 3)
                for (let y = 3; y < sketch.height - 2; y += 3)
                    drawn += colourAt(picture, sketch, x, y) !== ground ? 1 : 0;
            verify(drawn > 40, sketch.scene + " " + sketch.words + ": " + drawn);
        }
        resize(screens[0]);
    }
    function test_aLightIsDrawnInItsOwnColours() {
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
        verify(called("Right").Accessible.checked);
        const left = called("Left").mapToItem(null, 0, 0);
        press(called("Left"));
        compare(Session.leftHanded, true);
        settle();
        verify(called("Left").Accessible.checked && !called("Right").Accessible.checked);
        // They stay where they are: a second touch at the same place undoes nothing.
        compare(called("Left").mapToItem(null, 0, 0), left);
        verify(called("Left").mapToItem(null, 0, 0).x < called("Right").mapToItem(null, 0, 0).x);
        // The pin lies on the chosen one alone, one to a choice.
        const pins = all(item => item.objectName === "pin");
        compare(pins.length, 7);
        compare(pins.filter(pin => pin.parent === called("Left")).length, 1);
    }
}
