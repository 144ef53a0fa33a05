// SPDX-License-Identifier: MIT
//
// Something's wrong at Trim, Join and Edge: what can be saved, what is made again, and that it adds up. The
// limits are the trade notes' (F7, F10, F24, F25): common practice, no published source.
#include "bench/account.h"
#include "mishaphelp.h"
#include "plan/onstrip.h"

using namespace matside;
using benchhelp::Bench;
using benchhelp::says;
using planhelp::in;

namespace {

/// Nine blocks trimmed, all strips cut, `joined` short joins sewn.
Bench trimmed(int joined = 0, std::int64_t spare = 0)
{
    Project project = benchhelp::nineBlocksOfCloth();
    project.blocks.spare = spare;
    Bench bench(project);
    const int blocks = static_cast<int>(9 + spare);
    for (const char *id : {"stitch-block", "press-block", "rough-apart", "trim-block"})
        bench.done(id, blocks);
    for (const Step &step : std::vector<Step>(bench.all))
        if (benchhelp::cutsSashing(step) || step.does == Does::CutBinding)
            bench.done(step.id, static_cast<int>(step.count));
    bench.done("join-short", joined);
    return bench;
}

const Step &firstThat(const Bench &bench, Does does)
{
    for (const Step &step : bench.all)
        if (step.does == does && !step.trial)
            return step;
    qFatal("no such step");
}

Length lengthAt(const Answered &answer, std::string_view code, std::size_t arg = 0)
{
    for (const Said &said : answer.says)
        if (said.code == code)
            return std::get<Told>(said.args.at(arg)).length;
    return Length::overflow();
}

} // namespace

class MishapsSewn : public QObject {
    Q_OBJECT
private slots:
    void everyStationOffersWhatCanHappenThere();
    void aCutIsJudgedByWhatIsLeft_data();
    void aCutIsJudgedByWhatIsLeft();
    void aCutAtTheEdgeIsCoveredOrTrimmedAway();
    void aBlockOffItsSize_data();
    void aBlockOffItsSize();
    void aRowIsEasedOrItsSeamsAreNamed();
    void aMissedFoldIsFoldedAsWideAsHolds();
    void aLostBlockIsStitchedAgainWithItsCloth();
    void aSpareStandsInForALostBlock();
    void aSpoiledJoinTakesItsStripsWithIt();
    void aSpoiledBindingIsCutAgain();
    void lossesAddUpOnRandomWork();
};

void MishapsSewn::everyStationOffersWhatCanHappenThere()
{
    const Bench bench = trimmed();
    const auto offers = [&](Does does, Mishap mishap) {
        const auto all = mishapsAt(firstThat(bench, does));
        return std::find(all.begin(), all.end(), mishap) != all.end();
    };
    for (const Does does : {Does::RoughApart, Does::TrimBlock, Does::JoinShort, Does::JoinRow,
                            Does::JoinLongRow, Does::SquarePiece})
        QVERIFY(offers(does, Mishap::CutInto));
    for (const Does does : {Does::TrimBlock, Does::JoinRow, Does::SquarePiece})
        QVERIFY(offers(does, Mishap::SizeOff));
    for (const Does does : {Does::JoinShort, Does::JoinRow, Does::JoinLongRow, Does::SquarePiece,
                            Does::SewBinding, Does::LastLook})
        QVERIFY(offers(does, Mishap::SewnWrong) && offers(does, Mishap::FoldMissed));
    for (const Does does :
         {Does::RoughApart, Does::TrimBlock, Does::JoinShort, Does::JoinRow, Does::JoinLongRow})
        QVERIFY(offers(does, Mishap::BlockGone));
    for (const Step &step : bench.all)
        for (const Mishap mishap : mishapsAt(step)) {
            const bool measured = asksOf(mishap) != Asks::Nothing;
            const Answered answer = answerTo(bench.project, bench.plan, bench.all, step, mishap,
                                             measured ? std::optional(in(0, 1, 4)) : std::nullopt);
            QVERIFY2(!answer.says.empty(), step.id.c_str());
            QVERIFY(answer.changed || answer.next == bench.project);
        }
}

void MishapsSewn::aCutIsJudgedByWhatIsLeft_data()
{
    QTest::addColumn<Length>("left");
    QTest::addColumn<QByteArray>("code");
    QTest::addColumn<bool>("remake");
    // Seam 1/2: from 3/8 up it does, under 1/4 the block is made again (F25).
    QTest::newRow("a shaving") << in(0, 7, 16) << QByteArray("allowance-will-do") << false;
    QTest::newRow("three eighths") << in(0, 3, 8) << QByteArray("allowance-will-do") << false;
    QTest::newRow("five sixteenths") << in(0, 5, 16) << QByteArray("patch-allowance") << true;
    QTest::newRow("a quarter") << in(0, 1, 4) << QByteArray("patch-allowance") << true;
    QTest::newRow("three sixteenths") << in(0, 3, 16) << QByteArray("too-little-left") << true;
    QTest::newRow("through the line") << Length() << QByteArray("too-little-left") << true;
}

void MishapsSewn::aCutIsJudgedByWhatIsLeft()
{
    QFETCH(Length, left);
    QFETCH(QByteArray, code);
    QFETCH(bool, remake);
    const Bench bench = trimmed();
    for (const Does does : {Does::TrimBlock, Does::JoinShort}) {
        const Answered answer =
            answerTo(bench.project, bench.plan, bench.all, firstThat(bench, does), Mishap::CutInto, left);
        QVERIFY2(says(answer, code.constData()), answer.says.front().code.c_str());
        QCOMPARE(answer.mayRemake, remake);
        QVERIFY(!answer.changed);
        // At the join any block may be the one.
        QCOMPARE(answer.asksBlock, remake && does == Does::JoinShort);
        QCOMPARE(says(answer, "or-outer-edge"), code == "patch-allowance");
    }
}

void MishapsSewn::aCutAtTheEdgeIsCoveredOrTrimmedAway()
{
    const Bench bench = trimmed();
    const Step &square = firstThat(bench, Does::SquarePiece);
    const auto cut = [&](Length left) {
        return answerTo(bench.project, bench.plan, bench.all, square, Mishap::CutInto, left);
    };
    // Outside and binding seam 1/2.
    QVERIFY(says(cut(in(0, 5, 16)), "edge-covered"));
    QCOMPARE(lengthAt(cut(in(0, 5, 16)), "edge-covered"), in(0, 3, 16));
    QVERIFY(says(cut(in(0, 1, 4)), "edge-covered"));
    QVERIFY(says(cut(in(0, 1, 8)), "patch-edge"));
    Project narrow = bench.project;
    narrow.edge.seam = in(0, 1, 4); // with a margin of plain cloth inside
    const Bench other(narrow);
    const Answered trim = answerTo(other.project, other.plan, other.all, firstThat(other, Does::SquarePiece),
                                   Mishap::CutInto, in(0, 5, 16));
    QVERIFY(says(trim, "edge-narrower"));
    QCOMPARE(lengthAt(trim, "edge-narrower", 1), in(0, 3, 16));
}

void MishapsSewn::aBlockOffItsSize_data()
{
    QTest::addColumn<Length>("measures");
    QTest::addColumn<QByteArray>("code");
    QTest::newRow("as planned") << in(7) << QByteArray("size-within");
    QTest::newRow("1/32 over") << in(7, 1, 32) << QByteArray("size-within");
    QTest::newRow("1/8 over") << in(7, 1, 8) << QByteArray("trim-again");
    QTest::newRow("1/16 under") << in(6, 15, 16) << QByteArray("seam-from-line");
    QTest::newRow("1/8 under") << in(6, 7, 8) << QByteArray("seam-from-line");
    QTest::newRow("1/4 under") << in(6, 3, 4) << QByteArray("far-under");
}

void MishapsSewn::aBlockOffItsSize()
{
    QFETCH(Length, measures);
    QFETCH(QByteArray, code);
    const Bench bench = trimmed();
    const Answered answer = answerTo(bench.project, bench.plan, bench.all, firstThat(bench, Does::TrimBlock),
                                     Mishap::SizeOff, measures);
    QVERIFY2(says(answer, code.constData()), answer.says.front().code.c_str());
    QCOMPARE(answer.mayRemake, code == "far-under");
    QCOMPARE(lengthAt(answer, code.constData()), (measures - in(7)).magnitude());
}

// F24 | independent derivation | a row of three laid out again with every seam deeper: it is the same row
void MishapsSewn::aRowIsEasedOrItsSeamsAreNamed()
{
    const Bench bench = trimmed(6);
    const Step &row = firstThat(bench, Does::JoinRow);
    for (int n = -16; n <= 16; ++n) {
        const Length each = in(0, 1, 128) * n; // deeper by so much
        const Length strip = in(2) - (in(0, 1, 2) + each) * 2;
        Length whole; // three outlines with what is left of their allowances, two strips as they are seen
        for (int i = 0; i < 3; ++i)
            whole += in(7) - (in(0, 1, 2) + each) * (i == 1 ? 2 : 1);
        whole += strip * 2;
        const Answered answer = answerTo(bench.project, bench.plan, bench.all, row, Mishap::SizeOff, whole);
        const Length off = (whole - in(21)).magnitude();
        if (off <= in(0, 1, 16)) {
            QVERIFY(says(answer, "size-within"));
        } else if (off <= in(0, 3, 16)) {
            QVERIFY(says(answer, "ease-row"));
        } else {
            const char *code = n > 0 ? "seams-too-deep" : "seams-too-scant";
            QVERIFY2(says(answer, code), answer.says.front().code.c_str());
            QCOMPARE(lengthAt(answer, code), each.magnitude());
        }
    }
}

void MishapsSewn::aMissedFoldIsFoldedAsWideAsHolds()
{
    Bench bench = trimmed(1);
    const Answered plain = bench.answer("join-short", Mishap::FoldMissed);
    QVERIFY(!plain.changed && !plain.mayRemake);
    // Trade notes, F10: fold 5/16, which catches 5/32.
    QCOMPARE(lengthAt(plain, "fold-less"), in(0, 5, 16));
    QCOMPARE(lengthAt(plain, "fold-less", 1), in(0, 5, 32));
    // The seam lines lie farther apart than planned: the least fold that can be pressed.
    Project wide = bench.project;
    wide.made.testJoin = TestJoin{in(0, 1, 2), in(0, 1, 32), in(1, 1, 16), {}, {}};
    wide.sashing.cutBack = in(2);
    const Bench farther(wide);
    const Answered least = answerTo(farther.project, farther.plan, farther.all,
                                    firstThat(farther, Does::JoinShort), Mishap::FoldMissed);
    QCOMPARE(lengthAt(least, "fold-less"), in(0, 1, 4));
    // A doubled strip has its fold ready made: it is closed by hand.
    Project doubled = bench.project;
    doubled.fold.doubled = true;
    const Bench twice(doubled);
    const Answered hand =
        answerTo(twice.project, twice.plan, twice.all, firstThat(twice, Does::JoinShort), Mishap::FoldMissed);
    QVERIFY(!says(hand, "fold-less") && says(hand, "fold-by-hand"));
    // At the binding, and where there is no back strip.
    QVERIFY(says(bench.answer("sew-binding", Mishap::FoldMissed), "binding-missed"));
    QVERIFY(!says(bench.answer("sew-binding", Mishap::FoldMissed), "fold-by-hand"));
}

void MishapsSewn::aLostBlockIsStitchedAgainWithItsCloth()
{
    Bench bench = trimmed(2);
    const Answered answer = bench.answer("join-short", Mishap::BlockGone, {}, 0);
    QVERIFY(says(answer, "no-such-block") && !answer.changed); // she has not said which
    const Answered gone = answerTo(bench.project, bench.plan, bench.all, bench.step("join-short"),
                                   Mishap::BlockGone, {}, 0, "B2");
    QVERIFY(gone.changed);
    QVERIFY(says(gone, "block-again") && says(gone, "unpick-its-joins"));
    bench.take(gone.next);
    QVERIFY(!bench.project.made.goodBlock("B2"));
    QCOMPARE(blocksToStitch(bench.project), std::vector<std::string>{"B2"});
    for (const char *id : {"stitch-block", "press-block", "rough-apart", "trim-block"})
        QCOMPARE(bench.step(id).done, 8);
    QCOMPARE(bench.project.made.events.back().event, std::string("block-gone"));
    // It passes every step again, and then nothing is left to do before the join.
    for (const char *id : {"stitch-block", "press-block", "rough-apart", "trim-block"})
        bench.done(id, 1);
    QCOMPARE(bench.step("trim-block").done, 9);
    QVERIFY(bench.project.made.goodBlock("B2"));
    // Three strips hold twelve blocks: the fourth to be lost needs a new strip, of all three cloths.
    for (const char *name : {"A1", "A2"})
        bench.take(answerTo(bench.project, bench.plan, bench.all, bench.step("join-short"), Mishap::BlockGone,
                            {}, 0, name)
                       .next);
    const Answered more = answerTo(bench.project, bench.plan, bench.all, bench.step("join-short"),
                                   Mishap::BlockGone, {}, 0, "A3");
    QVERIFY(says(more, "more-strips"));
    QCOMPARE(std::count_if(more.says.begin(), more.says.end(),
                           [](const Said &said) { return said.code == "needs-cloth"; }),
             3);
}

void MishapsSewn::aSpareStandsInForALostBlock()
{
    Bench bench = trimmed(0, 1);
    const Answered gone = answerTo(bench.project, bench.plan, bench.all, firstThat(bench, Does::JoinShort),
                                   Mishap::BlockGone, {}, 0, "A1");
    QVERIFY(says(gone, "spare-takes-it") && says(gone, "nothing-wrong-with-the-rest"));
    bench.take(gone.next);
    QCOMPARE(blockAt(bench.project, "A1")->block, std::string("+1"));
    QVERIFY(blocksToStitch(bench.project).empty());
    for (const char *id : {"stitch-block", "press-block", "rough-apart", "trim-block"})
        QCOMPARE(bench.step(id).done, 10);
}

void MishapsSewn::aSpoiledJoinTakesItsStripsWithIt()
{
    Bench bench = trimmed(2);
    std::int64_t shorts = 0;
    for (const Step &step : bench.all)
        if (step.does == Does::CutShort && !step.trial)
            shorts += step.done;
    QCOMPARE(shorts, 12);
    const Answered wrong = bench.answer("join-short", Mishap::SewnWrong);
    QVERIFY(says(wrong, "unpick-seam") && says(wrong, "strip-may-serve") && wrong.mayRemake &&
            !wrong.changed);
    QCOMPARE(lengthAt(wrong, "sew-again-at"), in(0, 1, 2));
    const Answered again = bench.answer("join-short", Mishap::Spoiled);
    // One strip for either face.
    QCOMPARE(std::count_if(again.says.begin(), again.says.end(),
                           [](const Said &said) { return said.code == "make-again"; }),
             2);
    QCOMPARE(lengthAt(again, "strip-again", 1), in(2));
    QCOMPARE(lengthAt(again, "strip-again", 2), in(7, 1, 2));
    bench.take(again.next);
    shorts = 0;
    for (const Step &step : bench.all)
        if (step.does == Does::CutShort && !step.trial)
            shorts += step.count - step.done;
    QCOMPARE(shorts, 2);
    QCOMPARE(bench.step("join-short").done, 2); // those before it stand
}

void MishapsSewn::aSpoiledBindingIsCutAgain()
{
    Bench bench = trimmed(6);
    const Answered again = bench.answer("sew-binding", Mishap::Spoiled);
    bench.take(again.next);
    const Step &cut = firstThat(bench, Does::CutBinding);
    QCOMPARE(cut.count - cut.done, bench.plan.binding->strips);
    QVERIFY(says(again, "needs-cloth"));
}

void MishapsSewn::lossesAddUpOnRandomWork()
{
    planhelp::Chance chance(planhelp::seed(81));
    for (int i = 0; i < planhelp::count(200); ++i) {
        Project project = benchhelp::nineBlocksOfCloth();
        project.blocks.spare = chance.between(0, 2);
        Bench bench(project);
        for (int act = 0; act < 25; ++act) {
            const char *ids[] = {"stitch-block", "press-block", "rough-apart", "trim-block"};
            const auto at = static_cast<std::size_t>(chance.between(0, 3));
            const Step &step = bench.step(ids[at]);
            const bool mayGo = at == 0 || step.done < bench.step(ids[at - 1]).done;
            if (chance.between(0, 4) > 0 && mayGo && step.done < step.count) {
                bench.done(ids[at], 1);
                continue;
            }
            const auto &blocks = bench.project.made.blocks;
            if (blocks.empty())
                continue;
            const auto which =
                static_cast<std::size_t>(chance.between(0, static_cast<std::int64_t>(blocks.size()) - 1));
            const std::string name = blocks[which].block;
            if (!bench.project.made.goodBlock(name))
                continue;
            bench.take(answerTo(bench.project, bench.plan, bench.all, bench.step("trim-block"),
                                Mishap::BlockGone, {}, 0, name)
                           .next);
            QVERIFY(!bench.project.made.goodBlock(name));
        }
        // No step is ahead of the one before it, and what is not stitched stands in the list.
        for (std::size_t at = 1; at < 4; ++at) {
            const char *ids[] = {"stitch-block", "press-block", "rough-apart", "trim-block"};
            QVERIFY2(bench.step(ids[at]).done <= bench.step(ids[at - 1]).done, ids[at]);
        }
        const Step &stitch = bench.step("stitch-block");
        QCOMPARE(static_cast<std::int64_t>(blocksToStitch(bench.project).size()), stitch.count - stitch.done);
    }
}

QTEST_APPLESS_MAIN(MishapsSewn)
#include "tst_mishaps_sewn.moc"
