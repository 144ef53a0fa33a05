// SPDX-License-Identifier: MIT
//
// The shopping list: never short, rounded as cloth is sold, and never without a bound that it is held
// against.
#include "bench/relay.h"
#include "bench/shopping.h"

#include "bench/account.h"
#include "benchhelp.h"

using namespace matside;
using planhelp::in;

namespace {

Project topper()
{
    Project project = benchhelp::nineBlocksOfCloth();
    Cloth bands = project.cloths.front();
    bands.id = bands.name = "bands";
    bands.role = ClothRole::SashingFront;
    project.cloths.push_back(std::move(bands));
    return project;
}

const Buy &buyOf(const std::vector<Buy> &list, const char *cloth)
{
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const Buy &buy) { return buy.cloth == cloth; });
    if (found == list.end())
        qFatal("no such cloth");
    return *found;
}

} // namespace

class Shopping : public QObject {
    Q_OBJECT
private slots:
    void caseOneByHand();
    void moneyIsExactAndHalfUp();
    void moneyIsOneExactFraction();
    void whatIsBoughtIsNeverShort();
    void theBoundNeverExceedsWhatIsBought();
};

void Shopping::caseOneByHand()
{
    // Case 1 of the trade notes: 3 strips of 11 3/4 and 2 in to straighten = 37 1/4 → 1 1/8 yd (F1); three
    // sashing bands of 2 in on the front; three binding strips of 3 1/2.
    const Project project = topper();
    const Plan p = plan(project);
    const auto list = shoppingList(project, p, steps(project, p));
    const Buy &ground = buyOf(list, "ground");
    QCOMPARE(ground.cut, in(35, 1, 4));
    QCOMPARE(ground.straighten, in(2));
    QCOMPARE(ground.bought, in(40, 1, 2));
    QCOMPARE(QString::fromStdString(textSold(ground.bought, ground.step, System::Inch)),
             QStringLiteral("1 1/8 yd"));
    QVERIFY(ground.proved());
    const Buy &bands = buyOf(list, "bands");
    QCOMPARE(bands.cut, in(6));
    QCOMPARE(bands.bought, in(9));
    QVERIFY(bands.proved());
    QCOMPARE(buyOf(list, "edge").cut, in(10, 1, 2));
    // The back's sashing comes out of the back itself.
    QCOMPARE(buyOf(list, "back").cut, in(41, 1, 4));
}

void Shopping::moneyIsExactAndHalfUp()
{
    QCOMPARE(costOf("9.5", in(40, 1, 2), System::Inch).value(), 1069); // 1 1/8 × 9.50 = 10.6875
    QCOMPARE(costOf("10", in(36), System::Inch).value(), 1000);
    QCOMPARE(costOf("0.01", in(18), System::Inch).value(), 1); // half a cent goes up
    QCOMPARE(costOf("8", Length::mm(250), System::Metric).value(), 200);
    QVERIFY(!costOf("", in(1), System::Inch));
    QVERIFY(!costOf("9,5", in(1), System::Inch));
    QVERIFY(!costOf("-1", in(1), System::Inch));
}

// F27 | independent derivation | whole cents times whole ticks over the ticks of a yard or metre, halves
// found by doubling
void Shopping::moneyIsOneExactFraction()
{
    planhelp::Chance chance(planhelp::seed(7));
    for (int i = 0; i < planhelp::count(20'000); ++i) {
        const std::int64_t whole = chance.between(0, 500);
        const std::int64_t hundredths = chance.between(0, 99);
        const std::string price =
            std::to_string(whole) + (hundredths < 10 ? ".0" : ".") + std::to_string(hundredths);
        const System system = chance.coin() ? System::Inch : System::Metric;
        const Length unit = system == System::Inch ? in(36) : Length::mm(1000);
        const Length bought = system == System::Inch ? in(0, 1, 2) * chance.between(0, 2000)
                                                     : Length::mm(10) * chance.between(0, 2000);
        const std::int64_t cents = (whole * 100 + hundredths) * bought.count(); // of a unit's ticks
        const std::int64_t twice = 2 * cents / unit.count();
        QCOMPARE(costOf(price, bought, system).value(), (twice + 1) / 2);
    }
}

void Shopping::whatIsBoughtIsNeverShort()
{
    planhelp::Chance chance(planhelp::seed(5));
    int tried = 0;
    for (int i = 0; i < planhelp::count(60); ++i) {
        Project project = chance.project(chance.coin() ? System::Inch : System::Metric);
        project.kits = 1;
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        ++tried;
        const auto all = steps(project, p);
        for (const Buy &buy : shoppingList(project, p, all, 2000)) {
            QVERIFY(buy.bought >= buy.cut + buy.straighten);
            // Once it is bought the steps cut by that layout: they never need more than there is.
            const Project had = withBought(project, p, all, buy.cloth);
            const Plan then = plan(had);
            QVERIFY(buy.bought >= clothAccount(had, then, steps(had, then), buy.cloth).toDo);
            QVERIFY(buy.bought - (buy.cut + buy.straighten) < buy.step);
            Length laid;
            for (const ShopStrip &strip : buy.strips)
                laid += strip.height * strip.repeats;
            QCOMPARE(laid, buy.cut); // the drawing shows what is cut
        }
    }
    QVERIFY(tried > 5);
}

void Shopping::theBoundNeverExceedsWhatIsBought()
{
    planhelp::Chance chance(planhelp::seed(6));
    int proved = 0;
    for (int i = 0; i < planhelp::count(60); ++i) {
        Project project = chance.project(System::Inch);
        project.kits = 1;
        const Plan p = plan(project);
        if (!p.problems.empty())
            continue;
        for (const Buy &buy : shoppingList(project, p, steps(project, p), 2000)) {
            if (!buy.least)
                continue;
            QVERIFY2(*buy.least <= buy.bought, qPrintable(QStringLiteral("%1: %2 < %3")
                                                              .arg(QString::fromStdString(buy.cloth))
                                                              .arg(buy.bought.asInches())
                                                              .arg(buy.least->asInches())));
            QCOMPARE(buy.proved(), buy.overPerMille() == 0);
            proved += buy.proved() ? 1 : 0;
        }
    }
    QVERIFY(proved > 5);
}

QTEST_APPLESS_MAIN(Shopping)
#include "tst_shopping.moc"
