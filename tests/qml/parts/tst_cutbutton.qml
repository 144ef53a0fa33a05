// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Hands
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "CutButton"

    Component {
        id: made
        CutButton {
            id: button
            width: 300
            text: "Cut done"
            kind: "action"
            readonly property SignalSpy spy: SignalSpy {
                target: button
                signalName: "clicked"
            }
        }
    }

    function test_actsOnReleaseInside() {
        const b = createTemporaryObject(made, test);
        mousePress(b, 20, 20);
        verify(b.pressed);
        compare(b.spy.count, 0);
        mouseRelease(b, 22, 20);
        compare(b.spy.count, 1);
    }
    /** What comes up under a finger is not pressed by the bounce of it, but is by the next touch. */
    function test_aBounceOnWhatJustCameUpIsNotTaken() {
        const b = createTemporaryObject(made, test, { guardMs: 400, guardShown: true, visible: false });
        wait(450);
        b.visible = true;
        mouseClick(b, 20, 20);
        compare(b.spy.count, 0);
        // Put down too early it is not taken by being held.
        mousePress(b, 20, 20);
        wait(450);
        mouseRelease(b, 20, 20);
        compare(b.spy.count, 0);
        mouseClick(b, 20, 20);
        compare(b.spy.count, 1);
    }
    function test_aSecondTapConfirmsNothingMore() {
        Theme.pause = Theme.slip;
        verify(Theme.pause >= 700);
        const a = createTemporaryObject(made, test, { confirms: true, guardMs: 0 });
        const b = createTemporaryObject(made, test, { confirms: true, guardMs: 0, y: 200 });
        const other = createTemporaryObject(made, test, { guardMs: 0, y: 400 });
        wait(Theme.slip + 50);
        mouseClick(a);
        // Neither the same again, nor another that stands elsewhere, nor a key; what confirms nothing is pressed as ever.
        mouseClick(a);
        mouseClick(b);
        b.forceActiveFocus();
        keyClick(Qt.Key_Space);
        b.press();
        mouseClick(other);
        compare([a.spy.count, b.spy.count, other.spy.count], [1, 0, 1]);
        // Begun too early it is not taken by being held, and is not shown as pressed.
        mousePress(b);
        verify(!b.pressed);
        wait(Theme.slip + 50);
        mouseRelease(b);
        compare(b.spy.count, 0);
        mouseClick(b);
        compare(b.spy.count, 1);
    }
    function test_whatComesUpConfirmsNothingAtOnce() {
        Theme.pause = Theme.slip;
        const b = createTemporaryObject(made, test, { confirms: true, guardMs: 0, visible: false });
        wait(Theme.slip + 50);
        b.visible = true;
        mouseClick(b);
        b.press();
        compare(b.spy.count, 0);
        wait(Theme.slip + 50);
        b.press();
        compare(b.spy.count, 1);
    }
    function test_answersAfterTwoFingers_data() {
        const a = (id, state) => ({ id: id, state: state, x: -40, y: 0 });
        const b = (id, state) => ({ id: id, state: state, x: 40, y: 4 });
        return [
            { tag: "first up first", events: [[a(1, "down")], [a(1, "still"), b(2, "down")], [a(1, "up"), b(2, "still")], [b(2, "up")]] },
            { tag: "second up first", events: [[a(1, "down")], [a(1, "still"), b(2, "down")], [a(1, "still"), b(2, "up")], [a(1, "up")]] },
            { tag: "both at once", events: [[a(1, "down"), b(2, "down")], [a(1, "up"), b(2, "up")]] },
            { tag: "down at once, up in turn", events: [[a(1, "down"), b(2, "down")], [a(1, "up"), b(2, "still")], [b(2, "up")]] },
            { tag: "down in turn, up at once", events: [[a(1, "down")], [a(1, "still"), b(2, "down")], [a(1, "up"), b(2, "up")]] }
        ];
    }
    /** Two fingers on one target leave it as it was: the next single touch is answered, whatever its number. */
    function test_answersAfterTwoFingers(hand) {
        const b = createTemporaryObject(made, test, { guardMs: 0 });
        for (const event of hand.events)
            Hands.fingers(b, event);
        const before = b.spy.count;
        verify(before <= 1);
        verify(!b.pressed);
        wait(20);
        for (const id of [7, 8]) {
            Hands.fingers(b, [{ id: id, state: "down", x: 0, y: 0 }]);
            Hands.fingers(b, [{ id: id, state: "up", x: 0, y: 0 }]);
        }
        compare(b.spy.count, before + 2);
    }
    /** The same for any way two fingers come and go, each with a number of its own, as panels count them. */
    function test_answersAfterAnyTwoFingers() {
        const b = createTemporaryObject(made, test, { guardMs: 0 });
        let seed = 20261125, number = 100;
        const upTo = n => (seed = (seed * 1103515245 + 12345) % 2147483648) % n;
        for (let round = 0; round < 120; ++round) {
            let down = [];
            const events = 2 + upTo(6);
            for (let k = 0; k < events || down.length > 0; ++k) {
                const points = down.map(f => ({ id: f.id, x: f.x, y: f.y, state: k >= events || upTo(3) === 0 ? "up" : "still" }));
                if (k < events && down.length < 2 && upTo(2) === 0)
                    points.push({ id: ++number, x: upTo(100) - 50, y: upTo(20) - 10, state: "down" });
                if (points.length > 0)
                    Hands.fingers(b, points);
                down = points.filter(f => f.state !== "up");
            }
            wait(1);
            const before = b.spy.count;
            ++number;
            Hands.fingers(b, [{ id: number, state: "down", x: 0, y: 0 }]);
            Hands.fingers(b, [{ id: number, state: "up", x: 0, y: 0 }]);
            compare(b.spy.count, before + 1, "round " + round);
        }
    }
    function test_releaseOutsideDoesNothing() {
        const b = createTemporaryObject(made, test);
        mousePress(b, 20, 20);
        mouseMove(b, 20, 400);
        mouseRelease(b, 20, 400);
        compare(b.spy.count, 0);
        verify(!b.pressed);
    }
    function test_slowPressIsAPress() {
        const b = createTemporaryObject(made, test);
        mousePress(b, 20, 20);
        wait(1000);
        mouseRelease(b, 20, 20);
        compare(b.spy.count, 1);
    }
    function test_actionIsNotTakenTwiceAtOnce() {
        const b = createTemporaryObject(made, test, { guardMs: 60000 });
        mouseClick(b);
        mouseClick(b);
        compare(b.spy.count, 1);
        compare(createTemporaryObject(made, test).guardMs, 400);
        compare(createTemporaryObject(made, test, { kind: "outline" }).guardMs, 0);
    }
    function test_takenAgainAfterThePause() {
        const b = createTemporaryObject(made, test, { guardMs: 1 });
        mouseClick(b);
        wait(20);
        mouseClick(b);
        compare(b.spy.count, 2);
    }
    function test_keyboard_data() {
        return [{ tag: "space", key: Qt.Key_Space }, { tag: "return", key: Qt.Key_Return }, { tag: "enter", key: Qt.Key_Enter }];
    }
    function test_keyboard(data) {
        const b = createTemporaryObject(made, test);
        b.forceActiveFocus();
        verify(b.keyboardFocus);
        keyClick(data.key);
        compare(b.spy.count, 1);
    }
    function test_disabledSaysWhy() {
        const b = createTemporaryObject(made, test, { enabled: false, reason: "Straighten the end first." });
        mouseClick(b);
        compare(b.spy.count, 0);
        verify(b.reasonShown);
        compare(b.Accessible.description, "Straighten the end first.");
        verify(!b.activeFocusOnTab);
    }
    function test_secondFingerIsNotTaken() {
        const a = createTemporaryObject(made, test), b = createTemporaryObject(made, test, { y: 200 });
        const touch = touchEvent(a);
        touch.press(0, a, 50, 50).commit();
        touch.stationary(0).press(1, b, 50, 50).commit();
        verify(a.pressed);
        verify(!b.pressed);
        touch.stationary(0).release(1, b, 50, 50).commit();
        compare(b.spy.count, 0);
        touch.release(0, a, 50, 50).commit();
        compare(a.spy.count, 1);
        const later = touchEvent(b);
        later.press(2, b, 50, 50).commit();
        later.release(2, b, 50, 50).commit();
        compare(b.spy.count, 1);
    }
    function test_forearmIsNotTaken_data() {
        return [{ tag: "finger", mm: 12, count: 1 }, { tag: "just under", mm: 29, count: 1 }, { tag: "forearm", mm: 45, count: 0 }];
    }
    function test_forearmIsNotTaken(data) {
        const b = createTemporaryObject(made, test);
        Hands.tap(b, Theme.mm(data.mm));
        compare(b.spy.count, data.count);
    }
    function test_sizes() {
        const b = createTemporaryObject(made, test);
        verify(b.implicitHeight >= Theme.mm(20) && b.implicitWidth >= Theme.mm(20));
    }
    function test_longWordsWrap() {
        const b = createTemporaryObject(made, test, { text: "Als geschnitten abhaken und weiter zum nächsten Streifen", width: Theme.mm(68) });
        b.height = b.implicitHeight;
        verify(b.implicitHeight > Theme.target);
        compare(overflowing(b), []);
    }
    function test_aWordIsSetSmallerBeforeItIsBroken() {
        const b = createTemporaryObject(made, test, { kind: "outline", text: "Zurückgehen", width: Theme.mm(30) });
        verify(b.setCap < b.cap);
        verify(b.setCap >= Theme.mm(3.84));
        compare(overflowing(b), []);
    }
    /** The words of a button as they are set. */
    function lettering(item: Item): var {
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i];
            const found = child.lineCount !== undefined && child.text === test.asked ? child : lettering(child);
            if (found)
                return found;
        }
        return null;
    }
    property string asked
    function test_linesAreSetSmallerInALowTarget() {
        const b = createTemporaryObject(made, test, { text: "Prendre cette disposition", width: Theme.mm(40), height: Theme.mm(60) });
        const free = b.setCap;
        b.height = Theme.mm(20);
        verify(b.setCap < free);
        verify(b.setCap >= Theme.mm(3.84));
        asked = b.text;
        verify(lettering(b).contentHeight <= b.height);
        compare(overflowing(b), []);
    }
    function test_theLeastWidthBreaksNoWord() {
        const b = createTemporaryObject(made, test, { kind: "outline", text: "Rückgängig: Beispiel" });
        b.width = b.leastWidth;
        b.height = b.contentHeight;
        compare(overflowing(b), []);
        asked = b.text;
        compare(lettering(b).lineCount, 2);
    }
    function test_reading() {
        const b = createTemporaryObject(made, test, { kind: "outline", figure: figure("9", "3", "4", "in") });
        compare(b.Accessible.name, "9 3/4 in");
        verify(b.implicitHeight >= Theme.step);
    }
}
