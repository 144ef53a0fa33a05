// SPDX-License-Identifier: MIT
#include "length/show.h"

#include "testing.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cmath>
#include <fstream>
#include <random>

using namespace matside;

namespace {
QString shown(Length length, Marks marks, Round round = Round::Nearest)
{
    return QString::fromStdString(text(show(length, marks, round)));
}
const Marks inch{System::Inch, Length::inches(0, 1, 16)};
const Marks metric{System::Metric, Length::mm(1)};
} // namespace

class ShowTest : public QObject {
    Q_OBJECT
private slots:
    void tellsLengthsOnTheMarks_data();
    void tellsLengthsOnTheMarks();
    void tellsEveryLengthOfTheExamplePlan();
    void staysWithinItsStep();
    void scantAndGenerousBeginAtTheirMeasure();
    void tellsClothAsItIsSold();
    void cardIsToldAsItsStandardPrintsIt();
};

void ShowTest::tellsLengthsOnTheMarks_data()
{
    QTest::addColumn<double>("inches");
    QTest::addColumn<int>("round");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *name, double inches, Round round, const char *says) {
        QTest::newRow(name) << inches << static_cast<int>(round) << QString::fromUtf8(says);
    };
    // The contract's own examples (the plan of the project example).
    row("sent along", 7.142857, Round::Nearest, "a generous 7 1/8 in");
    row("sent across", 7.070707, Round::Nearest, "a generous 7 1/16 in");
    row("third start", 21.160714, Round::Nearest, "a scant 21 3/16 in");
    row("remainder", 0.303571, Round::Nearest, "a scant 5/16 in");
    row("overlap", -0.066, Round::Nearest, "−1/16 in");
    row("fold", 0.34375, Round::Down, "5/16 in");
    row("catch", 0.15625, Round::Fine, "5/32 in");
    row("whole", 34.0, Round::Nearest, "34 in");
    row("nothing", 0.0, Round::Nearest, "0 in");
    // Leans go by value, so that nothing which is not exact reads as exact.
    row("a little less than nothing", -0.02, Round::Nearest, "a scant 0 in");
    row("a little more than nothing", 0.02, Round::Nearest, "a generous 0 in");
    row("under a negative mark", -0.07, Round::Nearest, "a scant −1/16 in");
    row("next to nothing", 0.003, Round::Nearest, "0 in");
    row("negative, down", -0.01, Round::Down, "−1/16 in");
    row("negative, up", -0.01, Round::UpEighth, "0 in");
    row("fine, generous", 0.2575, Round::Fine, "a generous 1/4 in");
    row("up to 1/8, not generous", 1.8751, Round::UpEighth, "2 in");
    row("up to 1/4", 155.3, Round::UpQuarter, "155 1/2 in");
    row("11/32 on sixteenths, tie down", 0.34375, Round::Nearest, "a generous 5/16 in");
}
void ShowTest::tellsLengthsOnTheMarks()
{
    QFETCH(double, inches);
    QFETCH(int, round);
    QFETCH(QString, says);
    QCOMPARE(shown(Length::ticks(std::llround(inches * 8128)), inch, static_cast<Round>(round)), says);
}

namespace {
/// How the plan rounds the length at a place of the example (F0): the fold down, seams and catches fine.
Round roundAt(const std::string &at)
{
    if (at == "/fold/under")
        return Round::Down;
    if (at == "/fold/catch" || at == "/fold/catchShown")
        return Round::Fine;
    if (at == "/strip/gap" || at == "/strip/end")
        return Round::UpEighth;
    return at == "/binding/length" ? Round::UpQuarter : Round::Nearest;
}
} // namespace

void ShowTest::tellsEveryLengthOfTheExamplePlan()
{
    std::ifstream file(TEST_DATA_DIR "/plan-example.json");
    const nlohmann::json plan = nlohmann::json::parse(file, nullptr, false);
    QVERIFY(plan.is_object());
    const nlohmann::json flat = plan.flatten();
    int told = 0;
    for (const auto &[at, says] : flat.items()) {
        if (!at.ends_with("/shows"))
            continue;
        const std::string of = at.substr(0, at.size() - 6);
        const auto ticks = std::llround(flat.at(of + "/in").get<double>() * Length::ticksPerInch);
        const std::string got = text(show(Length::ticks(ticks), inch, roundAt(of)));
        QVERIFY2(got == says.get<std::string>(), (of + ": " + got).c_str());
        ++told;
    }
    QVERIFY(told > 40);
}

// F0 | independent derivation | every rounding of 50 000 lengths is on its own side of the length and
//    | nearer than one step, found by subtraction
void ShowTest::staysWithinItsStep()
{
    std::mt19937_64 engine(23);
    std::uniform_int_distribution<std::int64_t> any(-10'000'000, 10'000'000);
    for (int i = 0; i < 50'000; ++i) {
        const Length length = Length::ticks(any(engine));
        for (const Marks &marks : {inch, metric, Marks{System::Inch, Length::inches(0, 1, 32)}}) {
            for (const Round round :
                 {Round::Nearest, Round::Down, Round::UpEighth, Round::UpQuarter, Round::Fine}) {
                const Shown told = show(length, marks, round);
                const Length step = stepOf(round, marks);
                const Length off = told.mark - length;
                QCOMPARE(told.mark.nearestTo(step), told.mark);
                const bool up = round == Round::UpEighth || round == Round::UpQuarter;
                if (round == Round::Down)
                    QVERIFY(off <= Length() && -off < step);
                else if (up)
                    QVERIFY(off >= Length() && off < step);
                else
                    QVERIFY(off.magnitude() * 2 <= step);
                if (up || round == Round::Down)
                    QVERIFY(told.lean == Lean::Exact);
                // The parts, put together again, are the mark.
                const Length unit = marks.system == System::Inch ? Length::inches(1) : Length::mm(1);
                const Length again = unit * told.whole + (unit * told.num).scaled(1, told.den);
                QCOMPARE(told.minus ? -again : again, told.mark);
            }
        }
    }
}

void ShowTest::scantAndGenerousBeginAtTheirMeasure()
{
    // 1/256 in is 31.75 ticks, 0.1 mm is 32.
    QCOMPARE(show(Length::inches(1) + Length::ticks(31), inch).lean, Lean::Exact);
    QCOMPARE(show(Length::inches(1) + Length::ticks(32), inch).lean, Lean::Generous);
    QCOMPARE(show(Length::inches(1) - Length::ticks(32), inch).lean, Lean::Scant);
    QCOMPARE(show(Length::mm(10) + Length::ticks(31), metric).lean, Lean::Exact);
    QCOMPARE(show(Length::mm(10) + Length::ticks(32), metric).lean, Lean::Generous);
    QCOMPARE(shown(Length::mmTenths(85), metric, Round::Fine), QStringLiteral("8.5 mm"));
    QCOMPARE(shown(Length::mm(298), metric), QStringLiteral("298 mm"));
    QCOMPARE(stepOf(Round::UpEighth, metric), Length::mm(2));
    QCOMPARE(stepOf(Round::UpQuarter, metric), Length::mm(5));
    QCOMPARE(stepOf(Round::Fine, metric), Length::mmTenths(5));
    QCOMPARE(shown(Length::ticks(8128 * 5 / 16 + 2), metric, Round::Down), QStringLiteral("7 mm"));
    QVERIFY(!show(Length::overflow(), inch).valid);
    QCOMPARE(show(Length::mm(3), metric).den, 1); // a whole number is no fraction
    // Where no mark is named a ruler has sixteenths or millimetres.
    QCOMPARE(stepOf(Round::Nearest, {System::Inch, Length()}), Length::inches(0, 1, 16));
    QCOMPARE(stepOf(Round::Nearest, {System::Metric, Length()}), Length::mm(1));
}

void ShowTest::tellsClothAsItIsSold()
{
    const Length eighth = Length::inches(4, 1, 2);
    QCOMPARE(textSold(Length::inches(37, 1, 4), eighth, System::Inch), std::string("1 1/8 yd"));
    QCOMPARE(textSold(Length::inches(36), eighth, System::Inch), std::string("1 yd"));
    QCOMPARE(textSold(Length::inches(1), eighth, System::Inch), std::string("1/8 yd"));
    QCOMPARE(textSold(Length::mm(946), Length::mm(100), System::Metric), std::string("1.0 m"));
    QCOMPARE(textSold(Length::mm(1250), Length::mm(50), System::Metric), std::string("1.25 m"));
    for (int cm = 5; cm < 400; cm += 5) { // as printf writes it, without the last nought of two
        QByteArray metres = QByteArray::number(cm / 100.0, 'f', 2);
        if (metres.endsWith('0'))
            metres.chop(1);
        QCOMPARE(textSold(Length::mm(cm * 10), Length::mm(50), System::Metric),
                 (metres + " m").toStdString());
    }
    // Eighths of a yard in lowest terms.
    const std::array told{"1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
    for (std::size_t n = 0; n < told.size(); ++n)
        QCOMPARE(textSold(eighth * static_cast<std::int64_t>(n + 1), eighth, System::Inch),
                 std::string(told[n]) + " yd");
    // F28's class by hand: 180 1/4 in is sold as 5 1/8 yd.
    QCOMPARE(textSold(Length::inches(180, 1, 4), eighth, System::Inch), std::string("5 1/8 yd"));
}

// F0 | published figure | ISO/IEC 7810, note 1: 85.598 mm is printed 85.60 and is not to be reconverted
void ShowTest::cardIsToldAsItsStandardPrintsIt()
{
    // ISO/IEC 7810, note 1: 3.370 in is 85.598 mm but is printed 85.60: the two are not to be reconverted.
    QCOMPARE(shown(Length::ticks(std::llround(85.598 * 320)), Marks{System::Metric, Length::mmTenths(5)}),
             QStringLiteral("85.5 mm"));
    QVERIFY(Length::mmTenths(856) != Length::ticks(std::llround(3.370 * 8128)));
}

QTEST_GUILESS_MAIN(ShowTest)
#include "tst_show.moc"
