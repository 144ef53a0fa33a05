// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Core
import Matside.Stage
import Matside.Stations
import Matside.Theme

/**
 * A page in the real window over real models. Every page is opened at three sizes of screen, must show what it
 * is for, and keep the least sizes of what is pressed there; any warning fails the test.
 */
TestCase {
    id: test

    /** The station whose page this is; -1 for a page that is none. */
    property int station: -1
    /** "station", "shelf" or "settings". */
    property string view: "station"

    property var window: null
    /** The three targets of a working screen, by their names. */
    readonly property var targets: ["action", "back", "wrong"]
    readonly property var screens: [{ tag: "10.1 in", width: 1280, height: 800 }, { tag: "10.1 in upright", width: 800, height: 1280 },
                                    { tag: "8 in", width: 1024, height: 600 }]

    width: 100
    height: 100
    visible: true
    when: windowShown

    Component {
        id: whole
        Main {}
    }

    function init() {
        failOnWarning(new RegExp(".?"));
        Theme.pause = 0;
        verify(Stage.begin(Math.max(0, station), false));
        Session.view = view;
        window = createTemporaryObject(whole, test);
        verify(window);
        resize(screens[0]);
    }
    function resize(screen: var) {
        window.width = screen.width;
        window.height = screen.height;
        tryVerify(() => window.contentItem.width === screen.width && window.contentItem.height === screen.height);
        settle();
    }
    /** Waits until nothing that can be pressed moves or goes: lists lay their rows out frames later. */
    function settle() {
        let last = "";
        for (let look = 0; look < 60; ++look) {
            wait(60);
            const now = pressables().map(item => told(item) + item.mapToItem(null, 0, 0)).join();
            if (now === last)
                return;
            last = now;
        }
    }

    /** Everything shown under `item` that `wanted` accepts. */
    function all(wanted: var, item: var): var {
        const found = [];
        const look = child => {
            if (!child.visible || child.opacity === 0)
                return;
            if (wanted(child))
                found.push(child);
            for (let i = 0; i < child.children.length; ++i)
                look(child.children[i]);
        };
        look(item ?? window.contentItem);
        return found;
    }
    function byName(name: string): var {
        return all(item => item.objectName === name)[0] ?? null;
    }
    function pressables(): var {
        return all(item => item.widestContact !== undefined && item.listening);
    }
    /** The pressable that is called so, or whose name begins so. */
    function called(name: string): var {
        const found = pressables().filter(item => item.accessibleName === name || item.accessibleName.startsWith(name + ","));
        return found[found.length - 1] ?? null;
    }
    /** Every word and numeral printed under `item`. */
    function printed(item: var): string {
        return all(child => child.contentWidth !== undefined && child.text !== undefined && child.text !== "", item)
            .map(child => child.text).join(" ");
    }
    /** The words and numerals a figure's text is printed with: "13 1/4 in" as "13 1 4 in". */
    function asPrinted(text: string): string {
        return text.replace("/", " ").replace(/\s+/g, " ");
    }
    function press(item: var) {
        verify(item, "nothing to press");
        verify(item.enabled, item.accessibleName + " cannot be pressed now");
        mouseClick(item);
    }

    /** The least size of a pressable, in millimetres: design's table of sizes (MIL-STD-1472E 5.4.3.1.3.3, WCAG 2.2 SC 2.5.5). */
    function least(item: var): var {
        if (targets.includes(item.objectName))
            return { width: 20, height: 20 };
        if (item.sign !== undefined && item.stepped !== undefined || item.mark !== undefined && item.chosen !== undefined)
            return { width: 13, height: 13 };
        if (item.working !== undefined)
            return { width: 20, height: 11.6 };
        return { width: 11.6, height: 11.6 };
    }
    function told(item: var): string {
        return (item.objectName || item.accessibleName) + " " + (item.width / Theme.pxPerMm).toFixed(1) + " × " + (item.height / Theme.pxPerMm).toFixed(1) + " mm";
    }
    function tooSmall(): var {
        return pressables().filter(item => item.enabled || targets.includes(item.objectName)).filter(item => {
            const size = least(item);
            return item.width < Theme.mm(size.width) - 0.3 || item.height < Theme.mm(size.height) - 0.3;
        }).map(told);
    }
    /** Pairs of the three targets nearer to each other than 3 mm. */
    function tooNear(): var {
        const found = [];
        const shown = pressables().filter(item => targets.includes(item.objectName));
        for (let i = 0; i < shown.length; ++i)
            for (let k = i + 1; k < shown.length; ++k) {
                const a = shown[i].mapToItem(null, 0, 0), b = shown[k].mapToItem(null, 0, 0);
                const across = Math.max(a.x - b.x - shown[k].width, b.x - a.x - shown[i].width);
                const down = Math.max(a.y - b.y - shown[k].height, b.y - a.y - shown[i].height);
                if (Math.max(across, down) < Theme.mm(3) - 0.3)
                    found.push(told(shown[i]) + " and " + told(shown[k]));
            }
        return found;
    }
    function verifySizes(where: string) {
        verify(pressables().length > 0, where + ": nothing to press");
        // On a busy machine a list may still be laying out its rows.
        for (let looks = 0; looks < 30 && tooSmall().length > 0; ++looks)
            wait(100);
        compare(tooSmall(), [], where);
        compare(tooNear(), [], where);
        compare(pressables().filter(item => item.accessibleName === "").map(told), [], where + ": no name for a reader");
    }

    function test_leastSizes_data() {
        return screens;
    }
    function test_leastSizes(data) {
        resize(data);
        verifySizes(data.tag);
        Session.leftHanded = true;
        wait(60);
        verifySizes(data.tag + ", left hand");
        Session.leftHanded = false;
    }
    /** The three targets are on the screen whole, at every size. */
    function test_targetsAreInSight_data() {
        return screens;
    }
    function test_targetsAreInSight(data) {
        resize(data);
        for (const item of pressables().filter(item => targets.includes(item.objectName))) {
            const at = item.mapToItem(null, 0, 0);
            verify(at.x >= 0 && at.y >= 0 && at.x + item.width <= data.width + 1 && at.y + item.height <= data.height + 1,
                   told(item) + " at " + at.x + ", " + at.y);
        }
    }
    /** Keys do what fingers do: nothing that can be pressed is left out of the way of the keyboard. */
    function test_everythingIsReachedByTheKeyboard() {
        compare(pressables().filter(item => item.enabled && !item.activeFocusOnTab).map(told), []);
    }
}
