// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "HoldButton"

    Component {
        id: made
        HoldButton {
            id: b
            width: 300
            text: "Throw the project away"
            readonly property SignalSpy spy: SignalSpy {
                target: b
                signalName: "held"
            }
        }
    }

    function test_asksForASecond() {
        compare(createTemporaryObject(made, test).holdMs, 1000);
    }
    function test_aTapDestroysNothing() {
        const b = createTemporaryObject(made, test);
        mouseClick(b);
        wait(100);
        compare(b.spy.count, 0);
        compare(b.progress, 0);
    }
    function test_fillsAndActsOnce() {
        const b = createTemporaryObject(made, test, { holdMs: 300 });
        mousePress(b);
        tryVerify(() => b.progress > 0);
        tryCompare(b.spy, "count", 1);
        wait(400);
        compare(b.spy.count, 1);
        mouseRelease(b);
        compare(b.progress, 0);
    }
    function test_lettingGoBeforeStopsIt() {
        const b = createTemporaryObject(made, test, { holdMs: 100000 });
        mousePress(b);
        tryVerify(() => b.progress > 0);
        mouseRelease(b);
        compare(b.progress, 0);
        compare(b.spy.count, 0);
    }
    function test_slidingOffStopsIt() {
        const b = createTemporaryObject(made, test, { holdMs: 100000 });
        mousePress(b);
        tryVerify(() => b.progress > 0);
        mouseMove(b, 20, 500);
        tryCompare(b, "pressed", false);
        compare(b.progress, 0);
        mouseRelease(b, 20, 500);
        compare(b.spy.count, 0);
    }
    function test_heldByTheKeyboard() {
        const b = createTemporaryObject(made, test, { holdMs: 200 });
        b.forceActiveFocus();
        keyPress(Qt.Key_Space);
        tryCompare(b.spy, "count", 1);
        keyRelease(Qt.Key_Space);
        compare(b.spy.count, 1);
    }
    function test_saysHow() {
        verify(createTemporaryObject(made, test).Accessible.description !== "");
    }
}
