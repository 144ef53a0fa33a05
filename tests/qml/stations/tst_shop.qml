// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

StationCase {
    name: "Shop"
    station: 1

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Shop");
        verify(printed(null).length > 40);
    }
}
