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
    function test_whatWentWrong() {
        const done = Stage.done(station);
        press(byName("wrong"));
        tryVerify(() => byName("sheet-wrong"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", what went wrong");
        }
        press(called("Close"));
        tryVerify(() => !byName("sheet-wrong"));
        compare(Stage.done(station), done);
    }
}
