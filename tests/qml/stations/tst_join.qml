// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage
import Matside.Theme

StepCase {
    id: test
    name: "Join"
    station: 5

    /** Opens a page beside the work and looks at it at every size and in both hands. */
    function lookAt(side: string, words: string) {
        byName("join-page").openSide(side);
        tryVerify(() => printed(null).includes(words));
        for (const screen of screens)
            for (const left of [false, true]) {
                resize(screen);
                Session.leftHanded = left;
                wait(60);
                verifySizes(screen.tag + ", " + side + (left ? ", left hand" : ""));
            }
        Session.leftHanded = false;
        press(called("Back to the work"));
    }
    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Join");
        verify(printed(null).length > 40);
    }
    function test_theLayout() {
        lookAt("map", "See the back");
    }
    function test_whatStandsBesideOpensOnALowScreen() {
        while (StepModel.doing !== "join-short")
            doOnce();
        resize(screens[2]);
        press(byName("more"));
        tryVerify(() => printed(null).includes("Layout, front and back"));
        press(called("Back to the work"));
    }
    function test_theWaysToFillAndClose() {
        verify(Stage.leaveUncut("cut-"));
        lookAt("ways", "Back strip doubled");
        // On the low screen the second way lies under the fold of the list.
        resize(screens[0]);
        byName("join-page").openSide("ways");
        tryVerify(() => called("Back strip doubled"));
        press(called("Back strip doubled"));
        tryVerify(() => !JoinModel.fold.valid && JoinModel.section.doubled);
        Session.undo();
        tryVerify(() => JoinModel.fold.valid);
    }
    function test_theGauge() {
        lookAt("gauge", "True size");
        // Bars as long as their figures say on a ruler (1 in is 25.4 mm by the agreement of 1959), to half a pixel.
        byName("join-page").openSide("gauge");
        tryVerify(() => byName("gauge-2"));
        const shown = [5 / 32, 5 / 16, 1 / 2];
        for (let i = 0; i < shown.length; ++i)
            verify(Math.abs(byName("gauge-" + i).width - shown[i] * 25.4 * Theme.pxPerMm) <= 0.5, "bar " + i);
    }
    function plates(): var {
        return all(item => item.reading !== undefined && item.unread !== undefined && item.doubted !== undefined && item.inHand !== undefined);
    }
    /** Does what the trial's join waits for: cuts, the test block and its measures. */
    function makeTheTestJoin() {
        for (let steps = 0; steps < 300; ++steps) {
            Session.station = 5;
            for (let ways = 0; ways < 7 && StepModel.waitsAt >= 0; ++ways)
                Session.station = StepModel.waitsAt;
            if (Session.station === 5)
                return;
            for (let at = 0; at < StepModel.trialFields.length; ++at)
                StepModel.nudgeTrial(at, 0);
            if (StepModel.trialKind === "")
                StepModel.next();
            else
                verify(StepModel.takeTrial().ok);
        }
    }
    /** The test join is taken only once it was read where it is measured; a touch on a plate takes that in hand. */
    function test_theTestJoinIsReadOffItsSection_data() {
        return screens;
    }
    function test_theTestJoinIsReadOffItsSection(data) {
        verify(Stage.begin(station, true));
        makeTheTestJoin();
        resize(data);
        tryVerify(() => byName("sheet-trial"));
        compare(StepModel.trialKind, "test-join");
        compare(plates().length, 4);
        compare(plates().filter(plate => plate.unread).length, 3);
        verify(!byName("action").enabled);
        for (const plate of plates()) {
            const at = placeOf(plate);
            verify(at.x >= 0 && at.y >= 0 && at.x + at.width <= data.width + 1 && at.y + at.height <= data.height + 1, plate.accessibleName + " at " + at);
            for (const other of plates()) {
                const its = placeOf(other);
                verify(other === plate || at.x + at.width <= its.x + 0.5 || its.x + its.width <= at.x + 0.5
                       || at.y + at.height <= its.y + 0.5 || its.y + its.height <= at.y + 0.5, plate.accessibleName + " lies on " + other.accessibleName);
            }
        }
        for (let turn = 0; turn < 3; ++turn) {
            const unread = plates().find(plate => plate.unread);
            press(unread);
            tryVerify(() => unread.inHand);
            verify(!byName("action").enabled);
            byName("read").press();
            tryVerify(() => !unread.unread);
            wait(450);
        }
        tryVerify(() => byName("action").enabled);
        verifySizes(data.tag + ", test join read");
        press(plates()[1]);
        byName("reading"); // the gap is in hand
        const less = called("gap between the allowances less");
        mouseClick(less);
        tryVerify(() => plates()[1].accessibleName === "overlap of the allowances 1/32 in", 2000, plates()[1].accessibleName);
        press(byName("action"));
        tryVerify(() => StepModel.trialKind === "");
    }
}
