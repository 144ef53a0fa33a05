// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

StepCase {
    name: "Join"
    station: 5

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Join");
        verify(printed(null).length > 40);
    }
}
