// SPDX-License-Identifier: MIT
#include "bench/cutsrandom.h"
#include "cutting/certificate.h"
#include "cutting/solve.h"
#include "jobs.h"
#include "plancheck.h"

#include "testing.h"

#include <map>

using namespace matside::cutting;

class PlansTest : public QObject {
    Q_OBJECT
private slots:
    void knownJobsBuyTheLeast_data();
    void knownJobsBuyTheLeast();
    void hardJobsBuyTheLeast_data();
    void hardJobsBuyTheLeast();
    void publishedInstancesReachTheirOptimum_data();
    void publishedInstancesReachTheirOptimum();
    void smallJobsEqualTryingEverything();
    void smallJobsOnOwnedClothEqualTryingEverything();
    void smallJobsAlongTheClothEqualTryingEverything();
};

// Bought steps confirmed outside this program: A to C by two general integer-programming solvers on the
// level model of Lodi, Martello & Vigo (2004), D by a linear-programming bound and a checked plan.
void PlansTest::knownJobsBuyTheLeast_data()
{
    QTest::addColumn<Job>("job");
    QTest::addColumn<int>("steps");
    QTest::newRow("sampler, directional: 2 7/8 yd") << jobs::sampler(false) << 23;
    QTest::newRow("sampler, turned: 2 3/4 yd") << jobs::sampler(true) << 22;
    QTest::newRow("blocks, directional: 10 1/4 yd") << jobs::blocks(false) << 82;
    QTest::newRow("blocks, turned: 10 1/8 yd") << jobs::blocks(true) << 81;
    QTest::newRow("metric, directional: 5.3 m") << jobs::metric(false) << 53;
    QTest::newRow("metric, turned: 5.2 m") << jobs::metric(true) << 52;
    QTest::newRow("2000 pieces, directional: 13 3/8 yd") << jobs::large(false) << 107;
    QTest::newRow("2000 pieces, turned: 13 1/4 yd") << jobs::large(true) << 106;
}

// Random jobs whose proof needs rounding cuts or branching. That one step less is impossible was found by
// CBC 2.10.8 (Debian 12) on the programme of all strips nothing more fits into.
void PlansTest::hardJobsBuyTheLeast_data()
{
    QTest::addColumn<Job>("job");
    QTest::addColumn<int>("steps");
    RandomJobs inch(true, true), metric(false, true);
    for (const auto &[seed, steps] : {std::pair(37, 72), {159, 88}, {226, 160}})
        QTest::addRow("inch %d", seed) << inch.job(static_cast<std::uint64_t>(seed)) << steps;
    for (const auto &[seed, steps] :
         {std::pair(25, 117), {87, 219}, {105, 81}, {199, 101}, {235, 59}, {261, 336}})
        QTest::addRow("metric %d", seed) << metric.job(static_cast<std::uint64_t>(seed)) << steps;
    // Plans that taking the relaxation's strips one by one misses by one to three steps; that nothing
    // shorter exists, its prices alone prove.
    for (const auto &[seed, steps] : {std::pair(379, 180), {972, 154}})
        QTest::addRow("inch %d, few strips", seed) << inch.job(static_cast<std::uint64_t>(seed)) << steps;
    for (const auto &[seed, steps] : {std::pair(104, 158), {460, 184}, {645, 81}})
        QTest::addRow("metric %d, few strips", seed) << metric.job(static_cast<std::uint64_t>(seed)) << steps;
}

void PlansTest::hardJobsBuyTheLeast()
{
    knownJobsBuyTheLeast();
}

void PlansTest::knownJobsBuyTheLeast()
{
    QFETCH(Job, job);
    QFETCH(int, steps);
    const auto solved = solve(job, {200'000, 20'000});
    QVERIFY(solved.ok());
    const Answer &a = solved.value();
    QCOMPARE(plancheck::fault(job, a), std::string());
    QCOMPARE(a.bought, job.step * steps);
    QVERIFY(a.proved());
    QVERIFY(a.proof == Proof::Search || checkCertificate(job, a.certificate));
}

// Level strip packing, optima of Andrade, Miyazawa & Xavier, "Um algoritmo exato para o Problema de
// Empacotamento Bidimensional em Faixas", XXXVIII SBPO (2006), Table 1. Sizes: Bengtsson (1982),
// Christofides & Whitlock (1977), Beasley (1985).
void PlansTest::publishedInstancesReachTheirOptimum_data()
{
    QTest::addColumn<Job>("job");
    QTest::addColumn<int>("length");
    QTest::newRow("beng01") << jobs::of(25, 1, false,
                                        {{8, 6, 2},
                                         {11, 4, 1},
                                         {10, 3, 1},
                                         {4, 7, 1},
                                         {12, 6, 1},
                                         {11, 6, 1},
                                         {12, 8, 1},
                                         {3, 6, 1},
                                         {4, 3, 1},
                                         {3, 8, 1},
                                         {9, 1, 2},
                                         {1, 3, 1},
                                         {11, 3, 1},
                                         {11, 1, 1},
                                         {9, 8, 1},
                                         {11, 5, 1},
                                         {1, 7, 1},
                                         {7, 8, 1}})
                            << 36;
    QTest::newRow("gcut01") << jobs::of(250, 1, false,
                                        {{184, 167, 1},
                                         {118, 114, 1},
                                         {152, 167, 1},
                                         {140, 83, 1},
                                         {86, 70, 1},
                                         {166, 143, 1},
                                         {160, 120, 1},
                                         {148, 66, 1},
                                         {141, 87, 1},
                                         {165, 69, 1}})
                            << 1016;
    QTest::newRow("cgcut1")
        << jobs::of(10, 1, false,
                    {{4, 8, 1}, {7, 3, 1}, {2, 8, 1}, {4, 3, 1}, {3, 3, 1}, {2, 3, 1}, {1, 2, 1}})
        << 14;
}

void PlansTest::publishedInstancesReachTheirOptimum()
{
    QFETCH(Job, job);
    QFETCH(int, length);
    const auto solved = solve(job, {100'000, 0});
    QVERIFY(solved.ok());
    QCOMPARE(plancheck::fault(job, solved.value()), std::string());
    QCOMPARE(solved.value().bought, Ticks(length));
    QVERIFY(solved.value().proved());
}

namespace {

/// Tries every way to share pieces out to strips, each way each may lie: the least bought length.
struct Everything {
    const Job &job;
    std::vector<Size> pieces;
    struct Open {
        Ticks left = 0, height = 0;
        int from = -1;
    };
    std::vector<Open> strips;
    Ticks best = 1 << 30;

    explicit Everything(const Job &of) : job(of)
    {
        for (const Size &s : of.sizes)
            for (int n = 0; n < s.pieces; ++n)
                pieces.push_back(s);
        lay(0);
    }

    void lay(std::size_t i)
    {
        if (i == pieces.size()) {
            std::map<int, Ticks> sum;
            for (const Open &s : strips)
                sum[s.from] += s.height;
            for (std::size_t o = 0; o < job.owned.size(); ++o)
                if (sum[static_cast<int>(o)] > job.owned[o].along)
                    return;
            best = std::min(best, sum[-1]);
            return;
        }
        const Size &s = pieces[i];
        put(i, s.across, s.along);
        if (s.mayTurn)
            put(i, s.along, s.across);
    }

    void put(std::size_t i, Ticks w, Ticks h)
    {
        for (std::size_t k = 0; k < strips.size(); ++k) {
            const Open before = strips[k];
            if (before.left < w)
                continue;
            strips[k] = {before.left - w, std::max(before.height, h), before.from};
            lay(i + 1);
            strips[k] = before;
        }
        for (int from = -1; from < static_cast<int>(job.owned.size()); ++from) {
            const Ticks width = from < 0 ? job.usable : job.owned[static_cast<std::size_t>(from)].across;
            if (w > width)
                continue;
            strips.push_back({width - w, h, from});
            lay(i + 1);
            strips.pop_back();
        }
    }
};

Ticks upTo(Ticks length, Ticks step)
{
    return length % step == 0 ? length : length + step - length % step;
}

QString told(const Job &job)
{
    QString text = QStringLiteral("width %1 step %2").arg(job.usable).arg(job.step);
    for (const Size &s : job.sizes)
        text += QStringLiteral("; %1x%2 %3 %4").arg(s.across).arg(s.along).arg(s.pieces).arg(int(s.mayTurn));
    for (const Owned &o : job.owned)
        text += QStringLiteral("; owned %1x%2").arg(o.across).arg(o.along);
    return text;
}

} // namespace

void PlansTest::smallJobsEqualTryingEverything()
{
    std::mt19937 random(11);
    for (int n = 0; n < 400; ++n) {
        const Job job = jobs::small(random, 3 + n % 5);
        const Everything all(job);
        const auto solved = solve(job);
        QVERIFY2(solved.ok(), qPrintable(told(job)));
        QVERIFY2(plancheck::fault(job, solved.value()).empty(), qPrintable(told(job)));
        QVERIFY2(solved.value().bought == upTo(all.best, job.step), qPrintable(told(job)));
        QVERIFY2(solved.value().proved(), qPrintable(told(job)));
    }
}

void PlansTest::smallJobsOnOwnedClothEqualTryingEverything()
{
    std::mt19937 random(12);
    for (int n = 0; n < 150; ++n) {
        Job job = jobs::small(random, 3 + n % 3);
        for (int o = 0; o <= n % 2; ++o)
            job.owned.push_back(
                {static_cast<Ticks>(4 + random() % 18), static_cast<Ticks>(2 + random() % 10)});
        const Everything all(job);
        const auto solved = solve(job);
        QVERIFY2(solved.ok(), qPrintable(told(job)));
        const std::string fault = plancheck::fault(job, solved.value());
        QVERIFY2(fault.empty(), qPrintable(told(job) + QString::fromStdString(fault)));
        QVERIFY2(solved.value().leastBought <= upTo(all.best, job.step), qPrintable(told(job)));
        QVERIFY2(solved.value().bought == upTo(all.best, job.step), qPrintable(told(job)));
    }
}

void PlansTest::smallJobsAlongTheClothEqualTryingEverything()
{
    std::mt19937 random(13);
    int along = 0, reached = 0;
    for (int n = 0; n < 800; ++n) {
        Job job = jobs::small(random, 3 + n % 4);
        job.mayRunLengthwise = true;
        job.squared = static_cast<Ticks>(random() % 3);
        job.reach = n % 2 == 0 ? 0 : static_cast<Ticks>(4 + random() % 12);
        const Ticks across = upTo(Everything(job).best, job.step);
        // The shortest step over which all pieces, a quarter turned, lie in strips no wider than the cloth.
        Ticks least = across;
        for (Ticks length = job.step; length < across && least == across; length += job.step) {
            Job turned = job;
            turned.usable = length - job.squared;
            for (Size &s : turned.sizes)
                std::swap(s.across, s.along);
            if (turned.usable > 0 && (job.reach == 0 || turned.usable <= job.reach) &&
                Everything(turned).best <= job.usable)
                least = length;
        }
        const auto solved = solve(job);
        QVERIFY2(solved.ok(), qPrintable(told(job)));
        const Answer &a = solved.value();
        const std::string fault = plancheck::fault(job, a);
        QVERIFY2(fault.empty(), qPrintable(told(job) + QString::fromStdString(fault)));
        QVERIFY2(a.bought == least, qPrintable(told(job)));
        QVERIFY2(a.proved(), qPrintable(told(job)));
        QCOMPARE(a.plan.lengthwise, least < across); // a tie stays across
        along += a.plan.lengthwise;
        reached += a.plan.lengthwise && job.reach > 0;
    }
    QVERIFY2(along > 20 && reached > 3, qPrintable(QStringLiteral("%1 %2").arg(along).arg(reached)));
}

QTEST_APPLESS_MAIN(PlansTest)
#include "tst_plans.moc"
