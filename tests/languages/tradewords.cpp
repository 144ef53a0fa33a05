// SPDX-License-Identifier: MIT
#include "tradewords.h"

#include <algorithm>

namespace languages {

namespace {

QStringList cellsOf(const QString &line)
{
    QStringList cells;
    for (const QString &cell : line.split(u'|'))
        cells << cell.trimmed();
    return cells;
}

QStringList formsOf(const QString &cell)
{
    QStringList forms;
    for (const QString &form : cell.split(u',', Qt::SkipEmptyParts))
        forms << form.trimmed();
    return forms;
}

QRegularExpression anyOf(const QStringList &forms)
{
    QStringList escaped;
    for (const QString &form : forms)
        escaped << QRegularExpression::escape(form);
    return QRegularExpression(QStringLiteral("(?<![\\w-])(?:%1)(?![\\w-])").arg(escaped.join(u'|')),
                              QRegularExpression::CaseInsensitiveOption |
                                  QRegularExpression::UseUnicodePropertiesOption);
}

} // namespace

bool TradeWord::in(const QString &source) const
{
    return whole.match(source).hasMatch();
}

bool TradeWord::toldIn(const QString &told, const QString &language) const
{
    const QStringList wanted = forms.value(language);
    return std::any_of(wanted.begin(), wanted.end(),
                       [&](const QString &form) { return told.contains(form, Qt::CaseInsensitive); });
}

std::vector<TradeWord> tradeWordsOf(const QString &text)
{
    std::vector<TradeWord> words;
    for (const QString &line : text.split(u'\n', Qt::SkipEmptyParts)) {
        if (line.startsWith(u'#'))
            continue;
        const QStringList cells = cellsOf(line);
        TradeWord word{formsOf(cells.constFirst()), {}, {}};
        word.whole = anyOf(word.english);
        if (cells.size() == 4)
            word.forms = {{QStringLiteral("de"), formsOf(cells[1])},
                          {QStringLiteral("fr"), formsOf(cells[2])},
                          {QStringLiteral("es"), formsOf(cells[3])}};
        words.push_back(word);
    }
    return words;
}

std::vector<QStringList> glossaryOf(const QString &page)
{
    std::vector<QStringList> lines;
    bool inTable = false;
    for (const QString &line : page.split(u'\n')) {
        if (line.startsWith(QLatin1String("|---")))
            inTable = true;
        else if (inTable && line.startsWith(u'|'))
            lines.push_back(cellsOf(line).mid(1, 7));
        else
            inTable = false;
    }
    return lines;
}

} // namespace languages
