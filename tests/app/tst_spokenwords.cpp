// SPDX-License-Identifier: MIT
//
// What is printed, as a person would say it. How the British say numbers and parts of an inch: from memory,
// no published source; the numbers are also read back into digits by a reader written the other way round.
#include "app/spokenwords.h"

#include <QtTest>

using namespace matside;

class SpokenWordsTest : public QObject {
    Q_OBJECT

private slots:
    void numbersReadBack();
    void said_data();
    void said();
    void anotherLanguageKeepsItsFigures();
    void aStepInOneBreath();
    void bladesAreKnown();
};

namespace {

/// English words for a number below a million, read back.
qint64 read(const QString &words)
{
    static const QStringList units =
        QStringLiteral(
            "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
            "fifteen sixteen seventeen eighteen nineteen")
            .split(QLatin1Char(' '));
    static const QStringList decades =
        QStringLiteral("none ten twenty thirty forty fifty sixty seventy eighty ninety")
            .split(QLatin1Char(' '));
    qint64 all = 0;
    qint64 part = 0;
    QString plain = words;
    for (const QString &word : plain.replace(QLatin1Char('-'), QLatin1Char(' ')).split(QLatin1Char(' '))) {
        if (word == QLatin1String("and"))
            continue;
        if (word == QLatin1String("hundred"))
            part *= 100;
        else if (word == QLatin1String("thousand")) {
            all = part * 1000;
            part = 0;
        } else if (decades.contains(word))
            part += 10 * decades.indexOf(word);
        else if (units.contains(word))
            part += units.indexOf(word);
        else
            return -1;
    }
    return all + part;
}

} // namespace

void SpokenWordsTest::numbersReadBack()
{
    for (qint64 number = 0; number < 1'000'000; number += number < 2500 ? 1 : 977)
        QCOMPARE(read(numberInWords(number)), number);
    QCOMPARE(numberInWords(298), QStringLiteral("two hundred and ninety-eight"));
    QCOMPARE(numberInWords(1005), QStringLiteral("one thousand and five"));
    QCOMPARE(numberInWords(-3), QStringLiteral("-3"));
    QCOMPARE(numberInWords(1'000'000), QStringLiteral("1000000"));
}

void SpokenWordsTest::said_data()
{
    QTest::addColumn<QString>("printed");
    QTest::addColumn<QString>("spoken");
    const auto row = [](const char *printed, const char *spoken) {
        QTest::newRow(printed) << QString::fromUtf8(printed) << QString::fromUtf8(spoken);
    };
    row("11 3/4 in", "eleven and three quarter inches");
    row("13 1/4 in", "thirteen and a quarter inches");
    row("7 1/2 in", "seven and a half inches");
    row("5 15/16 in", "five and fifteen sixteenths inches");
    row("5 7/8 in", "five and seven eighths inches");
    row("1 1/16 in", "one and a sixteenth inches");
    row("3/4 in", "three quarters of an inch");
    row("1/2 in", "half an inch");
    row("1/8 in", "an eighth of an inch");
    row("11/32 in", "eleven thirty-seconds of an inch");
    row("1/64 in", "a sixty-fourth of an inch");
    row("1 in", "one inch");
    row("0 in", "zero inches");
    row("\u22121/8 in", "minus an eighth of an inch");
    row("a scant 21 3/16 in", "a scant twenty-one and three sixteenths inches");
    row("298 mm", "two hundred and ninety-eight millimetres");
    row("1 mm", "one millimetre");
    row("8.5 mm", "eight point five millimetres");
    row("1.2 m", "one point two metres");
    row("1 1/4 yd", "one and a quarter yards");
    row("3.2 %", "three point two per cent");
    row("12 × 13 1/4 in", "twelve by thirteen and a quarter inches");
    row("Strip 2 of 3", "Strip two of three");
    row("Trim block A1", "Trim block A1");
    row("\"Long\" with its {7 1/4 in} line on the cut edge.",
        "Long with its seven and a quarter inch line on the cut edge.");
    row("\"Square\" with its 1/2 in line on the fold.", "Square with its half inch line on the fold.");
    row("its 3/4 in line", "its three quarter inch line");
    row("its 7/8 in line", "its seven eighths inch line");
    row("2 layers.", "two layers.");
    row("Keep them 6 in (15 cm) away.", "Keep them six inches (fifteen centimetres) away.");
    row("pins in the hoop", "pins in the hoop");
}

void SpokenWordsTest::said()
{
    QFETCH(const QString, printed);
    QFETCH(const QString, spoken);
    QCOMPARE(inSpokenWords(printed), spoken);
}

void SpokenWordsTest::anotherLanguageKeepsItsFigures()
{
    QCOMPARE(inSpokenWords(QStringLiteral("Streifen 2 von 3, {298 mm}"), false),
             QStringLiteral("Streifen 2 von 3, 298 mm"));
}

void SpokenWordsTest::aStepInOneBreath()
{
    const SpokenStep step{
        QStringLiteral("Strip 2 of 3"),
        QStringLiteral("11 3/4 in"),
        QStringLiteral("Cut a hoop strip of oat linen."),
        true,
        {QStringLiteral("\"Broad\" with its 5 3/4 in line on the cut edge, \"Long\" against it.")},
        {}};
    QCOMPARE(readOut(step),
             QStringLiteral("Strip two of three. eleven and three quarter inches. Cut a hoop strip "
                            "of oat linen. Two rulers. Broad with its five and three quarter inch line "
                            "on the cut edge, Long against it."));
    QCOMPARE(readOut({}), QString());
}

void SpokenWordsTest::bladesAreKnown()
{
    Step step;
    QVERIFY(!takesABlade(step));
    step.caution = "needle";
    QVERIFY(!takesABlade(step));
    step.caution = "scissors";
    QVERIFY(takesABlade(step));
    step.caution = "blade";
    QVERIFY(takesABlade(step));
    step.caution.clear();
    step.ruler = RulerPlace();
    QVERIFY(takesABlade(step));
}

QTEST_APPLESS_MAIN(SpokenWordsTest)
#include "tst_spokenwords.moc"
