// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage
import Matside.Theme

StepCase {
    id: test
    name: "Hoop"
    station: 3

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Hoop");
        verify(printed(null).length > 40);
    }
    function test_theTrialIsToldWhereItMayBePutOff() {
        verify(Stage.begin(station, true));
        tryVerify(() => byName("put-off"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", on the trial");
            verifyTrialTold(screen);
        }
        verify(!printed(null).includes("Strip 1 of"), "the trial's strip is none of the piece's");
        press(byName("put-off"));
        tryVerify(() => !byName("trial-says"));
    }
    /** Title or picture and row tell of the same strip. */
    function test_oneNumberForTheStrip() {
        for (const strip of [1, 2]) {
            const told = all(child => child.contentWidth !== undefined && child.text !== undefined)
                .map(child => /Strip (\d+) of \d+/.exec(child.text)).filter(found => found).map(found => Number(found[1]));
            verify(told.length >= 2, told.length + " places tell of the strip");
            compare(told.filter(number => number !== strip), []);
            doOnce();
        }
    }
    /** Layers and marks what there is, up to the first block. */
    function toTheStitching() {
        for (let step = 0; step < 30 && StepModel.doing !== "stitch-block"; ++step)
            StepModel.next();
        compare(StepModel.doing, "stitch-block");
        settle();
    }
    /** Said over the strip itself, and one touch leads to where the new bobbin is told. */
    function test_theBobbinIsToldWhereTheEyeIs() {
        toTheStitching();
        for (let block = 0; block < 40 && HoopModel.bobbinDue === ""; ++block) {
            StepModel.next();
            if (StepModel.doing !== "stitch-block")
                toTheStitching();
            byName("hoop-page").openSide("");
        }
        verify(HoopModel.bobbinDue !== "", HoopModel.bobbinSays);
        for (const screen of screens) {
            resize(screen);
            verify(called(HoopModel.bobbinDue), screen.tag);
            verifySizes(screen.tag + ", bobbin");
        }
        resize(screens[0]);
        press(called(HoopModel.bobbinDue));
        tryVerify(() => called("New bobbin in"));
        press(called("New bobbin in"));
        tryCompare(HoopModel, "bobbinDue", "");
    }
    function drawing(): var {
        return all(item => item.scanEnabled !== undefined)[0];
    }
    /** A finger on one of the strip's blocks. */
    function lookAt(place: int) {
        const strip = drawing();
        const x = strip.px(strip.places[place].centreMm);
        mouseClick(strip, Session.leftHanded ? strip.width - x : x, strip.lie.mid);
        tryCompare(HoopModel, "position", place);
    }
    function test_noBlockIsLoggedThatIsNotShown_data() {
        return screens.concat({ tag: "left hand", width: 1280, height: 800, left: true });
    }
    function test_noBlockIsLoggedThatIsNotShown(data) {
        resize(data);
        Session.leftHanded = data.left ?? false;
        toTheStitching();
        const next = StepModel.block, done = Stage.done(station);
        lookAt(2);
        verify(HoopModel.block !== next);
        const action = byName("action");
        compare(action.accessibleName, "Show block " + next);
        // A press and the bounce after it: the frame goes back, nothing is logged.
        press(action);
        tryCompare(HoopModel, "block", next);
        press(byName("action"));
        compare(Stage.done(station), done);
        verify(!byName("sheet-log"));
        compare(byName("action").accessibleName, "Stitched");
        wait(450);
        press(byName("action"));
        tryVerify(() => byName("sheet-log"));
        compare(Stage.done(station), done + 1);
        verify(printed(byName("sheet-log")).includes(next));
        Session.leftHanded = false;
    }
    /** The second tap of two lies on "Same as planned", where "Stitched" was. */
    function test_aSecondTapLogsNoBlock() {
        toTheStitching();
        Theme.pause = Theme.slip;
        wait(Theme.slip + 50);
        const action = byName("action"), at = action.mapToItem(null, action.width / 2, action.height / 2);
        press(action);
        tryVerify(() => byName("sheet-log"));
        for (let tap = 0; tap < 3; ++tap) {
            mouseClick(window.contentItem, at.x, at.y);
            mouseClick(byName("log-it"));
            wait(100);
        }
        verify(byName("sheet-log"));
        wait(Theme.slip + 50);
        mouseClick(byName("log-it"));
        tryVerify(() => !byName("sheet-log"));
    }
    function test_whatWentWrongIsOfTheBlockShown_data() {
        return screens;
    }
    function test_whatWentWrongIsOfTheBlockShown(data) {
        resize(data);
        toTheStitching();
        const next = StepModel.block;
        lookAt(2);
        press(byName("wrong"));
        tryVerify(() => byName("sheet-wrong"));
        compare(HoopModel.block, next);
        verify(printed(byName("sheet-wrong")).includes(next), printed(byName("sheet-wrong")));
        // As long as it is asked the answers take the whole page: no other block can be taken in hand.
        settle();
        verify(!drawing());
        compare(HoopModel.block, next);
        verifySizes("what went wrong");
    }
    function cards(): var {
        return pressables().filter(item => item.chosen !== undefined && item.lead !== undefined);
    }
    /** A touch on a strip takes it in hand; each keeps its own place. */
    function test_aStripIsTakenByTouchingIt_data() {
        return screens.concat({ tag: "left hand", width: 1280, height: 800, left: true });
    }
    function test_aStripIsTakenByTouchingIt(data) {
        resize(data);
        Session.leftHanded = data.left ?? false;
        toTheStitching();
        HoopModel.strip = 1;
        byName("hoop-page").openSide("strip");
        tryVerify(() => cards().length > 1);
        verifySizes("strips, " + data.tag);
        verify(!drawing(), "the strip itself makes room for all of them");
        verify(cards()[0].chosen);
        press(cards()[1]);
        tryCompare(HoopModel, "strip", 2);
        tryVerify(() => cards()[1].chosen && !cards()[0].chosen);
        byName("hoop-page").openSide("");
        tryVerify(() => drawing());
        Session.leftHanded = false;
    }
    /** What the gaps yield is taken by touching its drawing, and given back by touching the other. */
    function test_gapsAreTakenByTouchingThem() {
        for (let step = 0; step < 30 && StepModel.doing !== "mark-strip"; ++step)
            StepModel.next();
        byName("hoop-page").openSide("strip");
        tryVerify(() => cards().length > 1);
        for (const screen of screens) {
            resize(screen);
            verifySizes("gaps, " + screen.tag);
        }
        resize(screens[0]);
        const last = cards().length - 1;
        verify(cards()[0].chosen);
        press(cards()[last]);
        tryVerify(() => cards()[last].chosen);
        press(cards()[0]);
        tryVerify(() => cards()[0].chosen);
    }
    function test_hoopsAreTakenAndMended() {
        toTheStitching();
        byName("hoop-page").openSide("hoops");
        tryVerify(() => cards().length > 0);
        for (const screen of screens) {
            resize(screen);
            verifySizes("hoops, " + screen.tag);
        }
        resize(screens[0]);
        press(pressables().filter(item => item.accessibleName === "Its measures")[0]);
        tryVerify(() => called("All hoops"));
        called("All hoops").forceActiveFocus(); // at the foot of what scrolls
        press(called("All hoops"));
        tryVerify(() => cards().length > 0);
    }
}
