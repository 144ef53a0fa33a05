// SPDX-License-Identifier: MIT
#include "length/read.h"

#include "testing.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <random>

using namespace matside;

class ReadTest : public QObject {
    Q_OBJECT
private slots:
    void understandsWhatPeopleType_data();
    void understandsWhatPeopleType();
    void pointsAtWhatItCannotRead_data();
    void pointsAtWhatItCannotRead();
    void readsSharesOfAHundred();
    void writesWhatReadsBackToTheTick();
    void readsEveryVulgarFractionOfUnicode();
    void writesDecimalsAsTheCLibraryPrintsThem();
    void writesNoLengthForAnOverflow();
    void standsUpToAnyBytes();
    void readsVeryLongTextsToTheirEnd();
};

void ReadTest::understandsWhatPeopleType_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<bool>("metric");
    QTest::addColumn<qint64>("ticks");
    const auto row = [](const char *text, qint64 ticks, bool metric = false) {
        QTest::newRow(QByteArray(text).trimmed().constData()) << QByteArray(text) << metric << ticks;
    };
    const qint64 in = 8128;
    row("7", 7 * in);
    row("7 1/2", 15 * in / 2);
    row("7-1/2", 15 * in / 2);
    row("7½", 15 * in / 2);
    row("7-½", 15 * in / 2);
    row("7–1/2", 15 * in / 2);
    row("-7-1/2", -15 * in / 2);
    row("¼", in / 4);
    row("¾", 3 * in / 4);
    row("⅛", in / 8);
    row("1⅜", 11 * in / 8);
    row("⅝", 5 * in / 8);
    row("⅞\u2033", 7 * in / 8);
    row("⅓", 2709); // 2709.33 ticks
    row("⅔", 5419); // 5418.67 ticks
    row("7 ½", 15 * in / 2);
    row("½", in / 2);
    row("7.5", 15 * in / 2);
    row("7,5", 15 * in / 2);
    row(".5", in / 2);
    row("7 1/2\"", 15 * in / 2);
    row("7 1/2″", 15 * in / 2);
    row("7 1/2 in", 15 * in / 2);
    row("7 1/2 inches", 15 * in / 2);
    row("  7\u00A01/2 IN  ", 15 * in / 2);
    row("7 1⁄2", 15 * in / 2);
    row("165 mm", 165 * 320);
    row("165mm", 165 * 320);
    row("16.5 cm", 165 * 320);
    row("1 1/4 yd", 45 * in);
    row("1.2 m", 1200 * 320);
    row("2 ft", 24 * in);
    row("3'", 36 * in);
    row("3\u2032", 36 * in);
    row("3’", 36 * in);
    row("1 1/2 feet", 18 * in);
    row("7 1/2 in.\r\n", 15 * in / 2);
    row("16,5\u202Fcm", 165 * 320);
    row("1\u20071/4\u2009yd", 45 * in);
    row("10000 m", 3'200'000'000);
    row("-1/16", -in / 16);
    row("−1/16 in", -in / 16);
    row("6 1/3", 51477); // 6.3333… in, rounded once to a tick (51477.33)
    row("9/8", 9 * in / 8);
    row("0", 0);
    row("165", 165 * 320, true);
    row("165,5", 331 * 160, true);
    row("6 in", 6 * in, true);
    row("1 inch", in);
    row("1 foot", 12 * in);
    row("2 yards", 72 * in);
    row("1 yard", 36 * in);
    row("4\u201D", 4 * in);
    // The yard in eighths: 36 n / 8 in, mathematics.
    row("1/8 yd", 9 * in / 2);
    row("1/4 yd", 9 * in);
    row("1/3 yd", 12 * in);
    row("3/8 yd", 27 * in / 2);
    row("1/2 yd", 18 * in);
    row("5/8 yd", 45 * in / 2);
    row("3/4 yd", 27 * in);
    row("7/8 yd", 63 * in / 2);
}
void ReadTest::understandsWhatPeopleType()
{
    QFETCH(QByteArray, text);
    QFETCH(bool, metric);
    QFETCH(qint64, ticks);
    const auto read = readLength({text.constData(), static_cast<std::size_t>(text.size())},
                                 metric ? System::Metric : System::Inch);
    QVERIFY2(read.ok(),
             read.ok() ? "" : QByteArray::number(static_cast<int>(read.error().fault)).constData());
    QCOMPARE(qint64(read.value().count()), ticks);
}

void ReadTest::pointsAtWhatItCannotRead_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("fault");
    QTest::addColumn<int>("at");
    const auto row = [](const char *text, ReadFault fault, int at) {
        QTest::newRow(text) << QByteArray(text) << static_cast<int>(fault) << at;
    };
    row("", ReadFault::Empty, 0);
    row("   ", ReadFault::Empty, 0);
    row("seven", ReadFault::NotANumber, 0);
    row("7 1/0", ReadFault::BadFraction, 4);
    row("1/0", ReadFault::BadFraction, 2);
    row("7 5/4", ReadFault::BadFraction, 4);
    row("7 1/", ReadFault::BadFraction, 4);
    row("/2", ReadFault::BadFraction, 0);
    row("7 2/2", ReadFault::BadFraction, 4);
    row("7 -", ReadFault::BadFraction, 2);
    row("7-x", ReadFault::BadFraction, 1);
    row("--7", ReadFault::NotANumber, 1);
    row("½½", ReadFault::NotANumber, 2);
    row("7 1/2 mmm", ReadFault::UnknownUnit, 6);
    row("10000.1 m", ReadFault::TooLong, 0);
    row("-10001 m", ReadFault::TooLong, 1);
    row("7 parsec", ReadFault::UnknownUnit, 2);
    row("3 in mm", ReadFault::TwoUnits, 5);
    row("7 1/2 ?", ReadFault::NotANumber, 6);
    row("7..5", ReadFault::NotANumber, 2);
    row("7.5.5", ReadFault::NotANumber, 3);
    row("99999999999999999999", ReadFault::TooLong, 0);
    row("20000 m", ReadFault::TooLong, 0);
    row("0.00000000000000000000000000001", ReadFault::TooFine, 14);
}
void ReadTest::pointsAtWhatItCannotRead()
{
    QFETCH(QByteArray, text);
    QFETCH(int, fault);
    QFETCH(int, at);
    const auto read = readLength({text.constData(), static_cast<std::size_t>(text.size())}, System::Inch);
    QVERIFY(!read.ok());
    QCOMPARE(static_cast<int>(read.error().fault), fault);
    QCOMPARE(static_cast<int>(read.error().at), at);
}

void ReadTest::readsSharesOfAHundred()
{
    QCOMPARE(readShare("2 %").value().millionths, 20'000);
    QCOMPARE(readShare("2.0833%").value().millionths, 20'833);
    QCOMPARE(readShare("2,5").value().millionths, 25'000);
    QVERIFY(!readShare("two").ok());
    for (const char *nothing : {"", "  "})
        QVERIFY(readShare(nothing).error() == (ReadError{ReadFault::Empty, 0}));
    QVERIFY(!readShare("2 mm").ok());
    QCOMPARE(writeShare(Share{20'833}), std::string("2.0833 %"));
    QCOMPARE(writeShare(Share{0}), std::string("0 %"));
    for (std::int64_t share = -1000; share < 200'000; share += 37)
        QCOMPARE(readShare(writeShare(Share{share})).value(), Share{share});
}

void ReadTest::writesWhatReadsBackToTheTick()
{
    QCOMPARE(writeLength(Length::inches(7, 1, 2), System::Inch), std::string("7 1/2 in"));
    QCOMPARE(writeLength(Length::mmTenths(1655), System::Metric), std::string("165.5 mm"));
    QCOMPARE(writeLength(Length::mm(150), System::Inch), std::string("150 mm"));
    std::mt19937_64 engine(21);
    std::uniform_int_distribution<std::int64_t> any(-longest().count(), longest().count());
    for (int i = 0; i < 50'000; ++i) {
        const Length length = Length::ticks(i < 20'000 ? i - 10'000 : any(engine));
        for (const System system : {System::Inch, System::Metric}) {
            const std::string written = writeLength(length, system);
            const auto read = readLength(written, system);
            QVERIFY2(read.ok(), written.c_str());
            QCOMPARE(read.value().count(), length.count());
        }
    }
}

void ReadTest::readsEveryVulgarFractionOfUnicode()
{
    // Numeric values as the Unicode Character Database (UnicodeData.txt) gives them.
    struct Fraction {
        char16_t code;
        int num;
        int den;
    };
    for (const Fraction &one : std::initializer_list<Fraction>{{0x00BC, 1, 4},
                                                               {0x00BD, 1, 2},
                                                               {0x00BE, 3, 4},
                                                               {0x2150, 1, 7},
                                                               {0x2151, 1, 9},
                                                               {0x2152, 1, 10},
                                                               {0x2153, 1, 3},
                                                               {0x2154, 2, 3},
                                                               {0x2155, 1, 5},
                                                               {0x2156, 2, 5},
                                                               {0x2157, 3, 5},
                                                               {0x2158, 4, 5},
                                                               {0x2159, 1, 6},
                                                               {0x215A, 5, 6},
                                                               {0x215B, 1, 8},
                                                               {0x215C, 3, 8},
                                                               {0x215D, 5, 8},
                                                               {0x215E, 7, 8}}) {
        const std::string text = QString(QChar(one.code)).toStdString();
        const auto read = readLength("2" + text, System::Inch);
        QVERIFY2(read.ok(), text.c_str());
        QCOMPARE(read.value().count(), std::llround((2.0 + 1.0 * one.num / one.den) * 8128));
    }
}

void ReadTest::writesDecimalsAsTheCLibraryPrintsThem()
{
    // General-purpose library: printf of the C standard library.
    int decimals = 0;
    for (std::int64_t ticks = 1; ticks < 40'000; ticks += 7) {
        if (ticks % 127 == 0 || ticks % 32 == 0)
            continue;
        std::array<char, 40> printed{};
        std::snprintf(printed.data(), printed.size(), "%.6f", static_cast<double>(ticks) / 8128);
        std::string digits = printed.data();
        digits.erase(digits.find_last_not_of('0') + 1);
        QCOMPARE(writeLength(Length::ticks(ticks), System::Inch), digits + " in");
        QCOMPARE(writeLength(Length::ticks(-ticks), System::Metric).substr(1), digits + " in");
        ++decimals;
    }
    QVERIFY(decimals > 1000);
}

void ReadTest::writesNoLengthForAnOverflow()
{
    for (const System system : {System::Inch, System::Metric})
        QVERIFY(!readLength(writeLength(Length::overflow(), system), system).ok());
}

void ReadTest::standsUpToAnyBytes()
{
    std::mt19937_64 engine(22);
    const std::string likely = "0123456789 1/2-.,inmcyd½″\"'\xE2\x88\x92%\xC2";
    for (int i = 0; i < 100'000; ++i) {
        std::string text;
        const auto length = engine() % 24;
        for (std::size_t k = 0; k < length; ++k)
            text += engine() % 4 == 0 ? static_cast<char>(engine()) : likely[engine() % likely.size()];
        const auto read = readLength(text, System::Inch);
        if (read.ok())
            QVERIFY(read.value().magnitude() <= longest());
        else
            QVERIFY(read.error().at <= text.size());
    }
}

void ReadTest::readsVeryLongTextsToTheirEnd()
{
    const std::size_t many = 1'000'000;
    QCOMPARE(readLength(std::string(many, '0') + "7 in", System::Inch).value(), Length::inches(7));
    QCOMPARE(readLength(std::string(many, ' ') + "7" + std::string(many, ' '), System::Inch).value(),
             Length::inches(7));
    QCOMPARE(readLength(std::string(many, ' '), System::Inch).error(), (ReadError{ReadFault::Empty, 0}));
    QCOMPARE(readLength(std::string(many, '9'), System::Inch).error(), (ReadError{ReadFault::TooLong, 0}));
    QCOMPARE(readLength("7 1/" + std::string(many, '9'), System::Inch).error(),
             (ReadError{ReadFault::TooFine, 4}));
    QCOMPARE(readLength("7 " + std::string(many, 'i'), System::Inch).error(),
             (ReadError{ReadFault::UnknownUnit, 2}));
}

QTEST_GUILESS_MAIN(ReadTest)
#include "tst_read.moc"
