// SPDX-License-Identifier: MIT
#include "store/store.h"

#include "store/database.h"
#include "store/migrations.h"
#include "store/writing.h"

namespace matside {

namespace {

QString asText(const QString &value)
{
    return value;
}
QString asText(bool value)
{
    return value ? QStringLiteral("true") : QStringLiteral("false");
}
QString asText(std::int64_t value)
{
    return QString::number(value);
}
QString asText(double value)
{
    return QString::number(value, 'g', 17);
}

bool fromText(const QString &text, QString &value)
{
    value = text;
    return true;
}
bool fromText(const QString &text, bool &value)
{
    value = text == QStringLiteral("true");
    return value || text == QStringLiteral("false");
}
bool fromText(const QString &text, std::int64_t &value)
{
    bool good = false;
    value = text.toLongLong(&good);
    return good;
}
bool fromText(const QString &text, double &value)
{
    bool good = false;
    value = text.toDouble(&good);
    return good;
}

} // namespace

StoreResult<std::vector<ProjectRow>> Store::projects(bool includePutAway) const
{
    std::optional<StoreError> fault;
    const auto rows = m_database->runUntilFault(
        QStringLiteral("SELECT id, name, kind, put_away, created, changed FROM projects "
                       "WHERE thrown_away = 0 AND put_away <= ? ORDER BY position DESC"),
        {includePutAway ? 1 : 0}, fault);
    if (fault && m_access != Access::Damaged)
        return *fault;
    std::vector<ProjectRow> projects;
    projects.reserve(rows.size());
    for (const Row &row : rows)
        projects.push_back(
            {row[0].toString(), row[1].toString(),
             row[2].toString() == QStringLiteral("demo") ? ProjectKind::Demo : ProjectKind::Own,
             row[3].toInt() != 0, row[4].toLongLong(), row[5].toLongLong()});
    return projects;
}

StoreResult<QString> Store::load(const QString &id) const
{
    return documentOf(*m_database, id);
}

StoreResult<Done> Store::backupTo(const QString &path) const
{
    return copyTo(*m_database, path);
}

template <class T> StoreResult<std::optional<T>> Store::setting(SettingKey<T> key) const
{
    const auto held = m_database->value(QStringLiteral("SELECT value FROM settings WHERE key = ?"),
                                        {QString::fromLatin1(key.name)});
    if (!held)
        return held.error();
    T value{};
    if (!held.value().isValid() || !fromText(held.value().toString(), value))
        return std::optional<T>();
    return std::optional<T>(value);
}

template <class T> StoreResult<Done> Store::setSetting(SettingKey<T> key, const T &value)
{
    if (!canWrite())
        return StoreError{StoreCode::ReadOnly, {}};
    const auto set = m_database->run(QStringLiteral("INSERT INTO settings (key, value) VALUES (?, ?) "
                                                    "ON CONFLICT (key) DO UPDATE SET value = excluded.value"),
                                     {QString::fromLatin1(key.name), asText(value)});
    if (!set)
        return set.error();
    return Done{};
}

template StoreResult<std::optional<QString>> Store::setting(SettingKey<QString>) const;
template StoreResult<std::optional<bool>> Store::setting(SettingKey<bool>) const;
template StoreResult<std::optional<std::int64_t>> Store::setting(SettingKey<std::int64_t>) const;
template StoreResult<std::optional<double>> Store::setting(SettingKey<double>) const;
template StoreResult<Done> Store::setSetting(SettingKey<QString>, const QString &);
template StoreResult<Done> Store::setSetting(SettingKey<bool>, const bool &);
template StoreResult<Done> Store::setSetting(SettingKey<std::int64_t>, const std::int64_t &);
template StoreResult<Done> Store::setSetting(SettingKey<double>, const double &);

} // namespace matside
