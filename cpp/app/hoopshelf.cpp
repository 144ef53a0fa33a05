// SPDX-License-Identifier: MIT
#include "app/hoopshelf.h"

#include "app/figures.h"
#include "app/reply.h"
#include "app/wording.h"
#include "length/read.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <array>

namespace matside {

namespace {

constexpr SettingKey<QString> hoopsKey{"hoops"};
constexpr int most = 40;

/// Which measures a hoop has, in the order they are asked.
struct Measure {
    const char *key;
    const char *says;
};
constexpr std::array measuresAsked{
    Measure{"field-along", QT_TRANSLATE_NOOP("HoopShelf", "stitching field, along")},
    Measure{"field-across", QT_TRANSLATE_NOOP("HoopShelf", "stitching field, across")},
    Measure{"opening-along", QT_TRANSLATE_NOOP("HoopShelf", "opening inside the frame, along")},
    Measure{"opening-across", QT_TRANSLATE_NOOP("HoopShelf", "opening inside the frame, across")},
    Measure{"outside-along", QT_TRANSLATE_NOOP("HoopShelf", "outside of the frame, along")},
    Measure{"outside-across", QT_TRANSLATE_NOOP("HoopShelf", "outside of the frame, across")},
    //: sandwich: top, batting and back together
    Measure{"sandwich", QT_TRANSLATE_NOOP("HoopShelf", "thickest sandwich it holds")},
};

std::optional<Length> get(const Hoop &hoop, const QString &key)
{
    const auto part = [&](const std::optional<Pair> &pair) -> std::optional<Length> {
        if (!pair)
            return std::nullopt;
        return key.endsWith(QStringLiteral("along")) ? pair->along : pair->across;
    };
    if (key.startsWith(QStringLiteral("field")))
        return part(hoop.field);
    if (key.startsWith(QStringLiteral("opening")))
        return part(hoop.opening);
    if (key.startsWith(QStringLiteral("outside")))
        return part(hoop.outside);
    return hoop.sandwich;
}

void put(Hoop &hoop, const QString &key, Length value)
{
    // The other side starts alike: most hoops are square.
    const auto part = [&](std::optional<Pair> &pair) {
        if (!pair)
            pair = Pair{value, value};
        else
            (key.endsWith(QStringLiteral("along")) ? pair->along : pair->across) = value;
    };
    if (key.startsWith(QStringLiteral("field")))
        part(hoop.field);
    else if (key.startsWith(QStringLiteral("opening")))
        part(hoop.opening);
    else if (key.startsWith(QStringLiteral("outside")))
        part(hoop.outside);
    else
        hoop.sandwich = value;
}

QJsonObject toJson(const Hoop &hoop)
{
    QJsonObject object{{QStringLiteral("name"), toQt(hoop.name)},
                       {QStringLiteral("kind"), hoop.kind == HoopKind::Magnetic ? QStringLiteral("magnetic")
                                                                                : QStringLiteral("ring")},
                       {QStringLiteral("bracket"), toQt(hoop.bracket)}};
    for (const Measure &measure : measuresAsked) {
        const QString key = QLatin1String(measure.key);
        if (const auto value = get(hoop, key))
            object.insert(key, toQt(writeLength(*value, System::Inch)));
    }
    return object;
}

Hoop fromJson(const QJsonObject &object)
{
    Hoop hoop;
    hoop.name = object.value(QStringLiteral("name")).toString().toStdString();
    hoop.kind = object.value(QStringLiteral("kind")).toString() == QStringLiteral("magnetic")
                    ? HoopKind::Magnetic
                    : HoopKind::Ring;
    hoop.bracket = object.value(QStringLiteral("bracket")).toString().toStdString();
    for (const Measure &measure : measuresAsked) {
        const QString key = QLatin1String(measure.key);
        const auto value = readLength(object.value(key).toString().toStdString(), System::Inch);
        if (value && value.value() > Length())
            put(hoop, key, value.value());
    }
    return hoop;
}

bool same(Hoop a, Hoop b)
{
    a.rest = b.rest = {};
    return a == b;
}

} // namespace

HoopShelf::HoopShelf(Workspace &workspace, Session &session) : m_workspace(workspace), m_session(session)
{
    read();
    connect(&m_workspace, &Workspace::changed, this, &HoopShelf::refresh);
    // A project opened on another page brings its hoop along when she comes to where it is chosen.
    connect(&m_session, &Session::stationChanged, this, &HoopShelf::refresh);
}

void HoopShelf::read()
{
    const auto kept = m_workspace.store().setting(hoopsKey);
    if (!kept || !kept.value())
        return;
    const QJsonArray list = QJsonDocument::fromJson(kept.value()->toUtf8()).array();
    for (const auto &value : list)
        if (value.isObject() && count() < most)
            m_hoops.push_back(fromJson(value.toObject()));
}

bool HoopShelf::keep()
{
    QJsonArray list;
    for (const Hoop &hoop : m_hoops)
        list.append(toJson(hoop));
    const QString text = QString::fromUtf8(QJsonDocument(list).toJson(QJsonDocument::Compact));
    const bool kept = static_cast<bool>(m_workspace.store().setSetting(hoopsKey, text));
    if (!kept)
        m_session.tell(tr("The hoops could not be saved."));
    return kept;
}

void HoopShelf::refresh()
{
    if (m_workspace.previewing() || m_session.station() == static_cast<int>(Station::Fit))
        return;
    // A hoop that came with the project joins the shelf, so that it can be compared and chosen again.
    const Hoop &own = m_workspace.project().hoop;
    if (m_workspace.isOpen() && own.outside && current() < 0 && count() < most && !m_session.readOnly()) {
        beginInsertRows({}, count(), count());
        m_hoops.push_back(own);
        endInsertRows();
        (void)keep();
        emit countChanged();
    }
    if (count() > 0)
        emit dataChanged(index(0), index(count() - 1));
    emit currentChanged();
}

int HoopShelf::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

int HoopShelf::current() const
{
    for (int row = 0; row < count(); ++row)
        if (same(m_hoops[static_cast<std::size_t>(row)], m_workspace.project().hoop))
            return row;
    return -1;
}

void HoopShelf::choose(int row)
{
    if (!known(row) || m_session.readOnly())
        return;
    Project next = m_workspace.project();
    const std::string rest = next.hoop.rest;
    next.hoop = m_hoops[static_cast<std::size_t>(row)];
    next.hoop.rest = rest;
    (void)m_workspace.commit("hoop", next);
}

void HoopShelf::add()
{
    if (count() >= most || m_session.readOnly())
        return;
    beginInsertRows({}, count(), count());
    m_hoops.emplace_back();
    m_hoops.back().name = tr("new hoop").toStdString();
    endInsertRows();
    (void)keep();
    emit countChanged();
}

void HoopShelf::remove(int row)
{
    if (!known(row) || row == current() || m_session.readOnly())
        return;
    beginRemoveRows({}, row, row);
    m_hoops.erase(m_hoops.begin() + row);
    endRemoveRows();
    (void)keep();
    emit countChanged();
}

QVariantList HoopShelf::measures(int row) const
{
    QVariantList list;
    if (!known(row))
        return list;
    const Hoop &hoop = m_hoops[static_cast<std::size_t>(row)];
    for (const Measure &measure : measuresAsked) {
        const QString key = QLatin1String(measure.key);
        const auto value = get(hoop, key);
        const FigureView figure = value ? figureOf(*value, m_workspace.project().marks()) : FigureView();
        list.append(QVariantMap{{QStringLiteral("key"), key},
                                {QStringLiteral("says"), tr(measure.says)},
                                {QStringLiteral("figure"), QVariant::fromValue(figure)},
                                {QStringLiteral("known"), value.has_value()}});
    }
    return list;
}

QVariantMap HoopShelf::enter(int row, const QString &key, const QString &text)
{
    if (!known(row) || m_session.readOnly())
        return answer(false, tr("Nothing can be changed now."));
    const System system = m_workspace.project().system;
    const auto read = readLength(text.toStdString(), system);
    if (!read)
        return answer(false, sentence(read.error(), system));
    if (read.value() <= Length() || read.value() > Length::mm(2000))
        return answer(false, tr("A hoop measures between nothing and two metres."));
    const bool own = row == current();
    put(m_hoops[static_cast<std::size_t>(row)], key, read.value());
    (void)keep();
    if (own)
        choose(row);
    refresh();
    return answer(true, QString());
}

void HoopShelf::nudge(int row, const QString &key, int marks)
{
    if (!known(row) || m_session.readOnly())
        return;
    Hoop &hoop = m_hoops[static_cast<std::size_t>(row)];
    const Length mark = m_workspace.project().finest;
    const Length next = get(hoop, key).value_or(Length()).nearestTo(mark) + mark * marks;
    if (next <= Length() || next > Length::mm(2000))
        return;
    const bool own = row == current();
    put(hoop, key, next);
    (void)keep();
    if (own)
        choose(row);
    refresh();
}

void HoopShelf::rename(int row, const QString &name)
{
    if (!known(row) || m_session.readOnly())
        return;
    const bool own = row == current();
    m_hoops[static_cast<std::size_t>(row)].name = name.left(80).toStdString();
    (void)keep();
    if (own)
        choose(row);
    refresh();
}

void HoopShelf::setMagnetic(int row, bool magnetic)
{
    if (!known(row) || m_session.readOnly())
        return;
    const bool own = row == current();
    m_hoops[static_cast<std::size_t>(row)].kind = magnetic ? HoopKind::Magnetic : HoopKind::Ring;
    (void)keep();
    if (own)
        choose(row);
    refresh();
}

void HoopShelf::setBracket(int row, const QString &side)
{
    if (!known(row) || m_session.readOnly())
        return;
    const bool own = row == current();
    m_hoops[static_cast<std::size_t>(row)].bracket = side.toStdString();
    (void)keep();
    if (own)
        choose(row);
    refresh();
}

QString HoopShelf::bracket(int row) const
{
    return known(row) ? toQt(m_hoops[static_cast<std::size_t>(row)].bracket) : QString();
}

} // namespace matside
