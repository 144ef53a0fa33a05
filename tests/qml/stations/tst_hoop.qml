// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

StepCase {
    name: "Hoop"
    station: 3

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Hoop");
        verify(printed(null).length > 40);
    }
}
