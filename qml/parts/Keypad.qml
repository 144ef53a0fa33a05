// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts // for Fingertip, which an implicit import does not bring
import Matside.Theme
import "keypadlay.js" as Lay
import "lengths.js" as Lengths

/**
 * A keypad of our own for one length: digits along a tape, and the fractions of her finest ruler at the marks of one
 * magnified inch (or a decimal key in metric). A tape rolls out as far as is typed; what is wrong with an entry
 * stands there in words, with values that would do. Keys are at least 13 mm, 3 mm apart. Also typed on: digits,
 * space, slash, Enter, Escape.
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

    /** What its places hang on. */
    readonly property var given: ({
        width: width, height: height, mm: Theme.pxPerMm, parts: decimal || counting || marks.length === 0 ? 0 : marks.length + 1,
        decimal: decimal, left: Theme.left, leave: leave.least, said: 0, least: Theme.capNumeralLeast
    })
    readonly property real nameWidth: Lay.lay(given).name.width
    readonly property var lie: Lay.lay(Object.assign({}, given, { said: error !== "" ? measured.implicitHeight : 0 }))
    readonly property bool wide: lie.form === "wide"
    readonly property bool flat: lie.form === "flat"
    /** As high as it wants to be at its width. */
    readonly property real wanted: Lay.wanted(given)
    readonly property var shown: Lengths.parse(entry)
    /** A length: a tape shows it. */
    readonly property bool tapes: !counting && (unit === "in" || unit === "mm")
    readonly property bool said: error !== "" || offers.length > 0

    implicitWidth: Theme.mm(116)
    implicitHeight: Lay.least(given)

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

    Word {
        id: name
        x: root.lie.name.x
        y: root.lie.name.y
        width: root.lie.name.width
        visible: !root.lie.saysName || !root.said
        // Longer than its line it is set smaller, on two.
        readonly property bool fits: letters.advanceWidth(root.title) < width * 0.98
        text: root.title
        bold: true
        cap: fits ? Theme.capHead : Theme.capWord
        FontMetrics {
            id: letters
            font.family: Theme.family
            font.bold: true
            font.pixelSize: Theme.fontSize(Theme.capHead)
        }
    }
    KeypadHead {
        id: head
        x: root.lie.value.x
        y: root.lie.value.y
        width: root.lie.value.width
        height: root.lie.value.height
        cap: Theme.mm(root.lie.cap)
        untouched: root.fresh
        wrong: root.error !== ""
        figure: ({
            minus: false, whole: root.shown.whole.replace(".", Qt.locale().decimalPoint), num: root.shown.num,
            den: root.shown.den, unit: root.unit, lean: "", text: (root.entry + " " + root.unit).trim()
        })
    }
    // Measured, not shown: what is wrong, in the name's place.
    Word {
        id: measured
        visible: false
        // Beside its sign.
        width: root.nameWidth - Theme.mm(8)
        text: root.error
    }
    KeypadSays {
        readonly property rect place: root.lie.saysName ? root.lie.name : root.lie.says
        visible: root.said
        x: place.x
        y: place.y
        width: place.width
        cap: root.flat && !root.lie.saysName ? Theme.mm(3.84) : Theme.capWord
        error: root.error
        offers: root.offers
        onOfferTaken: index => root.offerTaken(index)
    }
    UnrolledTape {
        objectName: "tape"
        // Where there is room for it; it gives way to what is wrong.
        visible: root.tapes && !root.said && root.lie.says.height >= Theme.mm(8) && root.lie.says.width >= Theme.mm(24)
        x: root.lie.says.x
        y: root.lie.says.y + root.lie.says.height - height
        width: root.lie.says.width
        height: Math.min(root.lie.says.height, Theme.mm(17), Math.max(Theme.mm(9), width / 4.4))
        figure: root.shown
        metric: root.unit === "mm"
    }
    KeypadDigits {
        x: root.lie.digits.x
        y: root.lie.digits.y
        width: root.lie.digits.width
        height: root.lie.digits.height
        lie: root.lie.own
        decimal: root.decimal
        onTyped: character => root.typed(character)
        onRubbed: root.back()
        onCleared: root.clear()
    }
    KeypadInch {
        visible: root.given.parts > 0
        x: root.lie.inch.x
        y: root.lie.inch.y
        width: root.lie.inch.width
        height: root.lie.inch.height
        marks: root.given.parts > 0 ? root.marks : []
        lie: root.lie.marks
        num: root.shown.num
        den: root.shown.den
        onPicked: mark => root.pick(mark)
    }
    Row {
        visible: root.lie.own.apart
        x: root.lie.rubs?.x ?? 0
        y: root.lie.rubs?.y ?? 0
        spacing: Theme.gap
        KeypadRub {
            onClicked: root.back()
        }
        KeypadRub {
            all: true
            onClicked: root.clear()
        }
    }
    Row {
        id: buttons
        x: root.lie.buttons.x
        y: root.lie.buttons.y
        // Long words take of the room between.
        spacing: leave.least + Theme.gapTargets + take.leastWidth <= root.lie.buttons.width ? Theme.gapTargets : Theme.gap
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        CutButton {
            id: leave
            readonly property real least: Math.max(Theme.mm(Theme.small ? 20 : 22), leastWidth)
            width: Math.max(least, (root.lie.buttons.width - buttons.spacing) / 3)
            height: Theme.targetLeast
            text: qsTr("Cancel")
            onClicked: root.cancelled()
        }
        CutButton {
            id: take
            width: root.lie.buttons.width - buttons.spacing - leave.width
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("Done")
            enabled: root.entry !== ""
            onClicked: root.finish()
        }
    }
}
