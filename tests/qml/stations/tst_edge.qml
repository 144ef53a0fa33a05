// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage
import Matside.Theme

StepCase {
    id: test
    name: "Edge"
    station: 6

    function page(): var {
        return byName("edge-page");
    }
    /** What can be pressed and whose name begins so. */
    function begins(name: string): var {
        return pressables().filter(item => item.enabled && item.accessibleName.startsWith(name))[0] ?? null;
    }
    /** Opens a page beside the work and looks at it at every size and in both hands. */
    function lookAt(side: string, words: string) {
        page().openSide(side);
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
        compare(page().side, "");
    }
    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Edge");
        compare(EdgeModel.phase, "square");
        verify(printed(null).includes("Squaring"));
    }
    function test_whatIsMeasuredIsSaidAtOnce() {
        press(begins("Measure the piece"));
        tryVerify(() => called("top right more") === null && called("top more") !== null);
        press(called("top more"));
        tryVerify(() => printed(null).includes("Square within"));
        verify(EdgeModel.measured);
        lookAt("measure", "Square within");
    }
    /** A figure nobody read stands with its question mark, and is told as read only by a press. */
    function test_whatNobodyReadIsNoReading() {
        page().openSide("measure");
        tryVerify(() => called("top more"));
        const tapes = () => EdgeModel.readings.map(reading => pressables().filter(item => item.inHand !== undefined && item.reading.says === reading.says)[0]);
        compare(tapes().filter(tape => tape.unread).length, 6);
        press(called("Back to the work"));
        verify(!EdgeModel.measured);
        page().openSide("measure");
        for (const side of ["top", "right", "bottom", "left", "diagonal from top left"]) {
            tryVerify(() => called(side + " more"));
            press(called("Read: it is as shown"));
            wait(450);
        }
        compare(EdgeModel.unreadSays, "1 of 6 not yet read");
        verify(printed(null).includes("if the rest is as planned"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", one not read");
        }
        resize(screens[0]);
        press(called("Read: it is as shown"));
        tryVerify(() => EdgeModel.unreadSays === "" && EdgeModel.squareEnough);
        compare(tapes().filter(tape => tape.unread).length, 0);
    }
    function test_theTapeTouchedOnTheDrawingIsTheOneInHand() {
        page().openSide("measure");
        tryVerify(() => called("top more"));
        for (const screen of screens) {
            resize(screen);
            const tapes = EdgeModel.readings.map(reading => pressables().filter(item => item.inHand !== undefined && item.reading.says === reading.says)[0]);
            compare(tapes.filter(tape => !tape).length, 0);
            for (let at = 5; at >= 0; --at) {
                press(tapes[at]);
                tryVerify(() => tapes[at].inHand && called(EdgeModel.readings[at].says + " more") !== null, 5000, screen.tag + ", " + at);
            }
        }
        const right = EdgeModel.readings[1].figure.text;
        press(begins("right"));
        tryVerify(() => called("right less"));
        press(called("right less"));
        tryVerify(() => EdgeModel.readings[1].figure.text !== right);
        press(called("Back to the work"));
        tryVerify(() => !called("right less"));
    }
    function test_thePagesBesideTheWork() {
        lookAt("joins", "Lay the binding round");
        lookAt("section", "Double fold");
        lookAt("corners", "Square corners");
        lookAt("care", "Not a hot mat");
    }
    function test_cornersAreRoundedByATouch() {
        verify(Stage.leaveUncut("cut-binding"));
        page().openSide("corners");
        tryVerify(() => called("rounded"));
        press(called("rounded"));
        tryCompare(EdgeModel, "corner", "rounded");
        const radius = EdgeModel.radius.text;
        press(called("radius more"));
        tryVerify(() => EdgeModel.radius.text !== radius);
        verify(printed(null).includes("of bias"));
        lookAt("corners", "stay-stitch");
        Session.undo();
        tryCompare(EdgeModel.radius, "text", radius);
    }
    function test_aCircleAndScallopsAreChosenByATouch() {
        verify(Stage.leaveUncut("cut-binding"));
        page().openSide("corners");
        const circle = EdgeModel.squarePiece ? "circle" : "round ends";
        tryVerify(() => called(circle));
        press(called(circle));
        tryCompare(EdgeModel, "corner", "circle");
        tryVerify(() => called("scallops"));
        press(called("scallops"));
        tryCompare(EdgeModel, "corner", "scalloped");
        const depth = EdgeModel.depth.text;
        EdgeModel.nudgeDepth(-1);
        verify(EdgeModel.depth.text !== depth);
        lookAt("corners", "inside point");
    }
    function test_theBindingIsLaidRound() {
        doOnce();
        compare(EdgeModel.phase, "bind");
        for (const screen of screens) {
            resize(screen);
            verify(printed(null).includes("begin"));
        }
    }
    function test_pinsGateTheEnd() {
        doOnce();
        doOnce();
        compare(EdgeModel.phase, "last");
        verify(!byName("action").enabled);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", pins");
            for (const name of ["pins in less", "pins in more", "pins out less", "pins out more"]) {
                const found = all(item => item.accessibleName === name)[0];
                const at = found.mapToItem(null, 0, 0);
                verify(at.x >= 0 && at.y >= 0 && at.x + found.width <= screen.width && at.y + found.height <= screen.height, name);
            }
        }
        press(called("pins in more"));
        tryCompare(byName("pins-in"), "text", "1");
        verify(!byName("action").enabled);
        compare(byName("pins-known").text, "I know where it is");
        press(called("pins in more"));
        tryCompare(byName("pins-known"), "text", "I know where they are");
        press(called("pins in less"));
        press(called("pins out more"));
        tryVerify(() => byName("action").enabled);
        doOnce();
        verify(StepModel.finished);
        tryVerify(() => printed(null).includes("Everything is done."));
        verify(!printed(null).includes("Nothing left to do here"));
    }
    /** The pins are drawn on every screen; the pillow is drawn on its leaf of the care. */
    function test_thePinsAndThePillowAreDrawn() {
        doOnce();
        doOnce();
        for (const screen of screens) {
            resize(screen);
            const drawn = all(item => item.into !== undefined && item.going !== undefined && item.back !== undefined);
            compare(drawn.map(item => item.going), [true, false], screen.tag);
            for (const drawing of drawn)
                verify(drawing.height >= Theme.mm(10) && drawing.width >= Theme.mm(30), screen.tag);
        }
        resize(screens[0]);
        page().openSide("care");
        tryVerify(() => byName("turn"));
        const pillow = () => all(item => item.accessibleName === "As a pillow, from the back");
        for (let leaf = 0; leaf < 3 && pillow().length === 0; ++leaf)
            press(byName("turn"));
        compare(pillow().length, 1);
        verify(pillow()[0].height > Theme.mm(16), "" + pillow()[0].height / Theme.pxPerMm);
    }
    function cleanup() {
        Look.pxPerMm = 5.87;
    }
    /** A safety count: both numbers, their words and buttons are seen whole, and none lies on another. */
    function test_thePinsAreSeenWhole() {
        doOnce();
        doOnce();
        for (let pin = 0; pin < 112; ++pin)
            EdgeModel.nudgePins(true, 1);
        for (let pin = 0; pin < 12; ++pin)
            EdgeModel.nudgePins(false, 1);
        for (const side of ["", "care"])
            for (const screen of [...screens, { tag: "10.4 in, fine", width: 2000, height: 1200, pxPerMm: 8.83 }]) {
                Look.pxPerMm = screen.pxPerMm ?? 5.87;
                resize(screen);
                page().openSide(side);
                settle();
                // What she opened lies over them: then nothing of them is seen.
                if (side !== "") {
                    compare(["pins-known", "pins-in", "pins-out"].filter(name => byName(name)), [], screen.tag);
                    continue;
                }
                const held = byName("pins-known");
                compare(seen(held), placeOf(held), screen.tag);
                for (const name of ["pins-in", "pins-out"]) {
                    const number = byName(name), place = placeOf(number);
                    verify(number.contentWidth <= number.width, screen.tag + ": " + name);
                    compare(seen(number), place, screen.tag);
                    compare(pressableAt(place).map(item => item.accessibleName), [], screen.tag + ": " + name);
                }
                for (const word of all(item => item.contentWidth !== undefined && ["pins in", "pins out"].includes(item.text))) {
                    verify(word.contentHeight <= word.height + 1, screen.tag + ": " + word.text);
                    compare(pressableAt(placeOf(word)).map(item => item.accessibleName), [], screen.tag + ": " + word.text);
                }
            }
    }
}
