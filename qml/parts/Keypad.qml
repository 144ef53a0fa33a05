// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
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

    readonly property bool withMarks: !decimal && !counting && marks.length > 0
    readonly property real margin: Theme.margin
    readonly property real digitsWidth: 3 * key + 2 * Theme.gap
    readonly property real key: Math.max(Theme.step, Math.min(Theme.mm(16), (width - 2 * margin - Theme.gapTargets
        - (withMarks ? 3 * Theme.step + 3 * Theme.gap : 0)) / 3 - Theme.gap))
    readonly property real marksWidth: width - 2 * margin - digitsWidth - Theme.gapTargets
    readonly property int markColumns: Math.max(1, Math.floor((marksWidth + Theme.gap) / (key + Theme.gap)))
    readonly property real keysHeight: Math.max(digits.height, withMarks ? Math.min(fractions.height, Math.max(digits.height, height - keysTop - margin - Theme.targetLeast - Theme.gapTargets)) : 0)
    readonly property real keysTop: head.y + head.height + Theme.gap
    readonly property var shown: Lengths.parse(entry)

    implicitWidth: Theme.mm(116)
    implicitHeight: keysTop + Math.max(digits.height, withMarks ? fractions.height : 0) + Theme.gapTargets + Theme.targetLeast + margin

    Accessible.role: Accessible.Dialog
    Accessible.name: title

    /** Opens on the value as it is now; the first key replaces it. */
    function start(text: string) {
        entry = text;
        fresh = true;
        forceActiveFocus();
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
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && root.entry !== "")
            root.done(root.entry);
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
        TapHandler { gesturePolicy: TapHandler.ReleaseWithinBounds }
    }
    KeyLine {
        width: parent.width
    }

    Column {
        id: head
        x: root.margin
        y: root.margin
        width: root.width - 2 * root.margin
        spacing: Theme.mm(1.4)
        Word {
            width: parent.width
            visible: text !== ""
            text: root.title
            bold: true
            cap: Theme.capHead
        }
        Item {
            width: parent.width
            height: value.large ? value.implicitHeight : Theme.capSecond
            FigureText {
                id: value
                figure: ({
                    minus: false, whole: root.shown.whole.replace(".", Qt.locale().decimalPoint), num: root.shown.num,
                    den: root.shown.den, unit: root.unit, lean: "", text: root.entry + " " + root.unit
                })
                cap: Theme.capSecond
                color: root.fresh ? Theme.colors.inkSoft : Theme.colors.ink
                availableWidth: parent.width
            }
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: Theme.key
                color: root.error !== "" ? Theme.colors.stop : Theme.colors.ink
            }
        }
        CautionLine {
            width: parent.width
            text: root.error
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            visible: root.offers.length > 0
            Repeater {
                model: root.offers
                CutButton {
                    required property var modelData
                    width: Math.min(implicitWidth, head.width)
                    height: Math.max(Theme.step, implicitHeight - Theme.target + Theme.step)
                    text: modelData.says
                    onClicked: root.offerTaken(modelData.index)
                }
            }
        }
    }

    Grid {
        id: digits
        x: root.margin
        y: root.keysTop
        columns: 3
        spacing: Theme.gap
        Repeater {
            model: ["7", "8", "9", "4", "5", "6", "1", "2", "3"]
            KeypadKey {
                required property string modelData
                width: root.key
                height: root.key
                text: modelData
                onClicked: root.typed(text)
            }
        }
        KeypadKey {
            width: root.key
            height: root.key
            text: root.decimal ? Qt.locale().decimalPoint : "C"
            accessibleName: root.decimal ? qsTr("decimal point") : qsTr("clear")
            onClicked: root.decimal ? root.typed(".") : root.clear()
        }
        KeypadKey {
            width: root.key
            height: root.key
            text: "0"
            onClicked: root.typed("0")
        }
        KeypadKey {
            id: rub
            width: root.key
            height: root.key
            accessibleName: qsTr("rub out the last")
            onClicked: root.back()
            Pictogram {
                name: "back"
                anchors.centerIn: parent
                width: Theme.mm(6)
                ink: rub.ink
            }
        }
    }
    Flickable {
        visible: root.withMarks
        x: root.margin + root.digitsWidth + Theme.gapTargets
        y: root.keysTop
        width: root.marksWidth
        height: root.keysHeight
        contentHeight: fractions.height
        interactive: contentHeight > height + 1
        clip: interactive
        boundsBehavior: Flickable.StopAtBounds
        Grid {
            id: fractions
            columns: root.markColumns
            spacing: Theme.gap
            Repeater {
                model: root.withMarks ? root.marks : []
                KeypadKey {
                    required property var modelData
                    width: root.key
                    height: root.key
                    mark: modelData
                    chosen: root.shown.num === String(modelData.num) && root.shown.den === String(modelData.den)
                    onClicked: root.pick(modelData)
                }
            }
        }
    }
    Row {
        x: root.margin
        y: root.keysTop + root.keysHeight + Theme.gapTargets
        width: root.width - 2 * root.margin
        spacing: Theme.gapTargets
        layoutDirection: Theme.left ? Qt.RightToLeft : Qt.LeftToRight
        CutButton {
            width: (parent.width - Theme.gapTargets) / 3
            height: Theme.targetLeast
            text: qsTr("Cancel")
            onClicked: root.cancelled()
        }
        CutButton {
            width: (parent.width - Theme.gapTargets) * 2 / 3
            height: Theme.targetLeast
            kind: "action"
            text: qsTr("Done")
            enabled: root.entry !== ""
            onClicked: root.done(root.entry)
        }
    }
}
