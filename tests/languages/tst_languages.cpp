// SPDX-License-Identifier: MIT
#include "messages.h"
#include "wordy.h"

#include "app/demo.h"
#include "app/figures.h"
#include "app/fitmodel.h"
#include "app/language.h"
#include "app/session.h"
#include "app/wording.h"
#include "bench/step.h"
#include "plan/plan.h"
#include "project/codec.h"

#include <QFile>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace languages;
using namespace matside;

namespace {

QByteArray contents(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList required()
{
    return QStringLiteral(REQUIRED_LANGUAGES).split(u' ', Qt::SkipEmptyParts);
}

QString named(const Message &message)
{
    return QStringLiteral("[%1] \"%2\"").arg(message.context, message.source);
}

} // namespace

/// Every language that is offered says all there is to say, and says it with the same figures.
class LanguagesTest : public QObject {
    Q_OBJECT

private slots:
    void whatIsLostIsSeen();
    void aWordyLanguageIsLonger();
    void nothingIsLeftUntold_data();
    void nothingIsLeftUntold();
    void figuresAndLengthsArePutIn_data() { everyLanguage(); }
    void figuresAndLengthsArePutIn();
    void nothingIsLeftInEnglish_data() { everyLanguage(); }
    void nothingIsLeftInEnglish();
    void theLanguageChangesAtOnceAndIsKept_data() { everyLanguage(); }
    void theLanguageChangesAtOnceAndIsKept();
    void everyFieldIsToldAnew_data() { everyLanguage(); }
    void everyFieldIsToldAnew();
    void theDemoIsMetricWhereThatIsTheCustom_data() { everyLanguage(); }
    void theDemoIsMetricWhereThatIsTheCustom();
    void theDemoIsNamedInTheReadersLanguage_data() { everyLanguage(); }
    void theDemoIsNamedInTheReadersLanguage();
    void figuresTakeTheSignOfTheLanguage();
    void anUnknownLanguageChangesNothing();
    void cleanup() { QLocale::setDefault(QLocale::c()); }

private:
    static void everyLanguage();
    static std::vector<Message> toldIn(const QString &language);
};

void LanguagesTest::everyLanguage()
{
    QTest::addColumn<QString>("language");
    for (const QString &language : required())
        QTest::newRow(qPrintable(language)) << language;
}

std::vector<Message> LanguagesTest::toldIn(const QString &language)
{
    return messagesOf(
        contents(QStringLiteral(MATSIDE_SOURCE_DIR "/translations/matside_%1.ts").arg(language)));
}

void LanguagesTest::whatIsLostIsSeen()
{
    QCOMPARE(placesOf(QStringLiteral("%2 of {%1}, the %o3, %n, 2 %")),
             QStringList(
                 {QStringLiteral("%1"), QStringLiteral("%2"), QStringLiteral("%n"), QStringLiteral("%o3")}));
    const QString source = QStringLiteral("Cut {%1} of %2");
    QVERIFY(lostIn(source, QStringLiteral("%2: {%1} schneiden")).isEmpty());
    for (const char *bad : {"", "{%1} schneiden", "%2: %1 schneiden", "%2: {%1 schneiden", "&%2: {%1}",
                            "%2: {%1} schneiden ", "%2:\n{%1} schneiden", "%3 %2: {%1}"})
        QVERIFY2(!lostIn(source, QString::fromUtf8(bad)).isEmpty(), bad);
}

void LanguagesTest::aWordyLanguageIsLonger()
{
    QCOMPARE(lengthened(QStringLiteral("Cut %1 of {a scant 3} in")),
             QStringLiteral("Cuüt %1 oöf {a scant 3} iïn"));
    QCOMPARE(lengthened(QStringLiteral("%n by %o2")), QStringLiteral("%n bby %o2"));
    QCOMPARE(lengthenedFile("no translation at all"), QByteArray());
    const QByteArray longer =
        lengthenedFile(contents(QStringLiteral(MATSIDE_SOURCE_DIR "/translations/matside_de.ts")));
    const std::vector<Message> messages = messagesOf(longer);
    QVERIFY(messages.size() > 1000);
    static const QRegularExpression notWords(QStringLiteral("\\{[^}]*\\}|%o?[0-9n]|[^A-Za-zäëïöü]"));
    for (const Message &message : messages) {
        QString before = message.source;
        QString after = message.told.constFirst();
        QVERIFY2(lostIn(before, after).isEmpty(), qPrintable(named(message)));
        before.remove(notWords);
        after.remove(notWords);
        QVERIFY2(after.size() * 10 >= before.size() * 14, qPrintable(named(message)));
    }
}

void LanguagesTest::nothingIsLeftUntold_data()
{
    QVERIFY2(!required().isEmpty(), "no language is asked for");
    everyLanguage();
}

/// The source is gathered anew over a copy: what it says and the file does not know comes out unfinished,
/// what the file knows and the source says no more comes out vanished.
void LanguagesTest::nothingIsLeftUntold()
{
    QFETCH(const QString, language);
    const QString root = QStringLiteral(MATSIDE_SOURCE_DIR);
    QTemporaryDir dir;
    const QString copy = dir.filePath(QStringLiteral("copy.ts"));
    QVERIFY(QFile::copy(root + QStringLiteral("/translations/matside_%1.ts").arg(language), copy));
    QVERIFY(QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner));
    QProcess gather;
    gather.setProcessChannelMode(QProcess::MergedChannels);
    gather.start(QStringLiteral(LUPDATE),
                 {QStringLiteral("-extensions"), QStringLiteral("cpp,h,qml,js"), QStringLiteral("-locations"),
                  QStringLiteral("none"), root + QStringLiteral("/cpp"), root + QStringLiteral("/qml"),
                  QStringLiteral("-ts"), copy});
    QVERIFY(gather.waitForFinished(10 * 60 * 1000));
    const QString said = QString::fromUtf8(gather.readAll());
    QVERIFY2(gather.exitStatus() == QProcess::NormalExit && gather.exitCode() == 0, qPrintable(said));
    QVERIFY2(!said.contains(QStringLiteral("warning"), Qt::CaseInsensitive), qPrintable(said));
    const std::vector<Message> messages = messagesOf(contents(copy));
    QVERIFY2(messages.size() > 1000, "the source could not be gathered");
    QStringList untold;
    for (const Message &message : messages)
        if (!message.state.isEmpty())
            untold << message.state + u' ' + named(message);
    QVERIFY2(untold.isEmpty(), qPrintable(untold.join(u'\n')));
}

void LanguagesTest::figuresAndLengthsArePutIn()
{
    QFETCH(const QString, language);
    QStringList lost;
    for (const Message &message : toldIn(language))
        for (const QString &told : message.told)
            if (const QString what = lostIn(message.source, told); !what.isEmpty())
                lost << QStringLiteral("%1 %2: \"%3\"").arg(named(message), what, told);
    QVERIFY2(lost.isEmpty(), qPrintable(lost.join(u'\n')));
}

void LanguagesTest::nothingIsLeftInEnglish()
{
    QFETCH(const QString, language);
    const QStringList alike =
        QString::fromUtf8(contents(QStringLiteral(MATSIDE_SOURCE_DIR "/translations/same.txt"))).split(u'\n');
    QVERIFY(!alike.isEmpty());
    QStringList english;
    for (const Message &message : toldIn(language))
        if (message.told.contains(message.source) && !alike.contains(message.source))
            english << named(message);
    QVERIFY2(english.isEmpty(), qPrintable(english.join(u'\n')));
}

void LanguagesTest::theLanguageChangesAtOnceAndIsKept()
{
    QFETCH(const QString, language);
    QTemporaryDir dir;
    auto store = openStore(dir.path());
    QVERIFY(store.ok());
    {
        Language chosen(*store.value(), QStringLiteral("en"));
        QCOMPARE(stationText(Station::Cut), QStringLiteral("Cut"));
        QVERIFY(!chosen.metricFirst());
        int told = 0;
        QObject::connect(&chosen, &Language::changed, &chosen, [&told] { ++told; });
        chosen.setCode(language);
        QCOMPARE(told, 1);
        QVERIFY(stationText(Station::Cut) != QStringLiteral("Cut"));
        QVERIFY(chosen.metricFirst());
    }
    QCOMPARE(stationText(Station::Cut), QStringLiteral("Cut")); // the words go with who said them
    const Language again(*store.value());
    QCOMPARE(again.code(), language);
    QVERIFY(stationText(Station::Cut) != QStringLiteral("Cut"));
}

/// Chosen with no piece open, as at the first start, or with one: every field of Fit is told anew.
void LanguagesTest::everyFieldIsToldAnew()
{
    QFETCH(const QString, language);
    QTemporaryDir dir;
    auto store = openStore(dir.path());
    QVERIFY(store.ok());
    const auto demo = store.value()->ensureDemo(demoProject());
    QVERIFY(demo.ok());
    Language chosen(*store.value(), QStringLiteral("en"));
    Workspace workspace(*store.value());
    FitModel fit(workspace);
    const FieldsModel &fields = *fit.fields();
    const auto labels = [&] {
        QStringList all;
        for (int row = 0; row < fields.rowCount({}); ++row)
            all.append(fields.data(fields.index(row), FieldsModel::Label).toString());
        return all;
    };
    QVERIFY(workspace.open(demo.value()));
    chosen.setCode(language);
    workspace.reword();
    const QStringList openWhenChosen = labels();
    workspace.close();
    chosen.setCode(QStringLiteral("en"));
    workspace.reword();
    QVERIFY(workspace.open(demo.value()));
    const QStringList english = labels();
    QVERIFY(english.size() > 20 && openWhenChosen != english);
    workspace.close();
    chosen.setCode(language);
    workspace.reword();
    QVERIFY(workspace.open(demo.value()));
    QCOMPARE(labels(), openWhenChosen);
    // Told from the start in that language, it is the same.
    Workspace other(*store.value());
    FitModel otherFit(other);
    QVERIFY(other.open(demo.value()));
    const FieldsModel &fresh = *otherFit.fields();
    for (int row = 0; row < fresh.rowCount({}); ++row)
        QCOMPARE(openWhenChosen.value(row), fresh.data(fresh.index(row), FieldsModel::Label).toString());
}

/// Whole millimetres, rulers of whole centimetres, and it can be made as it stands.
void LanguagesTest::theDemoIsMetricWhereThatIsTheCustom()
{
    QFETCH(const QString, language);
    QTemporaryDir dir;
    auto store = openStore(dir.path());
    QVERIFY(store.ok());
    Language chosen(*store.value(), QStringLiteral("en"));
    QCOMPARE(readProject(demoByCustom().toStdString()).value().project.system, System::Inch);
    chosen.setCode(language);
    const auto here = readProject(demoByCustom().toStdString());
    QVERIFY(here.ok());
    const Project &project = here.value().project;
    QCOMPARE(project.system, System::Metric);
    QVERIFY(!project.rulers.empty());
    for (const Ruler &ruler : project.rulers)
        for (const Length side : {ruler.length, ruler.width})
            QCOMPARE(side, side.downTo(Length::mm(10)));
    const Plan made = plan(project);
    QVERIFY(made.problems.empty());
    QVERIFY(!steps(project, made).empty());
}

/// Cloths, rulers, patches and hoop of the demo: none keeps its English name, nothing else is changed.
void LanguagesTest::theDemoIsNamedInTheReadersLanguage()
{
    QFETCH(const QString, language);
    const auto english = readProject(demoProject().toStdString());
    QVERIFY(english.ok());
    QTemporaryDir dir;
    auto store = openStore(dir.path());
    QVERIFY(store.ok());
    Language chosen(*store.value(), QStringLiteral("en"));
    chosen.setCode(language);
    const auto here = readProject(demoProject().toStdString());
    QVERIFY(here.ok());
    Project told = here.value().project;
    const Project &was = english.value().project;
    const auto renamed = [](std::string &name, const std::string &before) {
        const bool other = name != before;
        name = before;
        return other;
    };
    QVERIFY(renamed(told.name, was.name) && renamed(told.hoop.name, was.hoop.name));
    for (std::size_t i = 0; i < was.cloths.size(); ++i)
        QVERIFY2(renamed(told.cloths[i].name, was.cloths[i].name), was.cloths[i].name.c_str());
    for (std::size_t i = 0; i < was.patches.size(); ++i)
        QVERIFY2(renamed(told.patches[i].name, was.patches[i].name), was.patches[i].name.c_str());
    for (std::size_t i = 0; i < was.rulers.size(); ++i)
        QVERIFY2(renamed(told.rulers[i].name, was.rulers[i].name), was.rulers[i].name.c_str());
    QCOMPARE(writeProject(told), writeProject(was));
}

/// Decimal comma: the custom of German, French and Spanish (CLDR's decimal symbol of de, fr and es).
void LanguagesTest::figuresTakeTheSignOfTheLanguage()
{
    QTemporaryDir dir;
    auto store = openStore(dir.path());
    QVERIFY(store.ok());
    const Marks marks{System::Metric, Length::mm(1)};
    const Length length = Length::mmTenths(1905);
    Language language(*store.value(), QStringLiteral("en"));
    QCOMPARE(figureOf(length, marks, Round::Fine).whole, QStringLiteral("190.5"));
    for (const QString &code : required()) {
        language.setCode(code);
        QCOMPARE(figureOf(length, marks, Round::Fine).whole, QStringLiteral("190,5"));
        QVERIFY(figureText(length, marks, Round::Fine).contains(QStringLiteral("190,5")));
        // What is typed is read with either sign.
        for (const char *typed : {"190,5", "190.5"})
            QCOMPARE(readLength(typed, System::Metric).value().count(), length.count());
    }
}

void LanguagesTest::anUnknownLanguageChangesNothing()
{
    QTemporaryDir dir;
    auto store = openStore(dir.path());
    QVERIFY(store.ok());
    Language language(*store.value(), QStringLiteral("tlh"));
    QCOMPARE(language.code(), QStringLiteral("en"));
    language.setCode(QStringLiteral("tlh"));
    QCOMPARE(language.code(), QStringLiteral("en"));
    QCOMPARE(language.choices().size(), required().size() + 1);
}

QTEST_GUILESS_MAIN(LanguagesTest)
#include "tst_languages.moc"
