// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts // for Fingertip, which an implicit import does not bring
import Matside.Theme
import "lengths.js" as Lengths

/**
 * A keypad of our own for one length: digits, and the fractions of her finest ruler as keys (or a
 * decimal key in metric). What is wrong with an entry stands beneath it in words, with values that
 * would do. Keys are at least 13 mm, 3 mm apart. Also typed on: digits, space, slash, Enter, Escape.
 */
FocusScope {
    id: root

    property string title
    property string unit
    /** List of {num, den, text}, the ruler's own marks. */
    property var marks: []
    property bool decimal: false
    property bool counting: false
    property string entry
    property string error
    /** List of {says, index}: values that would do. */
    property var offers: []
    property int longest: 8

    signal done(string text)
    signal cancelled()
    signal offerTaken(int index)

    readonly property real margin: Theme.margin
    /** Beside each other on a wide sheet, keys under the value on a tall one. */
    readonly property bool wide: width > Theme.mm(150) && width > height
    /** Wide, but with more marks than would stand in four rows beside the value: the value lies above the keys. */
    readonly property bool flat: wide && crowded
    readonly property bool crowded: !decimal && !counting && marks.length > 4 * marksBeside
    readonly property int marksBeside: Math.max(1, Math.floor((width - Theme.column - margin - Theme.gapTargets - 3 * Theme.step - 2 * Theme.gap)
                                                              / (Theme.step + Theme.gap)))
    readonly property bool beside: wide && !flat
    readonly property real headWidth: flat ? width - 3 * margin - buttons.width : beside ? Theme.column - 2 * margin : width - 2 * margin
    readonly property real headX: beside && !Theme.left ? width - margin - headWidth : margin
    readonly property var shown: Lengths.parse(entry)
    /** A length: a tape shows it. */
    readonly property bool tapes: !counting && (unit === "in" || unit === "mm")

    implicitWidth: Theme.mm(116)
    /** Beneath the value what is wrong has its room before it is said: the keys stay where they are. */
    readonly property real saidRoom: beside || flat ? 0 : Math.min(head.twoLines, Math.max(0, height - head.bare - Theme.targetLeast
                                                                                             - 4 * margin - 4 * Theme.step - 3 * Theme.gap))

    implicitHeight: head.height + 4 * margin + keys.implicitHeight + Theme.targetLeast

    Accessible.role: Accessible.Dialog
    Accessible.name: title

    /** Opens on the value as it is now, "13 1/4 in"; it stands there softly until the first key replaces it. */
    function start(text: string) {
        const was = Lengths.parse(text);
        const whole = /^[\d.,]+$/.test(was.whole) ? was.whole.replace(",", ".") : "";
        picked = "";
        entry = was.num === "" ? whole : (whole + " " + was.num + "/" + was.den).trim();
        fresh = entry !== "";
        forceActiveFocus();
    }
    /** Untouched the value stays as it was: what is shown of it may be rounded. */
    function finish() {
        if (fresh)
            cancelled();
        else if (entry !== "")
            done(entry);
    }

    property bool fresh: false

    function typed(character: string) {
        const before = fresh ? "" : entry;
        fresh = false;
        if (before.length >= longest && character !== "")
            return;
        if (character === "." && (!decimal || before.includes(".")))
            return;
        if ((character === "/" || character === " ") && (decimal || counting))
            return;
        const parsed = Lengths.parse(before);
        // A digit after a chosen fraction belongs to the whole number, unless a fraction is being typed.
        if (/\d/.test(character) && parsed.num !== "" && picked !== "") {
            entry = (parsed.whole + character + " " + picked).trim();
            return;
        }
        entry = before + character;
    }
    property string picked: ""
    onEntryChanged: if (picked !== "" && !entry.endsWith(picked)) picked = ""

    function pick(mark: var) {
        const parsed = Lengths.parse(fresh ? "" : entry);
        const text = mark.num + "/" + mark.den;
        fresh = false;
        const whole = /^\d+$/.test(parsed.whole) ? parsed.whole : "";
        entry = picked === text ? whole : (whole + " " + text).trim();
        picked = picked === text ? "" : text;
    }

    function back() {
        fresh = false;
        const gone = picked !== "" ? picked.length : 1;
        picked = "";
        entry = entry.slice(0, Math.max(0, entry.length - gone)).trim();
    }

    function clear() {
        fresh = false;
        picked = "";
        entry = "";
    }

    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Escape)
            root.cancelled();
        else if (event.key === Qt.Key_Backspace)
            root.back();
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
            root.finish();
        else if (/^[0-9/. ]$/.test(event.text))
            root.typed(event.text);
        else if (event.text === ",")
            root.typed(".");
        else
            event.accepted = false;
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.colors.raised
        // What lies under the keypad is not pressed through it.
        Fingertip { anchors.fill: parent }
    }
    KeyLine {
        width: parent.width
    }

    KeypadHead {
        id: head
        x: root.headX
        y: root.margin
        width: root.headWidth
        cap: root.flat ? Theme.capThird : Theme.capSecond
        title: root.title
        // Flat, there is room for one of them.
        titleGives: root.flat
        saidRoom: root.saidRoom
        untouched: root.fresh
        error: root.error
        offers: root.offers
        figure: ({
            minus: false, whole: root.shown.whole.replace(".", Qt.locale().decimalPoint), num: root.shown.num,
            den: root.shown.den, unit: root.unit, lean: "", text: (root.entry + " " + root.unit).trim()
        })
        onOfferTaken: index => root.offerTaken(index)
    }
    UnrolledTape {
        objectName: "tape"
        // Where there is room for it, in the place of what may be wrong.
        readonly property real foot: (root.beside ? buttons.y : keys.y) - Theme.mm(1)
        visible: root.tapes && root.error === "" && root.offers.length === 0 && y + height <= foot
        x: head.x
        y: head.y + head.bare + Theme.mm(0.6)
        width: head.width
        height: implicitHeight
        figure: root.shown
        metric: root.unit === "mm"
    }
    KeypadKeys {
        id: keys
        x: root.beside && Theme.left ? root.headWidth + 2 * root.margin + Theme.gap : root.margin
        y: root.beside ? root.margin : (root.flat ? Math.max(head.y + head.height, buttons.y + buttons.height) : head.y + head.height) + root.margin
        width: root.beside ? root.width - root.headWidth - 3 * root.margin - Theme.gap : root.width - 2 * root.margin
        height: (root.wide ? root.height - root.margin : buttons.y - root.margin) - y
        marks: root.decimal || root.counting ? [] : root.marks
        decimal: root.decimal
        num: root.shown.num
        den: root.shown.den
        onTyped: character => root.typed(character)
        onPicked: mark => root.pick(mark)
        onRubbed: root.back()
        onCleared: root.clear()
    }
    Row {
        id: buttons
        x: root.flat ? root.width - root.margin - width : root.headX
        y: root.flat ? root.margin : root.height - root.margin - height
        spacing: Theme.gapTargets
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        CutButton {
            id: leave
            width: Math.max(Theme.target, leastWidth, root.flat ? 0 : (root.headWidth - Theme.gapTargets) / 3)
            height: Theme.targetLeast
            text: qsTr("Cancel")
            onClicked: root.cancelled()
        }
        CutButton {
            width: root.flat ? 1.5 * Theme.target : root.headWidth - Theme.gapTargets - leave.width
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("Done")
            enabled: root.entry !== ""
            onClicked: root.finish()
        }
    }
}
