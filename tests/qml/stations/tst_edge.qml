// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

StepCase {
    name: "Edge"
    station: 6

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Edge");
        verify(printed(null).length > 40);
    }
}
