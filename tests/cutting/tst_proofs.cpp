// SPDX-License-Identifier: MIT
#include "cutting/certificate.h"
#include "cutting/solve.h"
#include "jobs.h"
#include "plancheck.h"

#include "testing.h"

using namespace matside::cutting;

namespace {
Answer answerOf(const Job &job, Budget budget = {})
{
    auto solved = solve(job, budget);
    return solved ? solved.value() : Answer{};
}
} // namespace

class ProofsTest : public QObject {
    Q_OBJECT
private slots:
    void everyCertificateIsAccepted();
    void certificateClaimingMoreIsRefused();
    void certificateWithBetterPricesIsRefused();
    void certificateOfAnotherJobIsRefused();
    void certificateWithoutItsBranchIsRefused();
    void brokenCertificateIsRefused();
    void tamperedProofByStripsIsRefused();
    void piecesTooWideToTurnDoNotSpoilTheProof();
    void boundHoldsWhateverTheBudget();
};

void ProofsTest::everyCertificateIsAccepted()
{
    std::mt19937 random(21);
    int byPrices = 0;
    for (int n = 0; n < 300; ++n) {
        Job job = jobs::small(random, 4 + n % 12);
        if (n % 3 == 0)
            job.owned.push_back(
                {static_cast<Ticks>(5 + random() % 15), static_cast<Ticks>(3 + random() % 9)});
        const Answer a = answerOf(job);
        if (a.proof == Proof::Prices) {
            ++byPrices;
            QVERIFY(a.certificate.least > a.bought - job.step);
            QVERIFY(checkCertificate(job, a.certificate));
        } else if (!a.certificate.nodes.empty()) {
            QVERIFY(checkCertificate(job, a.certificate));
        }
    }
    QVERIFY2(byPrices > 250, qPrintable(QString::number(byPrices)));
}

void ProofsTest::certificateClaimingMoreIsRefused()
{
    for (const bool turn : {false, true}) {
        const Job job = jobs::blocks(turn);
        Certificate c = answerOf(job).certificate;
        QVERIFY(checkCertificate(job, c));
        c.least += job.step;
        QVERIFY(!checkCertificate(job, c));
    }
}

void ProofsTest::certificateWithBetterPricesIsRefused()
{
    const Job job = jobs::sampler(false);
    const Certificate good = answerOf(job).certificate;
    QVERIFY(checkCertificate(job, good));
    for (std::size_t i = 0; i < job.sizes.size(); ++i) {
        Certificate c = good;
        // A piece as dear as a strip of its own twice over: some strip is then worth more than it costs.
        for (auto &node : c.nodes)
            if (node.level < 0)
                node.prices.pieces[i] += 2 * node.prices.unit * job.sizes[i].along;
        QVERIFY(!checkCertificate(job, c));
    }
}

void ProofsTest::certificateOfAnotherJobIsRefused()
{
    Job job = jobs::metric(false);
    const Certificate c = answerOf(job).certificate;
    QVERIFY(checkCertificate(job, c));
    job.usable += 96000; // wider cloth holds more
    QVERIFY(!checkCertificate(job, c));
    job = jobs::metric(false);
    job.sizes.front().pieces /= 2;
    QVERIFY(!checkCertificate(job, c));
}

void ProofsTest::certificateWithoutItsBranchIsRefused()
{
    std::mt19937 random(23);
    int branched = 0;
    for (int n = 0; n < 300 && branched < 10; ++n) {
        const Job job = jobs::small(random, 14);
        const Answer a = answerOf(job);
        if (a.proof != Proof::Prices || a.certificate.nodes.size() < 3)
            continue;
        ++branched;
        Certificate c = a.certificate;
        c.nodes.front().value -= 1; // now neither child speaks for that count
        Certificate looped = a.certificate;
        looped.nodes.front().fewer = 0;
        QVERIFY(!checkCertificate(job, looped));
        Certificate cut = a.certificate;
        cut.nodes.resize(1);
        QVERIFY(!checkCertificate(job, cut));
    }
    QVERIFY(branched > 0);
}

void ProofsTest::brokenCertificateIsRefused()
{
    const Job job = jobs::sampler(true);
    const Certificate good = answerOf(job).certificate;
    QVERIFY(checkCertificate(job, good));
    Certificate empty;
    empty.least = 1;
    QVERIFY(!checkCertificate(job, empty));
    Certificate c = good;
    c.nodes.front().prices.pieces.pop_back();
    c.nodes.front().prices.unit = c.nodes.front().level < 0 ? c.nodes.front().prices.unit : 1;
    if (c.nodes.front().level < 0)
        QVERIFY(!checkCertificate(job, c));
    c = good;
    for (auto &node : c.nodes)
        node.prices.unit = 0;
    QVERIFY(!checkCertificate(job, c));
}

void ProofsTest::tamperedProofByStripsIsRefused()
{
    // Four sizes that may turn: proved only with rounding cuts.
    const Job job =
        jobs::of(372480, 32000, true,
                 {{153600, 33600, 53}, {73600, 91200, 23}, {100800, 80000, 7}, {102400, 80000, 47}});
    const Answer a = answerOf(job, {60'000, 0});
    const Certificate &good = a.certificate;
    QVERIFY(good.byStrips);
    QVERIFY(!good.cuts.empty());
    QVERIFY(a.proof == Proof::Prices);
    QVERIFY(checkCertificate(job, good));
    Certificate c = good;
    c.least += job.step;
    QVERIFY(!checkCertificate(job, c));
    c = good; // cuts that ask for more than whole numbers must give
    for (RoundingCut &cut : c.cuts)
        cut.sizes.assign(cut.sizes.size(), 0);
    QVERIFY(!checkCertificate(job, c));
    c = good; // a cut made from a later one
    c.cuts.front().cuts.emplace_back(0, 1);
    QVERIFY(!checkCertificate(job, c));
    c = good; // no cuts at all
    for (auto &node : c.nodes)
        node.prices.cuts.clear();
    QVERIFY(!checkCertificate(job, c));
    Job more = job;
    more.usable += 32000;
    QVERIFY(!checkCertificate(more, good));
}

void ProofsTest::piecesTooWideToTurnDoNotSpoilTheProof()
{
    // The long piece cannot be turned on this cloth, so that its odd width is no strip height; nor is any
    // side of a size that is not wanted.
    Job job = jobs::of(40, 7, true, {{13, 48, 5}, {10, 6, 9}, {20, 12, 7}, {17, 5, 0}});
    const Answer a = answerOf(job);
    QVERIFY(a.proof == Proof::Prices);
    QVERIFY(checkCertificate(job, a.certificate));
}

void ProofsTest::boundHoldsWhateverTheBudget()
{
    for (const std::int64_t budget : {0, 10, 100, 300, 1000, 3000}) {
        const Job job = jobs::metric(true);
        const Answer a = answerOf(job, {budget, 0});
        QCOMPARE(plancheck::fault(job, a), std::string());
        QVERIFY(a.leastBought <= 52 * job.step);
        QVERIFY(a.bought >= 52 * job.step);
        if (!a.certificate.nodes.empty())
            QVERIFY(checkCertificate(job, a.certificate));
    }
}

QTEST_APPLESS_MAIN(ProofsTest)
#include "tst_proofs.moc"
