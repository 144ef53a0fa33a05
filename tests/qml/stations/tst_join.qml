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
}
