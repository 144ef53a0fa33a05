// SPDX-License-Identifier: MIT
//
// Published figures of four-sided figures, each with its source beside it.
#include "made/truesquare.h"
#include "madehelp.h"

#include <numbers>

using namespace matside;
using namespace madehelp;

namespace {

/// Bretschneider's formula in its diagonal form, ¼ √(4 p² q² − (a² + c² − b² − d²)²).
double bretschneider(const Six &s)
{
    const double mixed = s[0] * s[0] + s[2] * s[2] - s[1] * s[1] - s[3] * s[3];
    return std::sqrt(4 * s[4] * s[4] * s[5] * s[5] - mixed * mixed) / 4;
}

bool near(double a, double b, double within)
{
    return std::abs(a - b) <= within;
}

} // namespace

class QuadrilateralTest : public QObject {
    Q_OBJECT
private slots:
    void determinantOfFiveFours();
    void determinantIsThatOfTheBorderedMatrix();
    void areaFollowsBretschneider_data();
    void areaFollowsBretschneider();
    void equalDiagonalsAloneAreNoSquare();
    void shearedBlockGivesItsOffset();
    void caseFifteen();
    void workedLean();
    void signaturesAreToldApart_data();
    void signaturesAreToldApart();
    void aTiltedSideAloneWanders();
    void trueRectangleAgainstBruteForce_data();
    void trueRectangleAgainstBruteForce();
    void trimOrderStartsAtTheBaseAndEndsAtTheTilt();
    void trimOrderIsTheSameForATurnedBlock();
};

// F23 | published figure | Wirth and Dreiding, Elem. Math. 64 (2009), section 1: five edges of 4 allow
//    | no sixth of 7
void QuadrilateralTest::determinantOfFiveFours()
{
    // Wirth and Dreiding, "Edge lengths determining tetrahedrons", Elem. Math. 64 (2009), section 1: with
    // five edges of 4 the sixth stays under 4 √3, so 7 cannot be; the determinant −1568 follows by
    // arithmetic.
    QVERIFY(near(cayleyMenger({4, 4, 4, 4, 4, 7}), -1568, 1e-9));
    QVERIFY(near(cayleyMenger({4, 4, 4, 4, 4, 4 * std::numbers::sqrt3}), 0, 1e-9));
    QVERIFY(cayleyMenger({4, 4, 4, 4, 4, 6.9}) > 0);
    // A regular tetrahedron of edge 1 has V = √2/12, so 288 V² = 4 (any table of solids).
    QVERIFY(near(cayleyMenger({1, 1, 1, 1, 1, 1}), 4, 1e-12));
    // The 3-4-5 rectangle closes in the plane.
    QVERIFY(near(cayleyMenger({3, 4, 3, 4, 5, 5}), 0, 1e-9));
}

void QuadrilateralTest::determinantIsThatOfTheBorderedMatrix()
{
    // The definition: the 5 × 5 determinant of squared distances bordered by ones (Sommerville 1958), here by
    // elimination.
    const Six six{5.1, 6.2, 5.3, 4.4, 7.5, 7.1};
    const double a = six[0] * six[0], b = six[1] * six[1], c = six[2] * six[2], d = six[3] * six[3],
                 p = six[4] * six[4], q = six[5] * six[5];
    double m[5][5] = {{0, 1, 1, 1, 1}, {1, 0, a, p, d}, {1, a, 0, b, q}, {1, p, b, 0, c}, {1, d, q, c, 0}};
    double determinant = 1;
    for (int i = 0; i < 5; ++i) {
        int pivot = i;
        for (int r = i; r < 5; ++r)
            if (std::abs(m[r][i]) > std::abs(m[pivot][i]))
                pivot = r;
        if (pivot != i) {
            for (int k = 0; k < 5; ++k)
                std::swap(m[i][k], m[pivot][k]);
            determinant = -determinant;
        }
        determinant *= m[i][i];
        for (int r = i + 1; r < 5; ++r)
            for (int k = 4; k >= i; --k)
                m[r][k] -= m[i][k] * m[r][i] / m[i][i];
    }
    QVERIFY2(near(cayleyMenger(six), determinant, 1e-6 * std::abs(determinant)),
             qPrintable(QStringLiteral("%1 and %2").arg(cayleyMenger(six)).arg(determinant)));
}

void QuadrilateralTest::areaFollowsBretschneider_data()
{
    QTest::addColumn<Readings>("read");
    QTest::addColumn<double>("area");
    // Arithmetic.
    QTest::newRow("3-4-5 rectangle") << readings(3, 4, 3, 4, 5, 5) << 12.0;
    QTest::newRow("rhombus of 4, diagonals 4 and 4 √3")
        << readings(4, 4, 4, 4, 4, 4 * std::numbers::sqrt3) << 13.8564;
    // A worked page on cyclic quadrilaterals: sides 5, 6, 5, 4.
    QTest::newRow("trapezoid 5, 6, 5, 4") << readings(5, 6, 5, 4, 7, 7) << 24.494897;
    // Reckoned from the corners (0,0), (12.5,.06), (12.44,12.56), (−.05,12.5).
    QTest::newRow("crooked block") << readings(12.50014, 12.50014, 12.49014, 12.5001, 17.67787, 17.67077)
                                   << 156.1908;
    QTest::newRow("block of 12 1/2 sheared by 1/8")
        << readings(12.5, 12.5, 12.5, 12.5, 17.76584, 17.58906) << 156.2422;
}
// F23 | published figure | Bretschneider's formula in its diagonal form, with the figures of a worked
//    | page on cyclic quadrilaterals
void QuadrilateralTest::areaFollowsBretschneider()
{
    QFETCH(Readings, read);
    QFETCH(double, area);
    const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
    QVERIFY(fit.settled);
    const double square = double(Length::ticksPerInch) * Length::ticksPerInch;
    QVERIFY(near(bretschneider(inTicks(read)) / square, area, 2e-3));
    // It is the same wherever the shape lies.
    Shape elsewhere = fit.shape;
    for (Point &corner : elsewhere.corner)
        corner = {corner.x + 3.0 * Length::ticksPerInch, corner.y + 5.0 * Length::ticksPerInch};
    QVERIFY(near(areaOf(elsewhere) / square, area, 2e-3));
    QVERIFY2(near(areaOf(fit.shape) / square, area, 2e-3),
             qPrintable(QString::number(areaOf(fit.shape) / square, 'f', 6)));
    // Six lengths that close in the plane leave nothing over.
    QVERIFY(std::abs(fit.disagreement) < 3);
    // A tick in the readings moves the determinant by some hundredths; a sixteenth by hundreds.
    Six unit = inTicks(read);
    for (double &length : unit)
        length = asInches(length);
    QVERIFY(std::abs(cayleyMenger(unit)) < 1e-3 * std::pow(std::max(unit[4], unit[5]), 6));
}

void QuadrilateralTest::equalDiagonalsAloneAreNoSquare()
{
    // The same trapezoid has both diagonals 7 (Ptolemy: p q = a c + b d = 49) and corners of 78.463° and
    // 101.537°: the guild rule of equal diagonals does not prove a square.
    const Fit fit = fitTo(readings(5, 6, 5, 4, 7, 7), halfMark(in(0, 1, 16)));
    const auto &c = fit.shape.corner;
    const double angle = std::atan2(c[3].y - c[0].y, c[3].x - c[0].x) * 180 / std::numbers::pi;
    QVERIFY2(near(angle, 101.537, 0.002) || near(angle, 78.463, 0.002), qPrintable(QString::number(angle)));
    // A block with such a taper, but near enough to square for a block: never called plain.
    const Shape taper = block(6, 6, 0, {{{-0.0625, 0}, {0.0625, 0}, {0, 0}, {0, 0}}});
    const Finding finding = judge(readOff(taper), Measured::Outline, outlineOf(in(6), in(6), in(0, 1, 2)),
                                  usualTolerances(System::Inch), sixteenths());
    QVERIFY((readOff(taper).diagonals[0] - readOff(taper).diagonals[1]).magnitude() <= Length::ticks(1));
    QCOMPARE(finding.kind, FindingKind::Taper);
    QCOMPARE(*finding.side, Side::Top);
}

void QuadrilateralTest::shearedBlockGivesItsOffset()
{
    // Arithmetic: 12 1/2 sheared by 1/8 has diagonals 17.76584 and 17.58906; (p² − q²)/(4 a) = 0.125, the
    // difference 0.17678 = √2 · 1/8, the turn 0.573°.
    const Readings read = readings(12.5, 12.5, 12.5, 12.5, 17.76584, 17.58906);
    const Departure departure = departureOf(inTicks(read));
    QVERIFY(near(asInches(departure.lean), 0.125, 1e-4));
    const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
    const double degrees =
        (turnOf(fit.shape, Side::Top) - turnOf(fit.shape, Side::Left)) * 180 / std::numbers::pi;
    QVERIFY2(near(degrees, 0.573, 0.001), qPrintable(QString::number(degrees)));
}

void QuadrilateralTest::caseFifteen()
{
    // Worked by hand in the trade notes: sides 7, diagonals 10 and 9 13/16.
    const Readings read = readings(7, 7, 7, 7, 10, 9.8125);
    const Six six = inTicks(read);
    QVERIFY(near(asInches(quickCheck(six)), 0.020, 0.0005));
    const Departure departure = departureOf(six);
    QVERIFY(near(asInches(departure.lean), 0.133, 0.0005));
    QVERIFY(near(asInches(departure.opening[1]), 0.143, 0.0005));
    QVERIFY(near(asInches(departure.opening[3]), 0.143, 0.0005));
    QVERIFY(near(asInches(departure.opening[0]), -0.122, 0.0005));
    QVERIFY(near(asInches(departure.opening[2]), -0.122, 0.0005));
    const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
    const double off = mostWander(fit.shape, turnOf(fit.shape, Side::Bottom));
    QVERIFY(near(asInches(off), 0.066, 0.001));
    QVERIFY(near(asInches(mostWander(fit.shape, splitTurn(fit.shape))), 0.033, 0.001));
    const Marks marks = sixteenths();
    const auto shown = [&](Length length) { return text(show(length, marks, Round::Down)); };
    const Pair one = trueOffSide(fit.shape, Side::Bottom, true).size, split = trueSplit(fit.shape, true).size;
    QVERIFY(near(one.along.asInches(), 6.867, 0.004));
    QVERIFY(near(split.along.asInches(), 6.934, 0.004));
    QCOMPARE(shown(one.along), std::string("6 13/16 in"));
    QCOMPARE(shown(split.along), std::string("6 7/8 in"));
}

void QuadrilateralTest::workedLean()
{
    // Worked in the trade notes (F23): sides 6, diagonals 8 5/8 and 8 3/8.
    const Readings read = readings(6, 6, 6, 6, 8.625, 8.375);
    QVERIFY(near(asInches(quickCheck(inTicks(read))), 0.044, 0.0005));
    QVERIFY(near(asInches(departureOf(inTicks(read)).lean), 0.177, 0.0005));
    QVERIFY(near(asInches(departureOf(inTicks(read)).opening[1]), 0.199, 0.0005));
    QVERIFY(near(asInches(departureOf(inTicks(read)).opening[2]), -0.155, 0.0005));
    const Fit fit = fitTo(read, halfMark(in(0, 1, 16)));
    const auto shown = [&](Length length) { return text(show(length, sixteenths(), Round::Down)); };
    QCOMPARE(shown(trueOffSide(fit.shape, Side::Top, true).size.along), std::string("5 13/16 in"));
    QCOMPARE(shown(trueSplit(fit.shape, true).size.along), std::string("5 7/8 in"));
    QCOMPARE(shown(trueLargest(fit.shape, true).size.along), std::string("5 7/8 in"));
}

void QuadrilateralTest::signaturesAreToldApart_data()
{
    QTest::addColumn<Shape>("shape");
    QTest::addColumn<int>("what");
    QTest::addColumn<int>("side");
    QTest::addColumn<double>("tilt");
    const auto row = [](const char *name, const Shape &shape, Crooked what, Side side, double tilt) {
        QTest::newRow(name) << shape << int(what) << int(side) << tilt;
    };
    using Moves = std::array<std::array<double, 2>, 4>;
    const double t = 0.1;
    row("square", block(6, 6), Crooked::No, Side::Top, 0);
    row("lean", block(6, 6, 0.2), Crooked::No, Side::Top, 0);
    row("right, top out", block(6, 7, 0, Moves{{{0, 0}, {t, 0}, {0, 0}, {0, 0}}}), Crooked::OneSide,
        Side::Right, t);
    row("right, bottom out", block(6, 7, 0, Moves{{{0, 0}, {0, 0}, {t, 0}, {0, 0}}}), Crooked::OneSide,
        Side::Right, t);
    row("left, top in", block(6, 7, 0, Moves{{{t, 0}, {0, 0}, {0, 0}, {0, 0}}}), Crooked::OneSide, Side::Left,
        t);
    row("left, bottom out", block(6, 7, 0, Moves{{{0, 0}, {0, 0}, {0, 0}, {-t, 0}}}), Crooked::OneSide,
        Side::Left, t);
    row("top, left up", block(6, 7, 0, Moves{{{0, -t}, {0, 0}, {0, 0}, {0, 0}}}), Crooked::OneSide, Side::Top,
        t);
    row("top, right down", block(7, 6, 0, Moves{{{0, 0}, {0, t}, {0, 0}, {0, 0}}}), Crooked::OneSide,
        Side::Top, t);
    row("bottom, right down", block(7, 6, 0, Moves{{{0, 0}, {0, 0}, {0, t}, {0, 0}}}), Crooked::OneSide,
        Side::Bottom, t);
    row("bottom, left up", block(7, 6, 0, Moves{{{0, 0}, {0, 0}, {0, 0}, {0, -t}}}), Crooked::OneSide,
        Side::Bottom, t);
    row("top of a long block", block(24, 6, 0, Moves{{{0, -t}, {0, 0}, {0, 0}, {0, 0}}}), Crooked::OneSide,
        Side::Top, t);
    row("bottom of a narrow one", block(6, 24, 0, Moves{{{0, 0}, {0, 0}, {0, t}, {0, 0}}}), Crooked::OneSide,
        Side::Bottom, t);
    row("wide top", block(6, 6, 0, Moves{{{-t, 0}, {t, 0}, {0, 0}, {0, 0}}}), Crooked::Taper, Side::Top, t);
    row("wide bottom", block(6, 6, 0, Moves{{{0, 0}, {0, 0}, {t, 0}, {-t, 0}}}), Crooked::Taper, Side::Bottom,
        t);
    row("wide right", block(6, 6, 0, Moves{{{0, 0}, {0, -t}, {0, t}, {0, 0}}}), Crooked::Taper, Side::Right,
        t);
    row("wide left", block(6, 6, 0, Moves{{{0, -t}, {0, 0}, {0, 0}, {0, t}}}), Crooked::Taper, Side::Left, t);
    row("tilt in a strong lean", block(6, 6, 0.25, Moves{{{0, 0}, {0, 0}, {t, 0}, {0, 0}}}), Crooked::LeanToo,
        Side::Top, t);
}
void QuadrilateralTest::signaturesAreToldApart()
{
    QFETCH(Shape, shape);
    QFETCH(int, what);
    QFETCH(int, side);
    QFETCH(double, tilt);
    const Fit fit = fitTo(readOff(shape), halfMark(in(0, 1, 16)));
    const Tilt found = tiltOf(departureOf(lengthsOf(fit.shape)), Length::ticksPerInch / 16.0);
    QCOMPARE(int(found.what), what);
    if (what == int(Crooked::OneSide) || what == int(Crooked::Taper))
        QCOMPARE(int(found.side), side);
    QVERIFY(near(asInches(found.tilt), tilt, 0.002));
}

void QuadrilateralTest::aTiltedSideAloneWanders()
{
    // One corner moved along a side's neighbour tilts that side alone: a straight cut through its middle
    // misses its ends by half as much, and the other sides not at all.
    using Moves = std::array<std::array<double, 2>, 4>;
    const double t = 0.125;
    const std::array<Moves, 4> tilted{
        Moves{{{0, 0}, {0, t}, {0, 0}, {0, 0}}}, Moves{{{0, 0}, {0, 0}, {t, 0}, {0, 0}}},
        Moves{{{0, 0}, {0, 0}, {0, 0}, {0, t}}}, Moves{{{-t, 0}, {0, 0}, {0, 0}, {0, 0}}}};
    for (std::size_t side = 0; side < 4; ++side) {
        const std::array<double, 4> wander = wanderAt(block(6, 7, 0, tilted[side]), 0);
        for (std::size_t other = 0; other < 4; ++other)
            QVERIFY(near(asInches(wander[other]), other == side ? t / 2 : 0, 1e-9));
    }
}

void QuadrilateralTest::trueRectangleAgainstBruteForce_data()
{
    QTest::addColumn<double>("w");
    QTest::addColumn<double>("h");
    QTest::addColumn<double>("lean");
    QTest::newRow("square") << 7.0 << 7.0 << 0.13;
    QTest::newRow("square, the other way") << 6.0 << 6.0 << -0.18;
    QTest::newRow("upright") << 5.0 << 7.0 << 0.16;
    QTest::newRow("level") << 8.0 << 5.0 << -0.2;
}
// F23 | independent derivation | every rectangle on a fine grid of turns that lies in the block by its
//    | corners
void QuadrilateralTest::trueRectangleAgainstBruteForce()
{
    // F23's formulas, and every rectangle on a fine grid of turns that lies in the block by its corners.
    QFETCH(double, w);
    QFETCH(double, h);
    QFETCH(double, lean);
    const Shape shape = block(w, h, lean);
    const bool square = w == h;
    const double theta = std::abs(lean) / h, least = std::min(w, h);
    const double slack = 1.5 * lean * lean / least; // the formulas are right to the first power of the lean
    const Pair off = trueOffSide(shape, Side::Bottom, square).size, split = trueSplit(shape, square).size;
    QVERIFY(near(off.along.asInches(), square ? least - std::abs(lean) : w - std::abs(lean), 1e-3));
    QVERIFY(near(off.across.asInches(), square ? least - std::abs(lean) : h, 1e-3));
    QVERIFY(near(split.along.asInches(), w - h * theta / 2, slack));
    QVERIFY(near(split.across.asInches(), h - w * theta / 2, slack));
    const auto inside = [&](double x, double y) { // of the four side lines, in inches
        for (std::size_t i = 0; i < 4; ++i) {
            const Point a = shape.corner[i], b = shape.corner[(i + 1) % 4];
            const double ax = asInches(a.x), ay = asInches(a.y), bx = asInches(b.x), by = asInches(b.y);
            if ((bx - ax) * (y - ay) - (by - ay) * (x - ax) < -1e-4)
                return false;
        }
        return true;
    };
    const auto fits = [&](double along, double across, double turn) { // centred, as a lean asks
        const double c = std::cos(turn), s = std::sin(turn), cx = w / 2, cy = h / 2;
        for (const double i : {-0.5, 0.5})
            for (const double j : {-0.5, 0.5})
                if (!inside(cx + i * along * c - j * across * s, cy + i * along * s + j * across * c))
                    return false;
        return true;
    };
    const double turn = trueSplit(shape, square).turned;
    QVERIFY(fits(split.along.asInches(), split.across.asInches(), turn));
    // At the split's own turn nothing larger than by lean²/side fits; over all turns a square hardly more.
    QVERIFY(!fits(split.along.asInches() + slack + 1e-3, split.across.asInches() + slack + 1e-3, turn));
    double largest = 0;
    for (double at = -2 * theta; at <= 2 * theta; at += theta / 200)
        for (double side = least - std::abs(lean); side < least + 0.01; side += 1e-3)
            if (square && fits(side, side, at))
                largest = std::max(largest, side);
    if (square)
        QVERIFY2(near(largest, split.along.asInches(), slack + 2e-3), qPrintable(QString::number(largest)));
}

void QuadrilateralTest::trimOrderStartsAtTheBaseAndEndsAtTheTilt()
{
    using Moves = std::array<std::array<double, 2>, 4>;
    const auto order = trimOrder(block(6, 6, 0, Moves{{{0, 0}, {0.1, 0}, {0, 0}, {0, 0}}}));
    QCOMPARE(order.front(), Side::Left); // its two corners are square
    QCOMPARE(order.back(), Side::Right);
    QCOMPARE(trimOrder(block(6, 6, 0, Moves{{{0, -0.1}, {0, 0}, {0, 0}, {0, 0}}})).front(), Side::Bottom);
    QCOMPARE(trimOrder(block(6, 6, 0, Moves{{{0, -0.1}, {0, 0}, {0, 0}, {0, 0}}})).back(), Side::Top);
    // A leaning oblong is squared off a long side: over the short way the lean wanders least.
    const Side first = trimOrder(block(8, 5, 0.15)).front();
    QVERIFY(first == Side::Top || first == Side::Bottom);
    const Side upright = trimOrder(block(5, 8, 0.15)).front();
    QVERIFY(upright == Side::Left || upright == Side::Right);
    // Where all are alike she goes on round the block.
    const auto square = trimOrder(block(6, 6));
    QCOMPARE(int(square[1]), (int(square[0]) + 1) % 4);
    for (const Shape &shape : {block(6, 6), block(6, 6, 0.2), block(5, 8, -0.1)}) {
        auto sides = trimOrder(shape);
        QVERIFY((int(sides[0]) + int(sides[1])) % 2 == 1); // the second is a neighbour of the first
        std::sort(sides.begin(), sides.end());
        QVERIFY(std::adjacent_find(sides.begin(), sides.end()) == sides.end());
    }
}

void QuadrilateralTest::trimOrderIsTheSameForATurnedBlock()
{
    // A block lying askew on the mat is the same block: only its corners' places are turned.
    Chance chance(seed(77));
    for (int i = 0; i < count(500); ++i) {
        std::array<std::array<double, 2>, 4> moved{};
        for (auto &corner : moved)
            corner = {chance.normal(0.1), chance.normal(0.1)};
        const Shape shape = block(chance.between(5, 9), chance.between(5, 9), chance.normal(0.1), moved);
        const double by = chance.between(-0.05, 0.05);
        Shape turned = shape;
        for (std::size_t k = 0; k < 4; ++k) {
            const Point was = shape.corner[k];
            turned.corner[k].x = was.x * std::cos(by) - was.y * std::sin(by);
            turned.corner[k].y = was.x * std::sin(by) + was.y * std::cos(by);
        }
        const auto order = trimOrder(shape);
        QCOMPARE(trimOrder(turned), order);
        // Last comes the side that wanders most once the first is squared off.
        const auto wander = wanderAt(shape, turnOf(shape, order[0]));
        for (const Side side : {order[1], order[2]})
            QVERIFY(wander[std::size_t(side)] <= wander[std::size_t(order[3])] + 1);
    }
}

QTEST_APPLESS_MAIN(QuadrilateralTest)
#include "tst_quadrilateral.moc"
