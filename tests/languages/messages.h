// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace languages {

/// One message of a translation file (.ts): what the source says, and what the translation does.
struct Message {
    QString context;
    QString source;
    QStringList told; ///< one, or one for each number of things
    QString state;    ///< "unfinished", "vanished", "obsolete", or nothing when it is told
};

/// Every message of a translation file; none when it is not one.
[[nodiscard]] std::vector<Message> messagesOf(const QByteArray &file);

/// What is put in later, each once, in order: %1, %o2, %n.
[[nodiscard]] QStringList placesOf(const QString &text);

/// What a translation must keep of its source, and does not, in a few words; empty when all is kept.
[[nodiscard]] QString lostIn(const QString &source, const QString &told);

} // namespace languages
