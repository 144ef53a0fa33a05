// SPDX-License-Identifier: MIT
#pragma once

#include "project/codec.h"
#include "store/opening.h"

#include "testing.h"
#include <QFile>
#include <QTemporaryDir>

#include <random>

/// Short ways to stores and documents for the tests of the store.
namespace storehelp {

using namespace matside;

/// A fresh project's document. `slack` (ticks) makes two of one name differ.
inline QString documentOf(const QString &name, std::int64_t slack = 0)
{
    Project project = freshProject(System::Inch);
    project.name = name.toStdString();
    project.slack = Length::ticks(slack);
    return QString::fromStdString(writeProject(project));
}

/// The value, or a failed test that says why there is none.
template <class T> T got(StoreResult<T> result)
{
    if (!result) {
        QTest::qFail(qPrintable(QStringLiteral("code %1: %2")
                                    .arg(static_cast<int>(result.error().code))
                                    .arg(result.error().detail)),
                     __FILE__, __LINE__);
        return T{};
    }
    return std::move(result).value();
}

inline std::unique_ptr<Store> opened(const QString &dir)
{
    auto store = got(openStore(dir));
    // Nothing can be tried without one.
    if (!store)
        qFatal("no store in %s", qPrintable(dir));
    return store;
}

/// What went wrong, as a number that a failed comparison can show; -1 when nothing did.
template <class T> int fault(const StoreResult<T> &result)
{
    return result ? -1 : static_cast<int>(result.error().code);
}

inline Command edit(const QString &before, const QString &after, const QString &code = QStringLiteral("size"))
{
    return {{QStringLiteral("edit"), code, QStringLiteral("[]")}, before, after};
}

inline QStringList names(const Store &store, bool includePutAway = true)
{
    QStringList result;
    for (const ProjectRow &row : got(store.projects(includePutAway)))
        result.append(row.name);
    return result;
}

inline QByteArray bytesOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline bool overwrite(const QString &path, qint64 at, const QByteArray &bytes)
{
    QFile file(path);
    return file.open(QIODevice::ReadWrite) && file.seek(at) && file.write(bytes) == bytes.size();
}

/// What a plain SQLite connection says, apart from the store.
inline std::vector<Row> ask(const QString &path, const QString &sql)
{
    Database database;
    got(database.open(path, Database::Mode::Write));
    return got(database.run(sql));
}

/// A further version, as one might come.
inline StoreResult<Done> addsColour(const Database &database)
{
    if (auto ran = database.run(u"ALTER TABLE projects ADD COLUMN colour TEXT NOT NULL DEFAULT ''"_qs); !ran)
        return ran.error();
    return Done{};
}
/// The history with one version more.
inline std::vector<Migration> with(StoreResult<Done> (*next)(const Database &))
{
    auto migrations = allMigrations();
    migrations.push_back({migrations.back().version + 1, next});
    return migrations;
}

inline quint32 seed()
{
    return qEnvironmentVariableIsSet("MATSIDE_SEED") ? qEnvironmentVariable("MATSIDE_SEED").toUInt() : 1;
}
inline int count(int usual)
{
    return qEnvironmentVariableIsSet("MATSIDE_COUNT") ? qEnvironmentVariable("MATSIDE_COUNT").toInt() : usual;
}

} // namespace storehelp
