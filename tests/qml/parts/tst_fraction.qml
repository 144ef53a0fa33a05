// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "Fraction"

    Component {
        id: made
        Fraction {
            num: "1"
            den: "4"
        }
    }
    Component {
        id: number
        Numeral {}
    }

    function test_numeralsNeverUnderTheFloor_data() {
        return [{ tag: "25 mm", cap: 25 }, { tag: "12 mm", cap: 12 }, { tag: "6.5 mm", cap: 6.5 }, { tag: "4 mm", cap: 4 }];
    }
    function test_numeralsNeverUnderTheFloor(data) {
        const f = createTemporaryObject(made, test, { cap: Theme.mm(data.cap) });
        // 22 minutes of arc at 0.6 m: 3.84 mm (NUREG-0700 Rev. 2, 1.3.1-4).
        verify(f.numeral >= Theme.mm(3.84));
        verify(f.numeral >= Theme.mm(data.cap) * 0.53 - 0.01);
    }
    function test_aloneIsLarger() {
        const beside = createTemporaryObject(made, test, { cap: Theme.mm(25) });
        const alone = createTemporaryObject(made, test, { cap: Theme.mm(25), alone: true });
        verify(alone.numeral > beside.numeral);
    }
    function test_asWideAsTheWiderNumber() {
        const wide = createTemporaryObject(made, test, { cap: 100, num: "1", den: "16" });
        const narrow = createTemporaryObject(made, test, { cap: 100 });
        verify(wide.implicitWidth > narrow.implicitWidth);
    }
    function test_digitsHangOnTheMargin() {
        const n = createTemporaryObject(number, test, { text: "1", cap: 150 });
        verify(n.bearing > 0);
        compare(n.implicitHeight, 150);
    }
}
