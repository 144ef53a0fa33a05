// SPDX-License-Identifier: MIT
#include "app/language.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>

#include <array>

namespace matside {

namespace {

constexpr SettingKey<QString> languageKey{"language"};

struct Named {
    const char *code;
    const char *name;
};
constexpr std::array names{Named{"en", "English"}, Named{"de", "Deutsch"}, Named{"fr", "Français"},
                           Named{"es", "Español"}};

QString fileOf(const QString &code)
{
    return QStringLiteral(":/i18n/matside_%1.qm").arg(code);
}

QString languageOf(const QString &locale)
{
    return locale.section(u'-', 0, 0).section(u'_', 0, 0);
}

/// The country's own customs where the system speaks that language: Zürich writes a point.
QLocale localeOf(const QString &code)
{
    const QString system = QLocale::system().name();
    if (languageOf(system) == code)
        return QLocale(system);
    if (code == QStringLiteral("en"))
        return system == QStringLiteral("C") ? QLocale::c()
                                             : QLocale(QLocale::English, QLocale::UnitedKingdom);
    return QLocale(code);
}

} // namespace

bool metricIsTheCustom()
{
    const QLocale::Language tongue = QLocale().language(); // as localeOf() chose it
    return tongue != QLocale::English && tongue != QLocale::C;
}

QStringList Spoken::known()
{
    QStringList codes;
    for (const Named &named : names) {
        const QString code = QString::fromLatin1(named.code);
        if (code == QStringLiteral("en") || QFile::exists(fileOf(code)))
            codes.append(code);
    }
    return codes;
}

QString Spoken::ofSystem()
{
    const QStringList there = known();
    const QStringList wanted = QLocale::system().uiLanguages();
    for (const QString &locale : wanted)
        if (QString code = languageOf(locale); there.contains(code))
            return code;
    return QStringLiteral("en");
}

bool Spoken::speak(const QString &code)
{
    if (!known().contains(code))
        return false;
    QCoreApplication::removeTranslator(&m_words);
    if (code != QStringLiteral("en")) {
        if (!m_words.load(fileOf(code)))
            return false;
        QCoreApplication::installTranslator(&m_words);
    }
    QLocale::setDefault(localeOf(code));
    m_code = code;
    return true;
}

Language::Language(Store &store, const QString &asked) : m_store(store)
{
    if (m_spoken.speak(asked))
        return;
    const auto chosen = m_store.setting(languageKey);
    if (chosen && chosen.value() && m_spoken.speak(*chosen.value()))
        return;
    (void)m_spoken.speak(Spoken::ofSystem());
}

void Language::setCode(const QString &code)
{
    if (code == m_spoken.code() || !m_spoken.speak(code))
        return;
    if (m_store.canWrite())
        (void)m_store.setSetting(languageKey, code);
    emit changed();
}

QVariantList Language::choices() const
{
    QVariantList list;
    const QStringList there = Spoken::known();
    for (const Named &named : names)
        if (const QString code = QString::fromLatin1(named.code); there.contains(code))
            list.append(QVariantMap{{QStringLiteral("value"), code},
                                    {QStringLiteral("says"), QString::fromUtf8(named.name)}});
    return list;
}

} // namespace matside
