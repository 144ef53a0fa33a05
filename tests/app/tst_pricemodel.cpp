// SPDX-License-Identifier: MIT
//
// Cost and price at the Shop: the sum line by line, kept with the tablet, and the price case of the trade
// notes through the same model.
#include "app/pricemodel.h"
#include "desk.h"

#include "testing.h"

using namespace matside;

namespace {

/// Case 1 of the trade notes with all its parts cut from one cloth at 9 a yard.
Project priced()
{
    Project project = desk::topper();
    for (const ClothRole role : {ClothRole::Front, ClothRole::Back, ClothRole::Batting,
                                 ClothRole::SashingFront, ClothRole::SashingBack, ClothRole::Binding}) {
        Cloth cloth;
        cloth.id = "cloth" + std::to_string(project.cloths.size());
        cloth.name = cloth.id;
        cloth.role = role;
        cloth.usable = Length::inches(40, 1, 2);
        cloth.soldBy = "1/8 yd";
        cloth.soldStep = usualSoldStep(System::Inch);
        cloth.colour = "#c9bda2";
        cloth.price = "9";
        project.cloths.push_back(cloth);
    }
    return project;
}

struct Till {
    explicit Till(const Project &project = priced()) : open(project, Station::Shop)
    {
        open.session.setStation(static_cast<int>(Station::Fit));
        open.session.setStation(static_cast<int>(Station::Shop));
    }
    bool say(const char *key, const char *text)
    {
        return price.enter(QLatin1String(key), QLatin1String(text)).value(QStringLiteral("ok")).toBool();
    }
    /// The amount of the part, or of the price said another way, whose words hold these.
    QString value(const char *words) const
    {
        for (const QVariant &line : price.parts() + price.besides())
            if (line.toMap().value(QStringLiteral("says")).toString().contains(QLatin1String(words)))
                return line.toMap().value(QStringLiteral("value")).toString();
        return {};
    }
    double amount() const { return price.priceText().toDouble(); }
    std::int64_t cents(const QString &text) const { return qRound64(text.toDouble() * 100); }
    QVariantMap part(const char *key) const
    {
        for (const QVariant &one : price.parts())
            if (one.toMap().value(QStringLiteral("key")) == QLatin1String(key))
                return one.toMap();
        return {};
    }

    desk::Open open;
    ShopModel shop{open.workspace, open.session};
    PriceModel price{open.workspace, open.session, shop};
};

} // namespace

class PriceModelTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }
    void clothsByHand();
    void theSumHoldsTogether();
    void theStripIsCutToScale();
    void theTapeIsOfRoundAmounts();
    void keptWithTheTablet();
    void unpricedClothsAreNamed();
    void askingLess();
    void refusals();
    void followsThePiece();
};

// The cloth cut off by hand: top, back and batting 3 strips of 11 3/4 and 2 to straighten, 37 1/4 each;
// sashing 3 strips of 2 and 2: 8 a face; binding 3 of 3 1/2 and 2: 12 1/2. At 0.25 an inch: 3 × 9.3125, 2 ×
// 2, 3.125, each to the cent.
void PriceModelTest::clothsByHand()
{
    Till till;
    QVERIFY(till.open.workspace.faults().empty());
    QVERIFY(till.price.known());
    QCOMPARE(till.value("cloth"), QStringLiteral("35.06")); // 3 × 9.31 + 2 × 2.00 + 3.13
}

void PriceModelTest::theSumHoldsTogether()
{
    Till till;
    QVERIFY(till.say("rate", "18"));
    QVERIFY(till.say("margin", "10 %"));
    QVERIFY(till.say("sundries", "3.50"));
    const Project &project = till.open.workspace.project();
    // By the minute, as it is told.
    const double minutes =
        std::round(static_cast<double>(hoursFor(project, till.open.workspace.plan()).all()) / 10);
    const double hours = minutes / 60;
    const double direct = 35.06 + 3.50 + hours * 18;
    QVERIFY(qAbs(till.value("min at").toDouble() - hours * 18) <= 0.005 + 1e-9);
    QVERIFY(qAbs(till.value("overhead").toDouble() - direct * 0.15) <= 0.01 + 1e-9);
    QVERIFY(qAbs(till.value("margin").toDouble() - direct * 1.15 * 0.10) <= 0.01 + 1e-9);
    QVERIFY(qAbs(till.amount() - direct * 1.15 * 1.10) <= 0.005 + 1e-9);
    QVERIFY(qAbs(till.value("square inch").toDouble() - direct * 1.265 / 441) <= 0.005 + 1e-4);
}

// Each part begins where the last one ends, and together they are the whole strip; the cloth is its cloths.
void PriceModelTest::theStripIsCutToScale()
{
    Till till;
    QVERIFY(till.say("rate", "18"));
    QVERIFY(till.say("margin", "10"));
    QVERIFY(till.say("sundries", "3.50"));
    QStringList keys;
    double at = 0;
    std::int64_t cents = 0;
    for (const QVariant &one : till.price.parts()) {
        const QVariantMap part = one.toMap();
        keys << part.value(QStringLiteral("key")).toString();
        QVERIFY(qAbs(part.value(QStringLiteral("from")).toDouble() - at) < 1e-9);
        at += part.value(QStringLiteral("share")).toDouble();
        cents += till.cents(part.value(QStringLiteral("value")).toString());
    }
    QCOMPARE(keys.join(u' '), QStringLiteral("cloth work sundries overhead margin"));
    QVERIFY(qAbs(at - 1) < 1e-9);
    QCOMPARE(cents, till.cents(till.price.priceText()));
    double cloths = 0;
    for (const QVariant &cloth : till.part("cloth").value(QStringLiteral("cloths")).toList())
        cloths += cloth.toMap().value(QStringLiteral("share")).toDouble();
    QVERIFY(qAbs(cloths - till.part("cloth").value(QStringLiteral("share")).toDouble()) < 1e-9);
    // What is nothing yet is named all the same, to be taken in hand: each leads to the amount that makes it.
    Till bare;
    QVERIFY(bare.say("overhead", "0"));
    QStringList makes;
    for (const QVariant &one : bare.price.parts()) {
        const QVariantMap part = one.toMap();
        const bool cloth = part.value(QStringLiteral("key")) == QStringLiteral("cloth");
        QCOMPARE(part.value(QStringLiteral("share")).toDouble(), cloth ? 1.0 : 0.0);
        const int amount = part.value(QStringLiteral("amount")).toInt();
        makes << (cloth ? QString::number(amount)
                        : bare.price.amounts().at(amount).toMap().value(QStringLiteral("key")).toString());
    }
    QCOMPARE(makes.join(u' '), QStringLiteral("-1 rate sundries overhead margin"));
}

void PriceModelTest::theTapeIsOfRoundAmounts()
{
    Till till; // 35.06 and 15 % are 40.32: every 10
    QStringList says;
    for (const QVariant &one : till.price.tape())
        if (const QString words = one.toMap().value(QStringLiteral("says")).toString(); !words.isEmpty())
            says << words;
    QCOMPARE(says.join(u' '), QStringLiteral("0 10 20 30 40"));
    QCOMPARE(till.price.tape().size(), 21); // four between two of them
    QVERIFY(till.price.tape().last().toMap().value(QStringLiteral("share")).toDouble() <= 1);
}

void PriceModelTest::keptWithTheTablet()
{
    Till till;
    const Project before = till.open.kept();
    QVERIFY(till.say("rate", "18,5"));
    QVERIFY(till.say("overhead", "20"));
    QVERIFY(till.say("sundries", "4"));
    QVERIFY(till.open.kept() == before); // no part of the project's file
    const PriceModel again(till.open.workspace, till.open.session, till.shop);
    QCOMPARE(again.priceText(), till.price.priceText());
    // Another piece has her rate, and no sundries of this one.
    const QString first = till.open.workspace.id();
    till.open.lay(priced(), Station::Shop);
    QVERIFY(till.value("min at").toDouble() > 0);
    QCOMPARE(till.value("thread, web"), QStringLiteral("0.00"));
    till.open.session.openProject(first);
    till.open.session.setStation(static_cast<int>(Station::Shop));
    QCOMPARE(till.value("thread, web"), QStringLiteral("4.00"));
}

void PriceModelTest::unpricedClothsAreNamed()
{
    Project project = priced();
    project.cloths.back().price.reset();
    project.cloths.back().name = "edge cloth";
    Till till(project);
    QVERIFY2(till.price.notesSay().contains(QStringLiteral("edge cloth")), qPrintable(till.price.notesSay()));
    QCOMPARE(till.value("cloth"), QStringLiteral("31.93")); // without the binding's 3.13
    QVERIFY(!Till().price.notesSay().contains(QStringLiteral("cloth5")));
}

void PriceModelTest::askingLess()
{
    Till till;
    QCOMPARE(till.price.unpaidSays(), QString());
    QVERIFY(till.say("rate", "18"));
    QVERIFY(till.say("asked", "1"));
    QVERIFY(till.price.unpaidSays().contains(QStringLiteral("hours you will not be paid for")));
    QVERIFY(till.say("asked", "100000"));
    QVERIFY(till.price.unpaidSays().contains(QStringLiteral("all your time")));
    QVERIFY(till.say("asked", "0"));
    QCOMPARE(till.price.unpaidSays(), QString());
    // The first step down starts at the price.
    const std::int64_t price = till.cents(till.price.priceText());
    till.price.nudge(QStringLiteral("asked"), -1);
    const auto asked =
        till.price.amounts().last().toMap().value(QStringLiteral("figure")).value<FigureView>();
    QCOMPARE(qRound64(asked.whole.toDouble() * 100), price - 100);
    // The tag at the strip's end tells what is asked and moves down the strip; the price is still said.
    const QVariantMap tag = till.price.tag();
    QVERIFY(tag.value(QStringLiteral("asked")).toBool());
    QCOMPARE(till.cents(tag.value(QStringLiteral("value")).toString()), price - 100);
    const double share = static_cast<double>(price - 100) / static_cast<double>(price);
    QCOMPARE(tag.value(QStringLiteral("share")).toDouble(), share);
    QCOMPARE(till.value("the price"), till.price.priceText());
    // More than the price is tied at its end.
    QVERIFY(till.say("asked", "100000"));
    QCOMPARE(till.price.tag().value(QStringLiteral("share")).toDouble(), 1.0);
}

void PriceModelTest::refusals()
{
    Till till;
    QVERIFY(!till.say("rate", "much"));
    QVERIFY(!till.say("rate", "1.005"));
    QVERIFY(!till.say("rate", "2000000"));
    QVERIFY(!till.say("overhead", "400 %"));
    QVERIFY(!till.say("margin", "-1 %"));
    QVERIFY(!till.say("currency", "1"));
    till.price.nudge(QStringLiteral("rate"), -3);
    QCOMPARE(till.value("min at"), QStringLiteral("0.00"));
    till.price.nudge(QStringLiteral("margin"), -1);
    QCOMPARE(till.value("margin"), QStringLiteral("0.00"));
}

void PriceModelTest::followsThePiece()
{
    Till till;
    QVERIFY(till.say("rate", "18"));
    const std::int64_t before = till.cents(till.price.priceText());
    Project next = till.open.workspace.project();
    next.blocks.columns = 6;
    QVERIFY(till.open.workspace.commit("edit", next));
    QVERIFY(till.cents(till.price.priceText()) > before);
    next.kits = 3;
    QVERIFY(till.open.workspace.commit("edit", next));
    QVERIFY(qAbs(till.cents(till.value("each of 3")) * 3 - till.cents(till.price.priceText())) <= 2);
}

QTEST_GUILESS_MAIN(PriceModelTest)
#include "tst_pricemodel.moc"
