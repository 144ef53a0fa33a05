// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "WorkedFigure, DoubleRule and WorkingTab"

    Component {
        id: made
        WorkedFigure {
            id: f
            width: Theme.mm(68)
            readonly property SignalSpy spy: SignalSpy {
                target: f
                signalName: "working"
            }
        }
    }
    Component {
        id: rule
        DoubleRule {}
    }
    Component {
        id: tab
        WorkingTab {
            id: t
            readonly property SignalSpy spy: SignalSpy {
                target: t
                signalName: "clicked"
            }
        }
    }

    function test_theWholeFigureOpensTheWorking() {
        const f = createTemporaryObject(made, test, { figure: figure("13", "1", "4", "in") });
        f.height = f.implicitHeight;
        mouseClick(f, 10, 20);
        compare(f.spy.count, 1);
        mouseClick(f, f.width - 10, f.height - 10); // on the tab: once, not twice
        compare(f.spy.count, 2);
        f.forceActiveFocus();
        keyClick(Qt.Key_Return);
        compare(f.spy.count, 3);
    }
    function test_nothingBehindIt() {
        const given = Object.assign(figure("13", "1", "4", "in"), { hasWorking: false });
        const f = createTemporaryObject(made, test, { figure: given });
        mouseClick(f, 10, 20);
        compare(f.spy.count, 0);
        verify(f.implicitHeight < createTemporaryObject(made, test, { figure: figure("13", "1", "4", "in") }).implicitHeight);
    }
    function test_tooSmallIsNotPossible() {
        const f = createTemporaryObject(made, test, { figure: figure("13", "1", "4", "in") });
        verify(f.implicitHeight >= Theme.mm(11.6));
    }
    function test_theTabAlone() {
        const t = createTemporaryObject(tab, test);
        mouseClick(t);
        compare(t.spy.count, 1);
        verify(t.implicitHeight >= Theme.mm(11.6));
        verify(t.Accessible.name !== "");
    }
    function test_twoRules() {
        const r = createTemporaryObject(rule, test, { width: 100 });
        compare(r.children.length, 2);
        verify(r.children[1].y > r.children[0].y + r.children[0].height);
    }
}
