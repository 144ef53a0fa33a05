// SPDX-License-Identifier: MIT
#include "app/sharing.h"

#include "app/openfiles.h"
#include "app/wording.h"
#include "project/codec.h"
#include "store/files.h"

#include <QDir>
#include <QStandardPaths>

namespace matside {

Sharing::Sharing(Workspace &workspace, Session &session, PhotoKeeper &keeper)
    : m_workspace(workspace), m_session(session), m_keeper(keeper),
      m_documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
}

void Sharing::setBusy(bool busy)
{
    m_busy = busy;
    emit busyChanged();
}

void Sharing::say(const QString &id, const QString &words, bool refused)
{
    m_sharedId = id;
    m_said = words;
    m_refused = refused;
    emit saidChanged();
}

QString Sharing::pathFor(const QString &name, QLatin1String end) const
{
    const QString own = plainFileName(name, end);
    return freePath(m_documents, own.isEmpty() ? tr("Piece") : own, end);
}

void Sharing::share(const QString &id)
{
    if (m_busy)
        return;
    const auto parcel = gather(m_workspace.store(), m_keeper.book(), id);
    if (!parcel)
        return say(id, storeSentence(parcel.error()), true);
    if (!madeFolder(m_documents))
        return say(id, tr("The folder %1 cannot be made.").arg(m_documents), true);
    const QString path = pathFor(toQt(projectIn(parcel.value().document).name), shareEnd);
    setBusy(true);
    say(id, tr("Writing the file…"), false);
    m_keeper.answer<ShareResult<Done>>(
        this,
        [parcel = parcel.value(), folder = m_keeper.book().folder(), path] {
            return writeShare(parcel, folder, path);
        },
        [this, id, path, document = parcel.value().document](const ShareResult<Done> &done) {
            setBusy(false);
            // Where it was not to be remembered, only more is asked when it comes back.
            if (done)
                (void)m_workspace.store().sentOut(id, document);
            if (done)
                say(id,
                    tr("Written to %1. The photographs in it do not say where or with what they were taken.")
                        .arg(QDir::toNativeSeparators(path)),
                    false);
            else
                say(id, shareSentence(done.error()), true);
        });
}

void Sharing::print(const QString &id, const QString &form)
{
    if (m_busy || !m_printer)
        return;
    const auto document = m_workspace.store().load(id);
    if (!document)
        return say(id, storeSentence(document.error()), true);
    const auto read = readProject(document.value().toStdString());
    if (!read)
        return say(id, sentence(read.error().problem, Marks()), true);
    const Project &project = read.value().project;
    const Plan made = plan(project);
    for (const auto &problems : {read.value().problems, made.problems})
        if (!problems.empty())
            return say(id, sentence(problems.front(), project.marks()), true);
    if (form == QStringLiteral("class") && project.kits < 2)
        return say(id, tr("It is for one maker. Say at the Shop station how many kits a class needs."), true);
    if (!madeFolder(m_documents))
        return say(id, tr("The folder %1 cannot be made.").arg(m_documents), true);
    const QString path = pathFor(toQt(project.name), QLatin1String(".pdf"));
    const QString wrong = m_printer(project, made, path, form);
    if (wrong.isEmpty())
        say(id, tr("Written to %1. Print it at its true size.").arg(QDir::toNativeSeparators(path)), false);
    else
        say(id, wrong, true);
}

void Sharing::look(const QString &path)
{
    if (m_busy)
        return;
    leave();
    m_chosen = path;
    emit chosenChanged();
    setBusy(true);
    m_keeper.answer<ShareResult<Inside>>(
        this, [path] { return lookInside(path); },
        [this, path](const ShareResult<Inside> &found) {
            setBusy(false);
            looked(path, found);
        });
}

void Sharing::looked(const QString &path, const ShareResult<Inside> &found)
{
    if (m_chosen != path) // put back meanwhile
        return;
    m_found = found.ok();
    if (found) {
        m_inside = found.value();
        m_merging.look(m_inside);
    } else
        m_refusal = shareSentence(found.error());
    emit chosenChanged();
}

void Sharing::leave()
{
    m_chosen.clear();
    m_refusal.clear();
    m_inside = {};
    m_found = false;
    m_merging.leave();
    emit chosenChanged();
}

QStringList Sharing::inside() const
{
    return m_found ? insideWords(m_inside) : QStringList();
}

QVariantList Sharing::problems() const
{
    return mendable(m_inside.problems, m_inside.marks);
}

bool Sharing::ready() const
{
    return m_found && m_refusal.isEmpty() && m_inside.problems.empty();
}

void Sharing::takeOffer(int row, int index)
{
    const Offer *offer = offerAt(m_inside.problems, row, index);
    if (!offer)
        return;
    const std::string text = applyOffer(m_inside.parcel.document.toStdString(), *offer);
    auto read = readProject(text);
    if (!read)
        return;
    m_inside.parcel.document = QString::fromStdString(text);
    m_inside.problems = std::move(read.value().problems);
    m_merging.look(m_inside);
    emit chosenChanged();
}

void Sharing::bringIn()
{
    if (m_busy || !ready())
        return;
    fetch(m_inside, [this](const std::vector<Note> &notes) {
        return m_keeper.book().bringIn(m_inside.parcel.project, m_inside.parcel.document, notes);
    });
}

void Sharing::takeIn()
{
    if (m_busy || !ready() || !m_merging.ready())
        return;
    fetch(m_merging.missing(), [this](const std::vector<Note> &notes) { return m_merging.takeIn(notes); });
}

void Sharing::fetch(const Inside &part, const Arrive &arrive)
{
    setBusy(true);
    m_keeper.answer<ShareResult<std::vector<Note>>>(
        this,
        [path = m_chosen, part, folder = m_keeper.book().folder()] {
            return keepPictures(path, part, folder);
        },
        [this, arrive](const ShareResult<std::vector<Note>> &notes) {
            setBusy(false);
            kept(notes, arrive);
        });
}

void Sharing::kept(const ShareResult<std::vector<Note>> &notes, const Arrive &arrive)
{
    if (!notes) {
        m_refusal = shareSentence(notes.error());
        emit chosenChanged();
        return;
    }
    const auto id = arrive(notes.value());
    if (!id) {
        m_refusal = storeSentence(id.error());
        emit chosenChanged();
        return;
    }
    leave();
    emit m_session.undoChanged();
    emit broughtIn(id.value());
}

} // namespace matside
