// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Theme

/** One dark key line, along or upright. */
Rectangle {
    property bool vertical: false

    color: Theme.colors.ink
    implicitWidth: Theme.key
    implicitHeight: Theme.key
    Accessible.ignored: true
}
