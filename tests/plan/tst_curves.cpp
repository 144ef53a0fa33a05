// SPDX-License-Identifier: MIT
//
// Rounded edges and bias (F16), sleeve and pillow. Cases worked by hand before there was a program; printed
// figures where a page gives one; and the arcs summed up point by point.
#include "plan/curves.h"
#include "plan/problems.h"
#include "planhelp.h"

#include <cmath>

using namespace matside;
using planhelp::in;

class CurvesTest : public QObject {
    Q_OBJECT

private slots:
    void arcsAreThoseOfPoints();
    void scallopWorkedByHand();
    void scallopsAreThoseOfPoints();
    void scallopsThatCannotBe();
    void printedSquaresForBias_data();
    void printedSquaresForBias();
    void theTubeHoldsItsSeams();
    void stripsAreThoseOfTheSheet();
    void cornersBite();
    void roundedCornersOfAPiece();
    void aSquarePieceBecomesACircle();
    void anOblongGetsRoundEnds();
    void scallopedEdgeOfThePrintedExample();
    void scallopsBiteWhereTheyPassTheOutline();
    void leastHeightOfClothForBiasStrips();
    void cornersBeyondThePieceAreRefused();
    void squareCornersChangeNothing();
    void sleeve();
    void pillowCoversItsFront();
};

namespace {

/// Length of y(t) taken in many short straight steps: knows no formula for an arc.
template <class Curve> double walked(Curve curve)
{
    constexpr int steps = 200'000;
    double all = 0;
    auto last = curve(0.0);
    for (int i = 1; i <= steps; ++i) {
        const auto next = curve(static_cast<double>(i) / steps);
        all += std::hypot(next.first - last.first, next.second - last.second);
        last = next;
    }
    return all;
}

const double pi = std::acos(-1.0);

} // namespace

// F16 | independent derivation | arcs summed up in 200 000 straight steps
void CurvesTest::arcsAreThoseOfPoints()
{
    planhelp::Chance random(7);
    for (int i = 0; i < 40; ++i) {
        const Length radius = in(0, random.between(8, 640), 16);
        const double r = radius.asInches();
        const double quarter =
            walked([r](double t) { return std::pair(r * std::cos(t * pi / 2), r * std::sin(t * pi / 2)); });
        QVERIFY(std::abs(cornersSave(radius).asInches() - (8 * r - 4 * quarter)) < 2e-4);
        QVERIFY(std::abs(roundEdge(radius * 2).asInches() - 4 * quarter) < 2e-4);
    }
    // 1.717 for each unit of the radius, worked by hand.
    QVERIFY(std::abs(cornersSave(in(1)).asInches() - 1.717) < 0.0005);
}

void CurvesTest::scallopWorkedByHand()
{
    // 6 in across and 1 in deep: radius 5, arc 6.435; 28 of them 180 1/4 in round a 42 in topper.
    const auto found = scallop(in(6), in(1));
    QVERIFY(found);
    QCOMPARE(found->radius, in(5));
    QVERIFY(std::abs(found->arc.asInches() - 6.435) < 0.0005);
    QCOMPARE(found->arc.nearestTo(in(0, 1, 16)), in(6, 7, 16));
    const Length round = found->arc * 28;
    QVERIFY(std::abs(round.asInches() - 180.2) < 0.05);
    // √((180.2 + 12) × 1.25) + 3 = 18.5: cut 19.
    QCOMPARE(biasSquare(round + in(12), in(1, 1, 4), System::Inch), in(19));
    QCOMPARE(scallopBorder(in(1), in(0, 1, 4), System::Inch), in(1, 3, 4));
}

void CurvesTest::scallopsAreThoseOfPoints()
{
    planhelp::Chance random(11);
    for (int i = 0; i < 60; ++i) {
        const Length chord = in(0, random.between(16, 320), 16);
        const Length depth = Length::ticks(random.between(chord.count() / 40 + 1, chord.count() / 2));
        const auto found = scallop(chord, depth);
        QVERIFY(found);
        // The circle through the chord's ends and its deepest point, found from the three points.
        const double q = chord.asInches();
        const double y = depth.asInches();
        const double middle = (y * y - q * q / 4) / (2 * y); // of the circle, above the chord
        const double r = std::hypot(q / 2, middle);
        QVERIFY(std::abs(found->radius.asInches() - r) < 2e-4 + r * 1e-9);
        const double from = std::atan2(-middle, -q / 2);
        const double by = 2 * std::asin(std::min(1.0, q / 2 / r));
        const double arc = walked([&](double t) {
            return std::pair(r * std::cos(from - t * by), middle + r * std::sin(from - t * by));
        });
        QVERIFY2(std::abs(found->arc.asInches() - arc) < 5e-4, qPrintable(QString::number(arc)));
        QVERIFY(found->arc > chord);
    }
}

void CurvesTest::scallopsThatCannotBe()
{
    QVERIFY(!scallop(in(6), Length()));
    QVERIFY(!scallop(in(6), in(3, 1, 16))); // more than a half circle
    QVERIFY(!scallop(Length(), in(1)));
    QVERIFY(scallop(in(1000), in(1)));
    QVERIFY(!scallop(in(1000) + Length::ticks(1), in(1))); // beyond any piece
    const auto half = scallop(in(6), in(3));
    QVERIFY(half && half->radius == in(3));
    QVERIFY(std::abs(half->arc.asInches() - 3 * pi) < 2e-4);
}

void CurvesTest::printedSquaresForBias_data()
{
    QTest::addColumn<Length>("length");
    QTest::addColumn<Length>("width");
    QTest::addColumn<int>("printed");
    // √(L·W) brought up to a whole inch, as two teachers' pages print it (references part 3): without the
    // 3 in for seams that are added here.
    QTest::newRow("250 × 2: 22.36, cut 23") << in(250) << in(2) << 23;
    QTest::newRow("100 × 3 1/2: 18.71, cut 19") << in(100) << in(3, 1, 2) << 19;
    // A square's area over the strip's width, on two pages: 20 in gives 200 in of 2 in.
    QTest::newRow("200 × 2: 20") << in(200) << in(2) << 20;
}

// F16 | published figure | squares for bias of two teachers' pages: 250 in of 2 in from 23 in, 100 in
//    | of 3 1/2 in from 19 in
void CurvesTest::printedSquaresForBias()
{
    QFETCH(Length, length);
    QFETCH(Length, width);
    QFETCH(int, printed);
    QCOMPARE(biasSquare(length, width, System::Inch), in(printed + 3));
}

void CurvesTest::theTubeHoldsItsSeams()
{
    // Two seams of 1/4 in run the whole side of the square: (S² − 4aS)/W is left, by geometry; 36 in for 2 in
    // strips gives 630 in so.
    QCOMPARE((36.0 * 36 - 4 * 0.25 * 36) / 2, 630.0);
    planhelp::Chance random(13);
    for (int i = 0; i < 3000; ++i) {
        const Length length = in(0, random.between(320, 9600), 16);
        const Length width = in(0, random.between(16, 64), 16);
        const double side = biasSquare(length, width, System::Inch).asInches();
        QVERIFY((side * side - side) / width.asInches() >= length.asInches());
    }
}

void CurvesTest::stripsAreThoseOfTheSheet()
{
    // Lines at 45° laid on the sheet with their distance W: as many whole strips as lie between the two
    // slanted ends, counted one by one.
    planhelp::Chance random(5);
    for (int i = 0; i < 2000; ++i) {
        const Length h = in(0, random.between(128, 480), 16);
        const Length u = h + in(0, random.between(16, 400), 16);
        const Length w = in(0, random.between(16, 56), 16);
        const BiasStrips strips = biasStrips(h, u, w, System::Inch);
        std::int64_t counted = 0;
        const double run = w.asInches() * std::sqrt(2.0);
        while ((static_cast<double>(counted) + 1) * run <= (u - h).asInches() + 1e-9)
            ++counted;
        QCOMPARE(strips.number, counted);
        if (counted == 0) {
            QCOMPARE(strips.each, Length());
            QCOMPARE(strips.joined, Length());
            continue;
        }
        QVERIFY(std::abs(strips.each.asInches() - std::hypot(h.asInches(), h.asInches())) < 2e-4);
        QVERIFY(strips.joined <= strips.each * counted);
    }
    const BiasStrips none = biasStrips(in(20), in(18), in(2), System::Inch);
    QCOMPARE(none.number, std::int64_t(0));
}

void CurvesTest::cornersBite()
{
    // Worked by hand: radius 3 passes 1.243 in from the raw corner, the outline's corner stands at 0.707.
    QVERIFY(std::abs(cornerBite(in(3), in(0, 1, 2)).asInches() - 0.5355) < 0.0005);
    planhelp::Chance random(3);
    for (int i = 0; i < 3000; ++i) {
        const Length outside = in(0, random.between(1, 32), 32);
        const Length radius = in(0, random.between(1, 320), 32);
        // The outline's corner and the arc's middle, by coordinates from the raw corner.
        const double a = outside.asInches();
        const double r = radius.asInches();
        const double off = r - std::hypot(r - a, r - a); // of the outline's corner, inside the arc
        const bool square = r <= a;                      // its corner stands past where the arc begins
        if (!square)
            QVERIFY(std::abs(cornerBite(radius, outside).asInches() - std::max(0.0, -off)) < 2e-4);
        const Length clears = radiusThatClears(outside);
        QCOMPARE(cornerBite(clears, outside), Length());
        QVERIFY(cornerBite(clears + in(0, 1, 64), outside) > Length());
    }
}

void CurvesTest::roundedCornersOfAPiece()
{
    // Case 20: 21 × 21 raw, radius 3, single-fold bias, b = 1/4, W = 1 1/4.
    Project p = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    p.edge.seam = in(0, 1, 4);
    p.edge.binding = Binding::Single;
    p.edge.corner = {CornerKind::Rounded, in(3), {}};
    const Plan made = plan(p);
    QVERIFY(made.problems.empty());
    QCOMPARE(made.size.finished, (Pair{in(21), in(21)}));
    QCOMPARE(made.binding->cut, in(1, 1, 4));
    QVERIFY(std::abs((made.binding->length - made.binding->cut - p.slack).asInches() - 78.85) < 0.005);
    QVERIFY(std::abs(made.binding->length.asInches() - 88.1) < 0.005);
    QCOMPARE(made.binding->bias->square, in(14));
    const auto bites = [](const Problem &caution) { return caution.code == "corner-bites"; };
    const auto caution = std::find_if(made.cautions.begin(), made.cautions.end(), bites);
    QVERIFY(caution != made.cautions.end());
    QVERIFY(std::abs(std::get<Told>(caution->args.front()).length.asInches() - 0.54) < 0.005);
    QVERIFY(caution->offers.size() >= 2);
    // Where none is given the radius is 3 in.
    p.edge.corner.radius.reset();
    QCOMPARE(plan(p).binding->length, made.binding->length);
}

// F16 | independent derivation | π from the library: a circle is corners of half the side
void CurvesTest::aSquarePieceBecomesACircle()
{
    Project p = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    p.edge.corner.kind = CornerKind::Round;
    const Plan made = plan(p);
    QVERIFY2(made.problems.empty(), planhelp::codes(made.problems));
    QCOMPARE(made.basis.cornerRadius, in(10, 1, 2));
    const double around = (made.binding->length - made.binding->cut - p.slack).asInches();
    QVERIFY(std::abs(around - 21 * pi) < 0.001);
    QVERIFY(std::abs(roundEdge(in(21)).asInches() - 21 * pi) < 0.001);
    // The rim stands 10.5 √2 − 10.5 from the raw corner; the outline's corner stood √2/2 from it.
    QVERIFY(std::abs(made.binding->bias->bites.asInches() - (10.5 * std::sqrt(2.0) - 10.5 - std::sqrt(0.5))) <
            0.001);
    // One block more, and it is a circle again.
    p.blocks.columns = p.blocks.rows = 4;
    QCOMPARE(plan(p).basis.cornerRadius * 2, plan(p).size.finished.along);
}

void CurvesTest::anOblongGetsRoundEnds()
{
    Project p = planhelp::piece(5, 2, in(6), planhelp::hoopP(), in(40, 1, 2));
    p.edge.corner.kind = CornerKind::Round;
    const Plan made = plan(p);
    QVERIFY2(made.problems.empty(), planhelp::codes(made.problems));
    // 35 × 14: two straights of 21 and a circle of 14.
    const double around = (made.binding->length - made.binding->cut - p.slack).asInches();
    QVERIFY(std::abs(around - (42 + 14 * pi)) < 0.001);
}

// F16 | independent derivation | the worked scallop of 6 × 1 in, and the rim of 28 of them walked by points
void CurvesTest::scallopedEdgeOfThePrintedExample()
{
    // Seven chords of 6 in a side stand on the line 1 in inside a raw edge of 44 in.
    Project p = planhelp::piece(5, 5, in(7), planhelp::hoopP(), in(40, 1, 2));
    p.seam = in(0, 1, 2);
    p.edge.kind = EdgeKind::Framed;
    p.edge.outside = in(2, 1, 2);
    p.edge.seam = in(0, 1, 4);
    p.edge.binding = Binding::Single;
    p.edge.corner.kind = CornerKind::Scalloped;
    p.edge.corner.along = p.edge.corner.across = 7;
    const Plan made = plan(p);
    QVERIFY2(made.problems.empty(), planhelp::codes(made.problems));
    QCOMPARE(made.size.finished.along, in(44));
    const ScallopPlan &edge = *made.binding->bias->scallops;
    QCOMPARE(edge.depth, in(1));
    QCOMPARE(edge.chord, (Pair{in(6), in(6)}));
    QCOMPARE(edge.radius, (Pair{in(5), in(5)}));
    const double arc = walked([](double t) {
        const double x = 6 * t - 3;
        return std::pair(x, std::sqrt(25 - x * x) - 4);
    });
    const double around = (made.binding->length - made.binding->cut - p.slack).asInches();
    QVERIFY(std::abs(around - 28 * arc) < 0.002);
    // 180 1/4 in and two more, 1 1/4 in wide, by the printed rule √(L·W) + 3; in a border of 1 3/4 in and
    // more.
    QCOMPARE(made.binding->cut, in(1, 1, 4));
    QCOMPARE(made.binding->bias->square, in(19));
    QCOMPARE(edge.border, in(1, 3, 4));
    QVERIFY(!planhelp::has(made.cautions, "scallop-bites") && !planhelp::has(made.cautions, "scallop-near"));
}

void CurvesTest::scallopsBiteWhereTheyPassTheOutline()
{
    Project p = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    p.edge.corner.kind = CornerKind::Scalloped;
    // One to a block, and 1 in deep where nothing is said: half an inch into the stippling.
    Plan made = plan(p);
    QCOMPARE(made.binding->bias->scallops->along, 3);
    QCOMPARE(made.binding->bias->bites, in(0, 1, 2));
    QVERIFY(planhelp::has(made.cautions, "scallop-bites"));
    // As deep as the allowance: the points stand on the outline.
    p.edge.corner.depth = in(0, 1, 2);
    made = plan(p);
    QCOMPARE(made.binding->bias->bites, Length());
    QVERIFY(planhelp::has(made.cautions, "scallop-near"));
    // Half circles at most: 21 in with n of them are no deeper than 21 / 2 (n + 1).
    p.edge.corner.along = p.edge.corner.across = 6;
    p.edge.corner.depth = in(1, 1, 2);
    QVERIFY(plan(p).problems.empty());
    p.edge.corner.depth = in(1, 9, 16);
    made = plan(p);
    QVERIFY(planhelp::has(made.problems, "scallop-too-deep"));
    QVERIFY(applyTo(p, made.problems.front().offers.front()));
    QVERIFY(plan(p).problems.empty());
    QCOMPARE(*p.edge.corner.depth, in(1, 1, 2));
}

void CurvesTest::leastHeightOfClothForBiasStrips()
{
    planhelp::Chance random(9);
    for (int i = 0; i < 200; ++i) {
        const Length width = in(0, random.between(16, 64), 16);
        const Length usable = in(random.between(20, 60));
        const Length length = in(random.between(20, 400));
        const auto least = leastBiasStrips(length, usable, width, System::Inch);
        for (Length height = in(9); height < (least ? least->height : usable); height += in(9))
            QVERIFY(biasStrips(height, usable, width, System::Inch).joined < length);
        if (!least)
            continue;
        const BiasStrips all = biasStrips(least->height, usable, width, System::Inch);
        QVERIFY(least->strips.number <= all.number && least->strips.joined >= length);
        // Laid end to end, one strip fewer is too short: joins of 1/4 in across the bias take √2 / 2 in.
        const double each = least->height.asInches() * std::sqrt(2.0);
        const auto fewer = static_cast<double>(least->strips.number - 1);
        QVERIFY(fewer * each - (fewer - 1) * std::sqrt(0.5) < length.asInches() + 0.001);
    }
    QVERIFY(!leastBiasStrips(Length(), in(40), in(2), System::Inch));
}

void CurvesTest::cornersBeyondThePieceAreRefused()
{
    Project p = planhelp::piece(3, 3, in(6), planhelp::hoopP(), in(40, 1, 2));
    p.edge.corner = {CornerKind::Rounded, in(500), {}};
    const Plan made = plan(p);
    const auto found = std::find_if(made.problems.begin(), made.problems.end(), [](const Problem &problem) {
        return problem.code == "corner-too-round";
    });
    QVERIFY(found != made.problems.end());
    QCOMPARE(found->offers.size(), std::size_t(2));
}

void CurvesTest::squareCornersChangeNothing()
{
    Project p = planhelp::metricPiece();
    const Plan plain = plan(p);
    p.edge.corner.radius = Length::mm(40); // kept for later, but the corners are square
    const Plan same = plan(p);
    QCOMPARE(same.binding->length, plain.binding->length);
    QVERIFY(!same.binding->bias);
}

void CurvesTest::sleeve()
{
    // Published show rules: cut 8 1/2 to 9 in wide for 4 in finished, 1 to 2 in shorter than the quilt's
    // width.
    const Sleeve wide = hangingSleeve(in(48), System::Inch);
    QCOMPARE(wide.wideLeast, in(8, 1, 2));
    QCOMPARE(wide.wideMost, in(9));
    QCOMPARE(wide.longLeast, in(46));
    QCOMPARE(wide.longMost, in(47));
    // A tube of 4 in from a strip sewn with 1/4 in seams: 2 × (4 + 1/4).
    QCOMPARE((in(4) + in(0, 1, 4)) * 2, wide.wideLeast);
    QCOMPARE(hangingSleeve(in(1), System::Inch).longLeast, Length());
}

void CurvesTest::pillowCoversItsFront()
{
    // Practice: laid together, hems and seams taken off, the two backs cover the front and 4 in more.
    planhelp::Chance random(9);
    for (int i = 0; i < 500; ++i) {
        const Pair cover{in(0, random.between(160, 480), 16), in(0, random.between(160, 480), 16)};
        const Length allowance = random.coin() ? Length() : in(0, random.between(4, 8), 16);
        const Pillow pillow = envelopePillow(cover, allowance, System::Inch);
        const Length each = pillow.back.along - allowance - in(1);
        QVERIFY((each * 2 - in(4) - cover.along).magnitude() <= Length::ticks(1));
        QCOMPARE(pillow.back.across - allowance * 2, cover.across);
        QCOMPARE(pillow.form.across - cover.across, in(1));
        QCOMPARE(pillow.form.along - cover.along, in(1));
    }
}

QTEST_APPLESS_MAIN(CurvesTest)
#include "tst_curves.moc"
