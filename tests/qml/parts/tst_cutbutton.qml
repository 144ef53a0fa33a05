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
    function test_reading() {
        const b = createTemporaryObject(made, test, { kind: "outline", figure: figure("9", "3", "4", "in") });
        compare(b.Accessible.name, "9 3/4 in");
        verify(b.implicitHeight >= Theme.step);
    }
}
