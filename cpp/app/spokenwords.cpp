// SPDX-License-Identifier: MIT
#include "app/spokenwords.h"

#include "app/spokentongues.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <array>

namespace matside {

namespace {

constexpr std::array<const char *, 20> small{"zero",    "one",     "two",       "three",    "four",
                                             "five",    "six",     "seven",     "eight",    "nine",
                                             "ten",     "eleven",  "twelve",    "thirteen", "fourteen",
                                             "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
constexpr std::array<const char *, 10> tens{"",      "",      "twenty",  "thirty", "forty",
                                            "fifty", "sixty", "seventy", "eighty", "ninety"};

QString belowHundred(qint64 number)
{
    if (number < 20)
        return QLatin1String(small[static_cast<std::size_t>(number)]);
    const QString ten = QLatin1String(tens[static_cast<std::size_t>(number / 10)]);
    return number % 10 == 0
               ? ten
               : ten + QLatin1Char('-') + QLatin1String(small[static_cast<std::size_t>(number % 10)]);
}

QString belowThousand(qint64 number)
{
    if (number < 100)
        return belowHundred(number);
    const QString hundreds =
        QLatin1String(small[static_cast<std::size_t>(number / 100)]) + QStringLiteral(" hundred");
    return number % 100 == 0 ? hundreds : hundreds + QStringLiteral(" and ") + belowHundred(number % 100);
}

/// A ruler's part: halves, quarters … sixty-fourths. `beside`: after a whole number ("and three quarter").
QString partInWords(qint64 num, qint64 den, bool beside)
{
    const QString count = num == 1 ? QString() : numberInWords(num) + QLatin1Char(' ');
    switch (den) {
    case 2:
        return beside ? QStringLiteral("a half") : QStringLiteral("half");
    case 4:
        return num == 1 ? QStringLiteral("a quarter")
                        : count + (beside ? QStringLiteral("quarter") : QStringLiteral("quarters"));
    case 8:
        return num == 1 ? QStringLiteral("an eighth") : count + QStringLiteral("eighths");
    case 3:
        return num == 1 ? QStringLiteral("a third") : count + QStringLiteral("thirds");
    case 12:
        return num == 1 ? QStringLiteral("a twelfth") : count + QStringLiteral("twelfths");
    case 32:
        return num == 1 ? QStringLiteral("a thirty-second") : count + QStringLiteral("thirty-seconds");
    case 64:
        return num == 1 ? QStringLiteral("a sixty-fourth") : count + QStringLiteral("sixty-fourths");
    default:
        return num == 1 ? QStringLiteral("a ") + numberInWords(den) + QStringLiteral("th")
                        : count + numberInWords(den) + QStringLiteral("ths");
    }
}

struct Unit {
    const char *sign;
    const char *one;
    const char *several;
    const char *ofOne;
};
constexpr std::array units{Unit{"in", "inch", "inches", "an inch"},
                           Unit{"mm", "millimetre", "millimetres", "a millimetre"},
                           Unit{"cm", "centimetre", "centimetres", "a centimetre"},
                           Unit{"m", "metre", "metres", "a metre"}, Unit{"yd", "yard", "yards", "a yard"}};

const Unit *unitOf(const QString &sign)
{
    for (const Unit &unit : units)
        if (sign == QLatin1String(unit.sign))
            return &unit;
    return nullptr;
}

/// What was found in the print: a number of the kinds a figure is shown in, and its unit.
struct Found {
    bool minus = false;
    QString whole;
    QString num;
    QString den;
    QString decimals;
    QString unit;
    bool line = false; ///< "line" follows: its seven inch line
};

QString numberOf(const Found &found)
{
    if (!found.num.isEmpty() && !found.whole.isEmpty())
        return numberInWords(found.whole.toLongLong()) + QStringLiteral(" and ") +
               partInWords(found.num.toLongLong(), found.den.toLongLong(), true);
    if (!found.num.isEmpty())
        return partInWords(found.num.toLongLong(), found.den.toLongLong(), false);
    QString says = numberInWords(found.whole.toLongLong());
    if (found.decimals.isEmpty())
        return says;
    says += QStringLiteral(" point");
    for (const QChar digit : found.decimals)
        says += QLatin1Char(' ') + QLatin1String(small[static_cast<std::size_t>(digit.digitValue())]);
    return says;
}

QString worded(const Found &found)
{
    const QString minus = found.minus ? QStringLiteral("minus ") : QString();
    if (found.unit == QStringLiteral("%"))
        return minus + numberOf(found) + QStringLiteral(" per cent");
    const Unit *unit = unitOf(found.unit);
    if (!unit)
        return minus + numberOf(found);
    const bool part = found.whole.isEmpty();
    if (found.line) {
        // Its quarter inch line; its three quarter inch line.
        QString kind =
            part ? partInWords(found.num.toLongLong(), found.den.toLongLong(), true) : numberOf(found);
        if (part && found.num == QStringLiteral("1"))
            kind = kind.section(QLatin1Char(' '), 1);
        return minus + kind + QLatin1Char(' ') + QLatin1String(unit->one);
    }
    if (part) {
        const bool half = found.den == QStringLiteral("2");
        return minus + numberOf(found) + (half ? QStringLiteral(" ") : QStringLiteral(" of ")) +
               QLatin1String(unit->ofOne);
    }
    const bool one = found.whole == QStringLiteral("1") && found.num.isEmpty() && found.decimals.isEmpty();
    return minus + numberOf(found) + QLatin1Char(' ') + QLatin1String(one ? unit->one : unit->several);
}

/// One sentence, ended as one.
QString ended(const QString &text)
{
    const QString trimmed = text.trimmed();
    if (trimmed.isEmpty())
        return {};
    return QStringLiteral(".!?").contains(trimmed.back()) ? trimmed : trimmed + QLatin1Char('.');
}

} // namespace

QString numberInWords(qint64 number)
{
    if (number < 0 || number > 999'999)
        return QString::number(number);
    if (number < 1000)
        return belowThousand(number);
    QString thousands = belowThousand(number / 1000) + QStringLiteral(" thousand");
    const qint64 rest = number % 1000;
    if (rest == 0)
        return thousands;
    return thousands + (rest < 100 ? QStringLiteral(" and ") : QStringLiteral(" ")) + belowThousand(rest);
}

QString inSpokenWords(const QString &printed, const QString &language)
{
    QString text = printed;
    // Braces and quotation marks are for the eye.
    static const QRegularExpression marks(QStringLiteral("[{}\"„“”]|«[  ]?|[  ]?»"));
    text.remove(marks);
    if (language != QStringLiteral("en"))
        return inWordsOf(text, language);
    static const QRegularExpression figure(
        QStringLiteral("(?<![\\w.])(\u2212)?(?:(\\d+) (\\d+)/(\\d+)|(\\d+)/(\\d+)|(\\d+)\\.(\\d+)|(\\d+))"
                       "(?: (in|mm|cm|m|yd)\\b| ?(%))?(?![\\w/])( lines?\\b)?"));
    QString says;
    qsizetype at = 0;
    for (auto found = figure.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const auto either = [&](int one, int other) {
            return match.captured(one).isEmpty() ? match.captured(other) : match.captured(one);
        };
        const QString whole = match.captured(2) + match.captured(7) + match.captured(9);
        says += QStringView(text).mid(at, match.capturedStart() - at);
        says += worded({!match.captured(1).isEmpty(), whole, either(3, 5), either(4, 6), match.captured(8),
                        either(10, 11), !match.captured(12).isEmpty()});
        says += match.captured(12);
        at = match.capturedEnd();
    }
    says += QStringView(text).mid(at);
    return says.replace(QStringLiteral(" \u00d7 "), QStringLiteral(" by "));
}

QString readOut(const SpokenStep &step, const QString &language)
{
    QStringList says{ended(step.title), ended(step.figure), ended(step.does)};
    if (step.twoRulers)
        //: read out before where the rulers lie
        says << QCoreApplication::translate("Words", "Two rulers.");
    for (const QString &line : step.lines)
        says << ended(line);
    says << ended(step.caution);
    says.removeAll(QString());
    return inSpokenWords(says.join(QLatin1Char(' ')), language);
}

bool takesABlade(const Step &step)
{
    return step.ruler.has_value() || step.caution == "blade" || step.caution == "scissors";
}

} // namespace matside
