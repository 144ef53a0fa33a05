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

QVariant HoopShelf::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Hoop &hoop = m_hoops[static_cast<std::size_t>(index.row())];
    if (role == Name)
        return hoop.name.empty() ? tr("hoop %1").arg(index.row() + 1) : toQt(hoop.name);
    if (role == IsCurrent)
        return current() == index.row();
    if (role == Magnetic)
        return hoop.kind == HoopKind::Magnetic;
    Project with = m_workspace.project();
    with.hoop = hoop;
    const Plan plan = matside::plan(with);
    const Marks marks = with.marks();
    const bool sized = hoop.outside && (hoop.field || hoop.opening);
    const Length room =
        min(plan.basis.field.along - plan.block.sent.along, plan.basis.field.across - plan.block.sent.across);
    switch (role) {
    case Fits:
        return sized && room >= Length();
    case FitSays:
        if (!sized)
            return tr("Measure its field and its outside first.");
        return room < Length() ? tr("The block is %1 too large for its field.").arg(braced(-room, marks))
                               : tr("The block fits, with %1 to spare.").arg(braced(room, marks));
    case TakesSays: {
        if (!sized || plan.strip.perStrip == 0)
            return sized ? tr("No block goes on a strip with it.") : QString();
        const Length cloth = plan.strip.width * plan.strip.strips;
        //: hoop strips: width, how many blocks on each, how much cloth of each layer
        return tr("Strips %1 wide, %2 blocks on each; %3 strips take %4 of each layer.")
            .arg(braced(plan.strip.width, marks))
            .arg(plan.strip.perStrip)
            .arg(plan.strip.strips)
            .arg(braced(cloth, marks));
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> HoopShelf::roleNames() const
{
    return {{Name, "name"},           {Fits, "fits"},           {FitSays, "fitSays"},
            {TakesSays, "takesSays"}, {IsCurrent, "isCurrent"}, {Magnetic, "magnetic"}};
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
