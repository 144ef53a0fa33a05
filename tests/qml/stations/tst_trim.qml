// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

StepCase {
    name: "Trim"
    station: 4

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Trim");
        verify(printed(null).length > 40);
    }
}
