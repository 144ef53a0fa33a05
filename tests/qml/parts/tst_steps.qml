// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "StepButton and Stepper"

    Component {
        id: button
        StepButton {
            id: b
            readonly property SignalSpy spy: SignalSpy {
                target: b
                signalName: "stepped"
            }
        }
    }
    Component {
        id: stepper
        Stepper {
            id: s
            property var heard: []
            onLess: heard.push("less")
            onMore: heard.push("more")
            onAskKeypad: heard.push("ask")
        }
    }

    function pressable(item: Item, name: string): Item {
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i];
            if (child.accessibleName === name)
                return child;
            const inside = pressable(child, name);
            if (inside)
                return inside;
        }
        return null;
    }

    function test_oneStepAPress() {
        const b = createTemporaryObject(button, test);
        mouseClick(b);
        compare(b.spy.count, 1);
        mouseClick(b);
        compare(b.spy.count, 2); // no pause between steps
    }
    function test_goesOnWhileHeld() {
        const b = createTemporaryObject(button, test);
        mousePress(b);
        tryVerify(() => b.spy.count >= 3);
        mouseRelease(b);
        const then = b.spy.count;
        wait(300);
        compare(b.spy.count, then); // neither the release nor the time after it steps again
    }
    function test_stopsAtTheEnd() {
        const b = createTemporaryObject(button, test);
        mousePress(b);
        tryVerify(() => b.spy.count >= 2);
        b.enabled = false;
        const then = b.spy.count;
        wait(300);
        compare(b.spy.count, then);
        mouseRelease(b);
        b.enabled = true;
        mouseClick(b);
        compare(b.spy.count, then + 1);
    }
    function test_size() {
        // Plus and minus: at least 13 mm (MIL-STD-1472E 5.4.3.1.3.3).
        const b = createTemporaryObject(button, test);
        verify(b.implicitWidth >= Theme.mm(13) && b.implicitHeight >= Theme.mm(13));
    }
    function test_stepperSignals() {
        const s = createTemporaryObject(stepper, test, { label: "columns", figure: figure("6", "", "", "") });
        s.width = s.implicitWidth;
        mouseClick(pressable(s, "columns less"));
        mouseClick(pressable(s, "columns more"));
        mouseClick(pressable(s, "columns 6"));
        compare(s.heard, ["less", "more", "ask"]);
    }
    function test_stepperAtItsEnd() {
        const s = createTemporaryObject(stepper, test, { label: "rows", figure: figure("1", "", "", ""), canLess: false });
        mouseClick(pressable(s, "rows less"));
        compare(s.heard, []);
    }
    function test_problemAndReckoned() {
        const plain = createTemporaryObject(stepper, test, { label: "seam", figure: figure("", "1", "4", "in"), width: 260 });
        const ill = createTemporaryObject(stepper, test, { label: "seam", figure: figure("", "1", "4", "in"), width: 260, problem: "The seam is wider than half the sashing." });
        verify(ill.implicitHeight > plain.implicitHeight);
        compare(overflowing(ill), []);
        const reckoned = createTemporaryObject(stepper, test, { label: "strip", figure: figure("13", "1", "4", "in"), width: 260, reckoned: true });
        verify(reckoned.implicitHeight > plain.implicitHeight);
    }
    function test_longLabelWraps() {
        const s = createTemporaryObject(stepper, test, { label: "Breite der Zwischenstreifen oben", figure: figure("1", "1", "2", "in"), width: 200 });
        verify(!s.inlineFits);
        compare(overflowing(s), []);
    }
    function test_choiceInWords() {
        const s = createTemporaryObject(stepper, test, { label: "edge", valueText: "binding", width: 260 });
        mouseClick(pressable(s, "edge binding"));
        compare(s.heard, ["ask"]);
    }
}
