// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Hands
import Matside.Parts

/** A list is pushed by a finger that lands on what can be pressed in it; a press that travels presses nothing. */
PartCase {
    id: test
    name: "Pushed"
    width: 400
    height: 400

    Component {
        id: made
        Flickable {
            id: list
            property alias first: first
            property alias spy: spy
            width: 300
            height: 300
            contentHeight: 2000
            Pressable {
                id: first
                width: 300
                height: 2000
                inList: true
            }
            SignalSpy {
                id: spy
                target: first
                signalName: "clicked"
            }
        }
    }
    function send(list: Flickable, x: real, y: real, state: string) {
        Hands.fingers(list, [{ id: 1, state: state, x: x, y: y }]);
        if (state === "move")
            wait(20); // a window hands on what moved once a frame
    }
    function test_aFingerPushesTheList_data() {
        return [{ tag: "what is pressed", drawable: false }, { tag: "what may be drawn along too", drawable: true }];
    }
    function test_aFingerPushesTheList(kind) {
        const list = createTemporaryObject(made, test);
        list.first.drawable = kind.drawable;
        send(list, 0, 100, "down");
        for (let y = 90; y >= -60; y -= 10)
            send(list, 0, y, "move");
        verify(list.contentY > 50, "pushed " + list.contentY);
        verify(!list.first.pressed);
        verify(!list.first.drawing);
        send(list, 0, -60, "up");
        compare(list.spy.count, 0);
        tryCompare(list, "moving", false);
        send(list, 0, 0, "down");
        verify(list.first.pressed);
        send(list, 2, 2, "move");
        send(list, 2, 2, "up");
        compare(list.spy.count, 1);
    }
    function test_aFingerDrawsSideways() {
        const list = createTemporaryObject(made, test);
        list.first.drawable = true;
        send(list, -50, 0, "down");
        for (let x = -40; x <= 60; x += 10)
            send(list, x, 0, "move");
        verify(list.first.drawing);
        compare(list.first.drawn, 110);
        for (let y = 20; y <= 100; y += 20)
            send(list, 60, y, "move"); // down the list: drawn all the same
        compare(list.contentY, 0);
        verify(list.first.drawing);
        send(list, 60, 100, "up");
        verify(!list.first.drawing);
        compare(list.spy.count, 0);
    }
    function test_twoClosePressesAreTwo() {
        const list = createTemporaryObject(made, test);
        mouseClick(list.first);
        mouseDoubleClickSequence(list.first);
        compare(list.spy.count, 3);
    }
}
