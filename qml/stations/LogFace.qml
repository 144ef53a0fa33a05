// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** One face of the block: its picture, or the place for it. */
Pressable {
    id: root

    property string says
    property url picture
    /** What the block looks like, as the strip's drawing has it. */
    property var view: null
    property bool back: false

    /** How high the block with the cloth around it is to its width. */
    readonly property real share: (view?.blockAlongMm ?? 0) > 0 ? view.blockAcrossMm / view.blockAlongMm : 1
    /** The caption below it, with its air. */
    readonly property real wordHeight: word.height + Theme.mm(5)
    /** The same on one line: how wide the face is does not hang on how its own width breaks the words. */
    readonly property real lineHeight: letters.height + Theme.mm(5)
    /** Breaks no word of the caption. */
    readonly property real leastWidth: letters.font.pixelSize > 0
        ? Math.max(...word.text.split(" ").map(each => letters.advanceWidth(each))) + Theme.mm(1.2) + 2 : 0
    readonly property bool pictured: small.status === Image.Ready

    implicitHeight: Theme.target * 1.4
    guardMs: 400
    //: %1 is "Front" or "Back face"
    accessibleName: qsTr("Photo: %1").arg(root.says)

    CutShape {
        anchors.fill: parent
        fill: root.pressed ? Theme.colors.ink : Theme.colors.paper
        stroke: Theme.colors.ink
    }
    // Where no picture is yet the block itself, as it lies there.
    FaceSketch {
        visible: !root.pictured
        x: Theme.mm(2)
        y: Theme.mm(2)
        width: Math.max(0, parent.width - 2 * x)
        height: Math.max(0, parent.height - root.wordHeight - y)
        view: root.view
        back: root.back
    }
    Image {
        id: small
        anchors.fill: parent
        anchors.margins: Theme.mm(2)
        anchors.bottomMargin: Theme.mm(9)
        source: root.picture
        sourceSize.width: Math.max(1, width)
        asynchronous: true
        autoTransform: true
        cache: false
        fillMode: Image.PreserveAspectFit
    }
    Word {
        id: word
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.mm(2.5)
        anchors.horizontalCenter: parent.horizontalCenter
        width: parent.width - Theme.mm(1.2)
        horizontalAlignment: Text.AlignHCenter
        cap: root.pictured ? Theme.capWord : Theme.mm(3.84)
        bold: root.pictured
        text: root.pictured ? root.says : root.accessibleName
        color: root.pressed ? Theme.colors.raised : Theme.colors.ink
        Accessible.ignored: true
    }
    FontMetrics {
        id: letters
        font: word.font
    }
    FocusOutline { visible: root.keyboardFocus }
}
