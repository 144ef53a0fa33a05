// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts
import "qrc:/qt/qml/Matside/Parts/unrolled.js" as Unrolled

PartCase {
    id: test
    name: "Keypad"
    height: 820

    readonly property var eighths: [
        { num: 1, den: 8, text: "1/8" }, { num: 1, den: 4, text: "1/4" }, { num: 3, den: 8, text: "3/8" }, { num: 1, den: 2, text: "1/2" },
        { num: 5, den: 8, text: "5/8" }, { num: 3, den: 4, text: "3/4" }, { num: 7, den: 8, text: "7/8" }
    ]

    Component {
        id: made
        Keypad {
            id: pad
            width: Theme.mm(116)
            height: 800
            title: "sashing"
            unit: "in"
            marks: test.eighths
            readonly property SignalSpy doneSpy: SignalSpy {
                target: pad
                signalName: "done"
            }
            readonly property SignalSpy cancelSpy: SignalSpy {
                target: pad
                signalName: "cancelled"
            }
            readonly property SignalSpy offerSpy: SignalSpy {
                target: pad
                signalName: "offerTaken"
            }
        }
    }

    function find(item: Item, name: string): Item {
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i];
            if (child.accessibleName === name && child.visible)
                return child;
            const inside = find(child, name);
            if (inside)
                return inside;
        }
        return null;
    }
    function press(pad: Item, names: var) {
        wait(20); // keys are laid out a frame after the pad
        for (const n of names) {
            const key = find(pad, n);
            verify(key, "no key " + n);
            mouseClick(key);
        }
    }

    function test_aTapeIsRolledOutForALength() {
        const pad = createTemporaryObject(made, test);
        const tape = findChild(pad, "tape");
        pad.height = Theme.mm(161);
        press(pad, ["1", "2", "3/8"]);
        verify(tape.visible);
        compare(Unrolled.reach(tape.figure), 12.375);
        verify(Unrolled.stretch(12.375, false)[0] > 12.375);
        verify(tape.y + tape.height <= find(pad, "7").mapToItem(pad, 0, 0).y, "it lies on the keys");
        // What is wrong has its place.
        pad.error = "Too long.";
        verify(!tape.visible);
        pad.error = "";
        pad.counting = true;
        verify(!tape.visible);
    }
    function test_digitsAndAFraction() {
        const pad = createTemporaryObject(made, test);
        press(pad, ["1", "3", "1/4"]);
        compare(pad.entry, "13 1/4");
        press(pad, ["3/8"]);
        compare(pad.entry, "13 3/8");
        press(pad, ["3/8"]); // the same again takes it off
        compare(pad.entry, "13");
        press(pad, ["1/2", "2"]); // a digit still belongs to the whole number
        compare(pad.entry, "132 1/2");
        press(pad, ["Done"]);
        compare(pad.doneSpy.count, 1);
        compare(pad.doneSpy.signalArguments[0][0], "132 1/2");
    }
    function test_fractionAlone() {
        const pad = createTemporaryObject(made, test);
        press(pad, ["5/8"]);
        compare(pad.entry, "5/8");
    }
    function test_rubOutAndClear() {
        const pad = createTemporaryObject(made, test);
        press(pad, ["2", "1", "1/4", "rub out the last"]);
        compare(pad.entry, "21");
        press(pad, ["rub out the last"]);
        compare(pad.entry, "2");
        press(pad, ["7", "clear"]);
        compare(pad.entry, "");
        press(pad, ["Done"]); // nothing entered, nothing done
        compare(pad.doneSpy.count, 0);
    }
    function test_startStandsUntilTheFirstKey() {
        const pad = createTemporaryObject(made, test);
        pad.start("13 1/4");
        compare(pad.entry, "13 1/4");
        press(pad, ["7"]);
        compare(pad.entry, "7");
        pad.start("13 1/4");
        press(pad, ["1/2"]);
        compare(pad.entry, "1/2");
    }
    function test_whatStandsIsShownSoftlyAndKept_data() {
        return [{ tag: "inches", text: "13 1/4 in", entry: "13 1/4" }, { tag: "count", text: "12", entry: "12" },
                { tag: "share", text: "12 %", entry: "12" }, { tag: "metric", text: "337,5 mm", entry: "337.5" },
                { tag: "none", text: "", entry: "" }, { tag: "in words", text: "not measured", entry: "" }];
    }
    function test_whatStandsIsShownSoftlyAndKept(data) {
        const pad = createTemporaryObject(made, test);
        pad.start(data.text);
        compare(pad.entry, data.entry);
        compare(pad.fresh, data.entry !== "");
        // Untouched nothing is entered: what is shown may be rounded.
        pad.finish();
        compare(pad.doneSpy.count, 0);
        compare(pad.cancelSpy.count, data.entry !== "" ? 1 : 0);
        pad.start(data.text);
        press(pad, ["7"]);
        compare(pad.entry, "7");
        press(pad, ["Done"]);
        compare(pad.doneSpy.signalArguments[0][0], "7");
    }
    /** Where every key stands. */
    function places(pad: Item): string {
        return ["7", "5", "0", "clear", "1/8", "1/2", "Done", "Cancel"].map(name => {
            const key = find(pad, name);
            return name + key.mapToItem(pad, 0, 0) + key.width + "×" + key.height;
        }).join();
    }
    function test_nothingMoves_data() {
        return [{ tag: "tall", w: 128, h: 146 }, { tag: "column", w: 121, h: 158 }, { tag: "wide", w: 198, h: 86 },
                { tag: "flat", w: 154, h: 102, sixteenths: true }];
    }
    /** A digit, a fraction or a sentence comes and goes: every key stays under the finger. */
    function test_nothingMoves(data) {
        const pad = createTemporaryObject(made, test);
        pad.width = Theme.mm(data.w);
        pad.height = Theme.mm(data.h);
        if (data.sixteenths)
            pad.marks = Array.from({ length: 15 }, (_, i) => ({ num: i + 1, den: 16, text: (i + 1) + "/16" }));
        compare(pad.flat, data.tag === "flat");
        wait(60);
        const fixed = pad.flat ? ["7", "5", "0", "clear", "Done", "Cancel"] : null;
        const now = () => fixed ? fixed.map(name => find(pad, name).mapToItem(pad, 0, 0)).join() : places(pad);
        const before = now();
        for (const text of ["", "13 1/4 in", "1/2 in"]) {
            pad.start(text);
            wait(30);
            compare(now(), before, "opened on " + text);
            press(pad, ["1"]);
            wait(30);
            compare(now(), before, "the first digit after " + text);
        }
        pad.error = "The sashing must be at least twice the seam" + (pad.flat ? "." : ", or it is not caught.");
        wait(60);
        compare(now(), before, "what is wrong");
    }
    function test_decimal() {
        const pad = createTemporaryObject(made, test, { decimal: true, unit: "mm" });
        press(pad, ["3", "3", "7", "decimal point", "5", "decimal point"]);
        compare(pad.entry, "337.5");
        compare(find(pad, "1/4"), null);
    }
    function test_counting() {
        const pad = createTemporaryObject(made, test, { counting: true, unit: "" });
        compare(find(pad, "1/4"), null);
        press(pad, ["6"]);
        compare(pad.entry, "6");
    }
    function test_typedOnAKeyboard() {
        const pad = createTemporaryObject(made, test);
        pad.start("");
        for (const k of ["2", "1", " ", "3", "/", "8"])
            keyClick(k);
        compare(pad.entry, "21 3/8");
        keyClick(Qt.Key_Backspace);
        compare(pad.entry, "21 3/");
        keyClick("4");
        keyClick(Qt.Key_Return);
        compare(pad.doneSpy.signalArguments[0][0], "21 3/4");
        keyClick(Qt.Key_Escape);
        compare(pad.cancelSpy.count, 1);
    }
    function test_errorAndOffers() {
        const pad = createTemporaryObject(made, test, { error: "The sashing must be at least twice the seam.", offers: [{ says: "1/2 in", index: 0 }, { says: "seam 3/16 in", index: 4 }] });
        press(pad, ["seam 3/16 in"]);
        compare(pad.offerSpy.signalArguments[0][0], 4);
        compare(overflowing(pad), []);
    }
    function test_tooLongIsNotTaken() {
        const pad = createTemporaryObject(made, test, { longest: 3 });
        press(pad, ["1", "2", "3", "4"]);
        compare(pad.entry, "123");
    }
    function sixteenths(parts: int): var {
        const whole = (a, b) => b === 0 ? a : whole(b, a % b);
        return Array.from({ length: parts - 1 }, (_, i) => {
            const common = whole(i + 1, parts);
            return { num: (i + 1) / common, den: parts / common, text: (i + 1) / common + "/" + parts / common };
        });
    }
    /** Everything that is pressed, shown. */
    function keysOf(item: Item): var {
        let found = [];
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i];
            if (child.visible)
                found = found.concat(child.widestContact !== undefined ? [child] : keysOf(child));
        }
        return found;
    }
    // The sheets of the screens that are held to: 10.1 in and 8 in, flat and upright, and beside a column of Fit.
    function test_everyFormKeepsItsSizes_data() {
        const rows = [];
        for (const [w, h] of [[198, 86], [206, 86], [155.3, 102.7], [152.7, 108], [116.3, 172], [88, 172.7], [133, 136], [116, 146]])
            for (const form of ["sixteenths", "eighths", "quarters", "decimal", "count"])
                rows.push({ tag: w + " by " + h + ", " + form, w: w, h: h, form: form });
        return rows;
    }
    function test_everyFormKeepsItsSizes(data) {
        const parts = { sixteenths: 16, eighths: 8, quarters: 4 }[data.form] ?? 0;
        const pad = createTemporaryObject(made, test, {
            marks: parts > 0 ? sixteenths(parts) : [],
            decimal: data.form === "decimal", counting: data.form === "count", unit: data.form === "decimal" ? "mm" : data.form === "count" ? "" : "in"
        });
        pad.width = Theme.mm(data.w);
        pad.height = Theme.mm(data.h);
        pad.start("13 1/4 in");
        if (data.w === 116 && data.form === "sixteenths")
            pad.height = pad.wanted; // two halves of an inch are higher
        for (const left of [false, true]) {
            Theme.left = left;
            wait(40);
            const keys = keysOf(pad).filter(key => key.enabled);
            compare(keys.length, 14 + Math.max(0, parts - 1) + (data.form === "decimal" ? 1 : 0));
            const places = keys.map(key => {
                const at = key.mapToItem(pad, 0, 0);
                return Qt.rect(at.x, at.y, key.width, key.height);
            });
            for (let i = 0; i < keys.length; ++i) {
                const a = places[i], name = keys[i].accessibleName;
                verify(a.width >= Theme.mm(13) - 0.3 && a.height >= Theme.mm(13) - 0.3, name + " " + a);
                verify(a.x >= -0.3 && a.y >= 0 && a.x + a.width <= pad.width + 0.3 && a.y + a.height <= pad.height + 0.3, name + " off the sheet " + a);
                for (let k = 0; k < i; ++k) {
                    const b = places[k];
                    const across = Math.max(a.x - b.x - b.width, b.x - a.x - a.width), down = Math.max(a.y - b.y - b.height, b.y - a.y - a.height);
                    verify(Math.max(across, down) >= Theme.mm(3) - 0.4, name + " is near " + keys[k].accessibleName);
                }
            }
            compare(overflowing(pad), []);
        }
        Theme.left = false;
    }
    /** As on a ruler: marks from left to right by their worth, evenly, one step between neighbours. */
    function test_fractionsHangFromAnInch() {
        const pad = createTemporaryObject(made, test, { marks: sixteenths(16) });
        pad.width = Theme.mm(198);
        pad.height = Theme.mm(86);
        wait(40);
        const middle = name => {
            const key = find(pad, name);
            return key.mapToItem(pad, key.width / 2, 0).x;
        };
        const step = middle("1/8") - middle("1/16");
        const marks = sixteenths(16);
        for (let i = 0; i < marks.length; ++i)
            fuzzyCompare(middle(marks[i].text) - middle("1/16"), i * step, 0.6, marks[i].text);
    }
    function test_keysAreLargeEnough_data() {
        return [{ tag: "tall", w: 116, h: 800 }, { tag: "wide", w: 198, h: 640 }];
    }
    function test_keysAreLargeEnough(data) {
        const pad = createTemporaryObject(made, test);
        pad.width = Theme.mm(data.w);
        pad.height = data.h;
        compare(pad.wide, data.tag === "wide");
        for (const name of ["1", "0", "clear", "7/8", "1/8"]) {
            const key = find(pad, name);
            // At least 13 mm with 3 mm between (MIL-STD-1472E 5.4.3.1.3.3; Colle and Hiszem 2004).
            verify(key.width >= Theme.mm(13) - 0.01 && key.height >= Theme.mm(13) - 0.01, name + " " + key.width);
        }
        tryVerify(() => pad.height >= pad.implicitHeight - 0.5 || pad.wide, 1000, "needs " + pad.implicitHeight + " has " + pad.width + " by " + pad.height);
        const one = find(pad, "1"), two = find(pad, "2");
        tryVerify(() => two.x - one.x - one.width >= Theme.mm(3) - 0.01);
        const seven = find(pad, "7/8");
        tryVerify(() => seven.mapToItem(pad, 0, 0).x + seven.width <= pad.width + 0.5);
    }
}
