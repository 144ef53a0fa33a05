// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme
import Matside.Parts

PartCase {
    id: test
    name: "ChoiceRow"

    Component {
        id: list
        Flickable {
            id: view
            property var chosen: []
            width: 440
            height: 300
            contentHeight: rows.height
            Column {
                id: rows
                Repeater {
                    model: 12
                    ChoiceRow {
                        required property int index
                        width: 440
                        text: "row " + index
                        onClicked: view.chosen.push(index)
                    }
                }
            }
        }
    }
    Component {
        id: made
        ChoiceRow { width: 446 }
    }

    function test_choosing() {
        const view = createTemporaryObject(list, test);
        mouseClick(view, 50, 20);
        compare(view.chosen, [0]);
    }
    function test_pushingTheListChoosesNothing() {
        const view = createTemporaryObject(list, test);
        mousePress(view, 50, 250);
        for (let y = 240; y > 60; y -= 15)
            mouseMove(view, 50, y);
        mouseRelease(view, 50, 60);
        verify(view.contentY > 0);
        compare(view.chosen, []);
    }
    function test_chosenIsSolid() {
        const row = createTemporaryObject(made, test, { text: "48 × 24", chosen: true });
        verify(row.solid);
        compare(row.ink, Theme.colors.raised);
    }
    function test_readOut() {
        const row = createTemporaryObject(made, test, { text: "48 × 24", detail: "6 × 3 blocks", figure: figure("12", "1", "2", "h") });
        compare(row.Accessible.name, "48 × 24, 6 × 3 blocks, 12 1/2 h");
    }
    function test_longWords() {
        const row = createTemporaryObject(made, test, { text: "Acht mal vier Blöcke mit schmalen Zwischenstreifen", detail: "Stoff {3 3/8} yd, Arbeit {18} h, Rand gebunden", figure: figure("12", "1", "2", "h") });
        row.height = row.implicitHeight;
        compare(overflowing(row), []);
        verify(row.implicitHeight > createTemporaryObject(made, test, { text: "kurz" }).implicitHeight);
    }
}
