// SPDX-License-Identifier: MIT
//
// What is crooked is drawn crooked: the piece under its tapes, and a block as it is turned under the ruler.
#include "app/edgemodel.h"
#include "app/stitched.h"
#include "bench/record.h"

#include "testing.h"

#include <array>
#include <cmath>

using namespace matside;

namespace {

double at(const QVariantList &corners, int corner, const char *way)
{
    return corners[corner].toMap()[QString::fromLatin1(way)].toDouble();
}

Project toTheSquaring(Project project)
{
    for (int guard = 0; guard < 2000; ++guard) {
        const Plan made = plan(project);
        const std::vector<Step> all = steps(project, made);
        const auto next = nextStep(all);
        if (!next || all[*next].does == Does::SquarePiece)
            break;
        project = withDone(project, made, all[*next]);
    }
    return project;
}

struct AtTheEdge : desk::Open {
    explicit AtTheEdge(const Project &project) : Open(project, Station::Edge) {}
    EdgeModel edge{workspace, session, steps};
};

} // namespace

class DepartureTest : public QObject {
    Q_OBJECT
private slots:
    void aLeaningPieceIsDrawnLeaning();
    void readingsThatMakeNoShapeAreNotDrawn();
    void aCrookedBlockLiesAsItIsTurned();
};

void DepartureTest::aLeaningPieceIsDrawnLeaning()
{
    // Diagonals 29 7/8 and 29 1/2 of sides 21: lean 0.707 × 3/8 = 0.265 (F23).
    AtTheEdge desk(toTheSquaring(desk::topper()));
    for (int reading = 0; reading < 4; ++reading)
        desk.edge.nudge(reading, 0);
    QCOMPARE(desk.edge.times(), 1.0);
    QVERIFY(desk.edge.enter(4, QStringLiteral("29 7/8")).isEmpty());
    QVERIFY(desk.edge.enter(5, QStringLiteral("29 1/2")).isEmpty());
    QVERIFY(desk.edge.times() >= 5);
    const QVariantList own = desk.edge.corners(), due = desk.edge.planned();
    const double lean =
        std::max(std::abs(at(own, 0, "x") - at(own, 3, "x")), std::abs(at(own, 0, "y") - at(own, 1, "y")));
    QVERIFY2(std::abs(lean - desk.edge.times() * 0.265 / 21) < 0.003, qPrintable(QString::number(lean)));
    QCOMPARE(at(due, 0, "x"), at(due, 3, "x"));
}

void DepartureTest::readingsThatMakeNoShapeAreNotDrawn()
{
    AtTheEdge desk(toTheSquaring(desk::topper()));
    QVERIFY(!desk.edge.again() && desk.edge.corners().isEmpty());
    QVERIFY(desk.edge.enter(4, QStringLiteral("31")).isEmpty());
    QVERIFY(desk.edge.again());
    QVERIFY(desk.edge.corners().isEmpty());
    QCOMPARE(desk.edge.planned().size(), 4);
    QCOMPARE(desk.edge.times(), 1.0);
}

void DepartureTest::aCrookedBlockLiesAsItIsTurned()
{
    // Its right end is wider by 1/8: each of top and bottom tilts by 1/16, so that each corner lies 1/32 off.
    const std::array taper{"7", "7 1/8", "7", "7", "9 15/16", "9 15/16"};
    stitched::Desk desk(stitched::topper(), Station::Trim);
    desk.measure.begin();
    for (int reading = 0; reading < 6; ++reading)
        QVERIFY(desk.measure.enter(reading, QString::fromLatin1(taper[static_cast<std::size_t>(reading)]))
                    .isEmpty());
    QVERIFY(desk.measure.save());
    QVERIFY(desk.trim.verdict().contains(QStringLiteral("One end is wider: right")));
    QVariantMap lies = desk.trim.lies();
    QStringList names = lies[QStringLiteral("names")].toStringList();
    QVERIFY2(names[0] == QStringLiteral("left") || names[0] == QStringLiteral("right"), qPrintable(names[0]));
    QVERIFY2(desk.trim.checkSays().contains(names[0]), qPrintable(desk.trim.checkSays()));
    const int wide = int(names.indexOf(QStringLiteral("right")));
    const double times = lies[QStringLiteral("times")].toDouble();
    QVERIFY(times >= 5);
    // The wide end stands out at its two corners, the narrow one draws in: from the top left, clockwise.
    const QVariantList off = lies[QStringLiteral("off")].toList();
    const double out = 25.4 / 32 * times;
    for (int corner = 0; corner < 4; ++corner) {
        const bool atWide = (corner == 1 || corner == 2) == (wide == 0);
        const double y = (corner < 2 ? -1 : 1) * (atWide ? out : -out);
        QVERIFY2(std::abs(at(off, corner, "y") - y) < 0.1 * out,
                 qPrintable(QString::number(at(off, corner, "y"))));
        QVERIFY(std::abs(at(off, corner, "x")) < 0.1 * out);
    }
    // Turned a quarter, the cut side lies at the foot, and the one that was at the head lies at the blade.
    desk.trim.cut();
    lies = desk.trim.lies();
    const QStringList turned = lies[QStringLiteral("names")].toStringList();
    QCOMPARE(turned[1], names[0]);
    QCOMPARE(turned[0], names[3]);
    // A block as planned has nothing of it.
    QVERIFY(!stitched::Desk(stitched::topper(), Station::Trim).trim.lies().contains(QStringLiteral("off")));
}

QTEST_GUILESS_MAIN(DepartureTest)
#include "tst_departure.moc"
