// SPDX-License-Identifier: MIT
#include "app/merging.h"

#include "app/mergewords.h"
#include "app/wording.h"

#include <QSet>

#include <algorithm>

namespace matside {

namespace {

std::optional<Says> saysOf(int saying)
{
    switch (saying) {
    case Merging::ThisTablet:
        return Says::Mine;
    case Merging::OtherTablet:
        return Says::Theirs;
    case Merging::BothTogether:
        return Says::Together;
    default:
        return std::nullopt;
    }
}

int sayingOf(Says says)
{
    return says == Says::Mine     ? Merging::ThisTablet
           : says == Says::Theirs ? Merging::OtherTablet
                                  : Merging::BothTogether;
}

qint64 photographsOf(const std::vector<Note> &notes)
{
    QSet<QString> all;
    for (const Note &note : notes)
        for (const auto &face : note.faces)
            if (face)
                all.insert(face->sha);
    return all.size();
}

} // namespace

Merging::Merging(Workspace &workspace, PhotoKeeper &keeper) : m_workspace(workspace), m_keeper(keeper) {}

int Merging::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> Merging::roleNames() const
{
    return {{Label, "label"},       {Here, "here"}, {There, "there"},
            {Together, "together"}, {Why, "why"},   {Said, "said"}};
}

QVariant Merging::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= count())
        return {};
    const MergeQuestion &asked = m_merged.questions[static_cast<std::size_t>(index.row())];
    const Marks marks = m_project.marks();
    switch (role) {
    case Label:
        return mergeLabel(asked.differs.at, m_project);
    case Here:
        return mergeValue(asked.differs.mine, marks);
    case There:
        return mergeValue(asked.differs.theirs, marks);
    case Together:
        return asked.together.empty() ? QString() : mergeValue(asked.together, marks);
    case Why:
        return asked.bears ? tr("Something made meanwhile hangs on it.")
               : m_base    ? tr("Both tablets changed it.")
                           : tr("Which of the two is newer is not known.");
    case Said: {
        const auto answer = m_answers.find(asked.differs.at);
        return answer == m_answers.end() ? static_cast<int>(Open) : sayingOf(answer->second);
    }
    default:
        return {};
    }
}

QString Merging::name() const
{
    return toQt(m_project.name);
}

QStringList Merging::lines() const
{
    if (!m_possible || !m_refusal.isEmpty())
        return {};
    return mergeLines(m_merged, m_project, static_cast<qint64>(m_notes.size()), photographsOf(m_notes));
}

bool Merging::nothingNew() const
{
    return m_possible && m_refusal.isEmpty() && m_notes.empty() && m_merged.questions.empty() &&
           projectIn(m_mine) == projectIn(QString::fromStdString(m_merged.document));
}

int Merging::unanswered() const
{
    return static_cast<int>(
        std::count_if(m_merged.questions.begin(), m_merged.questions.end(), [&](const MergeQuestion &asked) {
            return m_answers.find(asked.differs.at) == m_answers.end();
        }));
}

bool Merging::ready() const
{
    return m_possible && m_refusal.isEmpty() && unanswered() == 0 && !nothingNew();
}

void Merging::say(int row, int saying)
{
    const auto says = saysOf(saying);
    if (row < 0 || row >= count() || !says)
        return;
    const MergeQuestion &asked = m_merged.questions[static_cast<std::size_t>(row)];
    if (*says == Says::Together && asked.together.empty())
        return;
    m_answers[asked.differs.at] = *says;
    emit dataChanged(index(row), index(row), {Said});
    emit changed();
}

bool Merging::merge()
{
    const std::optional<std::string> base = m_base ? std::optional(m_base->toStdString()) : std::nullopt;
    auto merged =
        mergeProjects(base, m_mine.toStdString(), m_inside.parcel.document.toStdString(), m_answers);
    if (!merged) {
        m_refusal = mergeRefusal(merged.error().code);
        return false;
    }
    m_merged = std::move(merged).value();
    return true;
}

void Merging::look(const Inside &inside)
{
    leave();
    const QString &id = inside.parcel.project;
    const auto mine = m_workspace.store().load(id);
    if (!mine || !inside.problems.empty())
        return; // it is new here, or has to be mended first
    const auto base = m_workspace.store().commonPast(id, inside.parcel.past);
    const auto notes = m_keeper.book().missing(id, inside.parcel.notes);
    beginResetModel();
    m_possible = true;
    m_inside = inside;
    m_mine = mine.value();
    m_project = projectIn(m_mine);
    m_base = base ? base.value() : std::nullopt;
    if (notes)
        m_notes = notes.value();
    else
        m_refusal = storeSentence(notes.error());
    if (m_refusal.isEmpty())
        (void)merge();
    endResetModel();
    emit changed();
}

void Merging::leave()
{
    beginResetModel();
    m_possible = false;
    m_inside = {};
    m_mine.clear();
    m_base.reset();
    m_notes.clear();
    m_project = {};
    m_answers.clear();
    m_merged = {};
    m_refusal.clear();
    endResetModel();
    emit changed();
}

Inside Merging::missing() const
{
    Inside part = m_inside;
    part.parcel.notes = m_notes;
    return part;
}

StoreResult<QString> Merging::takeIn(const std::vector<Note> &notes)
{
    const QString id = m_inside.parcel.project;
    if (!merge())
        return StoreError{StoreCode::Refused, m_refusal};
    const CommandLabel label{QStringLiteral("edit"), QStringLiteral("merge")};
    const auto came = m_keeper.book().takeIn(id, {label, m_mine, QString::fromStdString(m_merged.document)},
                                             notes, m_inside.parcel.document);
    if (!came)
        return came.error();
    return id;
}

} // namespace matside
