// SPDX-License-Identifier: MIT
pragma ComponentBehavior: Bound
import QtQuick
import Matside.Parts
import Matside.Theme
import "classroom.js" as Classroom

/**
 * The room of a class: the shelf with its kits, and the table with its machines and stools, each with the label it is
 * taken in hand by. It keeps its height whatever is in it, and is the same for either hand.
 */
Item {
    id: root

    /** As KitBundles has them. */
    property var bundles: []
    property var colours: []
    /** {machines, young}; without, the table is not set. */
    property var room: null
    /**
     * {key, says, counted: the same beside its number, kind, figure} or {key, says, kind: "choice", choices, value}:
     * students, spare kits, machines, who learns.
     */
    property var amounts: []
    /** The one in hand. */
    property int held: 0
    property string accessibleName
    /** What is asked for while there is no class. */
    property string invitation

    signal taken(int amount)

    readonly property bool set: amounts.length > 1
    readonly property string heldKey: amounts[held]?.key ?? ""
    readonly property real half: (width - Theme.gap) / 2
    readonly property real label: Math.max(Theme.small ? Theme.control : Theme.step, tallest)
    readonly property real tableTop: shelf.height + label + Theme.mm(Theme.small ? 2 : 3)
    readonly property real tableDeep: Theme.mm(Theme.small ? 11 : 20)
    property real tallest: 0

    function measure() {
        let most = 0;
        for (let i = 0; i < plates.count; ++i)
            most = Math.max(most, (plates.itemAt(i) as AmountPlate)?.wanted ?? 0);
        tallest = most;
    }
    function chosen(amount: var): string {
        const choices = amount?.choices ?? [];
        for (let i = 0; i < choices.length; ++i)
            if (choices[i].value === amount.value)
                return choices[i].says;
        return "";
    }

    implicitHeight: Math.max(tableTop + tableDeep + Theme.mm(1.5) + label, set ? 0 : asks.y + asks.implicitHeight)
    height: implicitHeight

    KitBundles {
        id: shelf
        width: parent.width
        room: Theme.mm(Theme.small ? 21 : 42)
        boards: Theme.small ? 1 : 2
        bundles: root.bundles
        colours: root.colours
        held: root.heldKey === "students" ? "student" : root.heldKey
        accessibleName: root.accessibleName
    }
    PrintCanvas {
        visible: root.set
        y: root.tableTop
        width: parent.width
        height: root.tableDeep
        mirrored: false
        shows: [root.room, root.heldKey]
        Accessible.ignored: true
        onPrinting: context => {
            context.translate(0, 1); // a clear edge, or it would show again at the foot
            Classroom.paint(context, Theme.colors, root.room, width, height - 1, root.heldKey, unit);
        }
    }
    Word {
        id: asks
        visible: !root.set
        y: shelf.height + Theme.gap
        width: parent.width
        cap: Theme.small ? Theme.capWord : Theme.capHead
        bold: true
        text: root.invitation
    }
    Repeater {
        id: plates
        // By number: a label that was just pressed is not made anew by what it changed.
        // An empty shelf asks only how many come.
        model: root.set ? root.amounts.length : 0
        AmountPlate {
            required property int index
            readonly property var amount: root.amounts[index] ?? null
            readonly property bool choice: amount?.kind === "choice"
            x: index % 2 === 1 ? root.width - width : 0
            y: index < 2 ? shelf.height : root.tableTop + root.tableDeep + Theme.mm(1.5)
            width: root.half
            height: root.label
            tight: true
            value: choice ? "" : amount?.figure?.text ?? ""
            says: choice ? root.chosen(amount) : amount?.counted ?? ""
            accessibleName: (amount?.says ?? "") + ": " + (choice ? says : value)
            bare: value === "0"
            inHand: index === root.held
            onClicked: root.taken(index)
            onWantedChanged: root.measure()
            Component.onCompleted: root.measure()
        }
    }
}
