// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Parts
import Matside.Theme

/**
 * The keypad, sliding over the column that asked for it; where the column is too narrow or too low for its
 * keys it lies along the foot of the page, and the drawing above it stays in sight.
 */
Keypad {
    id: root

    /** The column it would cover. */
    required property Item home
    property bool open: false
    property string asked

    signal given(string name, string text)
    signal closed()

    readonly property bool roomy: home.width >= Theme.mm(100) && home.width < Theme.mm(150) && home.height >= Theme.mm(134)
    readonly property bool lies: parent.width > Theme.mm(150)

    /** Opens for one value: what it is, and as what it is typed ("length", "count", "share"). */
    function ask(name: string, title: string, kind: string, text: string) {
        asked = name;
        root.title = title;
        counting = kind === "count";
        unit = kind === "count" ? "" : kind === "share" ? "%" : Session.units;
        decimal = kind === "share" || (kind === "length" && Session.units === "mm");
        error = "";
        open = true;
        slide.restart();
        start(text);
    }
    function close() {
        open = false;
        closed();
    }

    visible: open
    x: roomy ? home.x : 0
    width: roomy ? home.width : parent.width
    height: roomy ? home.height : Math.min(parent.height, Theme.mm(lies ? 86 : 140))
    y: parent.height - height
    onDone: text => root.given(root.asked, text)
    onCancelled: close()

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
