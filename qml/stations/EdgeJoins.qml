// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/** What is cut off the binding's strips before they are joined, and how they are laid; where, the drawing shows. */
Flickable {
    id: root

    /** Of the joins those whose strip is cut first. */
    function cuts(places: var): var {
        return places.map(place => place.cutSays).filter(says => says !== "");
    }

    clip: true
    contentHeight: rows.height
    boundsBehavior: Flickable.StopAtBounds

    Column {
        id: rows
        width: root.width
        spacing: Theme.gap

        Word {
            width: parent.width
            //: how far each join of the binding lies from a corner of the piece
            text: qsTr("At top and bottom measured from the left, at the sides from the top.")
        }
        Repeater {
            // Where they lie, the drawing shows.
            model: root.cuts(EdgeModel.lay)
            InlineLength {
                required property string modelData
                width: rows.width
                text: modelData
            }
        }
        KeyLine { width: parent.width }
        Word {
            width: parent.width
            bold: true
            text: qsTr("Lay the binding round once before you sew")
        }
        Repeater {
            model: EdgeModel.layActs
            ActCell {
                required property var modelData
                width: rows.width
                height: implicitHeight
                beside: true
                act: modelData
            }
        }
        Word {
            width: parent.width
            color: Theme.colors.inkSoft
            text: qsTr("Seen from the front, the strip laid clockwise. Each place is the middle of a seam at 45°.")
        }
    }
}
