// SPDX-License-Identifier: MIT
#include "app/speech.h"

#include <QCoreApplication>
#include <QEvent>
#include <QLocale>
#include <QSemaphore>
#include <QThread>

#include <atomic>
#include <functional>
#include <optional>

namespace matside {

namespace {

/// Qt's own stand-in says nothing and is no voice.
constexpr QLatin1String standIn{"mock"};

std::optional<QLocale> localeFor(const QTextToSpeech &engine, const QString &language)
{
    const QLocale::Language wanted = QLocale(language).language();
    // A code nobody knows becomes the C locale, and some engines offer voices under that name.
    if (wanted == QLocale::AnyLanguage || wanted == QLocale::C)
        return std::nullopt;
    for (const QLocale &locale : engine.availableLocales())
        if (locale.language() == wanted)
            return locale;
    return std::nullopt;
}

std::unique_ptr<QTextToSpeech> engineFor(const QString &language)
{
    for (const QString &name : QTextToSpeech::availableEngines()) {
        if (name == standIn)
            continue;
        auto engine = std::make_unique<QTextToSpeech>(name);
        const auto locale = localeFor(*engine, language);
        if (engine->state() == QTextToSpeech::Error || !locale)
            continue;
        engine->setLocale(*locale);
        // A little slower than talk: there is a ruler to be laid meanwhile.
        engine->setRate(-0.1);
        return engine;
    }
    return nullptr;
}

struct Answer {
    QSemaphore given;
    bool found = false;
};

/// Something to be done on the thread of the desk it is sent to.
class Errand : public QEvent {
public:
    explicit Errand(std::function<void()> what) : QEvent(User), does(std::move(what)) {}
    std::function<void()> does;
};

class Desk : public QObject {
public:
    bool event(QEvent *event) override
    {
        if (event->type() == QEvent::User)
            static_cast<Errand *>(event)->does();
        return event->type() == QEvent::User || QObject::event(event);
    }
};

} // namespace

/// The thread an engine works on. Shared with what runs there, so that it lasts as long as that does.
struct Speech::Booth {
    QThread *thread = new QThread;
    Desk *desk = new Desk;                 ///< what is sent to it is done on the thread
    std::unique_ptr<QTextToSpeech> engine; ///< touched on the thread alone
    std::atomic<bool> speaking = false;

    Booth()
    {
        desk->moveToThread(thread);
        QObject::connect(thread, &QThread::finished, desk, &QObject::deleteLater);
        QObject::connect(thread, &QThread::finished, thread, &QObject::deleteLater);
        thread->start();
    }
    void ask(std::function<void()> what) const
    {
        QCoreApplication::postEvent(desk, new Errand(std::move(what)));
    }
    void open(const Open &opens, const QString &language)
    {
        speaking = false;
        engine = opens(language);
        if (!engine)
            return;
        QObject::connect(engine.get(), &QTextToSpeech::stateChanged, desk,
                         [this](QTextToSpeech::State state) { speaking = state == QTextToSpeech::Speaking; });
    }
};

Speech::Speech() : Speech(engineFor, std::chrono::seconds(3)) {}

Speech::Speech(Open open, std::chrono::milliseconds patience) : m_open(std::move(open)), m_patience(patience)
{
}

Speech::~Speech()
{
    if (!m_booth)
        return;
    const auto gone = std::make_shared<QSemaphore>();
    m_booth->ask([booth = m_booth, gone] {
        booth->engine.reset();
        booth->thread->quit();
        gone->release();
    });
    (void)gone->tryAcquire(1, static_cast<int>(m_patience.count()));
}

bool Speech::speaks(const QString &language)
{
    if (language == m_language || m_silent)
        return m_found;
    m_language = language;
    if (!m_booth)
        m_booth = std::make_shared<Booth>();
    const auto answer = std::make_shared<Answer>();
    m_booth->ask([booth = m_booth, answer, language, open = m_open] {
        booth->open(open, language);
        answer->found = booth->engine != nullptr;
        answer->given.release();
    });
    m_silent = !answer->given.tryAcquire(1, static_cast<int>(m_patience.count()));
    m_found = !m_silent && answer->found;
    if (m_silent)
        m_booth.reset(); // what hangs there keeps it
    return m_found;
}

void Speech::say(const QString &text, const QString &language)
{
    if (!speaks(language))
        return;
    m_booth->ask([booth = m_booth, text] {
        if (!booth->engine)
            return;
        booth->engine->stop();
        booth->engine->say(text);
    });
}

bool Speech::speaking() const
{
    return m_booth && m_booth->speaking;
}

void Speech::hush()
{
    if (!m_booth)
        return;
    m_booth->ask([booth = m_booth] {
        if (booth->engine)
            booth->engine->stop();
    });
}

} // namespace matside
