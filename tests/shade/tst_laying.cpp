// SPDX-License-Identifier: MIT
//
// Patches against what they lie on, and the order proposed for them.
#include "shade/laying.h"
#include "shade/value.h"

#include <QTest>

#include <algorithm>
#include <numeric>
#include <random>

using namespace matside;

namespace {

/// A grey as near the value as 256 levels allow.
Colour greyAt(double value)
{
    const double y = luminanceOfValue(value);
    return colourOf(Light{y, y, y});
}
Layer layer(const char *cloth, double value)
{
    return {cloth, greyAt(value)};
}

struct Judged {
    double least = 0;
    int swaps = 0;
};
/// An order judged afresh: successive patches only, two steps being as good as more.
Judged judge(const std::vector<Layer> &layers, const std::vector<std::size_t> &order)
{
    Judged judged{stepsClear, 0};
    for (std::size_t i = 0; i < order.size(); ++i) {
        for (std::size_t j = i + 1; j < order.size(); ++j)
            judged.swaps += order[i] > order[j] ? 1 : 0;
        if (i < 1)
            continue;
        const Layer &under = layers[order[i - 1]], &over = layers[order[i]];
        if (under.cloth != over.cloth && under.colour && over.colour)
            judged.least = std::min(judged.least, stepsApart(*under.colour, *over.colour));
    }
    return judged;
}

} // namespace

class LayingTest : public QObject {
    Q_OBJECT
private slots:
    void eachLiesOnGroundAndOnTheOneBefore();
    void leastIsTheLowerOfEquals();
    void whatIsNotKnownIsLeftOut();
    void nothingBetterIsProposed();
    void allOrdersTried();
    void manyPatchesAreAnswered();
};

void LayingTest::eachLiesOnGroundAndOnTheOneBefore()
{
    // Values 8, 3, 7, 6: by hand 5, then 1 and 4, then 2 and 1.
    const auto found = meetings({layer("g", 8), layer("a", 3), layer("b", 7), layer("c", 6)});
    const std::vector<Meeting> hand{{1, 0, 5}, {2, 0, 1}, {2, 1, 4}, {3, 0, 2}, {3, 2, 1}};
    QCOMPARE(found.size(), hand.size());
    for (std::size_t i = 0; i < hand.size(); ++i) {
        QCOMPARE(found[i].over, hand[i].over);
        QCOMPARE(found[i].under, hand[i].under);
        QVERIFY(std::fabs(found[i].apart - hand[i].apart) < 0.1);
    }
}

void LayingTest::leastIsTheLowerOfEquals()
{
    const auto least = leastOf({{1, 0, 3}, {2, 0, 1}, {2, 1, 1}});
    QVERIFY(least && least->over == 2 && least->under == 0);
    QVERIFY(!leastOf({}));
}

void LayingTest::whatIsNotKnownIsLeftOut()
{
    QVERIFY(meetings({}).empty());
    QVERIFY(meetings({layer("g", 8)}).empty());
    const auto found = meetings({layer("g", 8), {"a", std::nullopt}, layer("b", 3), layer("b", 3)});
    QCOMPARE(found.size(), std::size_t{2}); // b on the ground twice; b on a and b on b are not judged
    QVERIFY(found[0].over == 2 && found[1].over == 3 && found[1].under == 0);
}

void LayingTest::nothingBetterIsProposed()
{
    QVERIFY(!betterOrder({}));
    QVERIFY(!betterOrder({layer("g", 8), layer("a", 3), layer("b", 3.2)})); // two are apart as they are
    QVERIFY(!betterOrder({layer("g", 8), layer("a", 3), layer("b", 6), layer("c", 2)})); // clear already
    // All alike: no order helps.
    QVERIFY(!betterOrder({layer("g", 8), layer("a", 4), layer("b", 4), layer("c", 4)}));
    // 2, 3, 6 by hand: 3 on 2 is one step; 6 between them leaves 3 on 6 and 6 on 2, three and four.
    const auto order = betterOrder({layer("g", 9), layer("a", 2), layer("b", 3), layer("c", 6)});
    QVERIFY(order);
    QCOMPARE(order->order, (std::vector<std::size_t>{0, 1, 3, 2}));
    QVERIFY(std::fabs(order->before - 1) < 0.1);
    QCOMPARE(order->least, stepsClear);
}

// F32 | independent derivation | 600 random blocks of up to seven patches: every order is tried and judged
// afresh
void LayingTest::allOrdersTried()
{
    std::mt19937_64 random(11);
    int proposed = 0;
    for (int round = 0; round < 600; ++round) {
        std::vector<Layer> layers{layer("g", 8)};
        const std::size_t patches = 1 + random() % (round % 10 == 0 ? 7 : 6);
        for (std::size_t i = 0; i < patches; ++i) {
            const unsigned value = random() % 8;
            layers.push_back({std::string(1, static_cast<char>('a' + random() % 5)),
                              random() % 9 == 0 ? std::nullopt : std::optional(greyAt(1 + value * 0.9))});
        }
        std::vector<std::size_t> order(patches);
        std::iota(order.begin(), order.end(), 1);
        const Judged now = judge(layers, order);
        Judged best = now;
        do {
            const Judged tried = judge(layers, order);
            if (tried.least > best.least || (tried.least == best.least && tried.swaps < best.swaps))
                best = tried;
        } while (std::next_permutation(order.begin(), order.end()));
        const auto found = betterOrder(layers);
        if (patches < 3 || best.least <= now.least) {
            QVERIFY(!found);
            continue;
        }
        QVERIFY(found && found->order.front() == 0);
        ++proposed;
        std::vector<std::size_t> theirs(found->order.begin() + 1, found->order.end());
        const Judged judged = judge(layers, theirs);
        QCOMPARE(judged.least, best.least);
        QCOMPARE(judged.swaps, best.swaps);
        QCOMPARE(found->least, best.least);
        QCOMPARE(found->before, now.least);
        std::sort(theirs.begin(), theirs.end());
        for (std::size_t i = 0; i < patches; ++i)
            QCOMPARE(theirs[i], i + 1);
    }
    QVERIFY(proposed > 50);
}

void LayingTest::manyPatchesAreAnswered()
{
    std::vector<Layer> layers{layer("g", 9)};
    for (std::size_t i = 0; i < patchesOrdered; ++i)
        layers.push_back(layer(std::string(1, static_cast<char>('a' + i)).c_str(), i % 12 < 6 ? 2 : 6));
    const auto order = betterOrder(layers);
    QVERIFY(order && order->least == stepsClear);
    layers.push_back(layer("z", 2));
    QVERIFY(!betterOrder(layers));
}

QTEST_MAIN(LayingTest)
#include "tst_laying.moc"
