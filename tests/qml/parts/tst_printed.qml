// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Parts

/** What a sheet costs is counted here: how often it is printed. That it shows what was printed, by its pixels. */
PartCase {
    id: test
    name: "Printed"
    when: windowShown

    Component {
        id: made
        Printed {
            id: sheet
            width: 40
            height: 30
            property color ink: "#ff0000"
            property int times: 0
            onInkChanged: again()
            onPrinting: context => {
                ++times;
                context.fillStyle = ink;
                context.fillRect(0, 0, width, height);
            }
        }
    }

    function test_whatIsSeenIsPrintedOnce() {
        const sheet = createTemporaryObject(made, test);
        tryVerify(() => sheet.times > 0);
        wait(100);
        compare(sheet.times, 1);
        compare(grabImage(sheet).pixel(20, 15), Qt.rgba(1, 0, 0, 1));
        sheet.ink = "#0000ff";
        tryCompare(sheet, "times", 2);
        wait(60);
        compare(grabImage(sheet).pixel(20, 15), Qt.rgba(0, 0, 1, 1));
        compare(sheet.times, 2);
    }
    function test_whatIsHiddenIsPrintedWhenItIsSeen() {
        const sheet = createTemporaryObject(made, test, { visible: false });
        wait(100);
        compare(sheet.times, 0);
        sheet.ink = "#00ff00";
        wait(60);
        compare(sheet.times, 0);
        sheet.visible = true;
        tryCompare(sheet, "times", 1);
        wait(60);
        compare(grabImage(sheet).pixel(20, 15), Qt.rgba(0, 1, 0, 1));
    }
    function test_hiddenAndSeenAgainItStandsAsItWas() {
        const sheet = createTemporaryObject(made, test);
        tryCompare(sheet, "times", 1);
        sheet.visible = false;
        wait(40);
        sheet.visible = true;
        wait(80);
        compare(grabImage(sheet).pixel(20, 15), Qt.rgba(1, 0, 0, 1));
        compare(sheet.times, 1);
        sheet.width = 60;
        tryCompare(sheet, "times", 2);
        wait(60);
        compare(grabImage(sheet).pixel(55, 15), Qt.rgba(1, 0, 0, 1));
    }
}
