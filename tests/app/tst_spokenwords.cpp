// SPDX-License-Identifier: MIT
//
// What is printed, as a person would say it. How the British say numbers and parts of an inch: from memory,
// no published source; the numbers are also read back into digits by a reader written the other way round.
#include "app/spokenwords.h"

#include "testing.h"

using namespace matside;

class SpokenWordsTest : public QObject {
    Q_OBJECT

private slots:
    void numbersReadBack();
    void said_data();
    void said();
    void saidInOtherLanguages_data();
    void saidInOtherLanguages();
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

void SpokenWordsTest::saidInOtherLanguages_data()
{
    QTest::addColumn<QString>("language");
    QTest::addColumn<QString>("printed");
    QTest::addColumn<QString>("spoken");
    const auto row = [](const char *language, const char *printed, const char *spoken) {
        QTest::newRow(
            qPrintable(QString::fromUtf8(language) + QStringLiteral(": ") + QString::fromUtf8(printed)))
            << QString::fromUtf8(language) << QString::fromUtf8(printed) << QString::fromUtf8(spoken);
    };
    // As it is said at the cutting table; common practice, no published source.
    row("de", "11 3/4 in", "11 und 3 viertel Zoll");
    row("de", "7 1/2 in", "7 einhalb Zoll");
    row("de", "13 1/4 in", "13 und ein viertel Zoll");
    row("de", "1/8 in", "ein achtel Zoll");
    row("de", "11/32 in", "11 zweiunddreißigstel Zoll");
    row("de", "1 in", "ein Zoll");
    row("de", "8,5 mm", "8,5 Millimeter");
    row("de", "−2,5 %", "minus 2,5 Prozent");
    row("de", "12 × 13 1/4 in", "12 mal 13 und ein viertel Zoll");
    row("de", "Streifen 2 von 3, {298 mm}", "Streifen 2 von 3, 298 Millimeter");
    row("de", "„Lang“ mit der Linie 7 1/4 in auf den Bruch.",
        "Lang mit der Linie 7 und ein viertel Zoll auf den Bruch.");
    row("fr", "11 3/4 in", "11 pouces 3 quarts");
    row("fr", "7 1/2 in", "7 pouces et demi");
    row("fr", "1 1/4 in", "1 pouce un quart");
    row("fr", "5 7/8 in", "5 pouces et 7 huitièmes");
    row("fr", "1/2 in", "un demi-pouce");
    row("fr", "3/4 in", "3 quarts de pouce");
    row("fr", "1,5 mm", "1,5 millimètre");
    row("fr", "2,5 mm", "2,5 millimètres");
    row("fr", "3,2 %", "3,2 pour cent");
    row("fr", "12 × 13 cm", "12 sur 13 centimètres");
    row("fr", "« Long » avec sa ligne 7 1/4 in sur le pli.",
        "Long avec sa ligne 7 pouces un quart sur le pli.");
    row("es", "11 3/4 in", "11 pulgadas y 3 cuartos");
    row("es", "7 1/2 in", "7 pulgadas y media");
    row("es", "1 1/2 m", "un metro y medio");
    row("es", "1/2 in", "media pulgada");
    row("es", "5/16 in", "5 dieciseisavos de pulgada");
    row("es", "1 in", "una pulgada");
    row("es", "21 in", "veintiuna pulgadas");
    row("es", "21 mm", "veintiún milímetros");
    row("es", "31 1/8 in", "treinta y una pulgadas y un octavo");
    row("es", "101 mm", "ciento un milímetros");
    row("es", "241 mm", "doscientos cuarenta y un milímetros");
    row("es", "200 in", "doscientas pulgadas");
    row("es", "190,5 mm", "190,5 milímetros");
    row("es", "Tira 2 de 3", "Tira 2 de 3");
    row("es", "Bloque A1, 7 × 7 in", "Bloque A1, 7 por 7 pulgadas");
    row("es", "−1/8 in", "menos un octavo de pulgada");
    // A part that no ruler has, and a language that is not told.
    row("es", "1/7 in", "1/7 in");
    row("it", "11 3/4 in", "11 3/4 in");
}

void SpokenWordsTest::saidInOtherLanguages()
{
    QFETCH(const QString, language);
    QFETCH(const QString, printed);
    QFETCH(const QString, spoken);
    QCOMPARE(inSpokenWords(printed, language), spoken);
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
