// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Opens what is to be minded and checked at this step: its mark alone, or a row that holds words of its own. */
Pressable {
    id: root

    property bool alone: true
    //: beside a warning sign; opens what is to be minded at this step
    readonly property string brief: qsTr("Take care")

    width: Theme.control
    height: Theme.control
    //: what is to be minded and checked at this step
    accessibleName: qsTr("What to mind here: %1").arg(StepModel.caution)

    Pictogram {
        visible: root.alone
        anchors.centerIn: parent
        name: "warning"
        width: Theme.mm(7)
        ink: Theme.colors.caution
        ground: Theme.colors.raised
    }
    FocusOutline { visible: root.keyboardFocus }
}
