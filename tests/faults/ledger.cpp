// SPDX-License-Identifier: MIT
#include "faults/ledger.h"

#include "store/database.h"
#include "store/photofolder.h"
#include "store/store.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QImageReader>

using namespace matside;

namespace ledger {

namespace {

QByteArray shaOf(const QByteArray &bytes)
{
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex();
}

QString lineOf(const QString &table, const Row &row)
{
    QStringList cells{table};
    for (const QVariant &cell : row)
        cells.append(cell.toString());
    return cells.join(u'\x1f');
}

void pagesOf(const Database &database, QStringList &faults)
{
    const auto sound = database.value(u"PRAGMA integrity_check"_qs);
    if (!sound || sound.value().toString() != u"ok"_qs)
        faults.append(u"pages: "_qs + (sound ? sound.value().toString() : sound.error().detail));
    const auto keys = database.run(u"PRAGMA foreign_key_check"_qs);
    if (!keys || !keys.value().empty())
        faults.append(u"a row refers to none"_qs);
}

void photographsOf(const Database &database, const PhotoFolder &folder, QStringList &faults)
{
    const auto rows = database.run(u"SELECT sha, format, bytes FROM photographs"_qs);
    if (!rows) {
        faults.append(rows.error().detail);
        return;
    }
    for (const Row &row : rows.value()) {
        QFile file(folder.original(row[0].toString(), row[1].toString()));
        if (!file.open(QIODevice::ReadOnly)) {
            faults.append(u"no photograph "_qs + row[0].toString());
            continue;
        }
        const QByteArray bytes = file.readAll();
        if (bytes.size() != row[2].toLongLong() || shaOf(bytes) != row[0].toString().toLatin1())
            faults.append(u"not the photograph "_qs + row[0].toString());
    }
}

void thumbsIn(const QString &dir, QStringList &faults)
{
    const QDir thumbs(dir + u"/thumbs"_qs);
    for (const QString &name : thumbs.entryList({u"*.jpeg"_qs}, QDir::Files))
        if (QImageReader(thumbs.filePath(name)).read().isNull())
            faults.append(u"cannot be shown: small picture "_qs + name);
}

} // namespace

QStringList rowsOf(const QString &file)
{
    Database database;
    if (!database.open(file, Database::Mode::Read))
        return {u"cannot be opened"_qs};
    const auto tables = database.run(u"SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name"_qs);
    if (!tables)
        return {tables.error().detail};
    QStringList all;
    for (const Row &named : tables.value()) {
        const QString table = named[0].toString();
        const auto rows = database.run(u"SELECT * FROM %1"_qs.arg(table));
        if (!rows)
            return {rows.error().detail};
        QStringList lines;
        for (const Row &row : rows.value())
            lines.append(lineOf(table, row));
        lines.sort();
        all += lines;
    }
    return all;
}

QByteArray sumOf(const QString &file)
{
    return shaOf(rowsOf(file).join(u'\n').toUtf8());
}

QStringList faultsIn(const QString &dir)
{
    Database database;
    if (const auto opened = database.open(storeFile(dir), Database::Mode::Read); !opened)
        return {opened.error().detail};
    QStringList faults;
    pagesOf(database, faults);
    photographsOf(database, PhotoFolder(dir), faults);
    thumbsIn(dir, faults);
    return faults;
}

} // namespace ledger
