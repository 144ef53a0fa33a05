// SPDX-License-Identifier: MIT
import QtQuick
import Matside.Core
import Matside.Stage
import Matside.Theme

StepCase {
    id: test
    name: "Cut"
    station: 2

    /** The figure without the word of its tab. */
    function told(): string {
        return printed(byName("figure")).replace(/ sum$/, "");
    }
    function test_theNextFigureFollows() {
        for (let cut = 0; cut < 4; ++cut) {
            tryVerify(() => byName("figure") ? told() === asPrinted(Stage.figureDue(2)) : Stage.figureDue(2) === "");
            doOnce();
        }
        verify(byName("figure"), "no figure after four cuts");
    }
    function test_theWorkingOpensAndCloses() {
        while (!byName("figure")) {
            doOnce();
        }
        const shown = told();
        press(byName("figure"));
        tryVerify(() => byName("sheet-working"));
        verify(printed(byName("sheet-working")).includes(shown), printed(byName("sheet-working")) + " says " + shown);
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", the working");
        }
        press(called("Back to the work"));
        tryVerify(() => !byName("sheet-working"));
    }
    function test_quickTapsTickOneCut() {
        Theme.pause = Theme.slip;
        wait(Theme.slip + 50);
        const done = Stage.done(2);
        for (let tap = 0; tap < 4; ++tap) {
            mouseClick(byName("action"));
            wait(100);
        }
        settle();
        compare(Stage.done(2), done + 1);
        Session.undo();
        compare(Stage.done(2), done);
    }
    /** After a restart neither answer is the easier to hit, both say what follows, and a no counts nothing. */
    function test_finishedOrNotWeighTheSame() {
        doOnce();
        const done = Stage.done(2);
        Stage.startAgain();
        tryVerify(() => byName("sheet-resume"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", after a restart");
            const yes = byName("finished"), no = byName("unfinished");
            compare([yes.kind, yes.width, yes.height, yes.cap, yes.ground.toString()],
                    [no.kind, no.width, no.height, no.cap, no.ground.toString()], screen.tag);
        }
        verify(called("Finished: count it as done") && called("Not finished: still to do"));
        wait(450);
        press(byName("unfinished"));
        tryVerify(() => !byName("sheet-resume"));
        compare(Stage.done(2), done);
        Stage.startAgain();
        tryVerify(() => byName("sheet-resume"));
        wait(450);
        press(byName("finished"));
        tryVerify(() => !byName("sheet-resume"));
        compare(Stage.done(2), done + 1);
    }
    function test_theTrialsStripSaysWhatItIsFor() {
        verify(Stage.begin(2, true));
        for (let step = 0; step < 4 && StepModel.doing !== "cut-strip"; ++step)
            StepModel.next();
        tryVerify(() => StepModel.trialSays !== "");
        for (const screen of [screens[0], screens[2]]) {
            resize(screen);
            verifySizes(screen.tag + ", the trial's strip");
            verify(byName("trial-says").text.includes("one more than"), screen.tag);
        }
    }
    function test_aTrialCanBePutOff() {
        verify(Stage.begin(2, true));
        tryVerify(() => called("Trial later"));
        for (const screen of screens) {
            resize(screen);
            verifySizes(screen.tag + ", on the trial");
            verifyTrialTold(screen);
        }
        press(called("Trial later"));
        tryVerify(() => !called("Trial later"));
        verify(Session.canUndo);
        verify(!byName("trial-says"));
    }
}
