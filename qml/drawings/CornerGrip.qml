// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme
import Matside.Parts

/** What the piece is held by to make it larger or smaller: a cut corner with an arrow both ways. */
Item {
    id: root

    property string accessibleName
    /** What it holds grows up and to the right, for either hand; else down and away from the hand that holds the tablet. */
    property bool rising: false
    readonly property bool held: drag.active

    signal started()
    /** How far the finger has gone since it took hold, px of the sheet. */
    signal moved(real dx, real dy)
    signal released()
    /** Arrow keys: one step along or across. */
    signal stepped(int along, int across)

    implicitWidth: Theme.mm(13)
    implicitHeight: Theme.mm(13)
    activeFocusOnTab: enabled

    Accessible.role: Accessible.Grip
    Accessible.name: accessibleName
    Accessible.focusable: true

    Keys.onPressed: event => {
        const outward = Theme.left && !root.rising ? -1 : 1, down = root.rising ? -1 : 1;
        const steps = ({ [Qt.Key_Right]: [outward, 0], [Qt.Key_Left]: [-outward, 0], [Qt.Key_Down]: [0, down], [Qt.Key_Up]: [0, -down] })[event.key];
        event.accepted = steps !== undefined;
        if (steps)
            root.stepped(steps[0], steps[1]);
    }

    DragHandler {
        id: drag
        target: null
        dragThreshold: 2
        onActiveChanged: {
            if (active && Contacts.claim(root))
                root.started();
            else if (!active) {
                Contacts.release(root);
                root.released();
            }
        }
        onActiveTranslationChanged: {
            if (active && Contacts.holder === root)
                root.moved(activeTranslation.x, activeTranslation.y);
        }
    }
    CutShape {
        anchors.fill: parent
        anchors.margins: Theme.mm(0.7)
        fill: drag.active ? Theme.colors.raised : Theme.colors.action
        stroke: drag.active ? Theme.colors.accent : Theme.colors.actionInk
        strokeWidth: Theme.mm(0.5)
    }
    Printed {
        id: arrow
        anchors.fill: parent
        readonly property color ink: drag.active ? Theme.colors.accent : Theme.colors.actionInk
        mirrored: Theme.left || root.rising
        onInkChanged: again()
        onPrinting: context => {
            context.translate(width / 2, height / 2);
            context.scale(width / 68, height / 68);
            context.strokeStyle = ink;
            context.fillStyle = ink;
            context.lineWidth = 4;
            context.beginPath();
            context.moveTo(-12, -12);
            context.lineTo(12, 12);
            context.stroke();
            for (const d of [1, -1]) {
                context.beginPath();
                context.moveTo(18 * d, 18 * d);
                context.lineTo(2 * d, 16 * d);
                context.lineTo(16 * d, 2 * d);
                context.closePath();
                context.fill();
            }
        }
        Accessible.ignored: true
    }
    FocusOutline { visible: root.activeFocus }
}
