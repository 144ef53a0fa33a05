// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Theme

/** The keys of the keypad: digits, and beside them the fractions of the ruler when there are any. */
Item {
    id: root

    /** List of {num, den, text}; empty for counts and decimal lengths. */
    property var marks: []
    property bool decimal: false
    /** The fraction now in the entry, shown solid. */
    property string num
    property string den

    signal typed(string character)
    signal picked(var mark)
    signal rubbed()
    signal cleared()

    readonly property bool withMarks: marks.length > 0
    readonly property real byWidth: (width - Theme.gapTargets + Theme.gap) / (withMarks ? 6 : 4) - Theme.gap
    readonly property real byHeight: height > 0 ? (height - 3 * Theme.gap) / 4 : byWidth
    readonly property real key: Math.max(Theme.step, largest(Math.min(Theme.mm(18), byWidth, byHeight)))
    readonly property real digitsWidth: 3 * key + 2 * Theme.gap
    readonly property real marksWidth: width - digitsWidth - Theme.gapTargets
    readonly property int markColumns: Math.max(1, Math.floor((marksWidth + Theme.gap) / (key + Theme.gap)))

    /** The largest keys, up to a size, at which no mark must be rolled to. */
    function largest(most: real): real {
        let size = most;
        while (withMarks && height > 0 && size > Theme.step && !holdsMarks(size))
            size -= Theme.mm(0.25);
        return size;
    }
    function holdsMarks(size: real): bool {
        const columns = Math.floor((width - 3 * size - Theme.gap - Theme.gapTargets) / (size + Theme.gap));
        return columns > 0 && Math.ceil(marks.length / columns) * (size + Theme.gap) - Theme.gap <= height;
    }

    implicitHeight: Math.max(digits.height, withMarks ? fractions.height : 0)

    Grid {
        id: digits
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
            onClicked: root.decimal ? root.typed(".") : root.cleared()
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
            onClicked: root.rubbed()
            Pictogram {
                name: "back"
                anchors.centerIn: parent
                width: Theme.mm(6)
                ink: rub.ink
                ground: Theme.colors.raised
            }
        }
    }
    KeypadKey {
        visible: root.decimal
        x: root.digitsWidth + Theme.gapTargets
        width: root.key
        height: root.key
        text: "C"
        accessibleName: qsTr("clear")
        onClicked: root.cleared()
    }
    Flickable {
        id: roll
        visible: root.withMarks
        x: root.digitsWidth + Theme.gapTargets
        width: root.marksWidth
        height: root.height
        contentHeight: fractions.height
        interactive: contentHeight > height + 1
        clip: interactive
        boundsBehavior: Flickable.StopAtBounds
        Grid {
            id: fractions
            columns: root.markColumns
            spacing: Theme.gap
            Repeater {
                model: root.marks
                KeypadKey {
                    required property var modelData
                    width: root.key
                    height: root.key
                    inList: true
                    mark: modelData
                    chosen: root.num === String(modelData.num) && root.den === String(modelData.den)
                    onClicked: root.picked(modelData)
                }
            }
        }
    }
    MoreBelow { over: roll }
}
