// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Core
import Matside.Stage
import Matside.Theme

/** A page where steps are done: what holds for all of them. */
StationCase {
    id: test

    /** Touches the action until the step is done: once, or for each side of a block. */
    function doOnce() {
        const before = Stage.done(station);
        for (let touch = 0; touch < 4 && Stage.done(station) === before; ++touch) {
            const face = printed(null);
            press(byName("action"));
            tryVerify(() => printed(null) !== face);
            // The button waits 0.4 s before it is taken again: trade rule for a bounce.
            wait(450);
        }
        compare(Stage.done(station), before + 1);
    }
    function test_theActionIsSavedAndTheNextShown() {
        doOnce();
        doOnce();
    }
    function test_theFigureIsThePlans_data() {
        return screens;
    }
    function test_theFigureIsThePlans(data) {
        resize(data);
        const due = Stage.figureDue(station);
        const figure = byName("figure");
        if (figure)
            compare(printed(figure), asPrinted(due));
    }
    /** The tab of the figure opens the sum, on the trial too, whatever words stand beside it. */
    function test_theTabOpensTheSum_data() {
        return screens.map(screen => Object.assign({ trial: false }, screen))
            .concat(screens.map(screen => Object.assign({}, screen, { trial: true, tag: screen.tag + ", trial" })));
    }
    function test_theTabOpensTheSum(data) {
        verify(Stage.begin(station, data.trial));
        resize(data);
        const tabs = () => all(item => item.down !== undefined && item.inverse !== undefined);
        // The first step at the mat has no figure.
        for (let step = 0; step < 4 && station === 2 && tabs().length === 0; ++step) {
            StepModel.next();
            settle();
        }
        verify(station !== 2 || tabs().length > 0, StepModel.title);
        for (const tab of tabs()) {
            for (const place of [0.1, 0.5, 0.9]) {
                const at = tab.mapToItem(null, tab.width / 2, tab.height * place);
                mouseClick(window.contentItem, at.x, at.y);
                tryVerify(() => byName("sheet-working"), 5000, "pressed at " + place + " of the tab");
                press(byName("close") ?? called("Back to the work"));
                tryVerify(() => !byName("sheet-working"));
            }
        }
    }
    function test_backAsksWhetherItWasAMistake() {
        doOnce();
        const done = Stage.done(station);
        press(byName("back"));
        tryVerify(() => byName("sheet-undone"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", taking back");
        }
        press(called("Tapped by mistake"));
        compare(Stage.done(station), done - 1);
        tryVerify(() => !byName("sheet-undone"));
    }
    /** What the trial is stands whole on the screen, and on nothing that can be pressed. */
    function verifyTrialTold(screen: var) {
        const says = byName("trial-says");
        verify(says, screen.tag);
        verify(says.text.includes("test block") && says.text.includes("test join"), says.text);
        const place = placeOf(says);
        verify(place.x >= 0 && place.y >= 0 && place.x + place.width <= screen.width && place.y + says.contentHeight <= screen.height,
               screen.tag + ": " + place);
        compare(pressableAt(place).map(item => item.accessibleName), [], screen.tag);
    }
    function placeOf(item: var): rect {
        const at = item.mapToItem(null, 0, 0);
        return Qt.rect(at.x, at.y, item.width, item.height);
    }
    /** Of an item's place what no list cuts off. */
    function seen(item: var): rect {
        let place = placeOf(item);
        for (let around = item.parent; around; around = around.parent)
            if (around.clip) {
                const cut = placeOf(around), top = Math.max(place.y, cut.y), left = Math.max(place.x, cut.x);
                place = Qt.rect(left, top, Math.min(place.x + place.width, cut.x + cut.width) - left,
                                Math.min(place.y + place.height, cut.y + cut.height) - top);
            }
        return place;
    }
    /** What can be pressed within a place of the screen. */
    function pressableAt(place: rect): var {
        return pressables().filter(item => item.enabled).filter(item => {
            const own = seen(item);
            return own.width > 0 && own.height > 0 && own.x < place.x + place.width - 1 && place.x < own.x + own.width - 1
                && own.y < place.y + place.height - 1 && place.y < own.y + own.height - 1;
        });
    }
    /** A press on a target, and more of them where it stood: they close what it opened, at most. */
    function tapAgain(target: string, sheet: string) {
        settle();
        const done = Stage.done(station), place = placeOf(byName(target));
        const x = place.x + place.width / 2, y = place.y + place.height / 2;
        press(byName(target));
        mouseClick(window.contentItem, x, y); // a bounce
        tryVerify(() => byName(sheet), 5000, sheet + " is not open after a bounce");
        settle();
        compare(pressableAt(place).filter(item => item.objectName !== "close").map(item => item.accessibleName), [], sheet);
        wait(450);
        mouseClick(window.contentItem, x, y); // an unsteady hand, later
        settle();
        compare(Stage.done(station), done, sheet);
        if (byName(sheet)) {
            press(byName("close"));
            tryVerify(() => !byName(sheet));
        }
        wait(450);
    }
    function test_aSecondTapDoesNoHarm_data() {
        return screens;
    }
    function test_aSecondTapDoesNoHarm(data) {
        resize(data);
        doOnce();
        for (const left of [false, true]) {
            Session.leftHanded = left;
            tapAgain("wrong", "sheet-wrong");
            tapAgain("back", "sheet-undone");
        }
        Session.leftHanded = false;
    }
    function test_whatWentWrong() {
        const done = Stage.done(station);
        press(byName("wrong"));
        tryVerify(() => byName("sheet-wrong"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", what went wrong");
        }
        const sketches = all(item => item.kind !== undefined && item.pictured !== undefined, byName("sheet-wrong"));
        compare(sketches.length, StepModel.wrongAnswers.length + (StepModel.sided ? 1 : 0));
        compare(sketches.filter(sketch => !sketch.pictured).map(sketch => sketch.kind), [], "not drawn");
        press(called("Close"));
        tryVerify(() => !byName("sheet-wrong"));
        compare(Stage.done(station), done);
    }
}
