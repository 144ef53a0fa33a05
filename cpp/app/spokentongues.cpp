// SPDX-License-Identifier: MIT
#include "app/spokentongues.h"

#include <QMap>
#include <QRegularExpression>
#include <QStringList>

namespace matside {

namespace {

/// A number as it is printed, and its unit.
struct Printed {
    bool minus = false;
    QString whole;
    QString num;
    QString den;
    QString decimals; ///< with its sign: ",5"
    QString unit;     ///< "in", "mm", "cm", "m", "yd", "%" or none
    [[nodiscard]] bool one() const { return whole == u"1" && num.isEmpty() && decimals.isEmpty(); }
    [[nodiscard]] bool part() const { return whole.isEmpty() && !num.isEmpty(); }
    [[nodiscard]] bool half() const { return den == u"2"; }
    [[nodiscard]] QString number() const { return whole + decimals; }
};

QString u8(const char *text)
{
    return QString::fromUtf8(text);
}

/// The parts of a ruler by their number, in the three languages: one of them, then several.
struct PartName {
    int den;
    const char *de;
    const char *fr;
    const char *frs;
    const char *es;
};
constexpr PartName parts[] = {
    {2, "halb", "demi", "demis", "medio"},
    {3, "drittel", "tiers", "tiers", "tercio"},
    {4, "viertel", "quart", "quarts", "cuarto"},
    {8, "achtel", "huitième", "huitièmes", "octavo"},
    {12, "zwölftel", "douzième", "douzièmes", "doceavo"},
    {16, "sechzehntel", "seizième", "seizièmes", "dieciseisavo"},
    {32, "zweiunddreißigstel", "trente-deuxième", "trente-deuxièmes", "treintaidosavo"},
    {64, "vierundsechzigstel", "soixante-quatrième", "soixante-quatrièmes", "sesentaicuatroavo"}};

/// Any other part is left as it is printed.
const PartName *partOf(const QString &den)
{
    for (const PartName &part : parts)
        if (den == QString::number(part.den))
            return &part;
    return nullptr;
}

QString german(const Printed &found)
{
    static const QMap<QString, QString> units{{u8("in"), u8("Zoll")},       {u8("mm"), u8("Millimeter")},
                                              {u8("cm"), u8("Zentimeter")}, {u8("m"), u8("Meter")},
                                              {u8("yd"), u8("Yard")},       {u8("%"), u8("Prozent")}};
    const QString unit = found.unit.isEmpty() ? QString() : u' ' + units[found.unit];
    if (found.num.isEmpty())
        return (found.one() && !unit.isEmpty() ? u8("ein") : found.number()) + unit;
    const PartName *part = partOf(found.den);
    const QString says =
        found.half() ? u8("einhalb") : (found.num == u"1" ? u8("ein") : found.num) + u' ' + u8(part->de);
    if (found.part())
        return says + unit;
    return found.whole + (found.half() ? u8(" ") : u8(" und ")) + says + unit;
}

QString french(const Printed &found)
{
    static const QMap<QString, QString> units{{u8("in"), u8("pouce")},
                                              {u8("mm"), u8("millimètre")},
                                              {u8("cm"), u8("centimètre")},
                                              {u8("m"), u8("mètre")},
                                              {u8("yd"), u8("yard")}};
    if (found.unit == u"%")
        return found.number() + u8(" pour cent");
    const QString unit = units.value(found.unit);
    // French counts in the plural from two on.
    const bool several = found.whole.toLongLong() > 1;
    QString whole =
        unit.isEmpty() ? found.number() : found.number() + u' ' + unit + (several ? u8("s") : QString());
    if (found.num.isEmpty())
        return whole;
    const PartName *part = partOf(found.den);
    const QString says = found.num == u"1" ? u8("un ") + u8(part->fr) : found.num + u' ' + u8(part->frs);
    if (found.part())
        return unit.isEmpty() ? says : found.half() ? says + u'-' + unit : says + u8(" de ") + unit;
    if (found.half())
        return whole + u8(" et demi");
    return whole + (part->den == 4 && !unit.isEmpty() ? u8(" ") : u8(" et ")) + says;
}

/// A whole number under a thousand in Spanish, as it stands before a noun.
QString spanishCount(int number, bool feminine)
{
    static const QStringList small =
        u8("cero un dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce "
           "quince dieciséis diecisiete dieciocho diecinueve veinte veintiún veintidós "
           "veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve")
            .split(u' ');
    static const QStringList tens =
        u8("treinta cuarenta cincuenta sesenta setenta ochenta noventa").split(u' ');
    static const QStringList hundreds =
        u8("ciento doscient trescient cuatrocient quinient seiscient setecient ochocient novecient")
            .split(u' ');
    if (number >= 100) {
        if (number == 100)
            return u8("cien");
        const QString hundred = hundreds[number / 100 - 1] + (number < 200 ? QString()
                                                              : feminine   ? u8("as")
                                                                           : u8("os"));
        return number % 100 == 0 ? hundred : hundred + u' ' + spanishCount(number % 100, feminine);
    }
    if (number < 30) {
        if (feminine && number == 1)
            return u8("una");
        return feminine && number == 21 ? u8("veintiuna") : small[number];
    }
    const QString &ten = tens[number / 10 - 3];
    return number % 10 == 0 ? ten : ten + u8(" y ") + spanishCount(number % 10, feminine);
}

QString spanish(const Printed &found)
{
    static const QMap<QString, QString> units{{u8("in"), u8("pulgada")},
                                              {u8("mm"), u8("milímetro")},
                                              {u8("cm"), u8("centímetro")},
                                              {u8("m"), u8("metro")},
                                              {u8("yd"), u8("yarda")}};
    if (found.unit == u"%")
        return found.number() + u8(" por ciento");
    const QString unit = units.value(found.unit);
    const bool feminine = unit.endsWith(u'a');
    const PartName *part = partOf(found.den);
    const QString half = feminine ? u8("media") : u8("medio");
    const QString says = found.num.isEmpty() ? QString()
                         : found.half()      ? half
                         : found.num == u"1" ? u8("un ") + u8(part->es)
                                             : found.num + u' ' + u8(part->es) + u's';
    if (found.part())
        return unit.isEmpty() ? says : found.half() ? half + u' ' + unit : says + u8(" de ") + unit;
    QString whole = found.number();
    const int count = whole.size() < 4 && found.decimals.isEmpty() ? whole.toInt() : 0;
    if (!unit.isEmpty() && count > 0 &&
        ((count % 10 == 1 && count % 100 != 11) || (feminine && count >= 200)))
        whole = spanishCount(count, feminine);
    if (!unit.isEmpty())
        whole += u' ' + unit + (found.whole == u"1" && found.decimals.isEmpty() ? QString() : u8("s"));
    return says.isEmpty() ? whole : whole + u8(" y ") + says;
}

} // namespace

QString inWordsOf(const QString &text, const QString &language)
{
    const auto says = language == u"de"   ? german
                      : language == u"fr" ? french
                      : language == u"es" ? spanish
                                          : nullptr;
    if (!says)
        return text;
    static const QRegularExpression figure(
        QStringLiteral("(?<![\\w.,])(\u2212)?(?:(\\d+) (\\d+)/(\\d+)|(\\d+)/(\\d+)|(\\d+)([.,]\\d+)|(\\d+))"
                       "(?:[ \u00a0\u202f](in|mm|cm|m|yd)\\b|[ \u00a0\u202f]?(%))?(?![\\w/])"));
    QString all;
    qsizetype at = 0;
    for (auto found = figure.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const auto either = [&](int one, int other) { return match.captured(one) + match.captured(other); };
        const Printed printed{!match.captured(1).isEmpty(),
                              match.captured(2) + match.captured(7) + match.captured(9),
                              either(3, 5),
                              either(4, 6),
                              match.captured(8).replace(u'.', u','),
                              either(10, 11)};
        all += QStringView(text).mid(at, match.capturedStart() - at);
        at = match.capturedEnd();
        if (!printed.num.isEmpty() && !partOf(printed.den))
            all += match.captured();
        else
            all += (printed.minus ? u8("minus ") : QString()) + says(printed);
    }
    all += QStringView(text).mid(at);
    const QString by = language == u"de" ? u8(" mal ") : language == u"fr" ? u8(" sur ") : u8(" por ");
    all.replace(u8(" × "), by);
    return language == u"de" ? all
                             : all.replace(u8("minus "), language == u"fr" ? u8("moins ") : u8("menos "));
}

} // namespace matside
