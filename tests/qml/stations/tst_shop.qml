// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Theme

StationCase {
    name: "Shop"
    station: 1

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Shop");
        verify(printed(null).length > 40);
    }

    function priceHead(): var {
        return pressables().find(item => item.text === "Cost and price");
    }
    function openPrice() {
        const page = byName("shop-page");
        verify(page);
        page.toTheFoot();
        wait(60);
        verify(priceHead(), "no cost and price");
        priceHead().press();
        tryVerify(() => pressables().some(item => /^an hour of your work/.test(item.accessibleName)));
        wait(60);
    }
    /** The sum is there line by line, follows her rate, and the keypad takes an amount. */
    function test_costAndPrice_data() {
        return screens;
    }
    function test_costAndPrice(data) {
        resize(data);
        openPrice();
        verifySizes(data.tag + ", price");
        const before = PriceModel.priceText;
        called("an hour of your work more").press();
        tryVerify(() => PriceModel.priceText !== before);
        pressables().find(item => /^an hour of your work \d/.test(item.accessibleName)).press();
        tryVerify(() => called("Done"));
        wait(250);
        verifySizes(data.tag + ", price keypad");
        press(called("1"));
        press(called("8"));
        press(called("Done"));
        tryVerify(() => !called("Done"));
        verify(PriceModel.parts.some(line => /min at\s18.00$/.test(line.says)), printed(null));
        verify(printed(null).includes(PriceModel.priceText), PriceModel.priceText);
        takenInHand(data.tag);
        priceHead().press();
        tryVerify(() => !pressables().some(item => /^an hour of your work/.test(item.accessibleName)));
    }
    /** Each part that is no cloth, and the tag, is taken in hand by its label, and nothing moves by it. */
    function takenInHand(tag: string) {
        const labels = pressables().filter(item => item.inHand !== undefined && item.told === false);
        compare(labels.length, 4, tag);
        const lies = () => labels.map(item => item.mapToItem(null, 0, 0) + " " + item.width + " " + item.height).join();
        const at = lies(), steps = called("an hour of your work more").mapToItem(null, 0, 0);
        for (const says of ["margin", "overhead", "thread, web, needles", "if you ask"]) {
            const found = pressables().find(item => item.accessibleName.startsWith(says === "if you ask" ? "the price" : says));
            verify(found, says);
            found.press();
            tryVerify(() => called(says + " more"), 1000, says);
            compare(lies(), at, tag + ", " + says);
            compare(called(says + " more").mapToItem(null, 0, 0), steps, tag + ", " + says);
        }
        // What is asked instead hangs at the strip; the price is still told.
        called("if you ask less").press();
        tryVerify(() => PriceModel.tag.share < 1);
        verify(printed(null).includes(PriceModel.priceText), PriceModel.priceText);
        verify(printed(null).includes(PriceModel.tag.value), PriceModel.tag.value);
        verify(PriceModel.enter("asked", "0").ok);
        labels.find(item => / at\s18.00: /.test(item.accessibleName)).press();
        tryVerify(() => called("an hour of your work more"));
    }
    function test_priceForTheLeftHand() {
        Session.leftHanded = true;
        openPrice();
        verifySizes("price, left hand");
        Session.leftHanded = false;
    }
    /** The spares, the machines and who learns are taken in hand in the room; what steps them stays where it was. */
    function roomInHand(tag: string) {
        const sheet = byName("kits-sheet"), at = called("students more").mapToItem(sheet, 0, 0);
        for (const says of ["spare kits", "machines in the room"]) {
            pressables().find(item => item.accessibleName.startsWith(says + ": ")).press();
            tryVerify(() => called(says + " more"), 1000, says);
            compare(called(says + " more").mapToItem(sheet, 0, 0), at, tag + ", " + says);
        }
        called("machines in the room more").press();
        tryVerify(() => KitsModel.room.machines === 2);
        pressables().find(item => item.accessibleName.startsWith("who learns: ")).press();
        tryVerify(() => called("Some under eighteen"));
        wait(60);
        verifySizes(tag + ", who learns");
        called("Some under eighteen").press();
        tryVerify(() => printed(null).includes(KitsModel.cautionSays) && KitsModel.cautionSays !== "");
        called("All grown up").press();
        tryCompare(KitsModel, "cautionSays", "");
        pressables().find(item => item.accessibleName.startsWith("students: ")).press();
        tryVerify(() => called("students more"));
    }
    /** What grows over it moves nothing: the head she opened stays where she sees it, and what she presses under it. */
    function test_theOpenHeadStaysWhereItWasTouched_data() {
        return screens;
    }
    function test_theOpenHeadStaysWhereItWasTouched(data) {
        resize(data);
        const page = byName("shop-page");
        page.toTheFoot();
        wait(60);
        page.show("kits");
        tryVerify(() => called("students more"));
        settle();
        const head = () => pressables().find(item => item.text === "Kits for a class");
        const seen = () => Math.round(head().mapToItem(null, 0, 0).y);
        const at = seen();
        for (let students = 1; students <= 14; ++students) {
            called("students more").press();
            wait(30);
            fuzzyCompare(seen(), at, 1);
        }
        settle();
        fuzzyCompare(seen(), at, 1);
        for (let students = 14; students >= 1; --students)
            called("students less").press();
        settle();
        fuzzyCompare(seen(), at, 1);
    }
    /** Kits, cloth she has and the list to take, each looked at and used on every screen. */
    function test_kitsStockAndTake_data() {
        return screens;
    }
    function test_kitsStockAndTake(data) {
        resize(data);
        const page = byName("shop-page");
        page.toTheFoot();
        wait(60);
        page.show("kits");
        tryVerify(() => called("students more"));
        wait(60);
        // The first student brings the whole room; what was pressed stays under the finger too.
        const first = called("students more").mapToItem(byName("kits-sheet"), 0, 0).y;
        called("students more").press();
        // More bundles take more rows: within the sheet the number stays where it is pressed.
        wait(60);
        const sheet = byName("kits-sheet");
        const at = called("students more").mapToItem(sheet, 0, 0).y;
        fuzzyCompare(at, first, 1);
        for (let students = 1; students <= 12; ++students)
            called("students more").press();
        wait(60);
        fuzzyCompare(called("students more").mapToItem(sheet, 0, 0).y, at, 1);
        roomInHand(data.tag);
        for (let students = 12; students >= 1; --students)
            called("students less").press();
        tryVerify(() => KitsModel.headSays.includes("3 kits"));
        tryVerify(() => /To buy for 3 kits/.test(printed(null)));
        wait(60);
        verifySizes(data.tag + ", kits");
        called("students less").press();
        tryVerify(() => KitsModel.headSays === "");
        page.show("stock");
        tryVerify(() => called("Add this piece"));
        wait(60);
        verifySizes(data.tag + ", stock");
        // The piece under the tape is of the cloth whose swatch is pressed, in that cloth's own colour.
        const drawn = all(item => item.roomWidthMm !== undefined && item.clothRole !== undefined)[0];
        const cloths = StockModel.amounts[0].choices, was = cloths[0], other = cloths[1];
        verify(other.colour !== was.colour, other.says);
        called(other.says).press();
        tryCompare(drawn, "colour", other.colour);
        compare(drawn.clothRole, other.print);
        called(was.says).press();
        tryCompare(drawn, "colour", was.colour);
        // A length of cloth is typed with the marks of her ruler, as everywhere.
        pressables().find(item => /^its length, along the selvage \d/.test(item.accessibleName)).press();
        tryVerify(() => called("Done"));
        wait(250);
        verifySizes(data.tag + ", stock keypad");
        press(called("2"));
        press(called("7"));
        press(called("1/2"));
        press(called("Done"));
        tryVerify(() => !called("Done"));
        verify(pressables().some(item => item.accessibleName === "its length, along the selvage 27 1/2 in"), printed(null));
        called("Add this piece").press();
        tryVerify(() => StockModel.pieces.length === 1);
        verify(StockModel.pieces[0].startsWith("{27 1/2 in} × "), StockModel.pieces[0]);
        pressables().find(item => item.accessibleName.startsWith("take away: ")).press();
        tryVerify(() => StockModel.pieces.length === 0);
        page.show("batting");
        tryVerify(() => called("Add this size"));
        wait(60);
        verifySizes(data.tag + ", batting");
        called("Add this size").press();
        tryVerify(() => BattingModel.ways.length === 2);
        wait(60);
        verifySizes(data.tag + ", batting and a package");
        pressables().find(item => /package.? of 45 in/.test(item.accessibleName)).press();
        tryVerify(() => BattingModel.headSays.includes("package"));
        called("Forget the sizes").press();
        tryVerify(() => BattingModel.ways.length === 1);
        page.show("");
        page.taking = true;
        tryVerify(() => byName("take-list"));
        wait(60);
        verifySizes(data.tag + ", list to take");
        verify(TakeModel.count > 2);
        const before = TakeModel.leftSays;
        const slip = called(pressables().find(item => item.drawnAs !== undefined).accessibleName);
        verify(slip.drawnAs === "front" && !all(item => item.objectName === "pin", slip)[0], slip.accessibleName);
        slip.press();
        tryVerify(() => TakeModel.leftSays !== before);
        // The pin goes through it, and enough of the cloth is still to be seen.
        verify(slip.ticked && all(item => item.objectName === "pin", slip)[0]);
        verify(all(item => item.kind === "front", slip)[0].shown >= Theme.mm(14));
        slip.press();
        tryCompare(TakeModel, "leftSays", before);
        page.taking = false;
    }
}
