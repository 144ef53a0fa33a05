// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Parts

/** The keys of a page's keypad. */
Keypad {
    id: root

    required property EntrySheet sheet

    focus: true
    title: sheet.title
    unit: sheet.unit
    decimal: sheet.decimal
    counting: sheet.counting
    error: sheet.error
    marks: sheet.ruler
    onWantedChanged: sheet.wanted = wanted
    Component.onCompleted: sheet.wanted = wanted
    onDone: text => root.sheet.given(root.sheet.asked, text)
    onCancelled: root.sheet.close()
}
