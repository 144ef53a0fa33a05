// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The keypad, sliding over the column that asked for it; where the column is too narrow or too low for its
 * keys it lies along the foot of the page, and the drawing above it stays in sight. Its keys are made when it
 * is first asked for: the page stands the sooner.
 */
FocusScope {
    id: root
    objectName: "keypad"

    /** The column it would cover. */
    required property Item home
    property bool open: false
    property string asked
    /** Her ruler's marks: they have their keys from the first time it is opened. */
    property var ruler: []
    /** What is wrong with the entry, in words. */
    property string error

    signal given(string name, string text)
    signal closed()

    property string title
    property string unit
    property bool decimal: false
    property bool counting: false
    readonly property bool roomy: home.width >= Theme.mm(100) && home.width < Theme.mm(150) && home.height >= Theme.mm(134)
    /** Told by the keys: as high as they want to be at this width. */
    property real wanted: Theme.mm(86)
    /** Beside a column: wide enough that an inch of sixteenths lies in one line. */
    readonly property real besideWidth: Math.min(parent.width, Math.max(home.width, Theme.mm(133)))

    /** Opens for one value: what it is, and as what it is typed ("length", "count", "share", "price"). */
    function ask(name: string, title: string, kind: string, text: string) {
        asked = name;
        root.title = title;
        counting = kind === "count";
        unit = kind === "count" || kind === "price" ? "" : kind === "share" ? "%" : Session.units;
        decimal = kind === "share" || kind === "price" || (kind === "length" && Session.units === "mm");
        error = "";
        if (keys.status === Loader.Null)
            keys.setSource("EntryKeys.qml", { sheet: root });
        open = true;
        slide.restart();
        (keys.item as EntryKeys).start(text);
    }
    function close() {
        open = false;
        closed();
    }

    visible: open
    x: !roomy ? 0 : home.x > 0 ? parent.width - besideWidth : home.x
    width: roomy ? besideWidth : parent.width
    height: Math.min(parent.height, roomy ? Math.max(home.height, wanted) : wanted)
    y: parent.height - height

    Loader {
        id: keys
        anchors.fill: parent
        focus: true
    }
    KeyLine {
        vertical: true
        visible: root.roomy
        x: root.x > 0 ? 0 : root.width - width
        height: root.height
    }
    transform: Translate { id: shift }
    NumberAnimation {
        id: slide
        target: shift
        property: "y"
        from: root.height * 0.3
        to: 0
        duration: Theme.motion
        easing.type: Easing.OutCubic
    }
}
