// SPDX-License-Identifier: MIT
//
// The advice carried out: random blocks, read with a ruler's errors, judged, cut as advised by a hand that is
// not exact, and measured again with the truth.
#include "cutout.h"
#include "made/commonsize.h"

#include <map>

using namespace matside;
using namespace madehelp;

namespace {

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
    void whatIsOffMostIsTold();
};

void AdviceTest::tenThousandBlocksKeepWhatWasPromised_data()
{
    QTest::addColumn<bool>("inches");
    QTest::newRow("inches") << true;
    QTest::newRow("millimetres") << false;
}
// F25 | independent derivation | ten thousand random blocks with reading errors are cut by coordinates
//    | as advised and measured again
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
    for (const auto &[kind, t] : tallies) {
        const std::string name(nameOf(kind));
        if (t.allowance > 8) // nothing was cut
            qInfo("%-13s %5d", name.c_str(), t.count);
        else
            qInfo("%-13s %5d: line shows at most %.3f in (%.0f %% of the promise), to unpick %.3f, least "
                  "allowance %.3f",
                  name.c_str(), t.count, t.shows, 100 * t.share, t.unpick, t.allowance);
    }
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
    QVERIFY(cut > count(4'000) / 20);
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

void AdviceTest::whatIsOffMostIsTold()
{
    Finding finding;
    finding.wanted = {in(6), in(6)};
    finding.figures.lean = in(0, 3, 16);
    const auto off = [&](Length tilt, Length along, Length across) {
        finding.figures.tilt = tilt;
        finding.own = {in(6) + along, in(6) + across};
        return offBy(finding);
    };
    QCOMPARE(off(in(0, 1, 8), in(0, 1, 16), Length()), in(0, 1, 8));
    QCOMPARE(off(in(0, -1, 8), in(0, 1, 16), in(0, 1, 16)), in(0, 1, 8));
    QCOMPARE(off(Length(), in(0, 1, 16), in(0, -1, 4)), in(0, 1, 4));
    QCOMPARE(off(Length(), in(0, -1, 4), Length()), in(0, 1, 4));
    // A lean that is blocked wet is told by itself.
    finding.does = Remedy::BlockWet;
    QCOMPARE(off(in(0, 1, 4), in(0, 1, 4), Length()), in(0, 3, 16));
}

QTEST_APPLESS_MAIN(AdviceTest)
#include "tst_advice.moc"
