// SPDX-License-Identifier: MIT
#include "bench/nest.h"
#include "bench/ruler.h"

#include "testing.h"

#include <algorithm>
#include <random>

using namespace matside;

namespace {
Length in(std::int64_t whole, std::int64_t num = 0, std::int64_t den = 1)
{
    return Length::inches(whole, num, den);
}
const std::vector<Ruler> two{{"long", in(24), in(6), std::nullopt, {}},
                             {"square", in(12, 1, 2), in(12, 1, 2), std::nullopt, {}}};
const std::vector<Ruler> one{{"long", in(24), in(6), std::nullopt, {}}};
} // namespace

class RulerTest : public QObject {
    Q_OBJECT
private slots:
    void liesWhereTheCutNeedsIt_data();
    void liesWhereTheCutNeedsIt();
    void fenceIsAsLongAsTheCutOrSaysSo();
    void longNarrowStripsAreCutSingle_data();
    void longNarrowStripsAreCutSingle();
    void bendTakesItsShareOfTheStrip();
    void bentStripIsMeasuredByItsCorners();
    void outlineCutsReadTheAllowance();
    void bandsHoldTheirPieces();
};

void RulerTest::liesWhereTheCutNeedsIt_data()
{
    QTest::addColumn<bool>("both");
    QTest::addColumn<Length>("width");
    QTest::addColumn<Length>("cut");
    QTest::addColumn<QString>("first");
    QTest::addColumn<Length>("line");
    QTest::addColumn<QString>("second");
    QTest::addColumn<int>("fence");
    const auto row = [](const char *name, bool both, Length width, Length cut, const char *first, Length line,
                        const char *second, Fence fence) {
        QTest::newRow(name) << both << width << cut << QString::fromLatin1(first) << line
                            << QString::fromLatin1(second) << static_cast<int>(fence);
    };
    row("strip of 13 1/4 on folded cloth", true, in(13, 1, 4), in(20, 1, 4), "square", in(7, 1, 4), "long",
        Fence::LongEnough);
    row("strip of 11 3/4 on folded cloth", true, in(11, 3, 4), in(20, 1, 4), "square", in(5, 3, 4), "long",
        Fence::LongEnough);
    row("band of 2 on folded cloth", true, in(2), in(20, 1, 4), "long", in(2), "", Fence::LongEnough);
    row("band of 2 on one layer", true, in(2), in(40, 1, 2), "long", in(2), "", Fence::SlideAlong);
    row("short of 8 1/2 from a band", true, in(8, 1, 2), in(2), "square", in(8, 1, 2), "", Fence::LongEnough);
    row("short of 8 1/2, only the long ruler, turned", false, in(8, 1, 2), in(2), "long", in(8, 1, 2), "",
        Fence::LongEnough);
    row("piece of 29 from a band", true, in(29), in(2), "long", in(16, 1, 2), "square", Fence::LongEnough);
    row("strip of 13 1/4, only the long ruler: turned it is no fence", false, in(13, 1, 4), in(20, 1, 4), "",
        in(13, 1, 4), "", Fence::Mat);
    row("strip of 13 1/4 on one layer, fence slid along", true, in(13, 1, 4), in(40, 1, 2), "square",
        in(7, 1, 4), "long", Fence::SlideAlong);
    row("short of 8 1/2 from a band wider than the turned ruler", false, in(8, 1, 2), in(6, 1, 16), "",
        in(8, 1, 2), "", Fence::Mat);
    row("wider than all she owns", true, in(40), in(20), "", in(40), "", Fence::Mat);
}
void RulerTest::liesWhereTheCutNeedsIt()
{
    QFETCH(bool, both);
    QFETCH(Length, width);
    QFETCH(Length, cut);
    QFETCH(QString, first);
    QFETCH(Length, line);
    QFETCH(QString, second);
    QFETCH(int, fence);
    const RulerPlace place = placeRulers(both ? two : one, width, cut, 1);
    QCOMPARE(QString::fromStdString(place.first), first);
    QVERIFY(place.line == line);
    QCOMPARE(QString::fromStdString(place.second.value_or("")), second);
    QCOMPARE(static_cast<int>(place.fence), fence);
}

void RulerTest::fenceIsAsLongAsTheCutOrSaysSo()
{
    std::mt19937_64 engine(51);
    for (int i = 0; i < 20'000; ++i) {
        std::vector<Ruler> rulers;
        for (std::size_t k = 0; k < engine() % 4; ++k)
            rulers.push_back({"r" + std::to_string(k),
                              in(1) * static_cast<std::int64_t>(4 + engine() % 30),
                              in(1) * static_cast<std::int64_t>(1 + engine() % 15),
                              std::nullopt,
                              {}});
        const Length width = in(0, 1, 16) * static_cast<std::int64_t>(8 + engine() % 500);
        const Length cut = in(1) * static_cast<std::int64_t>(1 + engine() % 42);
        const RulerPlace place = placeRulers(rulers, width, cut, 1);
        if (place.fence == Fence::Mat) {
            QVERIFY(place.line == width);
            continue;
        }
        QVERIFY(place.line + place.secondWidth == width);
        QVERIFY(place.line > Length() && place.line <= place.firstWidth);
        const Length fence = place.second ? place.secondLength : place.firstLength;
        if (place.fence == Fence::LongEnough)
            QVERIFY(fence >= cut);
        // Turned, a ruler only reaches across a cross-cut.
        const std::string &name = place.second ? *place.second : place.first;
        const auto lies = std::find_if(rulers.begin(), rulers.end(),
                                       [&](const Ruler &ruler) { return ruler.name == name; });
        QVERIFY(lies != rulers.end() && (fence == lies->length || fence >= cut));
        if (place.second)
            QVERIFY(*place.second != place.first);
    }
}

void RulerTest::longNarrowStripsAreCutSingle_data()
{
    QTest::addColumn<Length>("width");
    QTest::addColumn<Length>("used");
    QTest::addColumn<int>("layers");
    // F26: common practice, no published source.
    QTest::newRow("hoop strip") << in(13, 1, 4) << Length() << 2;
    QTest::newRow("band for shorts") << in(2) << in(8, 1, 2) << 2;
    QTest::newRow("band for a long of 36") << in(2) << in(36) << 1;
    QTest::newRow("narrow band") << in(1) << in(6) << 1;
}
void RulerTest::longNarrowStripsAreCutSingle()
{
    QFETCH(Length, width);
    QFETCH(Length, used);
    QFETCH(int, layers);
    QCOMPARE(layersFor(System::Inch, width, used), std::int64_t(layers));
}

void RulerTest::bendTakesItsShareOfTheStrip()
{
    // Derived by coordinates: a ruler 1/16 in off over 6 in turns each half by atan(1/96); a 2 in strip used
    // 21 in across the fold keeps 2 − 10.5/96 in straight.
    const Length left = straightWidth(in(2), in(21), in(0, 1, 16), in(6));
    QVERIFY(std::abs(left.asInches() - (2.0 - 10.5 / 96.0)) < 0.0002);
}

// F26 | independent derivation | the opened strip is laid down as a V of two turned halves and the widest
//    | straight band between its edges is measured by its corners
void RulerTest::bentStripIsMeasuredByItsCorners()
{
    std::mt19937_64 engine(53);
    for (int i = 0; i < 2000; ++i) {
        const Length strip = in(0, 1, 8) * static_cast<std::int64_t>(8 + engine() % 32);
        const Length used = in(1) * static_cast<std::int64_t>(4 + engine() % 36);
        const Length off = in(0, 1, 64) * static_cast<std::int64_t>(engine() % 5);
        const Length width = in(1) * static_cast<std::int64_t>(6 + engine() % 7);
        // Each edge rises from the fold at x = 0 to x = ±used/2 by the ruler's own departure from the fold; a
        // straight band lies under the upper edge's lowest point and over the lower edge's highest.
        const double slope = off.asInches() / width.asInches();
        double top = 1e9;
        double bottom = -1e9;
        for (int step = -64; step <= 64; ++step) {
            const double x = used.asInches() / 2 * step / 64;
            bottom = std::max(bottom, std::abs(x) * slope);
            top = std::min(top, strip.asInches() + std::abs(x) * slope);
        }
        const double left = straightWidth(strip, used, off, width).asInches();
        QVERIFY2(std::abs(left - (top - bottom)) < 0.0002, qPrintable(QString::number(top - bottom)));
    }
}

void RulerTest::outlineCutsReadTheAllowance()
{
    const RulerPlace place = placeOnOutline(two, in(0, 1, 2), in(8));
    QCOMPARE(QString::fromStdString(place.first), QStringLiteral("square"));
    QVERIFY(place.on == LineOn::Outline);
    QVERIFY(place.line == in(0, 1, 2));
    QCOMPARE(place.layers, 1);
}

void RulerTest::bandsHoldTheirPieces()
{
    std::mt19937_64 engine(52);
    for (int i = 0; i < 3000; ++i) {
        const Length usable = in(40);
        std::vector<Lot> lots;
        std::vector<Length> single;
        for (std::size_t k = 0; k < 1 + engine() % 4; ++k) {
            const Lot lot{in(0, 1, 2) * static_cast<std::int64_t>(4 + engine() % 76),
                          static_cast<std::int64_t>(engine() % 40)};
            lots.push_back(lot);
            single.insert(single.end(), static_cast<std::size_t>(lot.count), lot.length);
        }
        // The same rule, piece by piece.
        std::sort(single.begin(), single.end(), std::greater<>());
        std::vector<Length> room;
        for (const Length piece : single) {
            const auto fits =
                std::find_if(room.begin(), room.end(), [&](Length rest) { return rest >= piece; });
            if (fits == room.end())
                room.push_back(usable - piece);
            else
                *fits -= piece;
        }
        QCOMPARE(bandsFor(lots, usable), static_cast<std::int64_t>(room.size()));
    }
    QCOMPARE(bandsFor({{in(8), 100'000'000}}, in(40)), std::int64_t(20'000'000));
}

QTEST_GUILESS_MAIN(RulerTest)
#include "tst_ruler.moc"
