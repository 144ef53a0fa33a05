// SPDX-License-Identifier: MIT
#include "app/workspace.h"

#include "bench/relay.h"
#include "project/codec.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QUuid>

namespace matside {

QString storeSentence(const StoreError &error)
{
    const auto tell = [](const char *text) { return QCoreApplication::translate("Store", text); };
    switch (error.code) {
    case StoreCode::Disk:
        return tell(
            QT_TRANSLATE_NOOP("Store", "The disk is full. Nothing was lost; free some room and try again."));
    case StoreCode::ReadOnly:
        return tell(
            QT_TRANSLATE_NOOP("Store", "This is open for reading only, so nothing can be changed here."));
    case StoreCode::Busy:
        return tell(QT_TRANSLATE_NOOP("Store", "Another program holds the file. Try again in a moment."));
    case StoreCode::Stale:
        return tell(
            QT_TRANSLATE_NOOP("Store", "The project was changed elsewhere. Open it again from the shelf."));
    case StoreCode::Newer:
        return tell(QT_TRANSLATE_NOOP(
            "Store", "These projects were saved by a newer Matside. They were left as they are."));
    case StoreCode::Damaged:
        return tell(QT_TRANSLATE_NOOP("Store", "The file is damaged. What can be read is shown."));
    case StoreCode::Unsound:
        return tell(QT_TRANSLATE_NOOP(
            "Store", "Something in this project cannot be read. Open it and mend that first; nothing was "
                     "copied."));
    case StoreCode::CannotOpen:
        return tell(QT_TRANSLATE_NOOP(
            "Store", "The folder of the projects cannot be used. Free some room, and see that it may be read "
                     "and written."));
    case StoreCode::NoCopy:
        return tell(QT_TRANSLATE_NOOP(
            "Store", "Your projects are from an earlier Matside. There was no room for the copy that comes "
                     "before they are brought up to date, so they were left as they are. Free some room."));
    case StoreCode::NeedsUpgrade:
        return tell(QT_TRANSLATE_NOOP(
            "Store", "Your projects are from an earlier Matside, and their folder cannot be written, so they "
                     "were left as they are. See that it may be written."));
    case StoreCode::NothingLeft:
        return tell(QT_TRANSLATE_NOOP("Store", "There is nothing left to undo."));
    default:
        return tell(QT_TRANSLATE_NOOP("Store", "That could not be saved: %1")).arg(error.detail);
    }
}

Project projectIn(const QString &document)
{
    const QByteArray text = document.toUtf8();
    auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    return read ? std::move(read.value().project) : Project();
}

namespace {

/// What was noted just now gets a name no other tablet gives; what came from an older file has none.
Project named(Project next, const Project &before)
{
    std::vector<MadeEvent> &events = next.made.events;
    for (std::size_t i = before.made.events.size(); i < events.size(); ++i)
        if (events[i].id.empty())
            events[i].id = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    return next;
}

} // namespace

Workspace::Workspace(Store &store) : m_store(store) {}

const std::vector<Step> &Workspace::steps() const
{
    // Steps are only laid out when someone looks: a drag at Fit needs none.
    if (!m_stepsFresh)
        m_steps = matside::steps(m_shown, m_plan);
    m_stepsFresh = true;
    return m_steps;
}

void Workspace::fail(const StoreError &error)
{
    emit failed(storeSentence(error));
}

void Workspace::take(const QString &document)
{
    m_document = document;
    auto read = readProject(document.toStdString());
    m_faults = read ? std::move(read.value().problems) : std::vector<Problem>{read.error().problem};
    m_saved = read ? std::move(read.value().project) : Project();
    m_shown = m_saved;
    m_previewing = false;
    replan();
}

void Workspace::replan()
{
    m_plan = matside::plan(m_shown);
    m_plan.problems.insert(m_plan.problems.begin(), m_faults.begin(), m_faults.end());
    m_stepsFresh = false;
}

bool Workspace::refusedForFaults()
{
    if (m_faults.empty())
        return false;
    preview(m_saved);
    m_previewing = false;
    emit failed(QCoreApplication::translate(
        "Store", "Something in this project cannot be read. Mend it at Fit first; nothing was changed."));
    return true;
}

bool Workspace::open(const QString &id)
{
    const auto document = m_store.load(id);
    if (!document) {
        fail(document.error());
        return false;
    }
    m_id = id;
    take(document.value());
    if (m_store.canWrite())
        (void)m_store.setSetting(settings::openProject, id);
    emit opened();
    emit changed();
    return true;
}

void Workspace::close()
{
    m_id.clear();
}

bool Workspace::commit(const char *code, const Project &next, const std::string &about)
{
    if (next == m_saved) {
        if (m_previewing)
            preview(m_saved);
        m_previewing = false;
        return true;
    }
    return !refusedForFaults() &&
           write(code, writeProject(named(afterChange(m_saved, next), m_saved)), about,
                 [this](const Command &command) { return m_store.applyEdit(m_id, command); });
}

std::string Workspace::lastAbout() const
{
    const auto command = m_store.undoable(m_id);
    if (!command || !command.value())
        return {};
    const QJsonDocument args = QJsonDocument::fromJson(command.value()->label.args.toUtf8());
    return args.array().at(0).toString().toStdString();
}

bool Workspace::commitText(const char *code, const std::string &document, const std::string &about)
{
    auto read = readProject(document);
    const bool sound = read && read.value().problems.empty();
    const std::string settled =
        sound && m_faults.empty() ? writeProject(afterChange(m_saved, read.value().project)) : document;
    return write(code, settled, about,
                 [this](const Command &command) { return m_store.applyEdit(m_id, command); });
}

bool Workspace::commitBy(const char *code, const Project &next, const std::string &about, const Save &save)
{
    if (!(next == m_saved) && refusedForFaults())
        return false;
    return write(code,
                 next == m_saved ? m_document.toStdString()
                                 : writeProject(named(afterChange(m_saved, next), m_saved)),
                 about, save);
}

bool Workspace::write(const char *code, const std::string &document, const std::string &about,
                      const Save &save)
{
    const QString after = QString::fromStdString(document);
    const QString name = QString::fromLatin1(code);
    const QJsonArray args = about.empty() ? QJsonArray() : QJsonArray{QString::fromStdString(about)};
    const QString told = QString::fromUtf8(QJsonDocument(args).toJson(QJsonDocument::Compact));
    const auto saved = save({{QStringLiteral("edit"), name, told}, m_document, after});
    if (!saved) {
        preview(m_saved);
        m_previewing = false;
        fail(saved.error());
        return false;
    }
    take(after);
    emit changed();
    return true;
}

void Workspace::glance(const Project &next)
{
    preview(next);
    m_glancing = true;
}

void Workspace::preview(const Project &next)
{
    m_shown = next;
    m_previewing = true;
    m_glancing = false;
    replan();
    emit changed();
}

bool Workspace::settle(const char *code)
{
    return !m_previewing || commit(code, m_glancing ? m_saved : Project(m_shown));
}

bool Workspace::undo()
{
    const auto undone = m_store.undo(m_id);
    if (!undone) {
        fail(undone.error());
        return false;
    }
    take(undone.value().document);
    emit changed();
    return true;
}

std::string Workspace::shownText() const
{
    return m_previewing ? writeProject(m_shown) : m_document.toStdString();
}

} // namespace matside
