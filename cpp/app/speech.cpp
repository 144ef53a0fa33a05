// SPDX-License-Identifier: MIT
#include "app/speech.h"

#include <QLocale>

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

} // namespace

bool Speech::speaks(const QString &language)
{
    if (language != m_language) {
        m_language = language;
        m_engine = engineFor(language);
    }
    return m_engine != nullptr;
}

void Speech::say(const QString &text, const QString &language)
{
    if (!speaks(language))
        return;
    m_engine->stop();
    m_engine->say(text);
}

bool Speech::speaking() const
{
    return m_engine && m_engine->state() == QTextToSpeech::Speaking;
}

void Speech::hush()
{
    if (m_engine)
        m_engine->stop();
}

} // namespace matside
