// SPDX-License-Identifier: MIT
#include "length/length.h"

#include "testing.h"

#include <random>

using matside::Length;

class LengthTest : public QObject {
    Q_OBJECT
private slots:
    void inchesAndMillimetresAreExact_data();
    void inchesAndMillimetresAreExact();
    void sumsAgreeWithWideIntegers();
    void overflowIsKeptAndNeverWraps();
    void stepsRoundTheRightWay_data();
    void stepsRoundTheRightWay();
    void quotientsAreRoundedOnce();
};

void LengthTest::inchesAndMillimetresAreExact_data()
{
    QTest::addColumn<int>("sixteenths");
    QTest::addColumn<int>("tenthMicrons"); // 1/10 000 mm
    // 1 in = 25.4 mm exactly: NBS Circular 572, addendum (in force 1 July 1959); 25.4 n / 16 in mathematics.
    QTest::newRow("1/16 in is 1.5875 mm") << 1 << 15875;
    QTest::newRow("1/8 in is 3.175 mm") << 2 << 31750;
    QTest::newRow("3/16 in is 4.7625 mm") << 3 << 47625;
    QTest::newRow("1/4 in is 6.35 mm") << 4 << 63500;
    QTest::newRow("5/16 in is 7.9375 mm") << 5 << 79375;
    QTest::newRow("3/8 in is 9.525 mm") << 6 << 95250;
    QTest::newRow("1/2 in is 12.7 mm") << 8 << 127000;
    QTest::newRow("5/8 in is 15.875 mm") << 10 << 158750;
    QTest::newRow("3/4 in is 19.05 mm") << 12 << 190500;
    QTest::newRow("7/8 in is 22.225 mm") << 14 << 222250;
    QTest::newRow("a yard is 0.9144 m") << 576 << 9144000;
}
void LengthTest::inchesAndMillimetresAreExact()
{
    QFETCH(int, sixteenths);
    QFETCH(int, tenthMicrons);
    const Length length = Length::inches(0, sixteenths, 16);
    QCOMPARE(length.count() * 10'000, std::int64_t(tenthMicrons) * Length::ticksPerMm);
    QCOMPARE(length * 10'000, Length::ticks(std::int64_t(tenthMicrons) * 320));
}

void LengthTest::sumsAgreeWithWideIntegers()
{
    std::mt19937_64 engine(20);
    std::uniform_int_distribution<std::int64_t> any(-(std::int64_t(1) << 62), std::int64_t(1) << 62);
    for (int i = 0; i < 20'000; ++i) {
        const std::int64_t a = any(engine);
        const std::int64_t b = any(engine);
        __extension__ using Wide = __int128;
        const Wide sum = Wide(a) + b;
        const bool fits = sum <= INT64_MAX && sum > INT64_MIN;
        const Length got = Length::ticks(a) + Length::ticks(b);
        QCOMPARE(got.valid(), fits);
        if (fits)
            QCOMPARE(got.count(), static_cast<std::int64_t>(sum));
        const auto agrees = [](Length length, Wide exact) {
            const bool held = exact <= INT64_MAX && exact > INT64_MIN;
            return held ? length.valid() && length.count() == exact : !length.valid();
        };
        QVERIFY(agrees(Length::ticks(a) - Length::ticks(b), Wide(a) - b));
        QVERIFY(agrees(Length::ticks(a) * 3, Wide(a) * 3));
        // A quotient rounded once lies within half a tick of the true one.
        const std::int64_t den = b % 1'000'000 < 0 ? 1 - b % 1'000'000 : 1 + b % 1'000'000;
        const Wide twice =
            (Wide(Length::ticks(a).scaled(7, 1'000'001).count()) * 1'000'001 - Wide(a) * 7) * 2;
        QVERIFY(twice <= 1'000'001 && twice >= -1'000'001);
        const Length step = Length::ticks(den);
        const Length below = Length::ticks(a).downTo(step);
        const Length above = Length::ticks(a).upTo(step);
        QVERIFY(below <= Length::ticks(a) && Length::ticks(a) <= above);
        QVERIFY(above == below ? below == Length::ticks(a) : above - below == step);
    }
}

void LengthTest::overflowIsKeptAndNeverWraps()
{
    const Length most = Length::ticks(INT64_MAX);
    const Length over = most + Length::ticks(1);
    QVERIFY(!over.valid());
    for (const Length kept :
         {over + Length::ticks(1), over - most, over * 0, -over, over.scaled(1, 2), over.upTo(Length::mm(1)),
          over.downTo(Length::mm(1)), over.nearestTo(Length::mm(1)), over.magnitude(),
          matside::max(over, most), matside::min(most, over)})
        QVERIFY(!kept.valid());
    QVERIFY(!Length::inches(INT64_MAX).valid());
    QVERIFY(!Length::inches(1, 1, 0).valid());
    QVERIFY(!(Length::ticks(-INT64_MAX) - Length::ticks(1)).valid());
    QCOMPARE((-most).magnitude(), most);
    // Steps so long that twice the rest would not fit.
    QCOMPARE(Length::ticks(INT64_MAX - 1).nearestTo(most), most);
    QCOMPARE(Length::ticks(INT64_MAX / 2).nearestTo(most), Length());
    QVERIFY(!Length::mm(INT64_MAX).valid());
    QVERIFY(!most.scaled(3, 2).valid());
    QCOMPARE(over.floorDiv(Length::mm(1)), 0);
    QCOMPARE(Length::mm(3).floorDiv(Length()), 0);
}

void LengthTest::stepsRoundTheRightWay_data()
{
    QTest::addColumn<int>("ticks");
    QTest::addColumn<int>("up");
    QTest::addColumn<int>("down");
    QTest::addColumn<int>("nearest");
    QTest::newRow("on the step") << 20 << 20 << 20 << 20;
    QTest::newRow("just over") << 21 << 30 << 20 << 20;
    QTest::newRow("tie goes down") << 25 << 30 << 20 << 20;
    QTest::newRow("past the middle") << 26 << 30 << 20 << 30;
    QTest::newRow("negative") << -21 << -20 << -30 << -20;
    QTest::newRow("negative tie goes down") << -25 << -20 << -30 << -30;
}
void LengthTest::stepsRoundTheRightWay()
{
    QFETCH(int, ticks);
    QFETCH(int, up);
    QFETCH(int, down);
    QFETCH(int, nearest);
    const Length step = Length::ticks(10);
    QCOMPARE(Length::ticks(ticks).upTo(step).count(), up);
    QCOMPARE(Length::ticks(ticks).downTo(step).count(), down);
    QCOMPARE(Length::ticks(ticks).nearestTo(step).count(), nearest);
}

void LengthTest::quotientsAreRoundedOnce()
{
    QCOMPARE(Length::ticks(7).scaled(1, 2).count(), 4); // half away from zero
    QCOMPARE(Length::ticks(-7).scaled(1, 2).count(), -4);
    QCOMPARE(Length::inches(7).scaled(100, 98).count(), 58057); // 7 / 0.98 in = 58057.14 ticks
    QCOMPARE(Length::inches(7).floorDiv(Length::inches(2)), 3);
    QCOMPARE(Length::inches(7).ceilDiv(Length::inches(2)), 4);
    QCOMPARE(Length::inches(-7).floorDiv(Length::inches(2)), -4);
    // By a single tick it is the count of ticks; by nothing, less than nothing or no length it is 0.
    QCOMPARE(Length::ticks(7).floorDiv(Length::ticks(1)), 7);
    QCOMPARE(Length::ticks(7).ceilDiv(Length::ticks(1)), 7);
    for (const Length step : {Length(), Length::ticks(-1), Length::overflow()}) {
        QCOMPARE(Length::inches(7).floorDiv(step), 0);
        QCOMPARE(Length::inches(7).ceilDiv(step), 0);
    }
    QCOMPARE(Length::overflow().floorDiv(Length::inches(1)), 0);
    QCOMPARE(Length::overflow().ceilDiv(Length::inches(1)), 0);
}

QTEST_GUILESS_MAIN(LengthTest)
#include "tst_length.moc"
