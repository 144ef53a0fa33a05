// SPDX-License-Identifier: MIT
//
// Rows against each other and the finished piece (F24: common practice, no published limit is known).
#include "made/piece.h"
#include "made/rows.h"
#include "made/testjoin.h"
#include "madehelp.h"

using namespace matside;
using namespace madehelp;

namespace {

MadeRow row(const char *name, Length length, std::vector<Length> joins = {})
{
    MadeRow made;
    made.row = name;
    made.length = length;
    made.joins = std::move(joins);
    return made;
}
const Tolerances usual = usualTolerances(System::Inch);

} // namespace

class RowsAndPieceTest : public QObject {
    Q_OBJECT
private slots:
    void rowsNearTheMeanAreLeft();
    void rowsAreEasedResewnOrTakenApart();
    void deeperSeamsBringARowToTheMean();
    void seamErrorsAddUp_data();
    void seamErrorsAddUp();
    void oneColumnHasNoSeams();
    void crossings();
    void smallPiece();
    void largePieceMayBeOffByMore();
    void equalDiagonalsDoNotProveThePiece();
    void misreadTape();
    void bothChecksMustAgree();
    void misreadDiagonalIsTold();
};

void RowsAndPieceTest::rowsNearTheMeanAreLeft()
{
    const RowsFinding found =
        judgeRows({row("A", in(21)), row("B", in(21, 1, 16)), row("C", in(21))}, 3, usual);
    QVERIFY((found.mean - in(21, 1, 48)).magnitude() <= Length::ticks(1));
    for (const RowFinding &finding : found.rows)
        QCOMPARE(std::string(nameOf(finding.does)), std::string("leave"));
    QVERIFY(judgeRows({}, 3, usual).rows.empty());
}

void RowsAndPieceTest::rowsAreEasedResewnOrTakenApart()
{
    // c = 3: eased up to 3/16; seams mend 2/16 and easing 3/16 more; beyond 5/16 something is off size.
    const auto off = [](Length by) { // a row that far from the mean of two
        return judgeRows({row("A", in(21) + by * 2), row("B", in(21))}, 3, usual).rows[0];
    };
    QVERIFY(off(in(0, 1, 16)).does == RowRemedy::Leave);
    QVERIFY(off(in(0, 1, 8)).does == RowRemedy::Ease);
    QVERIFY(off(in(0, 3, 16)).does == RowRemedy::Ease);
    QVERIFY(off(in(0, 7, 32)).does == RowRemedy::ResewSeams);
    QVERIFY(off(in(0, 5, 16)).does == RowRemedy::ResewSeams);
    QVERIFY(off(in(0, 3, 8)).does == RowRemedy::TakeApart);
    QVERIFY(off(in(0, -3, 8)).does == RowRemedy::TakeApart);
    QCOMPARE(off(in(0, 5, 16)).toEase, in(0, 3, 16));
}

void RowsAndPieceTest::deeperSeamsBringARowToTheMean()
{
    Chance chance(seed(2));
    for (int i = 0; i < count(1'000); ++i) {
        const auto columns = std::int64_t(2 + chance.below(12));
        const Length seam = in(0, 1, 2) + inch(chance.between(-0.02, 0.02));
        const auto lengthAt = [&](Length sewn) {
            return rowLength(columns, in(7), gapLeft(in(2), sewn, Length()));
        };
        const RowsFinding found =
            judgeRows({row("A", lengthAt(seam)), row("B", lengthAt(in(0, 1, 2)))}, columns, usual);
        const Length mended = lengthAt(seam + found.rows[0].seamBy);
        QVERIFY((mended - found.mean).magnitude() <= Length::ticks(4 * columns));
    }
}

void RowsAndPieceTest::seamErrorsAddUp_data()
{
    QTest::addColumn<int>("columns");
    QTest::addColumn<Length>("change");
    // Worked by hand in the trade notes: 1/32 in too deep, row changes by −4 (c − 1) δ.
    QTest::newRow("3") << 3 << in(0, -1, 4);
    QTest::newRow("4") << 4 << in(0, -3, 8);
    QTest::newRow("12") << 12 << in(-1, -3, 8);
}
void RowsAndPieceTest::seamErrorsAddUp()
{
    QFETCH(int, columns);
    QFETCH(Length, change);
    const Length deep = rowLength(columns, in(7), gapLeft(in(2), in(0, 17, 32), Length()));
    QCOMPARE(deep - in(7) * columns, change);
    // A published lesson on seams adds errors up in the same way: 1/32 in over 16 seams is 1/2 in.
    QCOMPARE(in(0, 1, 32) * 16, in(0, 1, 2));
}

void RowsAndPieceTest::oneColumnHasNoSeams()
{
    const RowsFinding found = judgeRows({row("A", in(7, 1, 4)), row("B", in(7))}, 1, usual);
    QVERIFY(found.rows[0].does == RowRemedy::TakeApart);
    QCOMPARE(found.rows[0].seamBy, Length());
}

void RowsAndPieceTest::crossings()
{
    const auto found =
        judgeCrossings({row("A", in(21), {in(7), in(14)}), row("B", in(21), {in(7, 1, 16), in(14)}),
                        row("C", in(21), {in(7), in(13, 29, 32)}), row("D", in(21))},
                       usual);
    // Of two that are off the worse is told, whichever comes first.
    for (const auto &places :
         {std::vector{in(7, 1, 32), in(14, 1, 16)}, std::vector{in(7, 1, 16), in(14, 1, 32)}}) {
        const auto off = judgeCrossings({row("A", in(21), {in(7), in(14)}), row("B", in(21), places)}, usual);
        QCOMPARE(off[0].worst, in(0, 1, 16));
        QCOMPARE(off[0].join, std::int64_t(places[1] > in(14, 1, 32) ? 2 : 1));
    }
    QCOMPARE(found.size(), std::size_t(3));
    QVERIFY(found[0].good);
    QCOMPARE(found[0].worst, in(0, 1, 16));
    QCOMPARE(found[0].join, std::int64_t(1));
    QVERIFY(!found[1].good);
    QCOMPARE(found[1].worst, in(0, -3, 32));
    QCOMPARE(found[1].join, std::int64_t(2));
    QVERIFY(found[2].good && found[2].join == 0);
}

void RowsAndPieceTest::smallPiece()
{
    const PieceFinding good = judgePiece(readOff(block(21, 21, 0.06)), usual, sixteenths());
    QVERIFY(!good.measureAgain && good.good);
    QVERIFY(std::abs(good.within.asInches() - 0.03) < 0.001);
    QCOMPARE(good.diagonalLimit, in(0, 1, 8));
    // Opposite sides that differ by the limit itself are still within it; a tick more is not.
    std::array<std::array<double, 2>, 4> wide{};
    wide[1][0] = 0.125;
    Readings read = readOff(block(21, 21, 0, wide));
    QCOMPARE(read.sides[0] - read.sides[2], in(0, 1, 8));
    QVERIFY(judgePiece(read, usual, sixteenths()).good);
    read.sides[0] += Length::ticks(1);
    QVERIFY(!judgePiece(read, usual, sixteenths()).good);
    const PieceFinding lean = judgePiece(readOff(block(21, 21, 0.25)), usual, sixteenths());
    QVERIFY(!lean.measureAgain && !lean.good);
    QVERIFY(std::abs(lean.trueSize.along.asInches() - (21 - 0.125)) < 0.005);
}

void RowsAndPieceTest::largePieceMayBeOffByMore()
{
    std::array<std::array<double, 2>, 4> wide{};
    wide[1][0] = 0.2;
    const PieceFinding quilt = judgePiece(readOff(block(84, 105, 0, wide)), usual, sixteenths());
    QVERIFY(quilt.good);
    QCOMPARE(quilt.oppositeLimit, in(0, 1, 4));
    QCOMPARE(quilt.diagonalLimit, in(0, 7, 16)); // 105/60 of 1/4
    QVERIFY(!judgePiece(readOff(block(21, 30, 0, wide)), usual, sixteenths()).good);
}

void RowsAndPieceTest::equalDiagonalsDoNotProveThePiece()
{
    // A guild's tip calls a piece squared when its diagonals agree; a taper has equal ones too.
    std::array<std::array<double, 2>, 4> taper{};
    taper[0][0] = -0.15;
    taper[1][0] = 0.15;
    const PieceFinding found = judgePiece(readOff(block(21, 21, 0, taper)), usual, sixteenths());
    QVERIFY(found.diagonals.magnitude() <= Length::ticks(1));
    QVERIFY(!found.measureAgain && !found.good);
}

void RowsAndPieceTest::misreadTape()
{
    Readings read = readOff(block(21, 30));
    read.sides[1] += in(0, 1, 2);
    QVERIFY(judgePiece(read, usual, sixteenths()).measureAgain);
    QCOMPARE(judgePiece(read, usual, sixteenths()).trueSize, Pair{});
    read.sides[1] = Length();
    QVERIFY(judgePiece(read, usual, sixteenths()).measureAgain);
}

void RowsAndPieceTest::bothChecksMustAgree()
{
    // A trapezoid of 24 and 18 by 20 closes in the plane. By Euler's theorem on quadrilaterals the check done
    // by hand is off by four times the square of what lies between the middles of its diagonals (3 in).
    std::array<std::array<double, 2>, 4> taper{};
    taper[2][0] = -3;
    taper[3][0] = 3;
    const Readings far = readOff(block(24, 20, 0, taper));
    const PieceFinding found = judgePiece(far, usual, sixteenths());
    QVERIFY(std::abs(found.K.asInches() + 4 * 9 / (2 * (24 + 18 + 2 * std::hypot(20, 3)) / 4)) < 0.001);
    QVERIFY(std::abs(fitTo(far, halfMark(in(0, 1, 16))).disagreement) < 3);
    QVERIFY(found.measureAgain);
    // Off by just what a tape may disagree, the readings hold.
    Readings read = readOff(block(21, 21));
    while (judgePiece(read, usual, sixteenths()).K < usual.doubtful * 2)
        read.diagonals[0] += Length::ticks(1);
    QCOMPARE(judgePiece(read, usual, sixteenths()).K, usual.doubtful * 2);
    QVERIFY(!judgePiece(read, usual, sixteenths()).measureAgain);
}

void RowsAndPieceTest::misreadDiagonalIsTold()
{
    // From coordinates: a leaning block read off whole, then one diagonal misread. What the sides and the
    // diagonal that was read rightly ask for is what the other was.
    Readings read = readOff(block(21, 30, 0.5));
    const Length truly = read.diagonals[1];
    read.diagonals[1] += in(2);
    const PieceFinding found = judgePiece(read, usual, sixteenths());
    QVERIFY(found.measureAgain);
    QVERIFY2((found.otherDiagonal - truly).magnitude() <= in(0, 1, 16),
             qPrintable(QString::number(found.otherDiagonal.asInches())));
    // Four sides of 21 and 30 in cannot hold a diagonal of 60: nothing is told of the other.
    read.diagonals[0] = in(60);
    QCOMPARE(judgePiece(read, usual, sixteenths()).otherDiagonal, Length());
}

QTEST_APPLESS_MAIN(RowsAndPieceTest)
#include "tst_rows_and_piece.moc"
