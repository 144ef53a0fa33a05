// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Drawings
import Matside.Parts
import Matside.Theme

// A footer of Qt 6.4 cannot be made as a bound component, so it reaches this file's ids unqualified.
// qmllint disable unqualified

/** What to buy, cloth by cloth, each with its cut layout and how good that is; a press ticks it as bought. */
FocusScope {
    id: root
    objectName: "shop-page"

    /** What lies open under the list: "price", "kits", "batting", "stock", or nothing. */
    property string opened: ""
    /** The list to take lies over the page. */
    property bool taking: false
    /** Light and dark of the cloths lies over the list. */
    property bool shading: false
    /** Nothing lies over the page. */
    readonly property bool plain: !shading && !taking
    /** Whose value the keypad asks for. */
    property string asking: ""

    function leave(): bool {
        if (keypad.open) {
            keypad.close();
            return true;
        }
        if (shading) {
            if (!(shade.item as ShadePage)?.leave())
                shading = false;
            return true;
        }
        const lay = taking || opened !== "";
        if (taking)
            taking = false;
        else
            opened = "";
        return lay;
    }
    /** How far down the open head lies among all that scrolls; below 0: none is open. */
    readonly property real headAt: {
        const foot = list.footerItem as ShopFoot;
        return foot && opened !== "" ? foot.y + foot.headOf(opened).y : -1;
    }
    /** How far down the page it is seen. There it stays while the list over it grows: a finger lies on what it opened. */
    property real headSeen: NaN
    /** Where the head lay when that was last seen to: as long as it lies there, who moves the page means to. */
    property real keptAt: NaN
    onHeadAtChanged: keepHead()

    function contentAt(y: real): real {
        return Math.max(list.originY, Math.min(list.originY + list.contentHeight - list.height, y));
    }
    function keepHead() {
        if (headAt < 0 || isNaN(headSeen) || settled.running || list.moving)
            return;
        keptAt = headAt;
        const wanted = contentAt(headAt - headSeen);
        if (Math.abs(wanted - list.contentY) > 0.5)
            list.contentY = wanted;
    }
    function toTheFoot() {
        list.positionViewAtEnd();
    }
    /** Opens a group under the list with its head at the top of the page, or closes it. */
    function show(group: string) {
        opened = group;
        headSeen = NaN;
        if (group !== "")
            settled.restart();
    }
    function toTheHead() {
        const foot = list.footerItem as ShopFoot;
        if (!foot || opened === "")
            return;
        list.forceLayout();
        list.contentY = contentAt(headAt);
        headSeen = headAt - list.contentY;
        keptAt = headAt;
    }
    function begin(group: string, key: string, label: string, kind: string, text: string) {
        asking = group;
        keypad.ask(key, label, kind, text);
    }

    // What was opened must be laid out before the page can be scrolled to it.
    Timer {
        id: settled
        interval: 30
        onTriggered: root.toTheHead()
    }
    Word {
        id: head
        x: Theme.margin
        y: Theme.margin
        visible: root.plain
        width: shades.x - x - Theme.gap
        // What it is for takes more words beside the two buttons.
        cap: ShopModel.kits > 1 ? Theme.capWord : Theme.capHead
        bold: true
        text: ShopModel.count === 0 ? StepModel.elsewhereText
            //: heading of a shopping list; kits: all that a student needs for one piece, for so many students
            : ShopModel.kits > 1 ? qsTr("To buy for %1 kits").arg(ShopModel.kits) : qsTr("To buy")
    }
    // Measured, not shown.
    Word {
        id: forClass
        visible: false
        width: head.width
        cap: Theme.capWord
        bold: true
        text: qsTr("To buy for %1 kits").arg(88)
    }
    CutButton {
        id: shades
        objectName: "shop-shades"
        visible: root.plain
        x: (take.visible ? take.x - Theme.gapTargets : parent.width - Theme.margin) - width
        y: Theme.mm(2)
        width: Math.min(implicitWidth, parent.width * 0.3)
        height: Math.max(Theme.control, contentHeight)
        //: the page on how light and how dark the cloths are
        text: qsTr("Light and dark")
        onClicked: root.shading = true
    }
    CutButton {
        id: take
        visible: ShopModel.count > 0 && root.plain
        x: parent.width - width - Theme.margin
        y: Theme.mm(2)
        width: Math.min(implicitWidth, parent.width * 0.3)
        height: Math.max(Theme.control, contentHeight)
        //: opens the list to take to the shop
        text: qsTr("List to take")
        onClicked: root.taking = true
    }
    CutButton {
        id: mend
        visible: root.plain && ShopModel.count === 0 && StepModel.waitsAt >= 0
        x: Theme.margin
        y: head.y + head.height + Theme.margin
        width: Math.min(parent.width - 2 * Theme.margin, Theme.mm(110))
        height: visible ? Theme.target : 0
        kind: "action"
        text: StepModel.waiting
        onClicked: {
            FitModel.sentToMend = StepModel.waitsAt === 0;
            Session.station = StepModel.waitsAt;
        }
    }
    ListView {
        id: list
        visible: root.plain
        // The keypad lies over it: what is covered takes no focus.
        enabled: !keypad.open
        // The heading takes a second line for a class: that may not push down what she is pressing.
        y: Math.max(head.y + Math.max(head.height, forClass.implicitHeight), shades.y + shades.height, take.visible ? take.y + take.height : 0, mend.visible ? mend.y + mend.height : 0) + Theme.gap
        width: parent.width
        height: parent.height - y
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        model: ShopModel
        onContentYChanged: {
            if (moving || root.headAt === root.keptAt)
                root.headSeen = root.headAt - contentY;
            else
                root.keepHead();
        }
        onContentHeightChanged: root.keepHead()
        delegate: Pressable {
            id: row
            required property int index
            required property string name
            required property string colour
            required property string drawnAs
            required property string buyText
            required property string buyLine
            required property string cutSays
            required property string proofSays
            required property string costSays
            required property var strips
            required property real usableMm
            required property real lengthMm
            required property string lengthSays
            required property string widthSays
            required property bool bought
            readonly property bool wide: width > Theme.mm(150)

            width: ListView.view?.width ?? 0
            height: Math.max(words.y + words.height, proof.y + proof.height) + Theme.mm(3)
            inList: true
            accessibleName: qsTr("%1: buy %2").arg(row.name).arg(row.buyText)
            accessibleDescription: row.bought ? qsTr("bought") : qsTr("not bought yet")
            onClicked: ShopModel.tick(row.index)

            KeyLine { width: parent.width }
            Rectangle {
                id: box
                x: Theme.margin
                y: Theme.mm(4)
                width: Theme.mm(8)
                height: width
                color: row.bought ? Theme.colors.ink : Theme.colors.raised
                border.color: Theme.colors.ink
                border.width: Theme.key
                Pictogram {
                    visible: row.bought
                    anchors.centerIn: parent
                    name: "tick"
                    width: Theme.mm(6)
                    ink: Theme.colors.raised
                    ground: Theme.colors.ink
                }
            }
            Column {
                id: words
                x: box.x + box.width + Theme.margin
                y: Theme.mm(3)
                width: (row.wide ? row.width * 0.42 : row.width) - x - Theme.margin
                spacing: Theme.mm(1.2)
                InlineLength {
                    width: parent.width
                    bold: true
                    lengthCap: Theme.mm(10)
                    text: row.buyLine
                }
                Row {
                    spacing: Theme.gap
                    SwatchPinked {
                        width: Theme.mm(11)
                        height: Theme.mm(8)
                        colour: row.colour
                    }
                    Word {
                        width: words.width - Theme.mm(14)
                        bold: true
                        text: row.name
                    }
                }
                InlineLength {
                    width: parent.width
                    text: row.cutSays
                }
            }
            ClothLayout {
                id: layout
                x: row.wide ? row.width * 0.42 : words.x
                y: row.wide ? Theme.mm(3) : words.y + words.height + Theme.mm(2)
                width: row.width - x - Theme.margin
                height: Theme.mm(row.wide ? 56 : 42)
                visible: row.lengthMm > 0
                clothRole: row.drawnAs
                strips: row.strips
                usableMm: row.usableMm
                lengthMm: row.lengthMm
                lengthSays: row.lengthSays
                widthSays: row.widthSays
                //: spoken: %1 a cloth, %2 and %3 its two sides
                accessibleName: qsTr("How %1 is cut: %2 long, %3 wide").arg(row.name).arg(row.lengthSays.replace(/[{}]/g, "")).arg(row.widthSays.replace(/[{}]/g, ""))
            }
            Word {
                id: proof
                x: layout.x
                y: layout.y + (layout.visible ? layout.height + Theme.mm(1) : 0)
                width: layout.width
                color: Theme.colors.inkSoft
                text: row.costSays.length > 0 ? row.proofSays + " " + qsTr("Costs %1.").arg(row.costSays) : row.proofSays
            }
            FocusOutline { visible: row.keyboardFocus }
        }
        footer: ShopFoot {
            width: parent?.width ?? 0
            open: root.opened
            room: list.height
            onToggled: group => root.show(root.opened === group ? "" : group)
            onAsk: (group, key, label, kind, text) => root.begin(group, key, label, kind, text)
        }
    }
    MoreBelow {
        over: list
        ground: Theme.colors.paper
    }
    Loader {
        id: shade
        anchors.fill: parent
        active: root.shading
        focus: active
        source: "ShadePage.qml"
    }
    Connections {
        target: shade.item
        ignoreUnknownSignals: true
        function onClosed() {
            root.shading = false;
        }
    }
    EntrySheet {
        id: keypad
        home: list
        ruler: FitModel.marks("")
        onGiven: (key, text) => {
            const answer = root.asking === "kits" ? KitsModel.enter(key, text)
                         : root.asking === "stock" ? StockModel.enter(key, text)
                         : root.asking === "batting" ? BattingModel.enter(key, text) : PriceModel.enter(key, text);
            error = answer.ok ? "" : answer.says;
            if (answer.ok)
                close();
        }
        onClosed: root.forceActiveFocus()
    }
    Loader {
        active: root.taking
        anchors.fill: parent
        sourceComponent: TakeSheet {
            onClosed: root.taking = false
        }
    }
}
