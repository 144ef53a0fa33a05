// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * Light and dark: both faces of the piece in grey, the cloths on the ten-step scale, and what that means for the
 * patches. A cloth that is pressed is given its colour on a sheet of its own.
 */
FocusScope {
    id: root
    objectName: "shade-page"

    readonly property bool upright: height > width
    readonly property real columnWidth: Math.min(Theme.mm(105), width * (Theme.small ? 0.6 : 0.62))

    signal closed()

    /** Closes what lies over the page; false when nothing did. */
    function leave(): bool {
        if (ClothColour.cloth === "")
            return false;
        if (!sheet.leave())
            ClothColour.cloth = "";
        return true;
    }

    Component.onCompleted: ShadeModel.active = true
    Component.onDestruction: {
        ShadeModel.active = false;
        ClothColour.cloth = "";
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.paper
    }
    ShadeFaces {
        id: faces
        visible: ClothColour.cloth === ""
        x: root.upright || !Theme.left ? 0 : column.width
        width: root.upright ? root.width : root.width - column.width
        height: root.upright ? root.height * 0.34 : back.y
    }
    SheetColumn {
        id: column
        visible: faces.visible
        x: root.upright ? (Theme.left ? 0 : -Theme.key) : Theme.left ? 0 : root.width - width
        y: root.upright ? faces.height : 0
        width: root.upright ? root.width + Theme.key : root.columnWidth
        height: root.height - y

        ShadeFindings {
            id: findings
            x: -Theme.margin
            width: parent.width + 2 * Theme.margin
            height: root.upright ? back.y - column.y - Theme.margin - Theme.gap : parent.height
            onChosen: cloth => ClothColour.cloth = cloth
        }
        MoreBelow { over: findings }
        KeyLine {
            visible: root.upright
            x: -Theme.margin
            y: -Theme.margin
            width: column.width
        }
    }
    Rectangle {
        visible: back.visible && root.upright
        y: back.y - Theme.gap
        width: parent.width
        height: parent.height - y
        color: Theme.colors.raised
    }
    CutButton {
        id: back
        objectName: "shade-back"
        visible: faces.visible
        x: (root.upright ? 0 : faces.x) + Theme.margin
        y: parent.height - height - Theme.margin
        width: faces.width - 2 * Theme.margin
        height: Math.max(Theme.targetLeast, contentHeight)
        kind: "action"
        text: qsTr("Back to the work")
        onClicked: root.closed()
    }
    ShadeCloth {
        id: sheet
        objectName: "shade-cloth"
        clothRole: {
            for (const cloth of ShadeModel.cloths)
                if (cloth.id === ClothColour.cloth)
                    return cloth.print;
            return "front";
        }
        visible: ClothColour.cloth !== ""
        anchors.fill: parent
    }
}
