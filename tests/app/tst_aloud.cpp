// SPDX-License-Identifier: MIT
//
// When the step is read out and when it is not; with a voice that only listens, and with none.
#include "app/aloud.h"
#include "app/speech.h"
#include "desk.h"

#include "testing.h"

using namespace matside;

namespace {

/// Keeps what it was to say.
class Listener : public Voice {
public:
    [[nodiscard]] bool speaks(const QString &) override
    {
        ++looked;
        return there;
    }
    void say(const QString &text, const QString &) override
    {
        said.append(text);
        busy = true;
    }
    [[nodiscard]] bool speaking() const override { return busy; }
    void hush() override
    {
        ++hushed;
        busy = false;
    }
    bool busy = false;
    bool there = true;
    int looked = 0;
    int hushed = 0;
    QStringList said;
};

struct Reading {
    explicit Reading(Station station) { open.lay(desk::topper(), station); }
    desk::Open open;
    Language language{*open.store, QStringLiteral("en")};
    TrimModel trim{open.workspace, open.steps};
    Listener voice;
    Aloud aloud{open.workspace, {open.steps, trim, open.session, language}, voice};
};

/// A step of these that takes a blade, or none; −1 when there is no such step.
int stepWith(const StepModel &steps, int rows, bool blade)
{
    auto &all = const_cast<StepModel &>(steps);
    for (int row = 0; row < rows; ++row) {
        all.goTo(row);
        if (all.stepAtHand() && takesABlade(*all.stepAtHand()) == blade)
            return row;
    }
    return -1;
}

} // namespace

class AloudTest : public QObject {
    Q_OBJECT

private slots:
    void offUntilChosen();
    void whenAsked();
    void atEachNewStep();
    void neverByItselfWithABlade();
    void whatIsSaidIsTheStep();
    void withoutAVoice();
    void theTabletsOwnVoiceIsHarmless();
    void anEngineThatNeverAnswersIsLeftAlone();
    void anEngineIsOpenedOnceForALanguage();
    void remembered();
};

void AloudTest::offUntilChosen()
{
    Reading reading(Station::Cut);
    QCOMPARE(reading.aloud.when(), QStringLiteral("off"));
    QVERIFY(!reading.aloud.offered());
    reading.aloud.say();
    reading.open.steps.next();
    QVERIFY(reading.voice.said.isEmpty());
    QCOMPARE(reading.voice.looked, 0); // no engine is loaded for those who do not want one
    reading.aloud.setWhen(QStringLiteral("loudly"));
    QCOMPARE(reading.aloud.when(), QStringLiteral("off"));
}

void AloudTest::whenAsked()
{
    Reading reading(Station::Cut);
    reading.aloud.setWhen(QStringLiteral("asked"));
    QVERIFY(reading.aloud.offered());
    reading.open.steps.next();
    QVERIFY(reading.voice.said.isEmpty());
    reading.aloud.say();
    QCOMPARE(reading.voice.said, QStringList{reading.aloud.words()});
    // Asked again while it speaks, it is hushed; and once more, it says it again.
    reading.aloud.say();
    QVERIFY(!reading.voice.busy);
    reading.aloud.say();
    QCOMPARE(reading.voice.said.size(), 2);
    reading.open.session.showShelf();
    QVERIFY(!reading.voice.busy);
    reading.aloud.say();
    QCOMPARE(reading.voice.said.size(), 2);
}

void AloudTest::atEachNewStep()
{
    Reading reading(Station::Hoop);
    const int rows = reading.open.steps.steps()->count();
    const int quiet = stepWith(reading.open.steps, rows, false);
    QVERIFY(quiet >= 0);
    reading.open.session.setStation(static_cast<int>(Station::Fit));
    reading.aloud.setWhen(QStringLiteral("each"));
    reading.voice.said.clear();
    reading.open.session.setStation(static_cast<int>(Station::Hoop));
    reading.open.steps.goTo(quiet);
    QVERIFY(!reading.voice.said.isEmpty());
    QCOMPARE(reading.voice.said.last(), reading.aloud.words());
    // The same once more is not said twice.
    const qsizetype said = reading.voice.said.size();
    reading.open.steps.goTo(quiet);
    QCOMPARE(reading.voice.said.size(), said);
}

void AloudTest::neverByItselfWithABlade()
{
    Reading reading(Station::Cut);
    const int rows = reading.open.steps.steps()->count();
    int row = -1;
    for (int at = 0; at < rows && row < 0; ++at) {
        reading.open.steps.goTo(at);
        const Step *step = reading.open.steps.stepAtHand();
        if (step && takesABlade(*step) && step->count > 2)
            row = at;
    }
    QVERIFY(row >= 0);
    reading.aloud.setWhen(QStringLiteral("each"));
    reading.open.steps.goTo(row);
    QVERIFY(reading.voice.said.isEmpty());
    reading.open.steps.next();
    QVERIFY(reading.voice.said.isEmpty());
    // Asked at this very step, its next repetitions are read; the step after it is not.
    reading.open.steps.goTo(row);
    reading.aloud.say();
    QCOMPARE(reading.voice.said.size(), 1);
    reading.open.steps.next();
    QCOMPARE(reading.voice.said.size(), 2);
    QVERIFY(reading.voice.said[0] != reading.voice.said[1]);
    reading.open.steps.goTo(row == 0 ? 1 : 0);
    QCOMPARE(reading.voice.said.size(), 2);
}

void AloudTest::whatIsSaidIsTheStep()
{
    Reading reading(Station::Cut);
    StepModel &steps = reading.open.steps;
    int row = 0;
    while (row < steps.steps()->count() && !(steps.figure().valid && takesABlade(*steps.stepAtHand())))
        steps.goTo(row++);
    QVERIFY(steps.figure().valid);
    const QString words = reading.aloud.words();
    static const QRegularExpression figures(QStringLiteral("[0-9{}×]"));
    QVERIFY2(!words.contains(figures), qPrintable(words));
    QVERIFY2(words.contains(QStringLiteral("inch")), qPrintable(words));
    QVERIFY2(words.contains(QStringLiteral("blade")), qPrintable(words));
}

void AloudTest::withoutAVoice()
{
    Reading reading(Station::Cut);
    reading.voice.there = false;
    reading.aloud.setWhen(QStringLiteral("each"));
    QVERIFY(!reading.aloud.voiced() && !reading.aloud.offered());
    reading.aloud.say();
    reading.open.steps.next();
    QVERIFY(reading.voice.said.isEmpty());
}

void AloudTest::theTabletsOwnVoiceIsHarmless()
{
    // No language of any engine; and whatever this machine has, asking and hushing does nothing bad.
    Speech speech;
    speech.hush();
    QVERIFY(!speech.speaks(QStringLiteral("xx")));
    speech.say(QStringLiteral("unheard"), QStringLiteral("xx"));
    speech.hush();
}

void AloudTest::anEngineThatNeverAnswersIsLeftAlone()
{
    // As one does whose own program hangs: the page must go on without it.
    const auto never = std::make_shared<QSemaphore>();
    {
        Speech speech(
            [never](const QString &) {
                never->acquire();
                return std::unique_ptr<QTextToSpeech>();
            },
            std::chrono::milliseconds(50));
        QVERIFY(!speech.speaks(QStringLiteral("en")));
        QVERIFY(!speech.speaks(QStringLiteral("de")));
        speech.say(QStringLiteral("unheard"), QStringLiteral("en"));
        speech.hush();
        QVERIFY(!speech.speaking());
    }
    never->release(2);
}

void AloudTest::anEngineIsOpenedOnceForALanguage()
{
    for (int once = 0; once < 2; ++once)
        QTest::ignoreMessage(QtCriticalMsg, "Text-to-speech plug-in \"no such engine\" is not supported.");
    const auto opened = std::make_shared<QStringList>();
    Speech speech(
        [opened](const QString &language) {
            *opened << language;
            return std::make_unique<QTextToSpeech>(QStringLiteral("no such engine"));
        },
        std::chrono::minutes(1));
    QVERIFY(!speech.speaking());
    QVERIFY(speech.speaks(QStringLiteral("en")));
    QVERIFY(speech.speaks(QStringLiteral("en")));
    QVERIFY(speech.speaks(QStringLiteral("fr")));
    QCOMPARE(*opened, QStringList({QStringLiteral("en"), QStringLiteral("fr")}));
    speech.hush();
}

void AloudTest::remembered()
{
    QTemporaryDir folder;
    for (const bool again : {false, true}) {
        desk::Open open(folder.path());
        Language language(*open.store, QStringLiteral("en"));
        TrimModel trim(open.workspace, open.steps);
        Listener voice;
        Aloud aloud(open.workspace, {open.steps, trim, open.session, language}, voice);
        QCOMPARE(aloud.when(), again ? QStringLiteral("each") : QStringLiteral("off"));
        aloud.setWhen(QStringLiteral("each"));
    }
}

QTEST_GUILESS_MAIN(AloudTest)
#include "tst_aloud.moc"
