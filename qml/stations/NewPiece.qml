// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts

/** Begins a piece of her own; the first offered is in the units that are the custom where she is. */
CutButton {
    property bool firstOffered: false
    readonly property bool metric: firstOffered === Language.metricFirst

    enabled: !Power.spent
    reason: Power.says
    text: metric ? qsTr("New, in mm") : qsTr("New, in inches")
    onClicked: Shelf.createProject(qsTr("New piece"), metric ? "metric" : "inch")
}
