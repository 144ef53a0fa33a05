// SPDX-License-Identifier: MIT
//
// Cloth she has: entered by its sides, drawn as what it is, and less to buy for it.
#include "counter.h"

#include "testing.h"

using namespace matside;
using namespace shopping;

class StockTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase() { QLocale::setDefault(QLocale::c()); }
    void aPieceSheHas();
};

void StockTest::aPieceSheHas()
{
    Counter at;
    const Length before = at.shop.list().front().bought;
    QVERIFY(
        at.stock.enter(QStringLiteral("length"), QStringLiteral("26")).value(QStringLiteral("ok")).toBool());
    QVERIFY(
        !at.stock.enter(QStringLiteral("length"), QStringLiteral("0")).value(QStringLiteral("ok")).toBool());
    QVERIFY(at.stock.enter(QStringLiteral("width"), QStringLiteral("40 1/2"))
                .value(QStringLiteral("ok"))
                .toBool());
    // Drawn out by its corner it takes the nearest whole inches, and is never nothing.
    at.stock.dragTo(30.4 * 25.4, 0);
    QCOMPARE(at.stock.remnant().value(QStringLiteral("lengthMm")).toDouble(), 30 * 25.4);
    QCOMPARE(at.stock.remnant().value(QStringLiteral("widthMm")).toDouble(), 25.4);
    QVERIFY(
        at.stock.enter(QStringLiteral("length"), QStringLiteral("26")).value(QStringLiteral("ok")).toBool());
    QVERIFY(at.stock.enter(QStringLiteral("width"), QStringLiteral("40 1/2"))
                .value(QStringLiteral("ok"))
                .toBool());
    QCOMPARE(at.stock.whyNot(), QString());
    QCOMPARE(at.stock.remnant().value(QStringLiteral("lengthMm")).toDouble(), 26 * 25.4);
    QCOMPARE(at.stock.remnant().value(QStringLiteral("widthSays")).toString().replace(QChar::Nbsp, u' '),
             QStringLiteral("{40 1/2 in}"));
    at.stock.add();
    QCOMPARE(at.stock.drawn().size(), 1);
    // Drawn as the cloth it is: the chooser's swatch, the piece under the tape and the piece in the list
    // alike.
    const QVariantMap swatch =
        at.stock.amounts().front().toMap().value(QStringLiteral("choices")).toList().front().toMap();
    for (const QString &what : {QStringLiteral("print"), QStringLiteral("colour")}) {
        QVERIFY2(swatch.contains(what), qPrintable(what));
        QCOMPARE(at.stock.remnant().value(what), swatch.value(what));
        QCOMPARE(at.stock.drawn().front().toMap().value(what), swatch.value(what));
    }
    QCOMPARE(at.stock.mostLengthMm(), 26 * 25.4);
    QCOMPARE(at.stock.mostWidthMm(), 40.5 * 25.4);
    QCOMPARE(at.stock.pieces().size(), 1);
    QCOMPARE(at.stock.figures().front().toString().replace(QChar::Nbsp, u' '),
             QStringLiteral("{26} × {40 1/2 in}"));
    QVERIFY(at.shop.list().front().bought < before);
    QCOMPARE(at.open.kept().cloths.front().owned.size(), std::size_t(1));
    for (std::size_t i = 1; i < mostOwned; ++i)
        at.stock.add();
    QVERIFY(!at.stock.whyNot().isEmpty()); // as many as can be laid out
    at.stock.add();
    QCOMPARE(at.stock.pieces().size(), static_cast<qsizetype>(mostOwned));
    for (std::size_t i = 0; i < mostOwned; ++i)
        at.stock.takeAway(0);
    QCOMPARE(at.shop.list().front().bought, before);
    at.shop.tick(0);
    QVERIFY(!at.stock.whyNot().isEmpty()); // bought: its layout stays
}

QTEST_GUILESS_MAIN(StockTest)
#include "tst_stock.moc"
