// SPDX-License-Identifier: MIT
pragma Singleton
import QtQuick

/** Who is being pressed, and when something was last confirmed. One finger at a time: a second press is not taken while the first is held. */
QtObject {
    id: contacts

    property Item holder: null
    /** When something was last ticked off or confirmed, whatever button did it. */
    property double confirmed: 0

    /** True when `item` now holds the press, false when another does. */
    function claim(item: Item): bool {
        if (contacts.holder !== null && contacts.holder !== item)
            return false;
        contacts.holder = item;
        return true;
    }

    function release(item: Item) {
        if (contacts.holder === item)
            contacts.holder = null;
    }
}
