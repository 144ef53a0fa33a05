// SPDX-License-Identifier: MIT
#include "app/gallery.h"

#include "app/blocklog.h"
#include "app/wording.h"
#include "length/read.h"
#include "plan/onstrip.h"
#include "project/spelling.h"

#include <algorithm>
#include <set>

namespace matside {

namespace {

QString codeOf(std::optional<BlockState> state)
{
    return state ? toQt(spelling::wordFor(spelling::blockState, *state)) : QStringLiteral("to-do");
}

QString wordsOf(std::optional<BlockState> state)
{
    if (!state)
        return Gallery::tr("to do");
    switch (*state) {
    case BlockState::Stitched:
        return Gallery::tr("stitched");
    case BlockState::Trimmed:
        return Gallery::tr("trimmed");
    case BlockState::Joined:
        return Gallery::tr("joined");
    case BlockState::Spoiled:
        return Gallery::tr("spoiled");
    case BlockState::Lost:
        return Gallery::tr("lost");
    }
    return {};
}

QString sizeText(Length along, Length across, Marks marks)
{
    return QStringLiteral("{%1} × {%2}").arg(figureText(along, marks), figureText(across, marks));
}

/// A note's lengths as they stand on the ruler; empty when they were not measured.
QString sizeText(const Note &note, const Project &project)
{
    const auto along = readLength(note.along.toStdString(), project.system);
    const auto across = readLength(note.across.toStdString(), project.system);
    //: the size within a block's outer stitches, not that it is cut to
    return along && across
               ? Gallery::tr("stitched %1").arg(sizeText(along.value(), across.value(), project.marks()))
               : QString();
}

/// The block's own name and the names of those whose place it took.
std::set<std::string> lineOf(const Project &project, const std::string &block)
{
    std::set<std::string> names{block};
    for (const MadeBlock &made : project.made.blocks)
        if (made.replaces == block)
            names.insert(made.block);
    for (const MadeBlock &made : project.made.blocks)
        if (made.block == block && !made.replaces.empty())
            names.insert(made.replaces);
    return names;
}

} // namespace

Gallery::Gallery(Workspace &workspace, PhotoKeeper &keeper) : m_workspace(workspace), m_keeper(keeper)
{
    const auto look = [this] {
        if (m_active && !m_workspace.previewing())
            refresh();
    };
    connect(&m_workspace, &Workspace::changed, this, look);
    connect(&m_keeper, &PhotoKeeper::thumbMade, this, [this](const QString &sha) {
        for (int row = 0; row < count(); ++row)
            if (m_rows[static_cast<std::size_t>(row)].sha == sha)
                emit dataChanged(index(row), index(row), {Thumb});
    });
}

int Gallery::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant Gallery::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Cell &cell = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Block:
        return cell.block;
    case State:
        return codeOf(cell.state);
    case StateSays:
        return wordsOf(cell.state);
    case Thumb:
        return m_keeper.thumb(cell.sha, cell.format);
    case Flagged:
        return cell.flagged;
    case Noted:
        return cell.noted;
    case SizeSays:
        return cell.size;
    default:
        return {};
    }
}

QHash<int, QByteArray> Gallery::roleNames() const
{
    return {{Block, "block"},     {State, "blockState"}, {StateSays, "stateSays"}, {Thumb, "thumb"},
            {Flagged, "flagged"}, {Noted, "noted"},      {SizeSays, "sizeSays"}};
}

int Gallery::columns() const
{
    return static_cast<int>(std::max<std::int64_t>(1, m_workspace.project().blocks.columns));
}

int Gallery::pictured() const
{
    return static_cast<int>(
        std::count_if(m_rows.begin(), m_rows.end(), [](const Cell &cell) { return !cell.sha.isEmpty(); }));
}

QVariantList Gallery::tally() const
{
    std::map<std::optional<BlockState>, int> counts;
    for (const Cell &cell : m_rows)
        ++counts[cell.state];
    QVariantList list;
    for (const auto &[state, count] : counts)
        list.append(QVariantMap{{QStringLiteral("state"), codeOf(state)},
                                {QStringLiteral("says"), wordsOf(state)},
                                {QStringLiteral("count"), count}});
    return list;
}

void Gallery::setActive(bool active)
{
    if (active == m_active)
        return;
    m_active = active;
    if (active)
        refresh();
    emit shown();
}

std::vector<Gallery::Cell> Gallery::cells() const
{
    const Project &project = m_workspace.project();
    std::map<QString, NoteBook::Cover> covers;
    if (const auto held = m_keeper.book().covers(m_workspace.id()))
        for (const NoteBook::Cover &cover : held.value())
            covers[cover.block] = cover;
    std::map<std::string, const MadeBlock *> newest;
    for (const MadeBlock &made : project.made.blocks)
        newest[made.block] = &made;
    std::vector<Cell> cells;
    for (const std::string &name : blockNames(project)) {
        Cell cell;
        cell.block = toQt(name);
        const MadeBlock *made = blockAt(project, name);
        if (const auto last = newest.find(name); made == nullptr && last != newest.end())
            made = last->second;
        if (made != nullptr) {
            cell.state = made->state;
            if (made->outline)
                cell.size = sizeText((*made->outline)[0], (*made->outline)[1], project.marks());
        }
        // A spare that took the place shows its own picture.
        auto cover = covers.find(made != nullptr ? toQt(made->block) : cell.block);
        if (cover == covers.end())
            cover = covers.find(cell.block);
        if (cover != covers.end()) {
            cell.sha = cover->second.sha;
            cell.format = cover->second.format;
            cell.flagged = cover->second.flags > 0;
            cell.noted = cover->second.worded;
        }
        cells.push_back(std::move(cell));
    }
    return cells;
}

void Gallery::refresh()
{
    std::vector<Cell> next = cells();
    const auto sameBlock = [](const Cell &a, const Cell &b) { return a.block == b.block; };
    if (next.size() != m_rows.size() || !std::equal(next.begin(), next.end(), m_rows.begin(), sameBlock)) {
        beginResetModel();
        m_rows = std::move(next);
        endResetModel();
    } else {
        // The same blocks: the list keeps its place under the finger.
        for (std::size_t row = 0; row < next.size(); ++row) {
            if (next[row] == m_rows[row])
                continue;
            m_rows[row] = next[row];
            const QModelIndex at = index(static_cast<int>(row));
            emit dataChanged(at, at);
        }
    }
    emit shown();
}

QVariantList Gallery::history(const QString &block) const
{
    std::vector<Note> notes;
    for (const std::string &name : lineOf(m_workspace.project(), block.toStdString()))
        if (const auto held = m_keeper.book().notes(m_workspace.id(), toQt(name)))
            notes.insert(notes.end(), held.value().begin(), held.value().end());
    std::sort(notes.begin(), notes.end(), [](const Note &a, const Note &b) { return a.number > b.number; });
    QVariantList list;
    const auto address = [this](const std::optional<Photograph> &photo) {
        return photo ? QUrl::fromLocalFile(m_keeper.book().folder().original(photo->sha, photo->format))
                     : QUrl();
    };
    for (const Note &note : notes) {
        QStringList flags;
        for (const QString &flag : note.flags)
            flags.append(flagSays(flag));
        list.append(QVariantMap{{QStringLiteral("number"), QVariant::fromValue<qlonglong>(note.number)},
                                {QStringLiteral("block"), note.block},
                                {QStringLiteral("sizeSays"), sizeText(note, m_workspace.project())},
                                {QStringLiteral("flagsSays"), flags.join(QStringLiteral(", "))},
                                {QStringLiteral("words"), note.words},
                                {QStringLiteral("front"), address(note.faces[0])},
                                {QStringLiteral("back"), address(note.faces[1])}});
    }
    return list;
}

} // namespace matside
