// SPDX-License-Identifier: MIT
//
// Which texts pass for a document, and under which name, against nlohmann::json (a general-purpose library
// that keeps to RFC 8259) on documents in which chance has changed something.
#include "store/documentname.h"
#include "store/storehelp.h"

#include <nlohmann/json.hpp>

using namespace storehelp;

namespace {

/// What the library says of the same text.
std::optional<QString> nameByLibrary(const QString &text)
{
    const auto json = nlohmann::json::parse(text.toStdString(), nullptr, false);
    if (!json.is_object())
        return std::nullopt;
    const auto name = json.find("name");
    if (name == json.end() || !name->is_string())
        return QString(QLatin1String(""));
    return QString::fromStdString(name->get<std::string>());
}

QByteArray shown(const std::optional<QString> &name)
{
    return name ? "\"" + name->toUtf8() + "\"" : QByteArray("no object");
}

} // namespace

class TestDocumentName : public QObject {
    Q_OBJECT
private slots:
    void whatIsWritten_data();
    void whatIsWritten();
    void whatChanceMakesOfIt();
    void deep();
};

void TestDocumentName::whatIsWritten_data()
{
    QTest::addColumn<QString>("text");
    const QStringList texts{
        u"{}"_qs,
        u""_qs,
        u"{"_qs,
        u"[]"_qs,
        u"\"name\""_qs,
        u" \n{ \"name\" : \"Table\" }\t\r\n"_qs,
        u"{\"name\":\"Table\"} x"_qs,
        u"{\"name\":\"Table\",}"_qs,
        u"{\"name\":\"one\",\"name\":\"two\"}"_qs,
        u"{\"cloth\":{\"name\":\"linen\"},\"name\":\"Table\"}"_qs,
        u"{\"cloths\":[{\"name\":\"linen\"}]}"_qs,
        u"{\"name\":7}"_qs,
        u"{\"name\":null,\"n\":-0.5e+3,\"t\":true,\"f\":false}"_qs,
        u"{\"n\":01}"_qs,
        u"{\"n\":1.}"_qs,
        u"{\"n\":-}"_qs,
        u"{\"n\":1e}"_qs,
        u"{\"n\":tru}"_qs,
        u"{\"name\":\"\\u00e4\\\"\\\\\\n\"}"_qs,
        u"{\"name\":\"\\x\"}"_qs,
        u"{\"name\":\"\\u12g4\"}"_qs,
        u"{\"name\":\"a\nb\"}"_qs,
        u"{\"name\":\"ä 木 \U0001F9F5\"}"_qs,
        QStringLiteral("{\"name\":\"a%1b\"}").arg(QChar(u'\0')),
    };
    for (const QString &text : texts)
        QTest::newRow(qPrintable(text.simplified())) << text;
}

void TestDocumentName::whatIsWritten()
{
    QFETCH(QString, text);
    QCOMPARE(shown(nameInObject(text)), shown(nameByLibrary(text)));
}

void TestDocumentName::whatChanceMakesOfIt()
{
    const QString document = documentOf(u"Tischläufer \"Herbst\""_qs);
    const QString signs = u"{}[]\",:\\/ \n09.-+eEtfnu\u00e4x"_qs;
    std::mt19937 chance(20261126);
    int whole = 0;
    for (int round = 0; round < 4000; ++round) {
        QString text = document;
        for (auto changes = chance() % 3; changes > 0; --changes) {
            const auto place = static_cast<qsizetype>(chance() % static_cast<unsigned>(text.size()));
            const QChar sign = signs[static_cast<qsizetype>(chance() % static_cast<unsigned>(signs.size()))];
            switch (chance() % 4) {
            case 0:
                text[place] = sign;
                break;
            case 1:
                text.insert(place, sign);
                break;
            case 2:
                text.remove(place, 1);
                break;
            default:
                if (chance() % 8 == 0)
                    text.truncate(place + 1);
                break;
            }
        }
        const auto name = nameInObject(text);
        whole += name ? 1 : 0;
        QVERIFY2(shown(name) == shown(nameByLibrary(text)), qPrintable(text));
    }
    QVERIFY(whole > 500 && whole < 3900); // both kinds were met
}

void TestDocumentName::deep()
{
    const auto nested = [](int depth) {
        return u"{\"a\":"_qs + QString(depth, u'[') + QString(depth, u']') + u"}"_qs;
    };
    QVERIFY(nameInObject(nested(300)));
    // A text made to overrun the stack is no document.
    QVERIFY(!nameInObject(nested(1'000'000)));
}

QTEST_APPLESS_MAIN(TestDocumentName)
#include "tst_document_name.moc"
