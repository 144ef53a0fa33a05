// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** A thin line from what sets the block's size to a block of the piece, ending in a ring on its cloth. */
Item {
    id: root

    /** The table's drawing as it lies, px of `drawing`. */
    property var lie: null
    property Item drawing
    property Item from
    /** It leaves sideways; else upwards. */
    property bool level: true

    readonly property real wide: Math.max(1, lie?.outlineAlong ?? 0)
    readonly property real high: Math.max(1, lie?.outlineAcross ?? 0)
    /** A block's near corner, by its place in the piece; before the page is mirrored. */
    readonly property real firstX: (Theme.left ? width - drawing.x - drawing.width : drawing.x) + (lie ? lie.piece.x + lie.edge : 0)
    readonly property real firstY: drawing.y + (lie ? lie.piece.y + lie.edge : 0)
    readonly property real startX: level ? fromX + from.width + Theme.mm(1) : fromX + Theme.mm(2.4)
    readonly property real startY: level ? from.y + from.height / 2 : from.y
    readonly property real fromX: Theme.left ? width - from.x - from.width : from.x
    readonly property real goalX: level ? firstX + wide * 0.3 : inBlock(startX, firstX, wide, (lie?.sashing ?? 0), (lie?.columns ?? 1) - 1)
    readonly property real goalY: level ? inBlock(startY, firstY, high, (lie?.sashing ?? 0), (lie?.rows ?? 1) - 1)
                                        : firstY + ((lie?.rows ?? 1) - 1) * (high + (lie?.sashing ?? 0)) + high * 0.7
    /** Where it turns towards the block: it keeps clear of what stands under the piece. */
    property real limit: width
    readonly property real turnX: level ? Math.min(goalX, limit) : startX
    readonly property real line: Theme.mm(0.5) * Theme.colors.lineScale

    /** The place nearest to `at` that lies well inside a block. */
    function inBlock(at: real, first: real, size: real, between: real, last: int): real {
        const pitch = size + between, block = Math.max(0, Math.min(last, Math.floor((at - first) / pitch)));
        return Math.max(first + block * pitch + size * 0.3, Math.min(first + block * pitch + size * 0.7, at));
    }
    function side(x: real, w: real): real {
        return Theme.left ? width - x - w : x;
    }

    Rectangle { // sideways from the value
        visible: root.level
        width: Math.abs(root.turnX - root.startX)
        height: root.line
        x: root.side(Math.min(root.startX, root.turnX), width)
        y: root.startY - root.line / 2
        color: Theme.colors.accent
    }
    Rectangle { // up
        width: root.line
        height: Math.abs(root.goalY - root.startY) + root.line
        x: root.side(root.turnX - root.line / 2, width)
        y: Math.min(root.startY, root.goalY) - root.line / 2
        color: Theme.colors.accent
    }
    Rectangle { // and to the block
        width: Math.abs(root.goalX - root.turnX)
        height: root.line
        x: root.side(Math.min(root.turnX, root.goalX), width)
        y: root.goalY - root.line / 2
        color: Theme.colors.accent
    }
    Rectangle {
        width: Theme.mm(2.8)
        height: width
        radius: width / 2
        x: root.side(root.goalX - width / 2, width)
        y: root.goalY - height / 2
        color: Theme.colors.raised
        border.width: Theme.mm(0.6) * Theme.colors.lineScale
        border.color: Theme.colors.accent
    }
}
