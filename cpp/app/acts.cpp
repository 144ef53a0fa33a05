// SPDX-License-Identifier: MIT
#include "app/acts.h"

#include "app/wording.h"

#include <QCoreApplication>

namespace matside {

Act actOf(const char *draws, const QString &says, std::string_view minds, bool goesOn)
{
    return {toQt(draws), says, mindsText(minds), goesOn};
}

QStringList linesOf(const Acts &acts)
{
    QStringList lines;
    for (const Act &act : acts) {
        if (act.says.isEmpty())
            continue;
        if (act.goesOn && !lines.isEmpty())
            lines.back() += u' ' + act.says;
        else
            lines += act.says;
    }
    return lines;
}

QString wholeOf(const Acts &acts)
{
    QStringList lines;
    for (const Act &act : acts) {
        QStringList told{act.says, act.minds};
        told.removeAll(QString());
        lines += told.join(u' ');
    }
    return lines.join(u'\n');
}

QVariantList listOf(const Acts &acts)
{
    QVariantList list;
    for (const Act &act : acts)
        list.append(QVariantMap{{QStringLiteral("draws"), act.draws},
                                {QStringLiteral("says"), act.says},
                                {QStringLiteral("minds"), act.minds}});
    return list;
}

QString mindsText(std::string_view code)
{
    if (code.empty())
        return {};
    if (code == "ripper")
        return inWords(QT_TRANSLATE_NOOP("Words", "Keep the ripper’s blade off the cloth."));
    if (code == "blade") // the whole of it stands with the step
        return inWords(
            QT_TRANSLATE_NOOP("Words", "Roll the blade away from you, fingers well back; then close it."));
    if (code == "thick")
        return inWords(QT_TRANSLATE_NOOP("Words", "Slow over the thick places; turn the wheel by hand."));
    return wordsOrCode(guardWords(), code);
}

} // namespace matside
