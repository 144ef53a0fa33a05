// SPDX-License-Identifier: MIT
#include "messages.h"

#include <QRegularExpression>
#include <QXmlStreamReader>

namespace languages {

namespace {

Message messageOf(QXmlStreamReader &in, const QString &context)
{
    Message message{context, {}, {}, {}};
    while (in.readNextStartElement()) {
        if (in.name() == u"source") {
            message.source = in.readElementText();
        } else if (in.name() == u"translation") {
            message.state = in.attributes().value(QLatin1String("type")).toString();
            QString plain;
            while (!in.atEnd() && !(in.isEndElement() && in.name() == u"translation")) {
                in.readNext();
                if (in.isStartElement() && in.name() == u"numerusform")
                    message.told << in.readElementText();
                else if (in.isCharacters())
                    plain += in.text();
            }
            if (message.told.isEmpty())
                message.told << plain;
        } else {
            in.skipCurrentElement();
        }
    }
    return message;
}

/// The blank at an end belongs to the joining of sentences.
QString ends(const QString &text)
{
    return QString(text.startsWith(u' ') ? u'1' : u'0') + (text.endsWith(u' ') ? u'1' : u'0');
}

} // namespace

std::vector<Message> messagesOf(const QByteArray &file)
{
    std::vector<Message> all;
    QXmlStreamReader in(file);
    QString context;
    while (!in.atEnd()) {
        in.readNext();
        if (in.isStartElement() && in.name() == u"name")
            context = in.readElementText();
        else if (in.isStartElement() && in.name() == u"message")
            all.push_back(messageOf(in, context));
    }
    return in.hasError() ? std::vector<Message>() : all;
}

QStringList placesOf(const QString &text)
{
    static const QRegularExpression place(QStringLiteral("%(o?[0-9]|n)"));
    QStringList places;
    auto found = place.globalMatch(text);
    while (found.hasNext())
        places << found.next().captured();
    places.removeDuplicates();
    places.sort();
    return places;
}

QString lostIn(const QString &source, const QString &told)
{
    if (told.trimmed().isEmpty())
        return QStringLiteral("says nothing");
    if (placesOf(source) != placesOf(told))
        return QStringLiteral("puts in something else");
    if (source.count(u'{') != told.count(u'{') || source.count(u'}') != told.count(u'}') ||
        told.count(u'{') != told.count(u'}'))
        return QStringLiteral("sets other lengths apart");
    if (source.count(u'&') != told.count(u'&'))
        return QStringLiteral("has an accelerator key");
    if (ends(source) != ends(told))
        return QStringLiteral("begins or ends with another blank");
    if (source.count(u'\n') != told.count(u'\n'))
        return QStringLiteral("is broken into other lines");
    return {};
}

} // namespace languages
