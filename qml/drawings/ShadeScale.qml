// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme

/** The ten steps from black to white, and over them every cloth where it lies, with its letter. */
Item {
    id: root

    /** The steps, darkest first: {step, grey}. */
    property var steps: []
    /** {letter, colour, known, value (0…10)} */
    property var cloths: []
    property string accessibleName

    readonly property real markWidth: Theme.mm(8)
    readonly property real markHeight: Theme.mm(13)
    /** Each colour with the letters of its cloths and the row it stands in, so that none lies on another while there is room. */
    readonly property var marks: lay(width)
    readonly property int rowCount: marks.reduce((most, mark) => Math.max(most, mark.row + 1), 1)

    function lay(room: real): var {
        const known = [], ends = [];
        for (const cloth of root.cloths.filter(cloth => cloth.known)) {
            const same = known.find(other => other.colour === cloth.colour);
            if (same)
                same.letter += cloth.letter;
            else
                known.push({ letter: cloth.letter, colour: cloth.colour, value: cloth.value });
        }
        known.sort((a, b) => a.value - b.value);
        return known.map(cloth => {
            const wide = root.markWidth * Math.max(1, cloth.letter.length / 2);
            const x = Math.max(0, Math.min(room - wide, cloth.value / 10 * room - wide / 2));
            let row = ends.findIndex(end => end <= x);
            if (row < 0) // four rows at most: beyond them marks lie on each other, and the list tells them apart
                row = ends.length < 4 ? ends.length : ends.indexOf(Math.min(...ends));
            ends[row] = x + wide;
            return { letter: cloth.letter, colour: cloth.colour, at: cloth.value / 10 * room, x, row, wide };
        });
    }

    implicitHeight: scale.y + scale.height
    height: implicitHeight

    Accessible.role: Accessible.Graphic
    Accessible.name: accessibleName

    Repeater {
        model: root.marks
        Item {
            id: mark
            required property var modelData
            x: modelData.x
            y: (root.rowCount - 1 - modelData.row) * root.markHeight
            width: modelData.wide
            height: scale.y - y
            z: -modelData.row
            Rectangle {
                x: Math.min(mark.width - width, Math.max(0, mark.modelData.at - mark.x - width / 2))
                y: snip.y + snip.height
                width: Theme.key
                height: parent.height - y
                color: Theme.colors.ink
            }
            Rectangle {
                x: snip.x
                y: letter.y
                width: snip.width
                height: letter.height
                color: Theme.colors.raised
            }
            Word {
                id: letter
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                bold: true
                text: mark.modelData.letter
                Accessible.ignored: true
            }
            SwatchPinked {
                id: snip
                y: letter.height
                width: parent.width
                height: Theme.mm(6)
                colour: mark.modelData.colour
            }
        }
    }
    Row {
        id: scale
        y: root.rowCount * root.markHeight
        Repeater {
            model: root.steps
            Column {
                id: step
                required property var modelData
                Rectangle {
                    width: root.width / 10
                    height: Theme.mm(11)
                    color: step.modelData.grey
                    border.color: Theme.colors.ink
                    border.width: Theme.keyThin
                }
                Word {
                    width: root.width / 10
                    horizontalAlignment: Text.AlignHCenter
                    wrapMode: Text.NoWrap
                    text: step.modelData.step
                    Accessible.ignored: true
                }
            }
        }
    }
}
