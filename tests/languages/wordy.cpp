// SPDX-License-Identifier: MIT
#include "wordy.h"

#include <QXmlStreamReader>
#include <QXmlStreamWriter>

#include <vector>

namespace languages {

namespace {

QChar dotted(QChar vowel)
{
    switch (vowel.unicode()) {
    case u'a':
        return u'ä';
    case u'e':
        return u'ë';
    case u'i':
        return u'ï';
    case u'o':
        return u'ö';
    case u'u':
        return u'ü';
    default:
        return vowel;
    }
}

/// Where the letters stand that are words of the sentence itself.
std::vector<qsizetype> lettersOf(const QString &source)
{
    std::vector<qsizetype> letters;
    bool length = false;
    bool place = false;
    for (qsizetype i = 0; i < source.size(); ++i) {
        const QChar letter = source[i];
        length = letter == u'{' || (length && letter != u'}');
        place = letter == u'%' || (place && (letter == u'o' || letter == u'n'));
        if (!length && !place && letter.isLetter())
            letters.push_back(i);
    }
    return letters;
}

void writeLonger(QXmlStreamWriter &out, const QString &source, bool counted)
{
    if (!counted) {
        out.writeTextElement(QStringLiteral("translation"), lengthened(source));
        return;
    }
    out.writeStartElement(QStringLiteral("translation"));
    for (int form = 0; form < 2; ++form)
        out.writeTextElement(QStringLiteral("numerusform"), lengthened(source));
    out.writeEndElement();
}

} // namespace

QString lengthened(const QString &source)
{
    const std::vector<qsizetype> letters = lettersOf(source);
    std::vector<bool> twice(static_cast<std::size_t>(source.size()), false);
    std::size_t more = 0;
    for (const bool vowels : {true, false})
        for (const qsizetype at : letters)
            if ((dotted(source[at]) != source[at]) == vowels && more * 10 < letters.size() * 4) {
                twice[static_cast<std::size_t>(at)] = true;
                ++more;
            }
    QString longer;
    for (qsizetype i = 0; i < source.size(); ++i) {
        longer += source[i];
        if (twice[static_cast<std::size_t>(i)])
            longer += dotted(source[i]).toLower();
    }
    return longer;
}

QByteArray lengthenedFile(const QByteArray &untold)
{
    QXmlStreamReader in(untold);
    QByteArray longer;
    QXmlStreamWriter out(&longer);
    QString source;
    bool counted = false;
    while (!in.atEnd()) {
        in.readNext();
        if (in.isStartElement() && in.name() == u"message")
            counted = in.attributes().hasAttribute(QLatin1String("numerus"));
        if (in.isStartElement() && in.name() == u"source") {
            source = in.readElementText();
            out.writeTextElement(QStringLiteral("source"), source);
        } else if (in.isStartElement() && in.name() == u"translation") {
            in.skipCurrentElement();
            writeLonger(out, source, counted);
        } else if (!in.hasError()) {
            out.writeCurrentToken(in);
        }
    }
    return in.hasError() ? QByteArray() : longer;
}

} // namespace languages
