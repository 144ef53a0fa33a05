// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** Opens what is to be minded and checked at this step: its mark alone, or a row that holds words of its own. */
Pressable {
    id: root

    property bool alone: true
    /** Where it stands alone: room for its word beside it, too. */
    property real room: 0
    readonly property string brief: StepModel.hazard
    readonly property bool named: alone && word.text !== "" && room >= Theme.control + nameWidth

    readonly property real nameWidth: word.implicitWidth

    width: Theme.control + (named ? nameWidth : 0)
    height: Theme.control
    //: what is to be minded and checked at this step
    accessibleName: qsTr("What to mind here: %1").arg(StepModel.caution)

    Pictogram {
        visible: root.alone
        x: (Theme.control - width) / 2
        anchors.verticalCenter: parent.verticalCenter
        name: "warning"
        width: Theme.mm(7)
        ink: Theme.colors.caution
        ground: Theme.colors.raised
    }
    Word {
        id: word
        visible: root.named
        x: Theme.control - Theme.mm(1)
        anchors.verticalCenter: parent.verticalCenter
        color: Theme.colors.caution
        text: root.brief
        wrapMode: Text.NoWrap
    }
    FocusOutline { visible: root.keyboardFocus }
}
