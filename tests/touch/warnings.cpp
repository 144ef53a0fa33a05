// SPDX-License-Identifier: MIT
#include "warnings.h"

namespace touching {

Warnings::Warnings()
{
    listening() = this;
    m_before = qInstallMessageHandler(hear);
}

Warnings::~Warnings()
{
    qInstallMessageHandler(m_before);
    listening() = nullptr;
}

QString Warnings::taken()
{
    const QString all = m_heard.join(QLatin1Char('\n'));
    m_heard.clear();
    return all;
}

Warnings *&Warnings::listening()
{
    static Warnings *one = nullptr;
    return one;
}

void Warnings::hear(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    Warnings *warnings = listening();
    if (warnings && type != QtDebugMsg && type != QtInfoMsg)
        warnings->m_heard.append(message);
    if (warnings && warnings->m_before)
        warnings->m_before(type, context, message);
}

} // namespace touching
