// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage

StationCase {
    id: test
    name: "Fit"
    station: 0

    function heads(): var {
        return pressables().filter(item => item.summary !== undefined && item.open !== undefined);
    }

    function test_theFinishedSizeIsThePlans_data() {
        return screens;
    }
    function test_theFinishedSizeIsThePlans(data) {
        resize(data);
        verify(called("Finished " + Stage.finishedAlong() + " by") || pressables().some(item => item.accessibleName.startsWith("Finished " + Stage.finishedAlong())),
               Stage.finishedAlong());
        verify(printed(null).includes(asPrinted(Stage.finishedAlong()).replace(/ in$/, "")), printed(null));
    }
    function test_oneMoreColumn() {
        const columns = Stage.columns();
        const size = Stage.finishedAlong();
        press(called("columns more"));
        compare(Stage.columns(), columns + 1);
        verify(Stage.finishedAlong() !== size);
        tryVerify(() => pressables().some(item => item.accessibleName.startsWith("Finished " + Stage.finishedAlong())));
    }
    /** Each group opens in its place, holds what can be pressed, and closes again. */
    function test_everyGroupOpens_data() {
        return screens;
    }
    function test_everyGroupOpens(data) {
        resize(data);
        verify(heads().length > 5, "groups: " + heads().length);
        for (let i = 0; i < heads().length; ++i) {
            const before = pressables().length;
            const name = heads()[i].text;
            heads()[i].press();
            tryVerify(() => pressables().length > before, 2000, name + " opened on nothing");
            wait(30);
            verifySizes(data.tag + ", " + name);
            heads()[i].press();
            tryVerify(() => pressables().length === before, 2000, name + " did not close");
        }
    }
    function test_theKeypad_data() {
        return screens;
    }
    function test_theKeypad(data) {
        resize(data);
        press(pressables().find(item => /^columns \d/.test(item.accessibleName)));
        tryVerify(() => called("Done"));
        wait(200);
        verifySizes(data.tag + ", keypad");
        press(called("7"));
        press(called("Done"));
        tryVerify(() => !called("Done"));
        compare(Stage.columns(), 7);
    }
}
