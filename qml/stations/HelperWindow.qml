// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts // for Fingertip, which an implicit import does not bring
import Matside.Theme

/** The helper's window, on the second screen where there is one. Closed with the program, by Escape, or by the button that a touch on it brings up. */
Window {
    id: root
    objectName: "helper-window"

    width: 1024
    height: 640
    minimumWidth: 320
    minimumHeight: 240
    color: Theme.colors.paper
    title: qsTr("For helpers: Matside")

    /** Opens on a screen other than the one named, whole; beside the program where there is no other. */
    function place(application: var, taken: string) {
        const screens = application.screens;
        for (let i = 0; i < screens.length; ++i) {
            if (screens[i].name === taken)
                continue;
            root.x = screens[i].virtualX;
            root.y = screens[i].virtualY;
            root.showMaximized();
            return;
        }
        root.show();
    }
    onClosing: Session.helper = false

    HelperView {
        anchors.fill: parent
        focus: true
        Keys.onEscapePressed: Session.helper = false
    }
    // Where no frame closes it, and it may lie over the switch that does.
    Fingertip {
        anchors.fill: parent
        onStruck: asked.restart()
    }
    Timer {
        id: asked
        interval: 8000
    }
    CutButton {
        objectName: "helper-close"
        visible: asked.running
        guardShown: true
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.margin
        kind: "action"
        //: closes the helper's window
        text: qsTr("Close")
        onClicked: Session.helper = false
    }
}
