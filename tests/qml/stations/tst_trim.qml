// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Theme

StepCase {
    name: "Trim"
    station: 4

    function test_isThatStation() {
        compare(Session.stationName(Session.station), "Trim");
        verify(printed(null).length > 40);
    }

    /** The trimming of the first block in hand. */
    function toTheBlock() {
        for (let row = 0; row < 40 && !StepModel.sided; ++row)
            StepModel.goTo(row);
        verify(StepModel.sided);
        settle();
    }
    function openMeasure() {
        press(byName("wrong"));
        tryVerify(() => byName("sheet-wrong"));
        // What has just come up is not pressed by the finger that called it.
        wait(450);
        press(called("They disagree: measure the block"));
        tryVerify(() => byName("sheet-measure"));
    }
    /** Each of the six is read just as it is shown, and kept. */
    function readAllSix() {
        for (let at = 0; at < 6; ++at)
            BlockMeasure.nudge(at, 0);
        tryVerify(() => called("Keep these readings"));
        press(called("Keep these readings"));
    }
    function places(items: var): var {
        return items.map(item => item.mapToItem(null, 0, 0)).map(at => Math.round(at.x) + "," + Math.round(at.y));
    }
    function test_theVerdictIsSeenAtOnceStandingUp_data() {
        return screens;
    }
    function test_theVerdictIsSeenAtOnceStandingUp(data) {
        resize(data);
        toTheBlock();
        verify(!byName("finding"));
        const before = places(targets.map(byName));
        openMeasure();
        readAllSix();
        tryVerify(() => byName("finding"));
        const finding = byName("finding");
        const said = all(child => child.text === finding.verdictShown, finding)[0];
        verify(said, "the verdict is not printed");
        // NUREG-0700: 22 minutes of arc; from 1 m that is 6.4 mm.
        verify(said.cap >= Theme.mm(1000 * Math.tan(22 / 60 * Math.PI / 180)), "" + said.cap / Theme.pxPerMm);
        compare(places(targets.map(byName)), before);
    }
    function test_aBlockNotToBeCutIsMeasuredByTheMainButton_data() {
        return screens;
    }
    function test_aBlockNotToBeCutIsMeasuredByTheMainButton(data) {
        resize(data);
        toTheBlock();
        openMeasure();
        const top = BlockMeasure.readings[0].figure.text, by = Session.units === "mm" ? 20 : 0.75;
        const off = parseFloat(/[\d.]+/.exec(top)[0]) - by;
        for (let at = 0; at < 4; ++at)
            compare(BlockMeasure.enter(at, "" + off), "");
        for (let at = 4; at < 6; ++at)
            compare(BlockMeasure.enter(at, "" + (Session.units === "mm" ? Math.round(off * Math.SQRT2) : Math.round(off * Math.SQRT2 * 16) / 16)), "");
        compare(BlockMeasure.kind, "remake");
        verify(BlockMeasure.save());
        press(called("Keep these readings"));
        settle();
        verify(TrimModel.way !== "cut");
        verify(!called("Side 1 cut, blade closed"));
        verify(byName("anyway"), "she may still judge for herself");
        press(byName("action"));
        tryVerify(() => byName("sheet-measure"));
        compare(TrimModel.side, 1);
    }
    function test_theCommonSizeThatIsAskedForIsTheMainButton_data() {
        return screens;
    }
    function test_theCommonSizeThatIsAskedForIsTheMainButton(data) {
        resize(data);
        toTheBlock();
        const mm = Session.units === "mm";
        const read = () => {
            const off = parseFloat(/[\d.]+/.exec(BlockMeasure.readings[0].figure.text)[0]) - (mm ? 3 : 0.125);
            for (let at = 0; at < 6; ++at)
                compare(BlockMeasure.enter(at, "" + (at < 4 ? off : mm ? Math.round(off * Math.SQRT2) : Math.round(off * Math.SQRT2 * 16) / 16)), "");
            verify(BlockMeasure.save());
        };
        BlockMeasure.begin();
        read();
        BlockMeasure.beginOther();
        read();
        compare(TrimModel.way, "common");
        compare(byName("action").text, "See the common size");
        press(byName("action"));
        tryVerify(() => byName("sheet-measure"));
        // What it means is in sight, and to take it is the one thing to do; the other way is a plain button.
        tryVerify(() => byName("done").text === "Take the common size");
        compare(byName("done").kind, "action");
        compare(byName("common").text, "Keep only the readings");
        compare(byName("common").kind, "outline");
        const band = byName("measured"), place = placeOf(band);
        verify(band.remedy.startsWith("Common size {"), data.tag + ": " + band.remedy);
        verify(place.y >= 0 && place.y + place.height < data.height, data.tag + ": " + place);
        compare(TrimModel.way, "common");
        press(byName("done"));
        tryVerify(() => !byName("sheet-measure"));
        compare(TrimModel.way, "cut");
        compare(TrimModel.side, 1);
    }
    function test_theBlockIsMeasuredFromThePageItself_data() {
        return screens;
    }
    function test_theBlockIsMeasuredFromThePageItself(data) {
        resize(data);
        toTheBlock();
        press(byName("measure"));
        tryVerify(() => byName("sheet-measure"));
        verify(!byName("measure"), "the button lies under the sheet");
        readAllSix();
        tryVerify(() => byName("finding"));
        verify(byName("measure"), "measured again from there");
        verify(placeOf(byName("measure")).y >= placeOf(byName("finding")).y + byName("finding").height, "" + data.tag);
    }
    function test_whatIsSaidOfALineStandsAtItAndClear_data() {
        return screens;
    }
    function test_whatIsSaidOfALineStandsAtItAndClear(data) {
        resize(data);
        toTheBlock();
        for (const left of [false, true]) {
            Session.leftHanded = left;
            for (; TrimModel.side < 3; wait(450))
                TrimModel.cut();
            settle();
            const button = placeOf(byName("measure"));
            for (const name of ["reading-above", "reading-below"]) {
                const reading = byName(name), place = placeOf(reading);
                verify(place.x >= button.x + button.width || place.x + place.width <= button.x || place.y + place.height <= button.y,
                       data.tag + ", " + name + ": " + place + " on " + button);
                verify(place.x >= 0 && place.x + place.width <= data.width, name);
            }
            // Right beside the line on the stitches, drawn down to them: never under another line.
            const below = byName("reading-below"), own = placeOf(below), drawing = placeOf(below.parent);
            const line = left ? drawing.x + drawing.width - below.drawnAt : drawing.x + below.drawnAt;
            const off = left ? own.x - line : line - own.x - own.width;
            verify(off > 0 && off < Theme.mm(3), data.tag + ": " + off);
        }
        Session.leftHanded = false;
    }
    function test_nothingMovesUnderTheThumbWhenReadingsDisagree() {
        toTheBlock();
        openMeasure();
        const keys = () => all(item => item.sign !== undefined && item.stepped !== undefined, byName("sheet-measure"));
        const before = places(keys());
        compare(before.length, 2);
        const size = /[\d.]+/.exec(BlockMeasure.readings[0].figure.text)[0];
        for (let at = 0; at < 6; ++at)
            compare(BlockMeasure.enter(at, BlockMeasure.readings[at].figure.text), "");
        compare(BlockMeasure.enter(0, "" + (parseFloat(size) + (Session.units === "mm" ? 20 : 1))), "");
        compare(BlockMeasure.kind, "measure-again");
        wait(120);
        compare(places(keys()), before);
    }
    function tapes(): var {
        return BlockMeasure.readings.map(reading => pressables().filter(item => item.inHand !== undefined && item.reading.says === reading.says)[0]);
    }
    function test_theTapeTouchedOnTheBlockIsTheOneInHand_data() {
        return screens;
    }
    function test_theTapeTouchedOnTheBlockIsTheOneInHand(data) {
        resize(data);
        toTheBlock();
        openMeasure();
        compare(tapes().filter(tape => !tape).length, 0);
        compare(tapes().filter(tape => tape.unread).length, 6);
        for (let at = 5; at >= 0; --at) {
            press(tapes()[at]);
            tryVerify(() => tapes()[at].inHand && called(BlockMeasure.readings[at].says + " more") !== null, 5000, data.tag + ", " + at);
        }
        const right = BlockMeasure.readings[1].figure.text;
        press(tapes()[1]);
        tryVerify(() => called("right less"));
        press(called("right less"));
        tryVerify(() => BlockMeasure.readings[1].figure.text !== right);
        verify(!tapes()[1].unread && tapes()[2].unread);
        compare(tapes().filter(tape => tape.doubted).length, 0);
    }
    function test_theRestIsKeptOnlyAsWhatIsSaidOfIt() {
        toTheBlock();
        openMeasure();
        // Nothing was read: pressed now it claims nothing, and keeps nothing.
        compare(byName("done").text, "Not measured: reckon with the plan");
        const steps = Session.canUndo;
        press(byName("done"));
        tryVerify(() => !byName("sheet-measure"));
        verify(!BlockMeasure.measured && Session.canUndo === steps);
        wait(450);
        openMeasure();
        // One is read as it stands: the next comes in hand, and the button speaks of the rest.
        press(called("Read: it is as shown"));
        tryVerify(() => called("right more"));
        verify(BlockMeasure.readings[0].taken && !BlockMeasure.readings[1].taken);
        compare(byName("done").text, "The rest is as shown");
        for (const next of ["bottom", "left"]) {
            wait(450);
            press(called("Read: it is as shown"));
            tryVerify(() => called(next + " more"));
        }
        for (let at = 3; at < 6; ++at)
            BlockMeasure.nudge(at, 0);
        tryVerify(() => byName("done").text === "Keep these readings");
        compare(BlockMeasure.asShownSays, "");
        wait(450);
        press(called("Next: diagonal from top left"));
        tryVerify(() => called("diagonal from top left more"));
    }
    function test_readingsThatDisagreeAreReadAgainByTheMainButton() {
        toTheBlock();
        openMeasure();
        for (let at = 0; at < 6; ++at)
            BlockMeasure.nudge(at, 0);
        BlockMeasure.nudge(3, 12);
        compare(BlockMeasure.toRead, 3);
        tryVerify(() => byName("done").text === "Read again: left");
        compare(byName("done").kind, "action");
        compare(byName("common").text, "Keep these readings");
        compare(byName("common").kind, "outline");
        wait(450);
        press(byName("done"));
        tryVerify(() => tapes()[3].inHand);
        verify(!BlockMeasure.readings[3].figure.text.includes("?") && BlockMeasure.kind === "measure-again", "nothing was kept");
        tryVerify(() => called("left more") !== null);
    }
    function test_theLikeliestMisreadIsTakenInHandAndMarked() {
        toTheBlock();
        BlockMeasure.begin();
        for (let at = 0; at < 6; ++at)
            BlockMeasure.nudge(at, 0);
        BlockMeasure.nudge(3, 12);
        compare(BlockMeasure.kind, "measure-again");
        verify(BlockMeasure.save());
        openMeasure();
        const left = tapes()[3];
        verify(left.inHand && left.doubted);
        compare(left.accessibleDescription, "measure this one again first");
        compare(tapes().filter(tape => tape.doubted).length, 1);
    }
}
