// SPDX-License-Identifier: MIT
#include "app/aloud.h"
#include "app/wording.h"

#include <algorithm>

namespace matside {

namespace {
constexpr SettingKey<QString> whenKey{"read-aloud"};

bool known(const QString &when)
{
    return when == QStringLiteral("off") || when == QStringLiteral("asked") || when == QStringLiteral("each");
}
} // namespace

Aloud::Aloud(Workspace &workspace, const Reads &reads, Voice &voice)
    : m_workspace(workspace), m_reads(reads), m_voice(&voice)
{
    if (const auto when = m_workspace.store().setting(whenKey); when && when.value() && known(*when.value()))
        m_when = *when.value();
    m_shown = words();
    connect(&m_reads.steps, &StepModel::changed, this, &Aloud::follow);
    connect(&m_reads.trim, &TrimModel::changed, this, &Aloud::follow);
    connect(&m_reads.session, &Session::stationChanged, this, &Aloud::follow);
    connect(&m_reads.session, &Session::viewChanged, this, &Aloud::follow);
    connect(&m_reads.language, &Language::changed, this, [this] {
        m_shown = words();
        m_voice->hush();
        emit changed();
    });
}

void Aloud::setWhen(const QString &when)
{
    if (when == m_when || !known(when))
        return;
    m_when = when;
    m_voice->hush();
    m_shown = words();
    if (m_workspace.store().canWrite())
        (void)m_workspace.store().setSetting(whenKey, when);
    emit changed();
}

bool Aloud::voiced() const
{
    return m_when == QStringLiteral("off") || m_voice->speaks(m_reads.language.code());
}

const Step *Aloud::atHand() const
{
    if (m_reads.session.view() != QStringLiteral("station"))
        return nullptr;
    return m_reads.steps.stepAtHand();
}

QString Aloud::words() const
{
    const Step *step = atHand();
    if (!step)
        return {};
    const StepModel &steps = m_reads.steps;
    SpokenStep spoken{steps.title(),    steps.figure().text,
                      steps.doesText(), step->ruler && step->ruler->second,
                      steps.lines(),    steps.caution()};
    if (step->station == Station::Trim && m_reads.trim.trimming()) {
        const TrimModel &trim = m_reads.trim;
        spoken.title = trim.title();
        spoken.figure = trim.figure().text;
        spoken.lines.clear();
        for (const QString &says : {trim.verdict(), trim.remedy(), trim.firstSays()})
            if (!says.isEmpty())
                spoken.lines << unbraced(says);
        if (trim.second().valid)
            spoken.lines << trim.second().text + QLatin1Char(' ') + trim.secondSays();
    }
    return readOut(spoken, m_reads.language.code());
}

void Aloud::follow()
{
    const Step *step = atHand();
    if (!step || step->id != m_askedAt)
        m_askedAt.clear();
    const QString now = words();
    if (now == m_shown)
        return;
    m_shown = now;
    m_voice->hush();
    if (step && m_when == QStringLiteral("each") && (!takesABlade(*step) || step->id == m_askedAt))
        speak();
}

void Aloud::say()
{
    const Step *step = atHand();
    if (m_when == QStringLiteral("off") || !step)
        return;
    if (m_voice->speaking()) {
        m_voice->hush();
        return;
    }
    m_askedAt = step->id;
    m_shown = words();
    speak();
}

void Aloud::speak()
{
    if (!m_shown.isEmpty() && voiced())
        m_voice->say(m_shown, m_reads.language.code());
}

void Aloud::speakBy(Voice &voice)
{
    m_voice->hush();
    m_voice = &voice;
    emit changed();
}

void Aloud::hush()
{
    m_voice->hush();
}

} // namespace matside
