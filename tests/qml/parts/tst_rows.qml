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

    Component {
        id: scrolled
        Item {
            property alias far: view.contentY
            readonly property color ground: Theme.colors.raised
            width: 440
            height: 300
            Rectangle {
                anchors.fill: parent
                color: parent.ground
            }
            Flickable {
                id: view
                y: 150
                width: 440
                height: 150
                clip: true
                contentHeight: 1000
                CutButton {
                    width: 300
                    height: 80
                    kind: "outline"
                    text: "in the list"
                }
            }
        }
    }

    /** Where nothing but the processor draws, what has left a list must not stand above it. */
    function test_whatIsScrolledAwayIsNotDrawn() {
        const page = createTemporaryObject(scrolled, test);
        waitForRendering(page);
        let picture = grabImage(page);
        verify(!Qt.colorEqual(picture.pixel(150, 150), page.ground), "the button's edge is there to be seen");
        page.far = 90;
        waitForRendering(page);
        picture = grabImage(page);
        for (let y = 2; y < 300; ++y)
            verify(Qt.colorEqual(picture.pixel(150, y), page.ground), "drawn at " + y);
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
