// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "FigureText"

    Component {
        id: made
        FigureText {}
    }

    function test_fractionWidensIt() {
        const whole = createTemporaryObject(made, test, { figure: figure("13", "", "", "in"), cap: 100 });
        const mixed = createTemporaryObject(made, test, { figure: figure("13", "1", "4", "in"), cap: 100 });
        verify(mixed.implicitWidth > whole.implicitWidth);
        compare(mixed.implicitHeight, whole.implicitHeight); // a large figure keeps its place
    }
    function test_widestFitsTheColumn() {
        // 40 13/16 is the widest length of the trade's rulers; the column is 68 mm inside.
        const widest = createTemporaryObject(made, test, { figure: figure("40", "13", "16", "in"), availableWidth: Theme.mm(68) });
        compare(widest.setCap, widest.cap);
        verify(widest.unitBelow);
        verify(widest.implicitWidth <= Theme.mm(68) + 1);
    }
    function test_unitStaysWhenThereIsRoom() {
        const f = createTemporaryObject(made, test, { figure: figure("7", "", "", "in"), availableWidth: Theme.mm(68) });
        verify(!f.unitBelow);
        verify(f.bareWidth < f.implicitWidth);
    }
    function test_shrinksOnlyWhenTheNumberDoesNotFit() {
        const f = createTemporaryObject(made, test, { figure: figure("1234", "13", "16", "in"), availableWidth: Theme.mm(68) });
        verify(f.setCap < f.cap);
        verify(f.bareWidth <= Theme.mm(68) + 2, f.bareWidth);
        const tiny = createTemporaryObject(made, test, { figure: figure("123456", "13", "16", "in"), availableWidth: 30 });
        compare(tiny.setCap, Theme.capInText);
    }
    function test_minusAndLean() {
        const f = createTemporaryObject(made, test, { figure: Object.assign(figure("", "3", "16", "in"), { minus: true, lean: "a scant" }), cap: Theme.capInText });
        compare(f.wholeText, "\u2212");
        verify(!f.leanAbove);
        verify(f.leanWidth > 0);
        const large = createTemporaryObject(made, test, { figure: Object.assign(figure("21", "3", "16", "in"), { lean: "a scant" }) });
        verify(large.leanAbove);
    }
    function test_nothing() {
        const f = createTemporaryObject(made, test, { figure: null });
        compare(f.bareWidth, 0);
        compare(f.accessibleName, "");
    }
    function test_readOut() {
        const f = createTemporaryObject(made, test, { figure: figure("13", "1", "4", "in") });
        compare(f.Accessible.name, "13 1/4 in");
    }
}
