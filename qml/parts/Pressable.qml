// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts // for Fingertip, which an implicit import does not bring
import Matside.Theme

/**
 * What every pressable thing does: it acts on release inside, takes no contact wider than 30 mm
 * (a forearm or a palm) and no second finger, and can be reached and pressed by the keyboard.
 */
Fingertip {
    id: root

    property string accessibleName
    property string accessibleDescription
    /** Milliseconds in which a second press is not taken; 0 for keys and steps. */
    property int guardMs: guardShown ? 400 : 0
    /** It may come up where another was just pressed: a finger put down within `guardMs` of that was meant for the other. */
    property bool guardShown: false
    /**
     * It ticks off or confirms: a press that begins within the pause of the last such press, or of its coming up,
     * was meant for what stood there before.
     */
    property bool confirms: false
    /** True inside a list that is pushed by the finger: a press that travels is no press. */
    property bool inList: false

    readonly property bool pressed: (touched && taken && within) || keyDown
    readonly property bool keyboardFocus: activeFocus && enabled

    signal clicked()

    property bool taken: false
    property bool keyDown: false
    property double lastTime: 0
    property double shownTime: guardShown || confirms ? Date.now() : 0
    readonly property real widestContact: Theme.mm(30)

    pushed: inList
    activeFocusOnTab: enabled

    Accessible.role: Accessible.Button
    Accessible.name: accessibleName
    Accessible.description: accessibleDescription
    Accessible.focusable: true
    Accessible.focused: activeFocus
    Accessible.onPressAction: root.press()

    function isSince(time: double, ms: int): bool {
        const now = Date.now();
        return now >= time && now - time < ms;
    }
    /** A press that begins now would be too soon after what stood here before. */
    function tooSoon(): bool {
        return guardShown && isSince(shownTime, guardMs)
            || confirms && (isSince(shownTime, Theme.pause) || isSince(Contacts.confirmed, Theme.pause));
    }
    /** What a finger, a key or a reader does: acts unless disabled or too soon after the last. */
    function press() {
        if (!enabled || confirms && tooSoon() || isSince(lastTime, guardMs))
            return;
        lastTime = Date.now();
        if (confirms)
            Contacts.confirmed = lastTime;
        clicked();
    }

    function isActivation(key: int): bool {
        return key === Qt.Key_Space || key === Qt.Key_Return || key === Qt.Key_Enter;
    }

    Keys.onPressed: event => {
        if (!root.isActivation(event.key))
            return;
        event.accepted = true;
        if (!event.isAutoRepeat)
            root.keyDown = !root.tooSoon();
    }
    Keys.onReleased: event => {
        if (!root.isActivation(event.key) || event.isAutoRepeat)
            return;
        event.accepted = true;
        if (root.keyDown) {
            root.keyDown = false;
            root.press();
        }
    }
    onActiveFocusChanged: {
        if (activeFocus)
            bringIntoView();
        else
            keyDown = false;
    }

    /** Rolls what it lies in, so that the one with the keyboard's focus is always seen. */
    function bringIntoView() {
        for (let around = parent; around !== null; around = around.parent) {
            const roll = around as Flickable;
            if (roll === null)
                continue;
            const air = Theme.focusGap + Theme.keyBold;
            const top = mapToItem(roll.contentItem, 0, 0).y - air;
            const foot = top + height + 2 * air;
            const first = roll.originY, last = Math.max(first, first + roll.contentHeight - roll.height);
            if (top < roll.contentY)
                roll.contentY = Math.max(first, top);
            else if (foot > roll.contentY + roll.height)
                roll.contentY = Math.min(last, foot - roll.height);
        }
    }
    onVisibleChanged: if ((guardShown || confirms) && visible) shownTime = Date.now()
    Component.onDestruction: Contacts.release(root)

    onTouchedChanged: {
        if (touched) {
            taken = !tooSoon() && Contacts.claim(root);
        } else {
            taken = false;
            Contacts.release(root);
        }
    }
    onStruck: {
        if (taken && contact <= widestContact)
            press();
    }
}
