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
}
