// SPDX-License-Identifier: MIT
//
// The price case of the trade notes (F27 and part 7), reckoned by hand there; random prices against the same
// rule in decimal places of its own, digit by digit, rounded at the end.
#include "planhelp.h"

#include "plan/price.h"

using namespace matside;
using planhelp::in;

namespace {

const Pair square21{in(21), in(21)};

PriceTerms caseTerms()
{
    return {18'00, Share{150'000}, Share{100'000}};
}

} // namespace

class PriceTest : public QObject {
    Q_OBJECT
private slots:
    void theCase();
    void roundedOnceAtTheEnd();
    void squareOfTheMetricPiece();
    void severalPiecesShareThePrice();
    void nothingLeftOut();
    void unpaidTime();
    void randomPrices();
    void amounts_data();
    void amounts();
};

// 24 + 6.5 h × 18 = 141; × 1.15 = 162.15; × 1.10 = 178.365 → 178.37; over 441 sq in 0.40.
void PriceTest::theCase()
{
    const std::int64_t sixAndAHalfHours = 6 * 600 + 300;
    const Price price = *priceOf(24'00, sixAndAHalfHours, caseTerms(), square21, 1, System::Inch);
    QCOMPARE(price.materials, 24'00);
    QCOMPARE(price.work, 117'00);
    QCOMPARE(price.direct, 141'00);
    QCOMPARE(price.withOverhead, 162'15);
    QCOMPARE(price.price, 178'37);
    QCOMPARE(price.perSquare, 40);
}

// 1 + 1 min at 0.20 an hour: 1.00333…; a cent rounded off on the way would not grow back to 2.01 under 100 %.
void PriceTest::roundedOnceAtTheEnd()
{
    const PriceTerms terms{20, Share{}, Share{1'000'000}};
    const Price price = *priceOf(1'00, 10, terms, square21, 1, System::Inch);
    QCOMPARE(price.direct, 1'00);
    QCOMPARE(price.price, 2'01); // 2.00666…, from 1.00 it would be 2.00
}

// A metre square at 250.00 is 100 square decimetres: 2.50 each.
void PriceTest::squareOfTheMetricPiece()
{
    const Price price =
        *priceOf(250'00, 0, {0, Share{}, Share{}}, {Length::mm(1000), Length::mm(1000)}, 1, System::Metric);
    QCOMPARE(price.price, 250'00);
    QCOMPARE(price.perSquare, 2'50);
}

void PriceTest::severalPiecesShareThePrice()
{
    const Price one = *priceOf(24'00, 3900, caseTerms(), square21, 1, System::Inch);
    const Price ten = *priceOf(240'00, 39'000, caseTerms(), square21, 10, System::Inch);
    QCOMPARE(ten.price, 1783'65); // ten times the exact 178.365
    QCOMPARE(ten.perSquare, one.perSquare);
}

void PriceTest::nothingLeftOut()
{
    const PriceTerms none;
    QCOMPARE(none.overhead, Share{150'000});
    QCOMPARE(priceOf(0, 0, none, {}, 1, System::Inch)->price, 0);
    QCOMPARE(priceOf(-5, -5, {-1, Share{-1}, Share{-1}}, {}, 0, System::Inch)->price, 0);
    QCOMPARE(priceOf(-5, -5, {-1, Share{-1}, Share{-1}}, {}, 0, System::Inch)->perSquare, 0);
    QVERIFY(!priceOf(2'000'000'000'000, 0, none, square21, 1, System::Inch));
    QVERIFY(!priceOf(0, 20'000'000'000, none, square21, 1, System::Inch));
    QVERIFY(priceOf(1'000'000'000'000, 10'000'000'000, caseTerms(), square21, 1, System::Inch)->price > 0);
}

// Asking 141 for the case: 141/1.265 = 111.46 less 24 leaves 87.46, 4.859 h at 18; 1.641 h = 98.46 min are
// given.
void PriceTest::unpaidTime()
{
    QCOMPARE(unpaidTenths(141'00, 24'00, 3900, caseTerms()), 985);
    QCOMPARE(unpaidTenths(178'37, 24'00, 3900, caseTerms()), 0);
    QCOMPARE(unpaidTenths(500'00, 24'00, 3900, caseTerms()), 0);
    QCOMPARE(unpaidTenths(20'00, 24'00, 3900, caseTerms()), 3900); // not even the materials
    QCOMPARE(unpaidTenths(0, 0, 3900, {}), 0);                     // no rate, nothing to reckon
    QCOMPARE(unpaidTenths(0, 1'000'000'000'000, 3900, caseTerms()), 3900);
    QCOMPARE(unpaidTenths(0, 1'000'000'000'001, 3900, caseTerms()), 0); // more than is reckoned with
}

// F27 | independent derivation | hours, rate and whole percents multiplied in decimal places of their own,
//    | all exact, rounded at the end
void PriceTest::randomPrices()
{
    planhelp::Chance chance(planhelp::seed(20'527));
    for (int i = 0; i < planhelp::count(400); ++i) {
        const std::int64_t materials = chance.between(0, 500'00);
        const std::int64_t tenths = 6 * chance.between(0, 10'000); // whole hundredths of an hour
        const PriceTerms terms{chance.between(1, 90'00), Share{chance.between(0, 40) * 10'000},
                               Share{chance.between(0, 60) * 10'000}};
        const Price price = *priceOf(materials, tenths, terms, square21, 1, System::Inch);
        // Hundredths of a cent for hours × rate, then two decimals more for each whole percent: all exact.
        const std::int64_t direct = materials * 100 + tenths / 6 * terms.rate;
        const std::int64_t all =
            direct * (100 + terms.overhead.millionths / 10'000) * (100 + terms.margin.millionths / 10'000);
        const std::int64_t cent = 100LL * 100 * 100;
        QCOMPARE(price.price, all / cent + (all % cent * 2 >= cent ? 1 : 0));
        const std::int64_t unpaid = unpaidTenths(price.price, materials, tenths, terms);
        QVERIFY2(unpaid <= 10 + 600 / terms.rate, "the price itself pays for all the time, to a rounding");
        QVERIFY(unpaidTenths(price.direct, materials, tenths, terms) >= unpaid);
    }
}

void PriceTest::amounts_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("hundredths"); // −1: none
    QTest::newRow("whole") << QByteArray("18") << 1800;
    QTest::newRow("one decimal") << QByteArray("18.5") << 1850;
    QTest::newRow("two") << QByteArray("18.05") << 1805;
    QTest::newRow("comma") << QByteArray("18,05") << 1805;
    QTest::newRow("no whole") << QByteArray(".5") << 50;
    QTest::newRow("nothing") << QByteArray("") << -1;
    QTest::newRow("a point") << QByteArray(".") << -1;
    QTest::newRow("three decimals") << QByteArray("1.005") << -1;
    QTest::newRow("two points") << QByteArray("1.0.0") << -1;
    QTest::newRow("letters") << QByteArray("12x") << -1;
    QTest::newRow("minus") << QByteArray("-3") << -1;
    QTest::newRow("endless") << QByteArray("99999999999999999999") << -1;
}

void PriceTest::amounts()
{
    QFETCH(QByteArray, text);
    QFETCH(int, hundredths);
    QCOMPARE(hundredthsIn(text.toStdString()).value_or(-1), hundredths);
}

QTEST_APPLESS_MAIN(PriceTest)
#include "tst_price.moc"
