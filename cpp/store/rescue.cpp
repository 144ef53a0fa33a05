// SPDX-License-Identifier: MIT
#include "store/opening.h"

#include "project/codec.h"

#include <QDir>
#include <QSaveFile>

namespace matside {

StoreResult<Exported> Store::exportReadable(const QString &dir) const
{
    if (!QDir().mkpath(dir))
        return StoreError{StoreCode::CannotOpen, dir};
    // Row by row: a damaged page takes its own rows with it, not the others.
    const auto ids = m_database->run(QStringLiteral("SELECT rowid FROM projects ORDER BY rowid"));
    if (!ids)
        return ids.error();
    Exported exported;
    for (const Row &row : ids.value()) {
        const auto document =
            m_database->value(QStringLiteral("SELECT document FROM projects WHERE rowid = ?"), {row[0]});
        const QByteArray text = document ? document.value().toString().toUtf8() : QByteArray();
        const auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
        if (!read) {
            exported.unreadable.append(row[0].toString());
            continue;
        }
        const QString path = QDir(dir).filePath(QStringLiteral("project-%1.json").arg(row[0].toLongLong()));
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size() || !file.commit())
            return StoreError{StoreCode::Disk, file.errorString()};
        exported.files.append(path);
    }
    return exported;
}

} // namespace matside
