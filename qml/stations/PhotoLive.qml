// SPDX-License-Identifier: MIT
import QtQuick
import QtMultimedia
import Matside.Core

/** The camera itself: shows what it sees, takes when it is asked to. */
Item {
    id: root

    required property CameraSource source
    readonly property bool able: capture.readyForCapture

    onAbleChanged: root.source.report(true, root.able)
    Component.onCompleted: root.source.report(true, root.able)

    CaptureSession {
        camera: Camera {
            active: true
            onErrorOccurred: (error, words) => root.source.failed(words)
        }
        imageCapture: ImageCapture {
            id: capture
            onImageSaved: (id, path) => root.source.saved(path)
            onErrorOccurred: (id, error, words) => root.source.failed(words)
        }
        videoOutput: finder
    }
    VideoOutput {
        id: finder
        anchors.fill: parent
        fillMode: VideoOutput.PreserveAspectCrop
    }
    Connections {
        target: root.source
        function onWanted(path: string) {
            capture.captureToFile(path);
        }
    }
}
