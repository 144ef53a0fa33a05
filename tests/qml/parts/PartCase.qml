// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Theme

/** Every test of a part starts from the same look and fails on any warning. */
TestCase {
    width: 1200
    height: 700
    visible: true
    when: windowShown

    function init() {
        failOnWarning(new RegExp(".?"));
        Theme.set = "day";
        Theme.left = false;
        Theme.pxPerMm = 5.87;
        Theme.reducedMotion = false;
        Theme.small = false;
        Theme.pause = 0;
    }

    function figure(whole: string, num: string, den: string, unit: string): var {
        return { minus: false, whole, num, den, unit, lean: "", text: [whole, num ? num + "/" + den : "", unit].filter(t => t).join(" "), hasWorking: true, valid: true };
    }

    function middle(item: Item): point {
        return Qt.point(item.width / 2, item.height / 2);
    }

    /** Every shown Text under `item` whose ink reaches outside it; a bold digit starts up to 4 px before its ink. */
    function overflowing(item: Item): var {
        const out = [];
        const look = child => {
            if (!child.visible || child.opacity === 0)
                return;
            if (child.text !== undefined && child.contentWidth !== undefined && child.text !== "") {
                const from = child.mapToItem(item, 0, 0);
                const wide = Math.max(child.contentWidth, 0);
                const start = child.horizontalAlignment === Text.AlignHCenter ? from.x + (child.width - wide) / 2 : from.x;
                if (start < -4 || start + wide > item.width + 1.5)
                    out.push(child.text + " " + start + ".." + (start + wide) + " in " + item.width);
            }
            for (let i = 0; i < child.children.length; ++i)
                look(child.children[i]);
        };
        look(item);
        return out;
    }
}
