// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "InlineLength"

    Component {
        id: made
        InlineLength {}
    }

    function tokensOf(item: Item): var {
        const out = [];
        for (let i = 0; i < item.children.length; ++i)
            if (item.children[i].modelData !== undefined)
                out.push(item.children[i]);
        return out;
    }

    function test_oneLineWithoutAWidth() {
        const s = createTemporaryObject(made, test, { text: "Lay the {7 1/4} line on the edge." });
        const ys = tokensOf(s).map(t => t.y + t.height / 2);
        compare(tokensOf(s).length, 7);
        for (const y of ys)
            fuzzyCompare(y, ys[0], 1);
    }
    function test_wrapsInsideItsWidth() {
        const s = createTemporaryObject(made, test, { text: "Lay the {7 1/4} line on the cut edge and butt the {6} ruler to it.", width: 240 });
        const tokens = tokensOf(s);
        for (const t of tokens)
            verify(t.x + t.width <= 241, t.modelData.before + " ends at " + (t.x + t.width));
        verify(tokens[tokens.length - 1].y > tokens[0].y);
        // Lines do not run into one another.
        for (let i = 1; i < tokens.length; ++i)
            if (tokens[i].x === 0)
                verify(tokens[i].y + tokens[i].height > tokens[i - 1].y + tokens[i - 1].height);
        verify(s.implicitHeight >= tokens[tokens.length - 1].y + tokens[tokens.length - 1].height - 1);
    }
    function test_lengthKeepsItsPunctuation() {
        const s = createTemporaryObject(made, test, { text: "cut at ({7 1/4}), then" });
        const length = tokensOf(s)[2].modelData;
        compare(length.before, "(");
        compare(length.after, "),");
        compare(length.figure.whole, "7");
        compare(length.figure.num, "1");
        compare(length.figure.den, "4");
    }
    function test_aColonAfterANarrowSpaceKeepsToItsLength() {
        const s = createTemporaryObject(made, test, { text: "de {7 1/4}\u202f: couper" });
        compare(tokensOf(s).length, 3);
        compare(tokensOf(s)[1].modelData.after, "\u202f:");
    }
    function test_readings_data() {
        return [
            { tag: "7 1/4", whole: "7", num: "1", den: "4", unit: "", lean: "" },
            { tag: "13/16 in", whole: "", num: "13", den: "16", unit: "in", lean: "" },
            { tag: "337.5 mm", whole: "337.5", num: "", den: "", unit: "mm", lean: "" },
            { tag: "a scant 21 3/16 in", whole: "21", num: "3", den: "16", unit: "in", lean: "a scant" },
            { tag: "40", whole: "40", num: "", den: "", unit: "", lean: "" }
        ];
    }
    function test_readings(data) {
        const f = tokensOf(createTemporaryObject(made, test, { text: "{" + data.tag + "}" }))[0].modelData.figure;
        for (const part of ["whole", "num", "den", "unit", "lean"])
            compare(f[part], data[part], part);
    }
    function test_partsWithFigures() {
        const s = createTemporaryObject(made, test, { parts: ["butt the", figure("6", "", "", "in"), "ruler"] });
        compare(tokensOf(s).length, 4);
        compare(s.Accessible.name, "butt the 6 in ruler");
    }
    function test_changesAreLaidAnew() {
        const s = createTemporaryObject(made, test, { text: "{7}", width: 200 });
        const one = s.implicitHeight;
        s.text = "a sentence so long that it takes more than the one line it has now";
        tryVerify(() => s.implicitHeight > one);
        s.text = "";
        compare(s.implicitHeight, 0);
    }
    function test_aMovingFigureKeepsItsItems() {
        // As under a finger: the same sentence with another length. No item is made anew, and what is shown is
        // what a sentence made anew shows.
        const s = createTemporaryObject(made, test, { text: "Centre at {7 1/4}, mark it", width: 200 });
        const before = tokensOf(s);
        for (const at of ["{12 15/16},", "{100},", "here,", "{3 1/2},"]) {
            s.text = "Centre at " + at + " mark it";
            const fresh = tokensOf(createTemporaryObject(made, test, { text: s.text, width: 200 }));
            compare(tokensOf(s).length, fresh.length);
            for (let i = 0; i < fresh.length; ++i) {
                verify(tokensOf(s)[i] === before[i], "token " + i);
                fuzzyCompare(before[i].x, fresh[i].x, 0.1, at + " " + i);
                fuzzyCompare(before[i].y, fresh[i].y, 0.1, at + " " + i);
                fuzzyCompare(before[i].implicitWidth, fresh[i].implicitWidth, 0.1, at + " " + i);
            }
        }
    }
    function test_alignment() {
        const s = createTemporaryObject(made, test, { text: "{7} in", width: 300, horizontalAlignment: Text.AlignRight });
        const last = tokensOf(s)[1];
        fuzzyCompare(last.x + last.width, 300, 1);
    }
}
