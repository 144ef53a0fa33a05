// SPDX-License-Identifier: MIT
#include "bench/cutsrandom.h"
#include "cutting/certificate.h"
#include "cutting/solve.h"
#include "jobs.h"
#include "plancheck.h"

#include "testing.h"

using namespace matside::cutting;

namespace {
constexpr Ticks inch = 8128;
constexpr Ticks eighthYard = 36576;
} // namespace

class RequestsTest : public QObject {
    Q_OBJECT
private slots:
    void sillyRequestsAreRefusedWithTheirReason_data();
    void sillyRequestsAreRefusedWithTheirReason();
    void nothingWantedBuysNothing();
    void sameJobGivesTheSameAnswer();
    void stopGivesThePlanSoFar();
    void earlierPlanIsNeverMadeWorse();
    void bindingIsCutFromFullWidths();
    void ownedClothIsUsedFirst();
    void lengthwiseStripsSaveWhereLongPiecesAreFew();
    void turnedPiecesNeedNoMoreThanDirectional();
    void mixedUnitsArePlannedExactly();
    void fewerHeightsNeverCostCloth();
    void orderOfSizesNeverContradicts();
    void lengthwiseProofIsAccepted();
    void widthsWithoutCommonMeasureStillGetABound();
    void lengthwiseUsesOwnedClothAndBinding();
};

void RequestsTest::sillyRequestsAreRefusedWithTheirReason_data()
{
    using Reason = Refusal::Reason;
    QTest::addColumn<Job>("job");
    QTest::addColumn<int>("reason");
    QTest::addColumn<int>("index");
    const auto row = [](const char *name, const Job &job, Reason reason, int index) {
        QTest::newRow(name) << job << static_cast<int>(reason) << index;
    };
    const Job good = jobs::sampler(true);
    Job j = good;
    j.usable = 0;
    row("no width", j, Reason::NoWidth, -1);
    j = good;
    j.step = -1;
    row("no step", j, Reason::NoStep, -1);
    j = jobs::of(40 * inch, eighthYard, true, {{5 * inch, 5 * inch, 4}, {45 * inch, 42 * inch, 1}});
    row("block larger than the cloth both ways", j, Reason::WiderThanCloth, 1);
    j = jobs::of(5 * inch, eighthYard, false, {{8 * inch, 3 * inch, 4}});
    row("cloth 5 in wide under a directional piece", j, Reason::WiderThanCloth, 0);
    j = good;
    j.sizes[2].along = 0;
    row("a piece without height", j, Reason::NoSize, 2);
    j = good;
    j.sizes[3].pieces = -1;
    row("fewer than no pieces", j, Reason::NegativeCount, 3);
    j = good;
    j.sizes[0].pieces = 2'000'000'000;
    row("two thousand million pieces", j, Reason::TooManyPieces, -1);
    j = good;
    j.sizes.resize(65, j.sizes.front());
    row("65 sizes", j, Reason::TooManySizes, -1);
    j = good;
    j.owned.resize(9, Owned{inch, inch});
    row("nine owned pieces", j, Reason::TooManyOwned, -1);
    j = good;
    j.pieced.push_back({2 * inch, 100 * inch, j.usable});
    row("a join that takes the strip", j, Reason::LossTooLarge, 6);
    j = good;
    j.sizes[1].across = Ticks(1) << 40;
    row("a piece as wide as a country", j, Reason::NoSize, 1);
}

void RequestsTest::sillyRequestsAreRefusedWithTheirReason()
{
    QFETCH(Job, job);
    QFETCH(int, reason);
    QFETCH(int, index);
    const auto solved = solve(job);
    QVERIFY(!solved.ok());
    QCOMPARE(static_cast<int>(solved.error().reason), reason);
    QCOMPARE(solved.error().index, index);
}

void RequestsTest::nothingWantedBuysNothing()
{
    Job job = jobs::sampler(true);
    for (Size &s : job.sizes)
        s.pieces = 0;
    for (const Job &j : {job, Job{40 * inch, eighthYard, {}, {}, {}, true}}) {
        const auto solved = solve(j);
        QVERIFY(solved.ok());
        QCOMPARE(solved.value().bought, Ticks(0));
        QVERIFY(solved.value().proved());
        QVERIFY(solved.value().plan.strips.empty());
    }
}

void RequestsTest::sameJobGivesTheSameAnswer()
{
    for (const Job &job : {jobs::metric(true), jobs::large(false)}) {
        const auto one = solve(job, {5000, 1000}), two = solve(job, {5000, 1000});
        QVERIFY(one.ok() && two.ok());
        QVERIFY(one.value().plan == two.value().plan);
        QCOMPARE(one.value().leastLength, two.value().leastLength);
        QCOMPARE(one.value().work, two.value().work);
    }
}

void RequestsTest::stopGivesThePlanSoFar()
{
    std::stop_source source;
    source.request_stop();
    const Job job = jobs::large(true);
    const auto solved = solve(job, {1'000'000, 1'000'000}, source.get_token());
    QVERIFY(solved.ok());
    QVERIFY(solved.value().stopped);
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    QVERIFY(solved.value().work < 2000);
}

void RequestsTest::earlierPlanIsNeverMadeWorse()
{
    Job job = jobs::metric(true);
    const auto full = solve(job, {100'000, 0});
    QVERIFY(full.ok());
    const auto again = solve(job, {50, 0}, {}, &full.value());
    QVERIFY(again.ok());
    QVERIFY(again.value().bought <= full.value().bought);
    // A little less is wanted: what was cut before still serves.
    job.sizes[1].pieces -= 7;
    job.sizes[4].pieces -= 2;
    const auto less = solve(job, {50, 0}, {}, &full.value());
    QVERIFY(less.ok());
    QCOMPARE(plancheck::fault(job, less.value()), std::string());
    QVERIFY(less.value().bought <= full.value().bought);
}

void RequestsTest::bindingIsCutFromFullWidths()
{
    // Common practice, no published source: 276 in of binding 2 1/4 in wide from 40 in cloth with 2 1/4 in
    // lost at a diagonal join: 7 strips give 7 · 40 − 6 · 2.25 = 266.5 in, too short; 8 give 304.25 in.
    const PiecedStrip binding{inch * 9 / 4, 276 * inch, inch * 9 / 4};
    QCOMPARE(stripsFor(binding, 40 * inch), std::int64_t(8));
    Job job{40 * inch, eighthYard, {}, {binding}, {}, false};
    const auto solved = solve(job);
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    QCOMPARE(solved.value().length, 8 * inch * 9 / 4);
    QVERIFY(checkCertificate(job, solved.value().certificate));
    // Exactly as long as seven strips: not one more.
    QCOMPARE(stripsFor({inch, 7 * 40 * inch - 6 * inch, inch}, 40 * inch), std::int64_t(7));
    QCOMPARE(stripsFor({inch, 7 * 40 * inch - 6 * inch + 1, inch}, 40 * inch), std::int64_t(8));
    QCOMPARE(stripsFor({inch, inch, inch * 2}, 40 * inch), std::int64_t(1));
}

void RequestsTest::ownedClothIsUsedFirst()
{
    // Eight 10 in squares; an owned 20 × 20 in piece yields four, the other four are one strip of 40 in.
    Job job = jobs::of(40 * inch, eighthYard, false, {{10 * inch, 10 * inch, 8}});
    job.owned.push_back({20 * inch, 20 * inch});
    auto solved = solve(job);
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    QCOMPARE(solved.value().length, 10 * inch);
    QVERIFY(solved.value().proved());
    job.owned.push_back({10 * inch, 45 * inch});
    solved = solve(job);
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    QCOMPARE(solved.value().bought, Ticks(0));
}

void RequestsTest::lengthwiseStripsSaveWhereLongPiecesAreFew()
{
    // Three directional borders 3 × 60 in, and fifty 4 in squares, on 40 in cloth sold by 1/8 yd.
    // Across: 60 in of cloth for the borders, whose strip also holds seven squares, and 43 more squares in
    // five strips of 4 in: 80 in. Along: 9 in for the borders, 31 in for seven strips of squares, fifteen to
    // a strip: 4 strips do. So 60 in, rounded up to 63 in, suffice.
    Job job = jobs::of(40 * inch, eighthYard, false, {{3 * inch, 60 * inch, 3}, {4 * inch, 4 * inch, 50}});
    const auto across = solve(job);
    job.mayRunLengthwise = true;
    const auto along = solve(job);
    QVERIFY(across.ok() && along.ok());
    QCOMPARE(plancheck::fault(job, across.value()), std::string());
    QCOMPARE(plancheck::fault(job, along.value()), std::string());
    QCOMPARE(across.value().bought, 18 * eighthYard);
    QVERIFY(along.value().plan.lengthwise);
    QCOMPARE(along.value().bought, 14 * eighthYard);
    // 13 steps are 58.5 in: shorter than a border.
    QVERIFY(along.value().proved());
}

void RequestsTest::turnedPiecesNeedNoMoreThanDirectional()
{
    std::mt19937 random(31);
    for (int n = 0; n < 60; ++n) {
        Job job = jobs::small(random, 9);
        for (Size &s : job.sizes)
            s.mayTurn = false;
        const auto directional = solve(job);
        for (Size &s : job.sizes)
            s.mayTurn = true;
        const auto turned = solve(job);
        QVERIFY(directional.ok() && turned.ok());
        QVERIFY(turned.value().leastBought <= directional.value().bought);
    }
}

void RequestsTest::mixedUnitsArePlannedExactly()
{
    // 65 mm and 2 1/2 in side by side: their only common measure is 1/8128 in times 160.
    Job job = jobs::of(
        40 * inch, eighthYard, true,
        {{65 * 320, 65 * 320, 60}, {inch * 5 / 2, inch * 5 / 2, 64}, {37 * 320, inch * 7 + 127, 23}});
    const auto solved = solve(job, {60'000, 0});
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    // Twenty 2 in pieces fill 40 in to the last tick, whatever odd size is beside them.
    job = jobs::of(40 * inch, 1, false,
                   {{2 * inch, 2 * inch, 20}, {40 * inch - 1, 3 * inch, 1}, {777, inch, 3}});
    const auto exact = solve(job);
    QVERIFY(exact.ok());
    QCOMPARE(plancheck::fault(job, exact.value()), std::string());
    QCOMPARE(exact.value().length, 6 * inch);
}

void RequestsTest::fewerHeightsNeverCostCloth()
{
    for (const bool turn : {false, true})
        for (const Job &job : {jobs::sampler(turn), jobs::blocks(turn), jobs::metric(turn)}) {
            const auto plain = solve(job, {40'000, 0}), fewer = solve(job, {40'000, 40'000});
            QVERIFY(plain.ok() && fewer.ok());
            QCOMPARE(plancheck::fault(job, fewer.value()), std::string());
            QCOMPARE(fewer.value().bought, plain.value().bought);
            QVERIFY(fewer.value().handwork <= plain.value().handwork);
        }
}

void RequestsTest::orderOfSizesNeverContradicts()
{
    RandomJobs inch(true, true), metric(false, true);
    for (std::uint64_t seed = 1; seed <= 25; ++seed)
        for (Job job : {inch.job(seed), metric.job(seed)}) {
            const auto one = solve(job, {8000, 0});
            std::reverse(job.sizes.begin(), job.sizes.end());
            const auto two = solve(job, {8000, 0});
            QVERIFY(one.ok() && two.ok());
            QCOMPARE(plancheck::fault(job, two.value()), std::string());
            QVERIFY(one.value().leastBought <= two.value().bought);
            QVERIFY(two.value().leastBought <= one.value().bought);
            QVERIFY(checkCertificate(job, two.value().certificate));
        }
}

void RequestsTest::lengthwiseProofIsAccepted()
{
    std::mt19937 random(32);
    int proved = 0, lengthwise = 0;
    for (int n = 0; n < 120; ++n) {
        Job job = jobs::small(random, 9);
        job.mayRunLengthwise = true;
        const auto solved = solve(job);
        QVERIFY(solved.ok());
        const Answer &a = solved.value();
        QCOMPARE(plancheck::fault(job, a), std::string());
        lengthwise += a.plan.lengthwise;
        if (a.proof != Proof::Prices || a.lengthwise.nodes.empty())
            continue;
        // At one step less the strips along the cloth are wider together than it is.
        ++proved;
        QVERIFY(a.lengthwise.least > job.usable);
        QVERIFY(checkCertificate(turnedJob(job, a.bought - job.step), a.lengthwise));
    }
    QVERIFY2(proved > 30, qPrintable(QString::number(proved)));
    QVERIFY2(lengthwise > 5, qPrintable(QString::number(lengthwise)));
}

void RequestsTest::widthsWithoutCommonMeasureStillGetABound()
{
    // Narrow pieces of odd widths: far more sums than can be told apart one by one.
    Job job = jobs::of(40 * inch + 3, eighthYard, false,
                       {{8111, 2 * inch, 90},
                        {9973, 3 * inch, 80},
                        {12343, 2 * inch, 70},
                        {15013, 4 * inch, 60},
                        {16661, 3 * inch, 50},
                        {20011, 5 * inch, 40}});
    const auto solved = solve(job);
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    QVERIFY(checkCertificate(job, solved.value().certificate));
    Ticks area = 0;
    for (const Size &s : job.sizes)
        area += s.across * s.along * s.pieces;
    QVERIFY(solved.value().leastLength * job.usable >= area * 98 / 100);
    QVERIFY(solved.value().bought <= solved.value().leastBought + eighthYard);
}

void RequestsTest::lengthwiseUsesOwnedClothAndBinding()
{
    Job job = jobs::of(40 * inch, eighthYard, false, {{3 * inch, 60 * inch, 3}, {4 * inch, 4 * inch, 50}});
    job.owned.push_back({8 * inch, 70 * inch});
    job.pieced.push_back({2 * inch, 200 * inch, 2 * inch});
    job.mayRunLengthwise = true;
    const auto solved = solve(job);
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    job.mayRunLengthwise = false;
    const auto across = solve(job);
    QVERIFY(across.ok());
    QVERIFY(solved.value().bought <= across.value().bought);
}

QTEST_APPLESS_MAIN(RequestsTest)
#include "tst_requests.moc"
