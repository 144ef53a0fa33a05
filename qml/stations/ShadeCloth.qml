// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * A cloth's colour: beside what it is now a palette of snips, three pairs of steps, and the way to a photograph.
 * Nothing is kept before it is taken.
 */
Item {
    id: root

    /** What lies over it: "", "photo" (to take or choose one). */
    property string over
    readonly property bool upright: height > width
    /** As which cloth it is printed. */
    property string clothRole: "front"
    readonly property bool tapping: over === "" && String(ClothColour.picture) !== ""

    /** Closes what lies over it; false when nothing did. */
    function leave(): bool {
        if (over !== "") {
            over = "";
            return true;
        }
        const lay = tapping;
        if (lay)
            ClothColour.dropPicture();
        return lay;
    }

    onVisibleChanged: if (!visible) over = ""

    Connections {
        target: ClothColour
        function onOpened() {
            root.over = "";
        }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
    }
    ShadePalette {
        id: palette
        objectName: "shade-palette"
        clothRole: root.clothRole
        visible: root.over === "" && !root.tapping
        x: root.upright || !Theme.left ? 0 : hand.width
        width: root.upright ? parent.width : parent.width - hand.width
        height: root.upright ? hand.y : parent.height
    }
    MoreBelow {
        over: palette
        ground: Theme.colors.paper
    }
    ShadePicture {
        objectName: "shade-picture"
        visible: root.tapping
        x: root.upright || !Theme.left ? 0 : hand.width
        width: root.upright ? parent.width : parent.width - hand.width
        height: root.upright ? hand.y : parent.height
    }
    SheetColumn {
        id: hand
        visible: root.over === ""
        x: root.upright ? (Theme.left ? 0 : -Theme.key) : Theme.left ? 0 : root.width - width
        y: root.upright ? parent.height - height : 0
        width: root.upright ? root.width + Theme.key : Math.min(Theme.column, root.width * 0.45)
        height: root.upright ? Math.min(parent.height * 0.5, said.height + targets.height + Theme.gap + 2 * Theme.margin) : parent.height

        Flickable {
            x: -Theme.margin
            width: parent.width + 2 * Theme.margin
            height: targets.y - Theme.gap
            contentHeight: said.height
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            ShadeHeld {
                id: said
                x: Theme.margin
                width: parent.width - 2 * Theme.margin
                tapping: root.tapping
                clothRole: root.clothRole
                // Beside all three targets and its words, whether or not all are there: it never jumps.
                swatch: root.upright || root.tapping ? Theme.mm(18)
                    : Math.max(Theme.mm(18), Math.min(Theme.mm(46), root.height - 2 * Theme.margin - 3 * (Theme.targetLeast + Theme.gap) - Theme.mm(28)))
            }
        }
        Column {
            id: targets
            anchors.bottom: parent.bottom
            width: parent.width
            spacing: Theme.gap
            CutButton {
                objectName: "shade-photo"
                width: parent.width
                height: Math.max(Theme.targetLeast, contentHeight)
                enabled: !Session.readOnly
                text: root.tapping ? qsTr("Another picture") : qsTr("From a photograph")
                onClicked: root.over = "photo"
            }
            CutButton {
                objectName: "shade-take"
                width: parent.width
                height: Theme.targetLeast
                kind: "action"
                visible: ClothColour.canTake
                text: qsTr("Take this colour")
                onClicked: if (ClothColour.take()) ClothColour.cloth = ""
            }
            CutButton {
                objectName: "shade-leave"
                width: parent.width
                height: Math.max(Theme.targetLeast, contentHeight)
                text: root.tapping ? qsTr("Back to the palette") : qsTr("Back to the cloths")
                onClicked: {
                    if (!root.leave())
                        ClothColour.cloth = "";
                }
            }
        }
        KeyLine {
            visible: root.upright
            x: -Theme.margin
            y: -Theme.margin
            width: hand.width
        }
    }
    PictureFinder {
        objectName: "shade-finder"
        visible: root.over === "photo"
        anchors.fill: parent
        camera: ClothColour.camera
        picker: ClothColour.picker
        keeping: ClothColour.looking
        colour: ClothColour.colour
        problem: ClothColour.problem
        keepingText: qsTr("Opening the picture")
        //: %1 is a cloth
        chooseText: qsTr("Choose a picture of %1").arg(ClothColour.name)
        tapText: qsTr("Tap anywhere: %1").arg(ClothColour.name)
        againText: qsTr("Tap anywhere to try again: %1").arg(ClothColour.name)
        //: %1 is a cloth
        plainText: qsTr("A picture of %1").arg(ClothColour.name)
        shutterName: qsTr("Take a picture of %1").arg(ClothColour.name)
        backText: qsTr("Back without a picture")
        note: picking ? qsTr("A photograph holds the light of the room as well as the cloth. Take it by daylight, without flash. The picture is only looked at: it is not kept.") : ""
        onClosed: root.over = ""
    }
}
