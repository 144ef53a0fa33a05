// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Matside.Core
import Matside.Stage
import "qrc:/qt/qml/Matside/Drawings/vignettes.js" as Vignettes

/** Whatever act the program can name is drawn, and nothing is drawn that no one names. */
TestCase {
    id: test
    name: "Vignettes"

    function initTestCase() {
        verify(Stage.begin(6, false));
    }
    /** With those of the finished piece, which has more of them than the paper. */
    function named(): var {
        return Stage.vignettes().concat(EdgeModel.careActs.map(act => act.draws));
    }
    function test_everyActIsDrawn() {
        const named = test.named();
        verify(named.length > 90, named.length + " acts are named");
        compare(named.filter(code => !Vignettes.draws(code)), [], "named, not drawn");
    }
    /** So a picture kept for an act that is told no longer, or told only in a way not gathered here, is found. */
    function test_everyPictureIsOfAnAct() {
        const named = test.named().concat(Stage.stepsDone(), ["cut-done", "trim-done"]);
        compare(Object.keys(Vignettes.acts).filter(code => !named.includes(code)), [], "drawn, not named");
    }
    /** No scale drawing is made of these: a step without one needs its own. */
    function test_stepsWithoutAScaleDrawing() {
        const toScale = /^(straighten|cut-|harvest-|mark-strip|stitch-|trim-block|rough-apart|test-join|join-short|join-row|join-long-row|square-piece|sew-frame|sew-binding|last-look)/;
        const others = Stage.stepsDone().filter(step => !toScale.test(step));
        verify(others.includes("press-block"), others.join(" "));
        compare(others.filter(step => !Vignettes.draws(step)), [], "neither to scale nor as a vignette");
    }
}
