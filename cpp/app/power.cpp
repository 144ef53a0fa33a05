// SPDX-License-Identifier: MIT
#include "app/power.h"

#include <utility>

namespace matside {

Power::Power(Session &session, QString folder) : m_session(session), m_folder(std::move(folder))
{
    connect(&m_clock, &QTimer::timeout, this, &Power::look);
}

void Power::watch()
{
    m_clock.start(everyMs);
    look();
}

void Power::lookInto(const QString &folder)
{
    m_folder = folder;
    look();
}

QString Power::says() const
{
    return m_spent ? tr("The battery is nearly empty: nothing new is begun until the tablet is plugged in.")
                   : QString();
}

void Power::look()
{
    const auto charge = chargeIn(m_folder);
    const bool running = charge && !charge->plugged;
    const bool low = running && charge->percent < lowPercent;
    const bool spent = running && charge->percent < spentPercent;
    const bool sinks = spent && !m_spent;
    const bool turns = spent != m_spent;
    m_spent = spent;
    if (sinks)
        m_session.tell(tr("The battery is nearly empty. All is saved; nothing new is begun until the tablet "
                          "is plugged in."));
    else if (low && !m_told)
        m_session.tell(tr("The battery is low: plug the tablet in soon. All is saved."));
    // Said again only after it was charged.
    m_told = low;
    if (turns)
        emit changed();
}

} // namespace matside
