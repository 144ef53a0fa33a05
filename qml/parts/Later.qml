// SPDX-License-Identifier: MIT
import QtQuick

/** What is made when it is first wanted, and kept from then on: what it is part of stands the sooner. */
Loader {
    required property bool wanted
    property bool wantedOnce: false

    visible: wanted
    active: wanted || wantedOnce
    onWantedChanged: if (wanted) wantedOnce = true
}
