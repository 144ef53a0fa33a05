// SPDX-License-Identifier: MIT
#include "app/shelf.h"

#include "app/demo.h"
#include "app/wording.h"
#include "project/codec.h"

namespace matside {

namespace {

/// So many pieces, the first on the shelf, settle how small all are drawn: a shelf may be long.
constexpr std::size_t measured = 12;

} // namespace

Shelf::Shelf(Workspace &workspace, Session &session) : m_workspace(workspace), m_session(session)
{
    connect(&m_session, &Session::shelfUndone, this, &Shelf::reload);
    connect(&m_session, &Session::viewChanged, this, [this] {
        if (m_session.view() == QStringLiteral("shelf"))
            reload();
    });
    reload();
}

bool Shelf::readable(const ProjectRow &row) const
{
    // Only of a damaged store can a project be listed and not be had.
    const Store &store = m_workspace.store();
    return store.access() != Access::Damaged || store.load(row.id).ok();
}

void Shelf::reload()
{
    beginResetModel();
    m_items.clear();
    m_putAwayCount = 0;
    const auto rows = m_workspace.store().projects(true);
    if (rows)
        for (const ProjectRow &row : rows.value()) {
            if (!readable(row))
                continue;
            m_putAwayCount += row.putAway ? 1 : 0;
            if (m_showPutAway || !row.putAway)
                m_items.push_back({row, {}});
        }
    endResetModel();
    emit countChanged();
    // None is left to hide again.
    if (m_showPutAway && m_putAwayCount == 0) {
        m_showPutAway = false;
        emit showPutAwayChanged();
    }
}

const ShelfPiece &Shelf::lookedAt(const Item &item) const
{
    if (!item.looked) {
        const auto document = m_workspace.store().load(item.row.id);
        ShelfPiece piece;
        if (document)
            piece = shelfPiece(projectIn(document.value()));
        else
            piece.next = storeSentence(document.error());
        item.looked = std::move(piece);
    }
    return *item.looked;
}

int Shelf::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant Shelf::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Item &item = m_items[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Id:
        return item.row.id;
    case Name:
        return item.row.name;
    case PutAway:
        return item.row.putAway;
    case IsDemo:
        return item.row.kind == ProjectKind::Demo;
    default:
        return shown(lookedAt(item), role);
    }
}

QVariant Shelf::shown(const ShelfPiece &piece, int role)
{
    switch (role) {
    case NextText:
        return piece.next;
    case GoesOn:
        return piece.goesOn;
    case View:
        return QVariant::fromValue(piece.view);
    case Face:
        return piece.face;
    case Made:
        return piece.made;
    case Metric:
        return piece.metric;
    case SizeText:
        return piece.size;
    case StitchedText:
        return piece.stitched;
    case Share:
        return piece.share;
    default:
        return {};
    }
}

QHash<int, QByteArray> Shelf::roleNames() const
{
    return {{Id, "id"},           {Name, "name"},     {NextText, "nextText"}, {GoesOn, "goesOn"},
            {PutAway, "putAway"}, {IsDemo, "isDemo"}, {View, "view"},         {Face, "face"},
            {Made, "made"},       {Metric, "metric"}, {SizeText, "sizeText"}, {StitchedText, "stitchedText"},
            {Share, "share"}};
}

double Shelf::longest(double TableView::*way) const
{
    double most = 1;
    for (std::size_t i = 0; i < std::min(measured, m_items.size()); ++i)
        most = std::max(most, lookedAt(m_items[i]).view.*way);
    return most;
}

void Shelf::setShowPutAway(bool show)
{
    if (show == m_showPutAway)
        return;
    m_showPutAway = show;
    emit showPutAwayChanged();
    reload();
}

QString Shelf::nameOf(const QString &id) const
{
    for (const Item &item : m_items)
        if (item.row.id == id)
            return item.row.name;
    return {};
}

template <class T> bool Shelf::after(const StoreResult<T> &done)
{
    if (!done)
        m_session.tell(storeSentence(done.error()));
    reload();
    emit m_session.undoChanged();
    return done.ok();
}

QString Shelf::freeName(const QString &name) const
{
    const auto taken = [this](const QString &wanted) {
        return std::ranges::any_of(m_items, [&](const Item &item) { return item.row.name == wanted; });
    };
    QString free = name;
    for (int number = 2; taken(free); ++number)
        free = QStringLiteral("%1 %2").arg(name).arg(number);
    return free;
}

void Shelf::createProject(const QString &name, const QString &system)
{
    Project project = freshProject(system == QStringLiteral("metric") ? System::Metric : System::Inch);
    project.name = freeName(name).toStdString();
    const auto made = m_workspace.store().create(QString::fromStdString(writeProject(project)));
    if (after(made))
        m_session.openProject(made.value());
}

void Shelf::openDemo()
{
    const QString pristine = demoByCustom();
    if (pristine.isEmpty()) {
        m_session.tell(tr("The demo cannot be read."));
        return;
    }
    const auto demo = m_workspace.store().ensureDemo(pristine);
    if (!after(demo))
        return;
    m_session.openProject(demo.value());
    if (const auto next = nextStep(m_workspace.steps()))
        m_session.setStation(static_cast<int>(m_workspace.steps()[*next].station));
}

void Shelf::makeAgain(const QString &id)
{
    after(m_workspace.store().makeAgain(id, tr("%1, again").arg(nameOf(id))));
}

void Shelf::rename(const QString &id, const QString &name)
{
    if (name.trimmed().isEmpty()) {
        m_session.tell(tr("A project needs a name. The old one was kept."));
        return;
    }
    after(m_workspace.store().rename(id, name.trimmed()));
}

void Shelf::putAway(const QString &id)
{
    after(m_workspace.store().putAway(id));
}

void Shelf::bringBack(const QString &id)
{
    after(m_workspace.store().bringBack(id));
}

void Shelf::throwAway(const QString &id)
{
    after(m_workspace.store().throwAway(id));
}

void Shelf::metricCopy(const QString &id)
{
    after(m_workspace.store().metricCopy(id, tr("%1, in millimetres").arg(nameOf(id))));
}

} // namespace matside
