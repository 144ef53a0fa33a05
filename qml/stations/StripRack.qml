// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

/** The strips in work under each other, the one in hand pinned; a touch takes another. */
WholeRows {
    id: root

    /** Their words stand below each other. */
    readonly property real words: Math.min(width * 0.42, Theme.mm(52))

    leastRow: Theme.mm(Theme.small ? 21 : 23)
    mostRow: Theme.mm(34)
    model: HoopModel.stripCount
    Component.onCompleted: show(HoopModel.strip - 1)
    delegate: DrawnCard {
        id: card
        required property int index
        // Asked anew when anything is done.
        readonly property var strip: HoopModel.stripCount > index && HoopModel.strip > 0 ? HoopModel.stripAt(index + 1) : null

        width: root.width
        height: root.rowHeight
        chosen: strip?.chosen ?? false
        accessibleName: [strip?.says, strip?.names, strip?.countSays].filter(words => (words ?? "") !== "").join(", ")
        onClicked: HoopModel.strip = index + 1

        Column {
            x: Theme.left ? card.innerWidth - width - card.lead : card.lead
            anchors.verticalCenter: parent.verticalCenter
            width: root.words - card.lead
            Repeater {
                model: [card.strip?.says ?? "", card.strip?.names ?? "", card.strip?.countSays ?? ""]
                Word {
                    required property string modelData
                    required property int index
                    width: root.words - card.lead
                    // What is stitched is seen beside; the count is told where there is room for it.
                    visible: modelData !== "" && (index < 2 || card.innerHeight > Theme.mm(22) && root.words > Theme.mm(48))
                    horizontalAlignment: Theme.left ? Text.AlignRight : Text.AlignLeft
                    bold: index === 0
                    color: index === 2 ? card.inkSoft : card.ink
                    text: modelData
                    Accessible.ignored: true
                }
            }
        }
        StripSketch {
            x: Theme.left ? 0 : root.words
            width: card.innerWidth - root.words
            height: card.innerHeight
            view: card.strip
        }
    }
}
