// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage
import Matside.Theme

StationCase {
    id: test
    name: "Fit"
    station: 0

    /** The fronts of the drawers; light and dark leads to a page of its own. */
    function heads(): var {
        return pressables().filter(item => item.summary !== undefined && item.open !== undefined && item.objectName !== "fit-shades");
    }
    /** What can be pressed in the chest: its drawers and what lies in the one that is out. */
    function inTheChest(): var {
        const chest = flickOf(heads()[0]);
        return pressables().filter(item => flickOf(item) === chest);
    }

    function test_theFinishedSizeIsThePlans_data() {
        return screens;
    }
    function test_theFinishedSizeIsThePlans(data) {
        resize(data);
        verify(called("Finished " + Stage.finishedAlong() + " by") || pressables().some(item => item.accessibleName.startsWith("Finished " + Stage.finishedAlong())),
               Stage.finishedAlong());
        verify(printed(null).includes(asPrinted(Stage.finishedAlong()).replace(/ in$/, "")), printed(null));
    }
    function test_oneMoreColumn() {
        const columns = Stage.columns();
        const size = Stage.finishedAlong();
        press(called("columns more"));
        compare(Stage.columns(), columns + 1);
        verify(Stage.finishedAlong() !== size);
        tryVerify(() => pressables().some(item => item.accessibleName.startsWith("Finished " + Stage.finishedAlong())));
    }
    /** The piece is the largest thing there is, and what steps it stands outside the cloth, in sight, at its edges. */
    function test_whatStepsThePieceStandsAtItsEdges_data() {
        return screens;
    }
    function test_whatStepsThePieceStandsAtItsEdges(data) {
        resize(data);
        for (const left of [false, true]) {
            Session.leftHanded = left;
            wait(60);
            const table = all(item => item.marked !== undefined && item.lie !== undefined)[0];
            const lie = table.lie, from = table.mapToItem(null, 0, 0);
            const x = from.x + (left ? table.width - lie.piece.x - lie.piece.w : lie.piece.x), y = from.y + lie.piece.y;
            const board = lie.table;
            for (const head of heads())
                verify(board.w * board.h > head.width * head.height, head.text);
            for (const what of ["columns", "rows", "block"])
                for (const way of ["less", "more"]) {
                    const button = called(what + " " + way);
                    verify(button, what + " " + way);
                    const at = button.mapToItem(null, 0, 0);
                    verify(at.x >= 0 && at.y >= 0 && at.x + button.width <= data.width && at.y + button.height <= data.height, told(button));
                    const apart = Math.max(at.x - x - lie.piece.w, x - at.x - button.width, at.y - y - lie.piece.h, y - at.y - button.height);
                    verify(apart >= Theme.mm(3) - 0.5, what + " " + way + ": " + apart / Theme.pxPerMm + " mm");
                }
        }
        Session.leftHanded = false;
    }
    /** What is made is named beside the steppers before one is touched; what has no place any more, at once after. */
    function test_whatIsMadeIsNamedBesideTheSteppers_data() {
        return screens;
    }
    function test_whatIsMadeIsNamedBesideTheSteppers(data) {
        resize(data);
        verify(!byName("fit-made"));
        verify(Stage.stitchBlocks());
        tryVerify(() => byName("fit-made"));
        verify(/blocks stitched \d/.test(printed(byName("fit-made"))), printed(byName("fit-made")));
        const made = byName("fit-made").mapToItem(null, 0, 0);
        verify(made.y >= 0 && made.y + byName("fit-made").height <= data.height + 1, "in sight without rolling");
        verify(!printed(null).includes("without a place"));
        press(called("columns less"));
        tryVerify(() => printed(null).includes("without a place"));
        verifySizes(data.tag + ", made");
        press(called("columns more"));
        tryVerify(() => !printed(null).includes("without a place"));
    }
    /** Stepping on, nothing moves away under the finger, whatever comes to be said. */
    function test_nothingMovesUnderTheFinger() {
        wait(1300); // what was pressed before has been let go of
        const more = called("columns more");
        const at = more.mapToItem(null, 0, 0);
        for (let i = 0; i < 6; ++i) {
            press(more);
            const now = more.mapToItem(null, 0, 0);
            compare(now.x, at.x);
            compare(now.y, at.y);
        }
    }
    /** Each group opens in its place, holds what can be pressed, and closes again. */
    function test_everyGroupOpens_data() {
        return screens;
    }
    function test_everyGroupOpens(data) {
        resize(data);
        verify(heads().length > 5, "groups: " + heads().length);
        for (let i = 0; i < heads().length; ++i) {
            const before = inTheChest().length;
            const name = heads()[i].text;
            heads()[i].press();
            tryVerify(() => inTheChest().length > before, 2000, name + " opened on nothing");
            wait(30);
            verifySizes(data.tag + ", " + name);
            heads()[i].press();
            tryVerify(() => inTheChest().length === before, 2000, name + " did not close");
        }
    }
    function test_theKeypad_data() {
        return screens;
    }
    function test_theKeypad(data) {
        resize(data);
        press(pressables().find(item => /^columns \d/.test(item.accessibleName)));
        tryVerify(() => called("Done"));
        wait(200);
        verifySizes(data.tag + ", keypad");
        press(called("7"));
        press(called("Done"));
        tryVerify(() => !called("Done"));
        compare(Stage.columns(), 7);
    }

    function flickOf(item: var): var {
        while (item && item.contentY === undefined)
            item = item.parent;
        return item;
    }
    /** Where something stands below the upper edge of the list. */
    function below(item: var): real {
        return item.mapToItem(flickOf(item), 0, 0).y;
    }
    /** What stands in the way leads to its field, pressed itself or from another station. */
    function test_whatStandsInTheWayLeadsToItsField_data() {
        return screens;
    }
    function test_whatStandsInTheWayLeadsToItsField(data) {
        resize(data);
        verify(Stage.forgetTheHoop());
        tryVerify(() => pressables().some(item => /hoop's sizes/.test(item.accessibleName)));
        const hoop = () => heads().find(item => item.text === "The hoop");
        const missing = pressables().find(item => /hoop's sizes/.test(item.accessibleName));
        verify(missing.enabled);
        missing.press();
        tryVerify(() => hoop().open);
        tryVerify(() => Math.abs(below(hoop())) < 2, 2000, "" + below(hoop()));
        for (const from of [1, 2]) {
            Session.station = from;
            wait(60);
            press(called("First mend what Fit says"));
            tryVerify(() => Session.station === 0);
            tryVerify(() => hoop()?.open ?? false);
            tryVerify(() => Math.abs(below(hoop())) < 2, 2000, "" + below(hoop()));
        }
    }
    /** What was opened stands with its head at the top, as far as the list goes. */
    function test_whatIsOpenedStandsAtTheTop_data() {
        return screens;
    }
    function test_whatIsOpenedStandsAtTheTop(data) {
        resize(data);
        const cloths = () => heads().find(item => item.text === "The cloths");
        cloths().press();
        tryVerify(() => cloths().open && Math.abs(below(cloths())) < 2);
        const cloth = pressables().filter(item => item.cloth === true)[2];
        const name = cloth.text;
        cloth.press();
        tryVerify(() => Math.abs(below(pressables().find(item => item.cloth === true && item.text === name))) < Theme.mm(3));
    }
    function layouts(): var {
        return pressables().filter(item => item.takesSays !== undefined);
    }
    function openLayouts() {
        const wanted = called("What would fit");
        verify(wanted);
        wanted.press();
        tryVerify(() => called("Take this layout"));
        wait(60);
        verify(layouts().length > 0, "no layouts");
    }
    /** A layout is looked at, left, looked at again and taken; one undo brings the piece back. */
    function test_aLayoutIsTaken_data() {
        return screens;
    }
    function test_aLayoutIsTaken(data) {
        resize(data);
        const columns = Stage.columns();
        const size = Stage.finishedAlong();
        openLayouts();
        verifySizes(data.tag + ", layouts");
        verify(!called("Take this layout").enabled);
        const other = layouts().find(row => row.drawing.columns !== columns) ?? scrolled();
        const across = other.drawing.columns;
        verify(across !== columns);
        mouseClick(other, other.width / 2, 8);
        tryVerify(() => FitModel.drawing.columns === across);
        compare(Stage.columns(), columns);
        press(called("Show the back"));
        tryVerify(() => called("Show the front"));
        press(called("Back"));
        tryVerify(() => !called("Take this layout"));
        compare(FitModel.drawing.columns, columns);

        openLayouts();
        WouldFit.choose(layouts().concat([other])[0].drawing.columns !== columns ? 0 : 1);
        const taken = FitModel.drawing.columns;
        wait(450); // a target that decides is deaf for a moment after it appeared
        press(called("Take this layout"));
        tryVerify(() => Stage.columns() === taken);
        tryVerify(() => !called("Take this layout"));
        Session.undo();
        compare(Stage.columns(), columns);
        compare(Stage.finishedAlong(), size);
    }
    /** The next row that is not yet laid out, brought into sight. */
    function scrolled(): var {
        const line = layouts()[0].GridView.view;
        line.positionViewAtIndex(1, GridView.Beginning);
        wait(60);
        return layouts().find(row => row.index === 1);
    }
    function test_whatIsWanted_data() {
        return screens;
    }
    function test_whatIsWanted(data) {
        resize(data);
        openLayouts();
        press(called("Change what is wanted"));
        tryVerify(() => called("Show what fits"));
        wait(60);
        verifySizes(data.tag + ", what is wanted");
        const said = WouldFit.wishSays;
        const table = all(item => item.toCome === true && item.lie !== undefined)[0];
        compare(table.marked, "");
        const wide = table.lie.piece.w / table.lie.table.w;
        press(called("bare at each end more"));
        tryVerify(() => WouldFit.wishSays !== said);
        compare(table.marked, "along", "the ends of the table are marked in its drawing");
        verify(table.lie.piece.w / table.lie.table.w < wide, "what is wanted is drawn as it is set");
        everyWishIsDrawn(["washing", "least", "most", "fine", "widen", "blocks"]);
        press(pressables().find(item => /^bare at each end \d/.test(item.accessibleName)));
        tryVerify(() => called("Done"));
        wait(250);
        press(called("9"));
        press(called("Done"));
        tryVerify(() => !called("Done"));
        verify(/\{9 in\} bare at the ends/.test(WouldFit.wishSays), WouldFit.wishSays);
        pressables().find(item => item.key === "hangs-along" && item.accessibleName === "hangs over").press();
        tryVerify(() => /\{9 in\} over at the ends/.test(WouldFit.wishSays));
        press(called("Show what fits"));
        tryVerify(() => called("Take this layout"));
    }
    /** Each choice has its pictures, each amount stands at the drawing; what is wanted of the blocks on a page of its own. */
    function everyWishIsDrawn(blocks: var) {
        const keys = () => all(item => item.visible && item.wish?.key !== undefined).map(item => item.wish.key)
                           .concat(all(item => item.visible && item.key?.startsWith?.("hangs")).map(item => item.key));
        const pictured = () => {
            for (const shown of all(item => item.visible && item.wish !== undefined && item.scenes !== undefined))
                compare(shown.scenes.length, shown.wish.choices.length, shown.wish.key);
        };
        const atTable = keys();
        pictured();
        press(called("The blocks"));
        tryVerify(() => called("The table"));
        wait(60);
        verifySizes("what is wanted of the blocks");
        compare(keys().sort(), blocks.slice().sort());
        pictured();
        compare(new Set(atTable.concat(keys())).size, WouldFit.wishes.length, atTable.join());
        press(called("The table"));
        tryVerify(() => called("The blocks"));
        wait(60);
    }
    /** A set of mats in place of one piece: asked for, looked at on the table, taken and taken back. */
    function test_aSetOfMats_data() {
        return screens;
    }
    function test_aSetOfMats(data) {
        resize(data);
        const size = Stage.finishedAlong();
        openLayouts();
        press(called("Change what is wanted"));
        tryVerify(() => called("Show what fits"));
        wait(60);
        pressables().find(item => item.accessibleName === "a set of mats").press();
        tryVerify(() => /^\d mats of \{18\} × \{12 in\}/.test(WouldFit.wishSays), 2000, WouldFit.wishSays);
        wait(60);
        verifySizes(data.tag + ", mats wanted");
        compare(all(item => item.toCome === true)[0].mats.length, WouldFit.wantedMats.length);
        verify(WouldFit.wantedMats.length > 1, "the mats lie on the table while they are wanted");
        everyWishIsDrawn(["washing", "least", "most", "fine", "widen", "blocks"]);
        verify(pressables().some(item => /^mats, \d at most \d/.test(item.accessibleName)), printed(null));
        verify(!pressables().some(item => /^bare at each end/.test(item.accessibleName)));
        press(called("Show what fits"));
        tryVerify(() => called("Take this layout"));
        wait(60);
        verifySizes(data.tag + ", layouts of mats");
        WouldFit.choose(0);
        const mats = FitModel.mats.length;
        verify(mats > 1);
        wait(450); // a target that decides is deaf for a moment after it appeared
        press(called("Take this layout"));
        tryVerify(() => !called("Take this layout"));
        compare(FitModel.mats.length, mats);
        verifySizes(data.tag + ", mats on the table");
        Session.undo();
        compare(FitModel.mats.length, 0);
        compare(Stage.finishedAlong(), size);
    }
    function test_layoutsForTheLeftHand() {
        Session.leftHanded = true;
        openLayouts();
        verifySizes("layouts, left hand");
        press(called("Change what is wanted"));
        tryVerify(() => called("Show what fits"));
        verifySizes("what is wanted, left hand");
        Session.leftHanded = false;
    }
    /** Going elsewhere while a layout is looked at leaves the piece as it was. */
    function test_goingElsewhereLeavesThePiece() {
        const size = Stage.finishedAlong();
        openLayouts();
        WouldFit.choose(1);
        tryVerify(() => WouldFit.chosen === 1);
        Session.station = 1;
        wait(60);
        compare(WouldFit.chosen, -1);
        compare(Stage.finishedAlong(), size);
        verify(!Session.canUndo);
    }
}
