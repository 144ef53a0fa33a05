// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "Tally, CautionLine, NoticeLine, FindingBlock, PlainField"

    Component {
        id: tally
        Tally {}
    }
    Component {
        id: caution
        CautionLine { width: Theme.mm(68) }
    }
    Component {
        id: notice
        NoticeLine {
            id: n
            width: Theme.mm(68)
            readonly property SignalSpy spy: SignalSpy {
                target: n
                signalName: "dismissed"
            }
        }
    }
    Component {
        id: finding
        FindingBlock { width: Theme.column }
    }
    Component {
        id: field
        PlainField {
            id: f
            width: 300
            placeholder: "name of the piece"
            readonly property SignalSpy spy: SignalSpy {
                target: f
                signalName: "accepted"
            }
        }
    }

    function strips(item: Item): var {
        const out = [];
        for (let i = 0; i < item.children.length; ++i)
            if (item.children[i].border !== undefined)
                out.push(item.children[i]);
        return out;
    }

    function test_stripsAsStrips() {
        const t = createTemporaryObject(tally, test, { total: 5, done: 1 });
        const s = strips(t);
        compare(s.length, 5);
        compare(s[0].color, Theme.colors.ink);
        compare(s[1].color, Theme.colors.raised);
        verify(s[1].border.width > s[2].border.width); // the next one is bold
        compare(t.Accessible.name, "1 of 5");
    }
    function test_manyAreSaid() {
        const t = createTemporaryObject(tally, test, { total: 40, done: 9 });
        verify(!t.asStrips);
        compare(t.Accessible.name, "9 of 40");
        verify(createTemporaryObject(tally, test, { total: 12, done: 3, availableWidth: 80 }).implicitWidth <= 160);
        compare(createTemporaryObject(tally, test).implicitHeight >= 0, true);
    }
    function test_cautionFolds() {
        const c = createTemporaryObject(caution, test, { text: "Close the blade between cuts, and lay the cutter down behind the ruler." });
        compare(overflowing(c), []);
        const open = c.implicitHeight;
        c.folded = true;
        verify(c.implicitHeight < open);
        compare(c.Accessible.name, c.text); // folded to its mark it is still read out
    }
    function test_nothingToSayTakesNoRoom() {
        const c = createTemporaryObject(caution, test), n = createTemporaryObject(notice, test);
        compare(c.implicitHeight, 0);
        compare(n.implicitHeight, 0);
        verify(!c.visible && !n.visible);
    }
    function test_noticeIsPutAway() {
        const n = createTemporaryObject(notice, test, { text: "Strip 2 of 5 is marked as cut." });
        n.height = n.implicitHeight;
        compare(overflowing(n), []);
        mouseClick(n);
        compare(n.spy.count, 1);
    }
    function test_finding_data() {
        return [{ tag: "short", verdict: "Lean", remedy: "Split it." },
                { tag: "long", verdict: "Schieflage zu groß", remedy: "Die Neigung auf beide Seiten verteilen." }];
    }
    function test_finding(data) {
        const f = createTemporaryObject(finding, test, { head: "Block B2", verdict: data.verdict, remedy: data.remedy, figure: figure("", "3", "16", "in") });
        compare(overflowing(f), []);
        verify(f.verdictCap >= Theme.capWord);
        compare(f.Accessible.name, "Block B2. " + data.verdict + ". 3/16 in. " + data.remedy);
    }
    function test_fieldTakesAName() {
        const f = createTemporaryObject(field, test);
        mouseClick(f);
        verify(f.activeFocus);
        for (const k of "Boat")
            keyClick(k);
        keyClick(Qt.Key_Return);
        compare(f.text, "Boat");
        compare(f.spy.signalArguments[0][0], "Boat");
        f.clear();
        compare(f.text, "");
        verify(f.implicitHeight >= Theme.mm(11.6));
    }
}
