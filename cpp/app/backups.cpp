// SPDX-License-Identifier: MIT
#include "app/backups.h"

#include "app/sharing.h"
#include "store/files.h"

#include <QDir>
#include <QStandardPaths>

namespace matside {

Backups::Backups(Workspace &workspace, PhotoKeeper &keeper)
    : m_workspace(workspace), m_keeper(keeper),
      m_documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
}

void Backups::say(const QString &words, bool refused)
{
    m_said = words;
    m_refused = refused;
    emit changed();
}

void Backups::away(const std::function<ShareResult<BackedUp>()> &work,
                   const std::function<void(const ShareResult<BackedUp> &)> &then)
{
    m_busy = true;
    emit changed();
    m_keeper.answer<ShareResult<BackedUp>>(this, work, [this, then](const ShareResult<BackedUp> &answer) {
        m_busy = false;
        then(answer);
    });
}

bool Backups::shelfIsEmpty() const
{
    const auto rows = m_workspace.store().projects();
    return rows && std::none_of(rows.value().begin(), rows.value().end(),
                                [](const ProjectRow &row) { return row.kind == ProjectKind::Own; });
}

void Backups::backUp()
{
    if (m_busy)
        return;
    if (!madeFolder(m_documents))
        return say(tr("The folder %1 cannot be made.").arg(m_documents), true);
    //: the name of a file with everything in it
    const QString path = freePath(m_documents, tr("Backup"), backupEnd);
    const auto copy = copyForBackup(m_workspace.store(), path);
    if (!copy)
        return say(storeSentence(copy.error()), true);
    say(tr("Writing the backup…"), false);
    away([database = copy.value(), folder = m_keeper.book().folder(),
          path] { return writeBackup(database, folder, path); },
         [this, path](const ShareResult<BackedUp> &written) {
             if (!written)
                 return say(shareSentence(written.error()), true);
             say(tr("Written to %1 and read back: %2.")
                     .arg(QDir::toNativeSeparators(path),
                          backupWords(written.value()).join(QStringLiteral(", "))),
                 false);
         });
}

void Backups::look(const QString &path)
{
    if (m_busy)
        return;
    leave();
    m_chosen = path;
    away([path] { return lookIntoBackup(path); },
         [this, path](const ShareResult<BackedUp> &found) {
             if (m_chosen == path) {
                 if (!found)
                     m_refusal = shareSentence(found.error());
                 else
                     m_inside = backupWords(found.value());
                 if (found && !shelfIsEmpty())
                     m_refusal =
                         tr("There are projects on the shelf. A backup is put back where nothing is yet: on "
                            "a new tablet, or after a new start with an empty folder.");
             }
             emit changed();
         });
}

void Backups::leave()
{
    m_chosen.clear();
    m_refusal.clear();
    m_inside.clear();
    m_said.clear();
    emit changed();
}

void Backups::restore()
{
    if (m_busy || !ready())
        return;
    away([path = m_chosen, dir = m_keeper.book().dir()] { return stageRestoring(path, dir); },
         [this](const ShareResult<BackedUp> &staged) {
             if (!staged) {
                 m_refusal = shareSentence(staged.error());
                 emit changed();
                 return;
             }
             leave();
             say(tr("All of it lies ready. Close Matside and open it again: then it is on the shelf."),
                 false);
         });
}

} // namespace matside
