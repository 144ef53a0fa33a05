// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core

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
        byName("shop-page").toTheFoot();
        wait(60);
        pressables().find(item => /^an hour of your work \d/.test(item.accessibleName)).press();
        tryVerify(() => called("Done"));
        wait(250);
        verifySizes(data.tag + ", price keypad");
        press(called("1"));
        press(called("8"));
        press(called("Done"));
        tryVerify(() => !called("Done"));
        verify(PriceModel.working.some(line => line.says.endsWith("hours at 18.00")), printed(null));
        verify(printed(null).includes(PriceModel.priceText), PriceModel.priceText);
        priceHead().press();
        tryVerify(() => !pressables().some(item => /^an hour of your work/.test(item.accessibleName)));
    }
    function test_priceForTheLeftHand() {
        Session.leftHanded = true;
        openPrice();
        verifySizes("price, left hand");
        Session.leftHanded = false;
    }
}
