// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Theme

StationCase {
    id: test
    name: "Light and hand"
    view: "settings"

    function cleanup() {
        Look.colourSet = "day";
        Session.leftHanded = false;
    }
    function test_theLightChangesAtOnce() {
        press(called("Lamp"));
        compare(Look.colourSet, "lamp");
        tryCompare(Theme, "set", "lamp");
    }
    function test_backToTheShelf() {
        press(called("Back to the shelf"));
        tryCompare(Session, "view", "shelf");
    }
}
