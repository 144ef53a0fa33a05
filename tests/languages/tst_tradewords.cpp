// SPDX-License-Identifier: MIT
#include "messages.h"
#include "tradewords.h"

#include <QFile>
#include <QTest>

#include <algorithm>

using namespace languages;

namespace {

QString page(const QString &name)
{
    QFile file(QStringLiteral(MATSIDE_SOURCE_DIR "/translations/") + name);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

std::vector<Message> toldIn(const QString &language)
{
    return messagesOf(page(QStringLiteral("matside_%1.ts").arg(language)).toUtf8());
}

const QStringList &languagesTold()
{
    static const QStringList all{QStringLiteral("de"), QStringLiteral("fr"), QStringLiteral("es")};
    return all;
}

} // namespace

/// One word a thing: what the glossary calls it is what every message calls it.
class TradeWordsTest : public QObject {
    Q_OBJECT

private slots:
    void aMissingWordIsSeen();
    void everyWordHasItsSource();
    void theFormsAreTheGlossarys();
    void messagesUseTheGlossarysWords_data();
    void messagesUseTheGlossarysWords();
    void nobodyIsAddressed_data() { messagesUseTheGlossarysWords_data(); }
    void nobodyIsAddressed();
    void typeIsSetAsTheLanguageSetsIt();
};

void TradeWordsTest::aMissingWordIsSeen()
{
    const auto words = tradeWordsOf(
        QStringLiteral("# a note\nsashing, sashings | Zwischenstreifen | bande, bandes | tira\nseam | Naht"));
    QCOMPARE(words.size(), size_t(2));
    QVERIFY(words[0].in(QStringLiteral("Long sashings %1.")));
    QVERIFY(!words[0].in(QStringLiteral("sash")));
    QVERIFY(!words[1].in(QStringLiteral("seamless")));
    QVERIFY(words[0].toldIn(QStringLiteral("Lange zwischenstreifen"), QStringLiteral("de")));
    QVERIFY(!words[0].toldIn(QStringLiteral("Lange Streifen"), QStringLiteral("de")));
    QVERIFY(words[1].forms.isEmpty());
    QCOMPARE(glossaryOf(QStringLiteral("|a|\n|---|\n| b | c | d | e | own | own | own |\n\n| f |")),
             std::vector<QStringList>(
                 {{QStringLiteral("b"), QStringLiteral("c"), QStringLiteral("d"), QStringLiteral("e"),
                   QStringLiteral("own"), QStringLiteral("own"), QStringLiteral("own")}}));
}

void TradeWordsTest::everyWordHasItsSource()
{
    const auto glossary = glossaryOf(page(QStringLiteral("glossary.md")));
    QVERIFY(glossary.size() > 60);
    const QStringList kinds{QStringLiteral("list"), QStringLiteral("common"), QStringLiteral("own"),
                            QStringLiteral("memory")};
    for (const QStringList &line : glossary) {
        QCOMPARE(line.size(), 7);
        for (int at = 0; at < 4; ++at)
            QVERIFY2(!line[at].isEmpty(), qPrintable(line.join(u'|')));
        for (int at = 4; at < 7; ++at)
            QVERIFY2(kinds.contains(line[at]), qPrintable(line.join(u'|')));
    }
}

void TradeWordsTest::theFormsAreTheGlossarys()
{
    const auto glossary = glossaryOf(page(QStringLiteral("glossary.md")));
    const auto words = tradeWordsOf(page(QStringLiteral("forms.txt")));
    QVERIFY(words.size() > 50);
    for (const TradeWord &word : words) {
        QCOMPARE(word.forms.size(), 3);
        const auto says = [&](const QStringList &line) {
            return word.in(line[0]) &&
                   line[1].contains(word.forms[QStringLiteral("de")][0], Qt::CaseInsensitive) &&
                   line[2].contains(word.forms[QStringLiteral("fr")][0], Qt::CaseInsensitive) &&
                   line[3].contains(word.forms[QStringLiteral("es")][0], Qt::CaseInsensitive);
        };
        QVERIFY2(std::any_of(glossary.begin(), glossary.end(), says), qPrintable(word.english.constFirst()));
    }
}

void TradeWordsTest::messagesUseTheGlossarysWords_data()
{
    QTest::addColumn<QString>("language");
    for (const QString &language : languagesTold())
        QTest::newRow(qPrintable(language)) << language;
}

void TradeWordsTest::messagesUseTheGlossarysWords()
{
    QFETCH(const QString, language);
    const auto messages = toldIn(language);
    QVERIFY(messages.size() > 1000);
    QStringList strays;
    for (const TradeWord &word : tradeWordsOf(page(QStringLiteral("forms.txt")))) {
        bool used = false;
        for (const Message &message : messages) {
            if (!word.in(message.source))
                continue;
            used = true;
            for (const QString &told : message.told)
                if (!word.toldIn(told, language))
                    strays << QStringLiteral("%1: \"%2\", \"%3\"")
                                  .arg(word.english.constFirst(), message.source, told);
        }
        QVERIFY2(used, qPrintable(word.english.constFirst()));
    }
    QVERIFY2(strays.isEmpty(), qPrintable(strays.join(u'\n')));
}

/// The glossary's last paragraphs: what is to be done stands in the infinitive, nobody is addressed. Words
/// that can only address somebody; "Sie" and "su" mean other things too and are left to the reader.
void TradeWordsTest::nobodyIsAddressed()
{
    QFETCH(const QString, language);
    static const QMap<QString, QString> address{
        {QStringLiteral("de"), QStringLiteral("\\b(du|dein\\w*|dir|dich|Ihr|Ihre[mnrs]?|Ihnen)\\b")},
        {QStringLiteral("fr"), QStringLiteral("\\b(vous|votre|vos|tu|toi|tes)\\b")},
        {QStringLiteral("es"),
         QStringLiteral("\\b(usted|ustedes|tú|tus?|ponga|tome|toque|(?<!se )elija|mire|haga)\\b")}};
    const QRegularExpression words(address[language], QRegularExpression::UseUnicodePropertiesOption);
    for (const Message &message : toldIn(language))
        for (const QString &told : message.told)
            QVERIFY2(!words.match(told).hasMatch(), qPrintable(told));
}

/// Quotation marks: „“, « » and «» (CLDR's quotation marks of de, fr and es); a decimal comma; in French a
/// narrow blank that does not break before : ; ? ! and inside the marks (common practice of French print).
void TradeWordsTest::typeIsSetAsTheLanguageSetsIt()
{
    static const QMap<QString, QString> wrong{
        {QStringLiteral("de"), QStringLiteral("[\"\u201d\u00ab\u00bb]|\u201e[^\u201c]*$|\\d\\.\\d")},
        {QStringLiteral("fr"), QStringLiteral("[\"\u201c\u201d\u201e']|[^\u202f\u00a0:][:;?!](?!\\d)|"
                                              "\u00ab(?!\u202f)|(?<!\u202f)\u00bb|\\d\\.\\d")},
        {QStringLiteral("es"), QStringLiteral("[\"\u201c\u201d\u201e']|\\d\\.\\d")}};
    for (const QString &language : languagesTold()) {
        const QRegularExpression signs(wrong[language]);
        for (const Message &message : toldIn(language))
            for (const QString &told : message.told)
                QVERIFY2(!signs.match(told).hasMatch(), qPrintable(language + u' ' + told));
    }
    for (const Message &message : toldIn(QStringLiteral("es")))
        for (const QString &told : message.told)
            QVERIFY2(told.count(u'?') == told.count(u'\u00bf'), qPrintable(told));
}

QTEST_APPLESS_MAIN(TradeWordsTest)
#include "tst_tradewords.moc"
