// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage

StationCase {
    id: test
    name: "Shelf"
    view: "shelf"

    function test_aNewPieceOpensAtFit() {
        const count = Shelf.count;
        press(called("New, in inches"));
        compare(Shelf.count, count + 1);
        tryCompare(Session, "view", "station");
        compare(Session.station, 0);
        compare(Stage.columns(), 3); // nine blocks to begin with
    }
    /** A piece in millimetres is offered no copy in millimetres. */
    function test_onlyTheOtherSystemIsOffered() {
        for (const [words, offered] of [["New, in inches", true], ["New, in mm", false]]) {
            press(called(words));
            tryCompare(Session, "view", "station");
            Session.view = "shelf";
            tryVerify(() => called("More") !== null);
            settle();
            press(pressables().find(item => item.accessibleName === "More")); // the newest lies first
            tryVerify(() => called("Share as one file"));
            settle();
            compare(called("A copy in millimetres") !== null, offered, words);
            press(called("Less"));
            tryVerify(() => !called("Share as one file"));
        }
    }
    function test_aPieceGoesOutAndComesIn() {
        press(called("New, in inches"));
        Session.view = "shelf";
        tryVerify(() => pressables().find(item => item.accessibleName === "More") !== undefined);
        press(pressables().find(item => item.accessibleName === "More"));
        tryVerify(() => called("Share as one file"));
        settle(); // the row lays its buttons out a frame later
        press(called("Share as one file"));
        tryCompare(Sharing, "busy", false, 20000);
        verify(!Sharing.refused, Sharing.said);
        const written = Sharing.said.match(/(New piece( \d+)?)\.matside/); // numbered beside others of that name
        verify(written, Sharing.said);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", shared");
        }
        resize(screens[0]);
        const count = Shelf.count;
        press(called("Open or back up"));
        tryVerify(() => called(written[1]));
        settle();
        press(called(written[1]));
        tryCompare(Sharing, "ready", true, 20000);
        compare(Sharing.inside[0], "3 by 3 blocks");
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", looked into");
        }
        resize(screens[0]);
        verify(Sharing.merging.possible && Sharing.merging.nothingNew); // it lies here already
        verify(!called("Put together").enabled);
        press(called("As a project of its own"));
        tryCompare(Session, "view", "station", 20000);
        Session.view = "shelf";
        tryVerify(() => Shelf.count === count + 1);
    }
    /** Brings a pressable of the sheet into its middle: the list is longer than the screen. */
    function brought(name: string): var {
        const item = called(name);
        let sheet = item?.parent ?? null;
        while (sheet && sheet.contentY === undefined)
            sheet = sheet.parent;
        verify(sheet, name);
        const at = item.mapToItem(sheet.contentItem, 0, 0).y - sheet.height / 2;
        sheet.contentY = Math.max(0, Math.min(at, sheet.contentHeight - sheet.height));
        settle();
        return called(name);
    }
    function test_twoTabletsArePutTogether() {
        verify(Stage.workOnTwoTablets());
        const count = Shelf.count;
        press(called("Open or back up"));
        tryVerify(() => called("Other tablet"));
        settle();
        press(called("Other tablet"));
        tryCompare(Sharing.merging, "count", 2, 20000);
        verify(Sharing.merging.possible && !Sharing.merging.ready);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", two tablets");
        }
        resize(screens[0]);
        verify(printed().includes("Runner of two"), printed());
        verify(!called("Put together").enabled);
        press(brought("The other tablet: 5/8 in"));
        press(brought("Both together: 4")); // 1 before, 1 here and 2 there
        verify(Sharing.merging.ready);
        press(called("Put together"));
        tryCompare(Session, "view", "station", 20000);
        compare(Stage.seam(), "5/8 in");
        compare(Session.projectName, "Runner of two");
        Session.undo();
        compare(Stage.seam(), "3/8 in");
        Session.view = "shelf";
        tryVerify(() => Shelf.count === count); // no second one
    }
    function test_everythingIsBackedUp() {
        press(called("Open or back up"));
        tryVerify(() => called("Back up everything"));
        settle();
        press(called("Back up everything"));
        tryCompare(Backups, "busy", false, 20000);
        verify(!Backups.refused, Backups.said);
        verify(Backups.said.indexOf("Backup.matside-backup") > 0, Backups.said);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", backed up");
        }
        resize(screens[0]);
        press(called("Back to the shelf"));
        press(called("Open or back up"));
        tryVerify(() => called("Backup"));
        settle();
        press(called("Backup"));
        tryCompare(Backups, "busy", false, 20000);
        verify(!Backups.ready); // there are projects here
        verify(Backups.refusal !== "");
        verify(Backups.inside[0].endsWith("projects") || Backups.inside[0] === "one project");
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", a backup looked into");
        }
        resize(screens[0]);
        keyClick(Qt.Key_Escape); // the sheet does not lie over what comes next
        tryVerify(() => !called("Back up everything") && called("More"));
    }
    function test_whatCanBeDoneWithAPiece() {
        press(pressables().find(item => item.accessibleName === "More"));
        tryVerify(() => called("Less"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", opened out");
        }
        resize(screens[0]);
        const count = Shelf.count;
        press(called("Make again in other cloth"));
        tryVerify(() => Shelf.count === count + 1);
        Session.undo();
        compare(Shelf.count, count);
    }
    function pieces(): var {
        return all(item => item.toScale !== undefined && item.drop !== undefined);
    }
    function test_piecesHangInProportion() {
        Shelf.createProject("Long", "inch");
        FitModel.enter("/blocks/columns", "6");
        Session.view = "shelf";
        Shelf.createProject("Short", "inch");
        Session.view = "shelf";
        resize({ width: 1280, height: 1600 });
        tryVerify(() => pieces().length >= 2);
        const hung = pieces();
        for (const piece of hung) {
            compare(piece.toScale, hung[0].toScale);
            fuzzyCompare(piece.width - 2 * piece.air, piece.view.finishedAlongMm * piece.toScale, 1);
            fuzzyCompare(piece.height - piece.drop - piece.air, piece.view.finishedAcrossMm * piece.toScale, 1);
        }
        verify(Math.abs(hung[1].view.finishedAlongMm / hung[0].view.finishedAlongMm - 2) < 0.2); // six blocks beside three
        resize(screens[0]);
    }
    function test_howFarAPieceIsIsSaid() {
        Shelf.createProject("Not begun", "inch");
        Session.view = "shelf";
        tryVerify(() => pressables().find(item => item.accessibleName.startsWith("Not begun.")));
        compare(pressables().find(item => item.accessibleName.startsWith("Not begun.")).accessibleDescription, "0 of 9 blocks stitched");
        verify(printed().includes("0 of 9 blocks stitched"), printed());
    }
    function test_whatWasPutAwayIsOfferedOnlyWhenThereIsAny() {
        while (Shelf.putAwayCount > 0) // of other tests
            Session.undo();
        verify(!called("Show what is put away"));
        const count = Shelf.count;
        press(pressables().find(item => item.accessibleName === "More"));
        tryVerify(() => called("Put away"));
        settle();
        press(called("Put away"));
        tryCompare(Shelf, "count", count - 1);
        settle();
        press(called("Show what is put away"));
        tryCompare(Shelf, "count", count);
        settle();
        press(called("Hide what is put away"));
        tryCompare(Shelf, "count", count - 1);
        Session.undo();
        tryCompare(Shelf, "putAwayCount", 0);
        settle();
        verify(!called("Show what is put away") && !called("Hide what is put away"));
    }
    /** All were put away: their number is said, the way to them stands large, and they hang folded. */
    function test_whatWasPutAwayIsNotLost() {
        const hung = Shelf.count;
        for (let i = 0; i < hung; ++i)
            Shelf.putAway(Shelf.data(Shelf.index(0, 0), idRole));
        tryCompare(Shelf, "count", 0);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", all put away");
        }
        resize(screens[0]);
        verify(printed().includes("Pieces put away: " + hung), printed());
        verify(!printed().includes("The shelf is empty."));
        compare(pressables().filter(item => item.accessibleName === "Show what is put away").length, 1);
        press(called("Show what is put away"));
        tryCompare(Shelf, "count", hung);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", put away shown");
        }
        resize(screens[0]);
        verify(pieces().length > 0 && pieces().every(piece => piece.folded));
        verify(printed().includes("Put away for now"));
        const back = pressables().find(item => item.accessibleName.endsWith(". Bring back"));
        press(back);
        tryCompare(Shelf, "putAwayCount", hung - 1);
        compare(Session.view, "shelf");
        while (Shelf.putAwayCount > 0)
            Session.undo();
        tryVerify(() => !called("Hide what is put away"));
    }
    readonly property int idRole: 257 // Qt::UserRole + 1
}
