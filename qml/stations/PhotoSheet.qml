// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core

/** A picture of one face of the block, in the frame of its outline. Closes when one is kept. */
PictureFinder {
    id: root

    //: what a picture is of: the front or the back of a block
    readonly property string faceSays: BlockLog.face === 1 ? qsTr("the back") : qsTr("the front")

    camera: BlockLog.camera
    picker: BlockLog.picker
    keeping: BlockLog.keeping
    problem: BlockLog.problem
    frameRatio: BlockLog.along.mm > 0 ? BlockLog.across.mm / BlockLog.along.mm : 1
    keepingText: qsTr("Keeping the picture")
    //: %1 is "the front" or "the back", %2 a block's name
    chooseText: qsTr("Choose a picture of %1, block %2").arg(faceSays).arg(BlockLog.block)
    tapText: qsTr("Tap anywhere: %1 of block %2").arg(faceSays).arg(BlockLog.block)
    //: a tap takes another picture after the last one came to nothing; %1 is "the front" or "the back"
    againText: qsTr("Tap anywhere to try again: %1 of block %2").arg(faceSays).arg(BlockLog.block)
    plainText: qsTr("A picture of %1, block %2").arg(faceSays).arg(BlockLog.block)
    view: HoopModel.view
    back: BlockLog.face === 1
    //: %1 is "the front" or "the back"
    shutterName: qsTr("Take a picture of %1").arg(faceSays)
    backText: qsTr("Back without a picture")

    Connections {
        target: BlockLog
        enabled: root.visible
        function onPictureKept() {
            root.closed();
        }
    }
}
