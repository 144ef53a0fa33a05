// SPDX-License-Identifier: MIT
//
// The advice carried out: random blocks, read with a ruler's errors, judged, cut as advised by a hand that is
// not exact, and measured again with the truth.
#include "made/commonsize.h"
#include "madehelp.h"

#include <map>

using namespace matside;
using namespace madehelp;

namespace {

struct Leftover {
    double shows = 0;     ///< line outside the seam, inches, on sides that are not unpicked
    double unpick = 0;    ///< the same on sides that are
    double allowance = 9; ///< least distance from a corner of the line to the cut
};

Point minus(Point a, Point b)
{
    return {a.x - b.x, a.y - b.y};
}
double dot(Point a, Point b)
{
    return a.x * b.x + a.y * b.y;
}

/// The four cuts on the true figure, by points and lines; ticks. Returns each side's two setbacks.
std::array<std::array<double, 2>, 4> cutOut(const Shape &shape, const Laying &laying,
                                            const std::array<double, 3> &slips)
{
    const auto first = std::size_t(laying.order[0]), second = std::size_t(laying.order[1]);
    const auto corner = [&](std::size_t side, std::size_t end) { return shape.corner[(side + end) % 4]; };
    const Point along = minus(corner(first, 1), corner(first, 0));
    const double length = std::hypot(along.x, along.y);
    const Point u{along.x / length, along.y / length}, out{u.y, -u.x};
    const double near = double(laying.setback[first][0].count()) + slips[0];
    const double far = double(laying.setback[first][1].count()) + slips[1];
    // The cut's own outward way: tilted so that the two corners lie `near` and `far` under it.
    const double sine = (far - near) / length, cosine = std::sqrt(1 - sine * sine);
    const Point normal{out.x * cosine - u.x * sine, out.y * cosine - u.y * sine};
    std::array<Point, 4> way;
    std::array<double, 4> place{};
    way[first] = normal;
    for (std::size_t k = 1; k < 4; ++k) // clockwise by quarter turns
        way[(first + k) % 4] = {-way[(first + k + 3) % 4].y, way[(first + k + 3) % 4].x};
    place[first] = dot(normal, corner(first, 0)) + near;
    const double mid =
        (double(laying.setback[second][0].count()) + double(laying.setback[second][1].count())) / 2;
    place[second] =
        (dot(way[second], corner(second, 0)) + dot(way[second], corner(second, 1))) / 2 + mid + slips[2];
    for (const std::size_t side : {first, second}) {
        const Length size = side % 2 == 0 ? laying.size.across : laying.size.along;
        place[(side + 2) % 4] = double(size.count()) - place[side];
    }
    std::array<std::array<double, 2>, 4> setbacks{};
    for (std::size_t side = 0; side < 4; ++side)
        for (std::size_t end = 0; end < 2; ++end)
            setbacks[side][end] = place[side] - dot(way[side], corner(side, end));
    return setbacks;
}

Leftover leftOf(const Shape &truth, const Finding &finding, Length allowance,
                const std::array<double, 3> &slips)
{
    Leftover left;
    const auto setbacks = cutOut(truth, *finding.cut, slips);
    for (std::size_t side = 0; side < 4; ++side) {
        bool unpicked = false;
        if (finding.kind == FindingKind::Tilted)
            unpicked = side == std::size_t(*finding.side);
        if (finding.kind == FindingKind::Taper)
            unpicked = side % 2 != std::size_t(*finding.side) % 2;
        for (const double setback : setbacks[side]) {
            const double shows = asInches(setback) - allowance.asInches();
            (unpicked ? left.unpick : left.shows) = std::max(unpicked ? left.unpick : left.shows, shows);
            left.allowance = std::min(left.allowance, asInches(setback));
        }
    }
    return left;
}

/// A block as stitching makes them: near its size, leaning, and now and then crooked. Inches.
Shape randomBlock(Chance &chance, double w, double h)
{
    std::array<std::array<double, 2>, 4> moved{};
    const std::size_t what = chance.below(4);
    if (what == 0) // one corner out
        moved[chance.below(4)] = {chance.between(-0.15, 0.15),
                                  chance.coin() ? 0 : chance.between(-0.15, 0.15)};
    if (what == 1) { // a taper
        const double t = chance.between(-0.1, 0.1);
        moved[0][0] = -t;
        moved[1][0] = t;
    }
    const double lean = chance.between(-0.28, 0.28) * (chance.coin() ? 1 : 0.4);
    return block(w + chance.between(-0.09, 0.09), h + chance.between(-0.09, 0.09), lean, moved);
}

Readings readWithErrors(Chance &chance, const Shape &shape, Length mark)
{
    Readings read = readOff(shape);
    for (std::size_t i = 0; i < 6; ++i) {
        Length &length = i < 4 ? read.sides[i] : read.diagonals[i - 4];
        const double half = mark.asInches() / 2;
        length += inch(chance.between(-half, half));
    }
    return chance.coin() ? readOff(shape, mark) : read; // to the mark, or between marks by eye
}

struct Trade {
    System system = System::Inch;
    Marks marks;
    Length allowance;
    double slip = 0; ///< half of the step setbacks are shown in, inches
};
Trade tradeFor(bool inches)
{
    if (inches)
        return {System::Inch, sixteenths(), in(0, 1, 2), 1.0 / 64};
    return {System::Metric, millimetres(), Length::mm(12), Length::mmTenths(5).asInches() / 2};
}

std::array<double, 3> slips(Chance &chance, double most)
{
    std::array<double, 3> all{};
    for (double &slip : all)
        slip = chance.between(-most, most) * Length::ticksPerInch;
    return all;
}

struct Tally {
    int count = 0;
    double shows = 0, unpick = 0, allowance = 9, share = 0;
    void add(const Leftover &left, const Promise &promise)
    {
        ++count;
        shows = std::max(shows, left.shows);
        unpick = std::max(unpick, left.unpick);
        allowance = std::min(allowance, left.allowance);
        if (promise.shows > Length())
            share = std::max(share, left.shows / promise.shows.asInches());
    }
};

} // namespace

class AdviceTest : public QObject {
    Q_OBJECT
private slots:
    void tenThousandBlocksKeepWhatWasPromised_data();
    void tenThousandBlocksKeepWhatWasPromised();
    void limitsAreKeptWithoutReadingErrors();
    void trimmedBlocksAreCutInsideThemselves();
    void commonSizeServesEveryBlockItTakes();
    void misreadingsAreCaught_data();
    void misreadingsAreCaught();
    void goodReadingsSeldomRingFalsely();
};

void AdviceTest::tenThousandBlocksKeepWhatWasPromised_data()
{
    QTest::addColumn<bool>("inches");
    QTest::newRow("inches") << true;
    QTest::newRow("millimetres") << false;
}
void AdviceTest::tenThousandBlocksKeepWhatWasPromised()
{
    QFETCH(bool, inches);
    const Trade trade = tradeFor(inches);
    const Tolerances tolerances = usualTolerances(trade.system);
    Chance chance(seed(10'000 + inches));
    std::map<FindingKind, Tally> tallies;
    int advised = 0;
    for (int i = 0; i < count(10'000); ++i) {
        const Length w = inches ? in(0, 1, 2) * std::int64_t(10 + chance.below(8))
                                : Length::mm(130 + std::int64_t(chance.below(80)));
        const Length h = chance.coin() ? w : w + trade.marks.finest * std::int64_t(chance.below(32));
        const Shape truth = randomBlock(chance, w.asInches(), h.asInches());
        const Readings read = readWithErrors(chance, truth, trade.marks.finest);
        const Finding finding =
            judge(read, Measured::Outline, outlineOf(w, h, trade.allowance), tolerances, trade.marks);
        if (finding.kind == FindingKind::MeasureAgain) {
            QVERIFY(!finding.cut && !finding.promise);
            ++tallies[finding.kind].count;
            continue;
        }
        if (!finding.cut) {
            ++tallies[finding.kind].count;
            continue;
        }
        ++advised;
        const Leftover left = leftOf(truth, finding, trade.allowance, slips(chance, trade.slip));
        const QByteArray where = QByteArray::number(i) + " " + std::string(nameOf(finding.kind)).c_str();
        QVERIFY2(left.shows <= finding.promise->shows.asInches(), where.constData());
        QVERIFY2(left.unpick <= finding.promise->unpick.asInches() || left.unpick == 0, where.constData());
        QVERIFY2(left.allowance >= finding.promise->allowance.asInches(), where.constData());
        // A promise that says nothing would be kept too: it must stay near what was measured.
        Length farthest, nearest = trade.allowance;
        for (const auto &ends : finding.cut->setback)
            for (const Length end : ends) {
                farthest = max(farthest, end - trade.allowance);
                nearest = min(nearest, end);
            }
        const Length spread = finding.agreement == Agreement::Good ? in(0, 1, 8) : in(0, 1, 4);
        QVERIFY(max(finding.promise->shows, finding.promise->unpick) - farthest < spread);
        QVERIFY(nearest - finding.promise->allowance < spread);
        tallies[finding.kind].add(left, *finding.promise);
    }
    for (const auto &[kind, t] : tallies)
        qInfo("%-13s %5d: line shows at most %.3f in (%.0f %% of the promise), to unpick %.3f, least "
              "allowance %.3f",
              std::string(nameOf(kind)).c_str(), t.count, t.shows, 100 * t.share, t.unpick,
              t.allowance > 8 ? 0.0 : t.allowance);
    QVERIFY(advised > count(10'000) / 4);
    for (const FindingKind kind :
         {FindingKind::Plain, FindingKind::Split, FindingKind::Tilted, FindingKind::Taper})
        QVERIFY(tallies[kind].count > 0);
}

void AdviceTest::limitsAreKeptWithoutReadingErrors()
{
    // Read and laid exactly, what shows is the limit itself: the wander and half of what the size is off.
    const Trade trade = tradeFor(true);
    const Tolerances t = usualTolerances(System::Inch);
    Chance chance(seed(77));
    std::map<FindingKind, double> most;
    for (int i = 0; i < count(10'000); ++i) {
        const Length w = in(0, 1, 2) * std::int64_t(10 + chance.below(8));
        const Length h = chance.coin() ? w : w + in(0, 1, 16) * std::int64_t(chance.below(32));
        const Shape truth = randomBlock(chance, w.asInches(), h.asInches());
        const Finding finding =
            judge(readOff(truth), Measured::Outline, outlineOf(w, h, trade.allowance), t, trade.marks);
        QVERIFY(finding.kind != FindingKind::MeasureAgain);
        if (!finding.cut)
            continue;
        const Leftover left = leftOf(truth, finding, trade.allowance, {});
        const double half = t.size.asInches() / 2, marks = 1.0 / 64 + 1.0 / 512;
        // On the seam of a tilted side its own wander, half the tilt, comes instead of the lean's.
        const double wander =
            finding.kind == FindingKind::Split ? t.splitWander.asInches() : t.plainWander.asInches();
        const double limit = wander + half + marks;
        QVERIFY2(left.shows <= limit, std::to_string(left.shows).c_str());
        QVERIFY2(left.unpick <= limit + t.tiltMost.asInches() / 4, std::to_string(left.unpick).c_str());
        QVERIFY(left.allowance >= trade.allowance.asInches() - limit - t.tiltMost.asInches() / 4);
        most[finding.kind] = std::max({most[finding.kind], left.shows});
    }
    for (const auto &[kind, shows] : most)
        qInfo("read exactly, %s: the line shows at most %.3f in", std::string(nameOf(kind)).c_str(), shows);
}

void AdviceTest::trimmedBlocksAreCutInsideThemselves()
{
    const Trade trade = tradeFor(true);
    Chance chance(seed(5));
    int cut = 0;
    for (int i = 0; i < count(4'000); ++i) {
        const Shape truth = randomBlock(chance, 7, 7);
        const Readings read = readWithErrors(chance, truth, trade.marks.finest);
        const Finding finding = judge(read, Measured::Trimmed, outlineOf(in(6), in(6), trade.allowance),
                                      usualTolerances(System::Inch), trade.marks);
        if (!finding.cut)
            continue;
        ++cut;
        const auto setbacks = cutOut(truth, *finding.cut, slips(chance, trade.slip));
        for (const auto &ends : setbacks)
            for (const double setback : ends) {
                QVERIFY(asInches(setback) <= finding.promise->shows.asInches());
                QVERIFY(trade.allowance.asInches() + asInches(setback) >=
                        finding.promise->allowance.asInches());
            }
        // Exactly read it lies inside: nothing is promised that will not fit.
        const Finding exact =
            judge(readOff(truth), Measured::Trimmed, outlineOf(in(6), in(6), trade.allowance),
                  usualTolerances(System::Inch), trade.marks);
        if (exact.cut)
            for (const auto &ends : cutOut(truth, *exact.cut, {}))
                for (const double setback : ends)
                    QVERIFY2(asInches(setback) <= 1.0 / 512, std::to_string(asInches(setback)).c_str());
    }
    QVERIFY(cut > 100);
}

void AdviceTest::commonSizeServesEveryBlockItTakes()
{
    const Tolerances t = usualTolerances(System::Inch);
    Chance chance(seed(31));
    int pieces = 0;
    for (int i = 0; i < count(2'000); ++i) {
        std::vector<OwnSize> own;
        std::vector<Shape> truths;
        for (std::size_t k = 0; k < 3 + chance.below(10); ++k) {
            const double off = chance.between(-0.12, 0.2);
            truths.push_back(
                block(6 + off, 6 + off + chance.between(-0.03, 0.03), chance.between(-0.15, 0.15)));
            const Six six = lengthsOf(truths.back());
            own.push_back(
                {std::to_string(k), {toLength((six[0] + six[2]) / 2), toLength((six[1] + six[3]) / 2)}});
        }
        const Pair planned{in(6), in(6)};
        const CommonSize common = commonSize(own, planned, planned, t, sixteenths());
        pieces += common.asPlanned ? 0 : 1;
        Target target = outlineOf(common.outline.along, common.outline.across, in(0, 1, 2));
        target.common = true;
        for (std::size_t k = 0; k < own.size(); ++k) {
            if (std::find(common.outliers.begin(), common.outliers.end(), own[k].block) !=
                common.outliers.end())
                continue;
            const Finding finding = judge(readOff(truths[k]), Measured::Outline, target, t, sixteenths());
            QVERIFY2(finding.kind == FindingKind::Plain || finding.kind == FindingKind::Split,
                     std::string(nameOf(finding.kind)).c_str());
            const Leftover left = leftOf(truths[k], finding, in(0, 1, 2), {});
            QVERIFY(left.shows <=
                    (t.size.asInches() + t.over.asInches() / 64) / 2 + t.plainWander.asInches() + 1.0 / 64);
            QVERIFY(left.allowance >= 0.5 - t.over.asInches() / 2 - t.plainWander.asInches() - 1.0 / 64);
        }
    }
    QVERIFY(pieces > count(2'000) / 4);
}

void AdviceTest::misreadingsAreCaught_data()
{
    QTest::addColumn<double>("by");
    QTest::addColumn<double>("sides");
    QTest::addColumn<double>("diagonals");
    // The least share caught; what was measured is printed. A side misread by 1/8 moves K by 1/8 only, which
    // is still good, so it is not promised to be caught; a diagonal's moves it by 0.18, which is doubtful.
    QTest::newRow("1/8") << 0.125 << 0.05 << 0.25;
    QTest::newRow("3/16") << 0.1875 << 0.40 << 0.80;
    QTest::newRow("1/4") << 0.25 << 0.80 << 0.98;
    QTest::newRow("3/8") << 0.375 << 0.999 << 1.0;
    QTest::newRow("1/2") << 0.5 << 1.0 << 1.0;
    QTest::newRow("1") << 1.0 << 1.0 << 1.0;
}
void AdviceTest::misreadingsAreCaught()
{
    QFETCH(double, by);
    QFETCH(double, sides);
    QFETCH(double, diagonals);
    Chance chance(seed(6));
    std::array<int, 2> caught{}, noticed{}, tried{};
    int named = 0, of = 0;
    for (int i = 0; i < count(5'000); ++i) {
        const Shape truth = block(6 + chance.between(-0.06, 0.06), 6 + chance.between(-0.06, 0.06),
                                  chance.between(-0.2, 0.2));
        Readings read = readOff(truth, in(0, 1, 16));
        const std::size_t which = chance.below(6);
        (which < 4 ? read.sides[which] : read.diagonals[which - 4]) += inch(chance.coin() ? by : -by);
        const Finding finding = judge(read, Measured::Outline, outlineOf(in(6), in(6), in(0, 1, 2)),
                                      usualTolerances(System::Inch), sixteenths());
        const std::size_t kind = which < 4 ? 0 : 1;
        ++tried[kind];
        noticed[kind] += finding.agreement != Agreement::Good;
        if (finding.kind == FindingKind::MeasureAgain) {
            ++caught[kind];
            ++of;
            named += *finding.suspect == which;
        }
    }
    const auto share = [&](const std::array<int, 2> &n, std::size_t k) { return double(n[k]) / tried[k]; };
    qInfo("misread by %g in: caught %.1f %% of sides, %.1f %% of diagonals (at least doubtful %.1f %%, %.1f "
          "%%); "
          "the wrong one named first in %.0f %%",
          by, 100 * share(caught, 0), 100 * share(caught, 1), 100 * share(noticed, 0),
          100 * share(noticed, 1), of > 0 ? 100.0 * named / of : 0);
    QVERIFY(share(caught, 0) >= sides);
    QVERIFY(share(caught, 1) >= diagonals);
    if (by >= 0.5)
        QVERIFY(named > 0.98 * of);
}

void AdviceTest::goodReadingsSeldomRingFalsely()
{
    // Statistics: K is a sum of six errors, σ_K = σ √8 on a square. With σ = 1/32 it passes 1/8 in one of
    // 6.4 and 3/16 in one of 30 (the normal tail at √2 and 3/√2).
    Chance chance(seed(8));
    int over = 0, far = 0, rung = 0;
    const int n = count(20'000);
    for (int i = 0; i < n; ++i) {
        const Shape truth = block(6, 6, chance.between(-0.1, 0.1));
        Readings read = readOff(truth);
        for (std::size_t k = 0; k < 6; ++k)
            (k < 4 ? read.sides[k] : read.diagonals[k - 4]) += inch(chance.normal(1.0 / 32));
        const Finding normal = judge(read, Measured::Outline, outlineOf(in(6), in(6), in(0, 1, 2)),
                                     usualTolerances(System::Inch), sixteenths());
        over += normal.agreement != Agreement::Good;
        far += normal.agreement == Agreement::None;
        const Finding marks =
            judge(readOff(truth, in(0, 1, 16)), Measured::Outline, outlineOf(in(6), in(6), in(0, 1, 2)),
                  usualTolerances(System::Inch), sixteenths());
        rung += marks.kind == FindingKind::MeasureAgain;
    }
    qInfo("false alarms: errors of 1/32 (one sigma) doubtful or worse %.1f %%, measure again %.1f %%; read "
          "to the "
          "nearest 1/16: measure again %.2f %%",
          100.0 * over / n, 100.0 * far / n, 100.0 * rung / n);
    QVERIFY(std::abs(double(over) / n - 0.157) < 0.015);
    QVERIFY(std::abs(double(far) / n - 0.034) < 0.008);
    QVERIFY(rung <= n / 1000);
}

QTEST_APPLESS_MAIN(AdviceTest)
#include "tst_advice.moc"
