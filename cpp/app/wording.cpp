// SPDX-License-Identifier: MIT
#include "app/wording.h"

#include <QCoreApplication>
#include <QLocale>

#include <array>

namespace matside {

namespace {

/// A share of a hundred, without the zeros that say nothing.
QString decimal(std::int64_t millionths)
{
    QString digits = QString::number(static_cast<double>(millionths) / 10'000.0, 'f', 4);
    while (digits.endsWith(u'0'))
        digits.chop(1);
    if (digits.endsWith(u'.'))
        digits.chop(1);
    return inSign(digits);
}

QString capital(QString sentence)
{
    if (!sentence.isEmpty())
        sentence[0] = sentence[0].toUpper();
    return sentence;
}

QString filled(const QString &pattern, const std::vector<Argument> &args, Marks marks)
{
    QString text;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        if (pattern[i] != u'%' || i + 1 >= pattern.size()) {
            text += pattern[i];
            continue;
        }
        const bool ordinal = pattern[i + 1] == u'o' && i + 2 < pattern.size();
        const QChar place = pattern[i + (ordinal ? 2 : 1)];
        const auto index = static_cast<std::size_t>(place.digitValue() - 1);
        if (!place.isDigit() || index >= args.size()) {
            text += pattern[i];
            continue;
        }
        const std::int64_t *count = std::get_if<std::int64_t>(&args[index]);
        text += ordinal && count ? ordinalText(*count) : argumentText(args[index], marks);
        i += ordinal ? 2 : 1;
    }
    return text;
}

struct ArgumentWords {
    Marks marks;
    QString operator()(const Told &told) const { return figureText(told.length, marks, told.round); }
    QString operator()(std::int64_t count) const { return QString::number(count); }
    QString operator()(Share share) const { return decimal(share.millionths) + QStringLiteral(" %"); }
    QString operator()(const std::string &word) const { return toQt(word); }
};

} // namespace

QString toQt(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString inSign(QString digits)
{
    return digits.replace(u'.', QLocale().decimalPoint());
}

QString inWords(const char *text)
{
    return QCoreApplication::translate("Words", text);
}

std::optional<QString> wordsFor(std::span<const Worded> words, std::string_view code)
{
    for (const Worded &worded : words)
        if (worded.code == code)
            return QCoreApplication::translate("Words", worded.text);
    return std::nullopt;
}

QString wordsOrCode(std::span<const Worded> words, std::string_view code)
{
    return wordsFor(words, code).value_or(toQt(code));
}

QString leanText(Lean lean)
{
    switch (lean) {
    case Lean::Scant:
        //: just under the ruler's mark that follows
        return QCoreApplication::translate("Words", "a scant");
    case Lean::Generous:
        //: just over the ruler's mark that follows
        return QCoreApplication::translate("Words", "a generous");
    case Lean::Exact:
        break;
    }
    return {};
}

QString figureText(const Shown &shown)
{
    if (!shown.valid)
        return QCoreApplication::translate("Words", "too long to tell");
    Shown plain = shown;
    plain.lean = Lean::Exact;
    const QString figure = inSign(toQt(text(plain)));
    const QString lean = leanText(shown.lean);
    return lean.isEmpty() ? figure : lean + u' ' + figure;
}

QString figureText(Length length, Marks marks, Round round)
{
    return figureText(show(length, marks, round));
}

QString braced(Length length, Marks marks, Round round)
{
    return u'{' + figureText(length, marks, round) + u'}';
}

QString unbraced(QString text)
{
    return text.remove(u'{').remove(u'}');
}

QString argumentText(const Argument &argument, Marks marks)
{
    return std::visit(ArgumentWords{marks}, argument);
}

QString valueText(const OfferValue &value, Marks marks)
{
    struct Words {
        Marks marks;
        QString operator()(Length length) const { return figureText(length, marks); }
        QString operator()(std::int64_t count) const { return QString::number(count); }
        QString operator()(bool flag) const
        {
            return flag ? QCoreApplication::translate("Words", "yes")
                        : QCoreApplication::translate("Words", "no");
        }
        QString operator()(Share share) const { return ArgumentWords{marks}(share); }
        QString operator()(const std::string &word) const { return toQt(word); }
        QString operator()(Remove) const { return QCoreApplication::translate("Words", "nothing"); }
    };
    return std::visit(Words{marks}, value);
}

QString ordinalText(std::int64_t place)
{
    static constexpr std::array names{
        QT_TRANSLATE_NOOP("Words", "first"),   QT_TRANSLATE_NOOP("Words", "second"),
        QT_TRANSLATE_NOOP("Words", "third"),   QT_TRANSLATE_NOOP("Words", "fourth"),
        QT_TRANSLATE_NOOP("Words", "fifth"),   QT_TRANSLATE_NOOP("Words", "sixth"),
        QT_TRANSLATE_NOOP("Words", "seventh"), QT_TRANSLATE_NOOP("Words", "eighth"),
        QT_TRANSLATE_NOOP("Words", "ninth"),   QT_TRANSLATE_NOOP("Words", "tenth"),
    };
    if (place >= 1 && place <= static_cast<std::int64_t>(names.size()))
        return QCoreApplication::translate("Words", names[static_cast<std::size_t>(place - 1)]);
    //: the last of more than ten, as in "and the last block will not fit"
    return QCoreApplication::translate("Words", "last");
}

QString sentence(const Problem &problem, Marks marks)
{
    std::vector<Argument> args = problem.args;
    if (problem.code == "wrong-type" && !args.empty())
        if (const std::string *kind = std::get_if<std::string>(&args.front()))
            args.front() = wordsOrCode(kindWords(), *kind).toStdString();
    for (const std::span<const Worded> words : {problemWords(), cautionWords(), fileWords()})
        if (const auto pattern = wordsFor(words, problem.code))
            return capital(filled(*pattern, args, marks));
    return toQt(problem.code);
}

QString sentence(const Offer &offer, Marks marks)
{
    const QString pattern = wordsOrCode(offerWords(), offer.code);
    if (!offer.args.empty())
        return capital(filled(pattern, offer.args, marks));
    QString text = pattern;
    return capital(text.replace(QStringLiteral("%1"), valueText(offer.value, marks)));
}

} // namespace matside
