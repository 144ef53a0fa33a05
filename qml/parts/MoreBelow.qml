// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** Lies over the foot of what scrolls while more stands below: the last line fades out, and a wedge points down. */
Item {
    id: root

    /** What scrolls, a sibling; null for none. */
    property Flickable over: null
    /** What it lies in, where that is the sibling. */
    property Item within: over
    property color ground: Theme.colors.raised
    readonly property bool more: over !== null && over.visible && over.originY + over.contentHeight - over.height - over.contentY > Theme.mm(1)

    visible: more && within !== null && within.visible
    x: within?.x ?? 0
    y: (within?.y ?? 0) + (within?.height ?? 0) - height
    width: within?.width ?? 0
    height: Theme.mm(7)

    Rectangle {
        anchors.fill: parent
        gradient: Gradient {
            GradientStop { position: 0; color: Qt.alpha(root.ground, 0) }
            GradientStop { position: 0.75; color: root.ground }
            GradientStop { position: 1; color: root.ground }
        }
    }
    Pictogram {
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.mm(0.6)
        name: "below"
        width: Theme.mm(5)
        ink: Theme.colors.inkSoft
        ground: root.ground
    }
}
