// SPDX-License-Identifier: MIT
//
// Place mats on tables: counted, laid, and refused (F22).
#include "planhelp.h"

#include "plan/mats.h"

#include <array>
#include <cmath>

using namespace matside;
using planhelp::in;

namespace {

Table oblong(Length along, Length across)
{
    return {along, across, std::nullopt, {}};
}

Table circle(Length diameter)
{
    return {std::nullopt, std::nullopt, diameter, {}};
}

std::int64_t mats(const Table &table, const Pair &mat, bool ends = false, System system = System::Inch)
{
    return layMats(table, mat, ends, system).count();
}

const Pair small{in(18), in(12)};
const Pair large{in(20), in(14)};

struct Point {
    double x;
    double y;
};
using Corners = std::array<Point, 4>;

/// The corners of a laid mat, mm from the table's middle, the two of its outer edge first.
Corners cornersOf(const MatPlace &place, const Pair &mat)
{
    const double turn = place.turn * std::acos(-1.0) / 180;
    const double w = mat.along.asMm() / 2;
    const double h = mat.across.asMm() / 2;
    Corners corners;
    int i = 0;
    for (const auto &[x, y] : {Point{-w, h}, Point{w, h}, Point{w, -h}, Point{-w, -h}})
        corners[static_cast<std::size_t>(i++)] = {
            place.along.asMm() + x * std::cos(turn) - y * std::sin(turn),
            place.across.asMm() + x * std::sin(turn) + y * std::cos(turn)};
    return corners;
}

double toLine(Point p, Point a, Point b)
{
    const double t = std::clamp(((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) /
                                    ((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y)),
                                0.0, 1.0);
    return std::hypot(p.x - a.x - t * (b.x - a.x), p.y - a.y - t * (b.y - a.y));
}

bool holds(const Corners &mat, Point p)
{
    for (std::size_t i = 0; i < 4; ++i) {
        const Point a = mat[i];
        const Point b = mat[(i + 1) % 4];
        if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0)
            return false;
    }
    return true;
}

/// Between two mats; 0 where they overlap.
double between(const Corners &one, const Corners &other)
{
    double least = 1e9;
    for (std::size_t i = 0; i < 4; ++i)
        for (std::size_t j = 0; j < 4; ++j) {
            least = std::min(least, toLine(one[i], other[j], other[(j + 1) % 4]));
            least = std::min(least, toLine(other[i], one[j], one[(j + 1) % 4]));
        }
    const bool over = std::any_of(one.begin(), one.end(), [&](Point p) { return holds(other, p); }) ||
                      std::any_of(other.begin(), other.end(), [&](Point p) { return holds(one, p); });
    return over ? 0 : least;
}

/// How far a point lies inside the table's edge, mm; negative: off it.
double inside(const Table &table, Point p)
{
    const double along = table.along(table.leafIn)->asMm() / 2;
    const double across = table.across()->asMm() / 2;
    if (!table.diameter)
        return std::min(along - std::abs(p.x), across - std::abs(p.y));
    const double leaf = along - across;
    return across - std::hypot(std::max(std::abs(p.x) - leaf, 0.0), p.y);
}

/// The first fault of mats as they were laid, or nothing.
QByteArray faultOf(const Table &table, const Pair &mat, const MatsLaid &laid, System system)
{
    const MatUse use = matUse(system);
    std::vector<Corners> all;
    for (const MatPlace &place : laid.places)
        all.push_back(cornersOf(place, mat));
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (const Point &p : all[i])
            if (inside(table, p) < -0.01)
                return "a corner lies off the table";
        // Its outer edge lies so far in: at a straight edge all of it, at a rim its corners.
        for (std::size_t corner : {0U, 1U})
            if (table.diameter && std::abs(inside(table, all[i][corner]) - use.fromEdge.asMm()) > 0.05)
                return "a corner lies not so far from the rim";
        const Point outer{(all[i][0].x + all[i][1].x) / 2, (all[i][0].y + all[i][1].y) / 2};
        if (!table.diameter && std::abs(inside(table, outer) - use.fromEdge.asMm()) > 0.05)
            return "an edge lies not so far from the table's";
        for (std::size_t j = 0; j < i; ++j)
            if (between(all[i], all[j]) < use.apart.asMm() - 0.05)
                return "two lie " + QByteArray::number(between(all[i], all[j])) + " mm apart";
    }
    return {};
}

} // namespace

class MatsTest : public QObject {
    Q_OBJECT
private slots:
    void alongASide_data();
    void alongASide();
    void theyLieWhereTheyShould();
    void oneMoreDoesNotLie();
    void roundTheRim();
    void noMoreThanWanted();
    void refused();
    void aSetIsKnownByItself();
};

void MatsTest::alongASide_data()
{
    QTest::addColumn<int>("along");
    QTest::addColumn<int>("across");
    QTest::addColumn<bool>("twenty");
    QTest::addColumn<int>("count");
    QTest::newRow("60 x 36: 64/22 = 2.9, two facing two") << 60 << 36 << false << 4;
    QTest::newRow("62: 18 + 4 + 18 + 4 + 18 to the inch") << 62 << 36 << false << 6;
    QTest::newRow("61 is an inch short of it") << 61 << 36 << false << 4;
    QTest::newRow("72 x 42: 76/22 = 3.5") << 72 << 42 << false << 6;
    QTest::newRow("72 x 42 of 20: 76/24 = 3.2") << 72 << 42 << true << 6;
    QTest::newRow("30 wide: 12 + 1 twice and 4 between, to the inch") << 62 << 30 << false << 6;
    QTest::newRow("29 wide: one row") << 62 << 29 << false << 3;
    QTest::newRow("34 wide of 14 deep") << 68 << 34 << true << 6;
    QTest::newRow("33 wide of 14 deep: one row") << 68 << 33 << true << 3;
    QTest::newRow("entered the other way round") << 36 << 62 << false << 6;
    QTest::newRow("18 x 13 holds one") << 18 << 13 << false << 1;
    QTest::newRow("5000 long: 227 would lie there, but no row is longer than 200")
        << 5000 << 30 << false << 400;
}

// F22 | hand-worked case only | mats of 12 x 18 and 14 x 20 in, 4 in apart and 1 in from the edge, as the
//    | etiquette reference of the trade notes has it, added up inch by inch
void MatsTest::alongASide()
{
    QFETCH(int, along);
    QFETCH(int, across);
    QFETCH(bool, twenty);
    QFETCH(int, count);
    QCOMPARE(mats(oblong(in(along), in(across)), twenty ? large : small), std::int64_t(count));
}

// F22 | independent derivation | the corners of every mat laid on 1500 tables, straight and round, with and
//    | without leaf: on the table, so far from the edge, and the distance of every two of them
void MatsTest::theyLieWhereTheyShould()
{
    planhelp::Chance chance(planhelp::seed(81));
    std::int64_t laidInAll = 0;
    std::int64_t atEnds = 0;
    for (int i = 0; i < planhelp::count(1500); ++i) {
        const System system = i % 3 == 0 ? System::Metric : System::Inch;
        const auto side = [&](std::int64_t least, std::int64_t most) {
            const std::int64_t inches = chance.between(least, most);
            return system == System::Inch ? in(inches) : Length::mm(inches * 25);
        };
        Table table = i % 4 < 2 ? oblong(side(14, 130), side(14, 70)) : circle(side(16, 90));
        if (i % 4 == 3) {
            table.leaf = side(4, 60);
            table.leafIn = true;
        }
        const MatUse use = matUse(system);
        Pair mat = use.sizes[static_cast<std::size_t>(i % 2)];
        mat.along += use.fromEdge.scaled(chance.between(-8, 8), 8);
        const bool ends = chance.coin();
        const std::int64_t most = chance.coin() ? 1000 : chance.between(1, 8);
        const MatsLaid laid = layMats(table, mat, ends, system, most);
        QVERIFY(laid.count() <= most);
        laidInAll += laid.count();
        atEnds += laid.end;
        // A single mat on a round table too small for two may lie within the parted halves.
        if (table.diameter && table.leaf && laid.count() == 1)
            continue;
        const QByteArray fault = faultOf(table, mat, laid, system);
        QVERIFY2(fault.isEmpty(), fault + " on table " + QByteArray::number(i));
    }
    QVERIFY(laidInAll > 3000);
    QVERIFY(atEnds > 100);
}

// F22 | independent derivation | one row is pushed together at 4 in from mat to mat: one more would pass the
//    | table's end
void MatsTest::oneMoreDoesNotLie()
{
    for (std::int64_t along = 20; along <= 200; ++along) {
        const std::int64_t count = layMats(oblong(in(along), in(20)), small, false, System::Inch).side;
        Length reached = in(18);
        std::int64_t pushed = reached <= in(along) ? 1 : 0;
        while (reached + in(4) + in(18) <= in(along)) {
            reached += in(4) + in(18);
            ++pushed;
        }
        QCOMPARE(count, pushed);
    }
}

// F22 | independent derivation | mats are set round a rim in even steps and pushed to within 1 in of it by
//    | their corners; as soon as two come nearer than 4 in there is one too many
void MatsTest::roundTheRim()
{
    for (std::int64_t across = 20; across <= 120; ++across) {
        const Table table = circle(in(across));
        const double radius = in(across).asMm() / 2 - 25.4;
        const double w = small.along.asMm() / 2;
        std::int64_t lie = 0;
        for (int count = 1; count <= 30; ++count) {
            // Outwards by hundredths of a millimetre until a corner meets the circle.
            double middle = std::sqrt(std::max(radius * radius - w * w, 0.0)) - small.across.asMm() / 2;
            const double reach = std::hypot(w, middle + small.across.asMm() / 2);
            if (radius < w || middle < 0 || reach > radius + 0.01)
                break;
            std::vector<Corners> ring;
            for (int i = 0; i < count; ++i) {
                const double turn = 2 * std::acos(-1.0) * i / count;
                const auto ticks = [](double mm) {
                    return Length::ticks(std::llround(mm * Length::ticksPerMm));
                };
                ring.push_back(cornersOf(
                    {ticks(-middle * std::sin(turn)), ticks(middle * std::cos(turn)), 360.0 * i / count},
                    small));
            }
            double nearest = 1e9;
            for (int i = 1; i < count; ++i)
                nearest = std::min(nearest, between(ring[0], ring[static_cast<std::size_t>(i)]));
            if (nearest < 4 * 25.4 - 0.02)
                break;
            lie = count;
        }
        QCOMPARE(mats(table, small), lie);
    }
    QVERIFY(mats(circle(in(60)), small) >= 4);
}

void MatsTest::noMoreThanWanted()
{
    const Table table = oblong(in(84), in(39));
    QCOMPARE(mats(table, small), 8);
    const MatsLaid five = layMats(table, small, false, System::Inch, 5);
    QCOMPARE(five.count(), 5);
    QCOMPARE(five.side, 3); // three and two
    // The ends take room from the sides: 84 − 2·(12 + 1 + 4) = 50, (50 + 4)/22 = 2.
    const MatsLaid round = layMats(table, small, true, System::Inch);
    QCOMPARE(round.side, 2);
    QCOMPARE(round.end, 1);
    QCOMPARE(round.count(), 6);
    // On a hall's table the end mats lie clear between the rows: 54 − 18 ≥ 34.
    QCOMPARE(mats(oblong(in(84), in(54)), small, true), 10);
    QCOMPARE(layMats(table, small, true, System::Inch, 0).count(), 0);
}

void MatsTest::refused()
{
    QCOMPARE(mats(oblong(in(17), in(40)), small), 2); // they lie the other way
    const Table narrow = oblong(in(60), in(12));
    QCOMPARE(mats(narrow, small), 0);
    auto why = whyNoMats(narrow, small, System::Inch);
    QVERIFY(why && why->code == "fit-mats-off-table");
    const Length least = std::get<Told>(why->args.at(2)).length;
    QCOMPARE(mats(oblong(in(60), least), small), 2);
    QVERIFY(!whyNoMats(oblong(in(60), least), small, System::Inch));
    why = whyNoMats(circle(in(20)), small, System::Inch);
    QVERIFY(why && why->code == "fit-mats-off-round-table");
    const Length rim = std::get<Told>(why->args.at(2)).length;
    QCOMPARE(mats(circle(rim), small), 1);
    QCOMPARE(mats(circle(rim - in(0, 1, 16)), small), 0);
    QVERIFY(!whyNoMats({}, small, System::Inch));
    QCOMPARE(mats({}, small), 0);
}

void MatsTest::aSetIsKnownByItself()
{
    Project project = planhelp::piece(3, 2, in(5), planhelp::hoopP(), in(40));
    project.edge.outside = in(0, 1, 2);
    project.table = oblong(in(84), in(39));
    const auto set = [&] { return setOfMats(project, plan(project)); };
    QCOMPARE(plan(project).size.finished.along, in(18)); // 3 trimmed blocks of 6 in
    QVERIFY(!set());
    project.kits = 2; // one place on each side
    QCOMPARE(set()->count(), 2);
    project.kits = 8;
    QCOMPARE(set()->side, 4);
    project.kits = 6; // just as many as lie there with the ends
    QCOMPARE(set()->end, 1);
    project.kits = 5;
    QCOMPARE(set()->end, 0);
    project.kits = 9;
    QVERIFY(!set());
    project.kits = 8;
    project.lesson = Lesson();
    QVERIFY(!set());
    project.lesson.reset();
    project.table = Table{}; // a table of no size holds none
    QVERIFY(!set());
    project.table.reset();
    QVERIFY(!set());
}

QTEST_APPLESS_MAIN(MatsTest)
#include "tst_mats.moc"
