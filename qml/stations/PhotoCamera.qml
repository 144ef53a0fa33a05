// SPDX-License-Identifier: MIT
import QtQuick
import QtMultimedia
import Matside.Core

/** Looks for a camera, and shows what it sees while there is one. */
Item {
    id: root

    required property CameraSource source

    function look() {
        if (session.active)
            session.setSource("PhotoLive.qml", { source: root.source });
        else
            root.source.report(false, false);
    }

    MediaDevices {
        id: devices
    }
    Loader {
        id: session
        anchors.fill: parent
        active: devices.videoInputs.length > 0
        onActiveChanged: root.look()
        Component.onCompleted: root.look()
    }
}
