// SPDX-License-Identifier: MIT
#include "app/openfiles.h"

#include "app/reply.h"
#include "app/wording.h"
#include "project/codec.h"
#include "share/backup.h"
#include "share/parcel.h"
#include "store/files.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryFile>

namespace matside {

namespace {

constexpr qint64 largestFile = qint64{4} * 1024 * 1024; ///< the codec's own bound
constexpr qint64 probed = qint64{64} * 1024;
constexpr int mostEntries = 500;
constexpr int longestName = 80;
constexpr QLatin1String jsonEnd(".json");

/// Whether a file says that it is a project, near its beginning.
bool looksLikeProject(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.read(probed).contains("\"matside-project\"");
}

} // namespace

QString plainFileName(const QString &name, QLatin1String end)
{
    static const QRegularExpression odd(QStringLiteral("[\\x00-\\x1f/\\\\:*?\"<>|]+"));
    QString plain = QString(name).replace(odd, QStringLiteral(" ")).simplified();
    while (plain.startsWith(u'.'))
        plain.remove(0, 1);
    if (plain.endsWith(end, Qt::CaseInsensitive))
        plain.chop(end.size());
    return plain.left(longestName).trimmed();
}

QVariantList mendable(const std::vector<Problem> &problems, Marks marks)
{
    QVariantList list;
    for (const Problem &problem : problems) {
        QVariantList offers;
        for (std::size_t i = 0; i < problem.offers.size(); ++i)
            offers.append(QVariantMap{{QStringLiteral("says"), sentence(problem.offers[i], marks)},
                                      {QStringLiteral("index"), static_cast<int>(i)}});
        list.append(QVariantMap{{QStringLiteral("says"), sentence(problem, marks)},
                                {QStringLiteral("offers"), offers}});
    }
    return list;
}

const Offer *offerAt(const std::vector<Problem> &problems, int row, int index)
{
    if (row < 0 || static_cast<std::size_t>(row) >= problems.size() || index < 0)
        return nullptr;
    const std::vector<Offer> &offers = problems[static_cast<std::size_t>(row)].offers;
    return static_cast<std::size_t>(index) < offers.size() ? &offers[static_cast<std::size_t>(index)]
                                                           : nullptr;
}

OpenFiles::OpenFiles(Workspace &workspace)
    : m_workspace(workspace), m_documents(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
    connect(&m_workspace, &Workspace::opened, this, &OpenFiles::nameForFileChanged);
}

int OpenFiles::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant OpenFiles::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Entry &entry = m_entries[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Name:
        return entry.name;
    case Path:
        return entry.path;
    case IsFolder:
        return entry.folder;
    case IsShare:
        return entry.share;
    case IsBackup:
        return entry.backup;
    default:
        return {};
    }
}

QHash<int, QByteArray> OpenFiles::roleNames() const
{
    return {
        {Name, "name"}, {Path, "path"}, {IsFolder, "isFolder"}, {IsShare, "isShare"}, {IsBackup, "isBackup"}};
}

bool OpenFiles::canGoUp() const
{
    return !m_folder.isEmpty() && !QDir(m_folder).isRoot();
}

void OpenFiles::show(const QString &folder)
{
    const QDir dir(folder);
    beginResetModel();
    m_folder = dir.absolutePath();
    m_entries.clear();
    const QDir::SortFlags byName = QDir::Name | QDir::IgnoreCase | QDir::LocaleAware;
    const auto folders = dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot | QDir::Readable, byName);
    for (const QFileInfo &info : folders.first(std::min<qsizetype>(folders.size(), mostEntries)))
        m_entries.push_back({info.fileName(), info.absoluteFilePath(), true, false, false});
    int files = 0;
    for (const QFileInfo &info : dir.entryInfoList(
             {QStringLiteral("*.json"), QStringLiteral("*.matside"), QStringLiteral("*.matside-backup")},
             QDir::Files, byName)) {
        const bool share = info.fileName().endsWith(shareEnd, Qt::CaseInsensitive);
        const bool backup = info.fileName().endsWith(backupEnd, Qt::CaseInsensitive);
        if (files >= mostEntries || (!share && !backup && !looksLikeProject(info.absoluteFilePath())))
            continue;
        m_entries.push_back({info.completeBaseName(), info.absoluteFilePath(), false, backup, share});
        ++files;
    }
    endResetModel();
    emit folderChanged();
}

void OpenFiles::showDocuments()
{
    show(QDir(m_documents).exists() ? m_documents : QDir::homePath());
}

void OpenFiles::goUp()
{
    QDir dir(m_folder);
    if (dir.cdUp())
        show(dir.absolutePath());
}

void OpenFiles::read(std::string text)
{
    m_text = std::move(text);
    m_problems.clear();
    m_refusal.clear();
    auto read = readProject(m_text);
    if (read) {
        m_name = toQt(read.value().project.name);
        m_marks = read.value().project.marks();
        m_problems = std::move(read.value().problems);
    } else {
        m_refusal = sentence(read.error().problem, Marks());
    }
    emit chosenChanged();
}

void OpenFiles::look(const QString &path)
{
    m_chosen = path;
    m_name.clear();
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        m_text.clear();
        m_problems.clear();
        m_refusal = tr("The file cannot be read.");
        emit chosenChanged();
        return;
    }
    // One byte more than the most: the codec says what is too large.
    read(file.read(largestFile + 1).toStdString());
}

void OpenFiles::leave()
{
    m_chosen.clear();
    m_name.clear();
    m_refusal.clear();
    m_text.clear();
    m_problems.clear();
    emit chosenChanged();
}

QVariantList OpenFiles::problems() const
{
    return mendable(m_problems, m_marks);
}

bool OpenFiles::ready() const
{
    return !m_chosen.isEmpty() && m_refusal.isEmpty() && m_problems.empty();
}

void OpenFiles::takeOffer(int row, int index)
{
    if (const Offer *offer = offerAt(m_problems, row, index))
        read(applyOffer(m_text, *offer));
}

QString OpenFiles::open()
{
    if (!ready())
        return {};
    const auto made = m_workspace.store().create(QString::fromStdString(m_text));
    if (!made) {
        m_refusal = storeSentence(made.error());
        emit chosenChanged();
        return {};
    }
    leave();
    return made.value();
}

QString OpenFiles::pathFor(const QString &name) const
{
    return QDir(m_documents).filePath(name + jsonEnd);
}

QString OpenFiles::nameForFile() const
{
    const QString own = plainFileName(toQt(m_workspace.project().name), jsonEnd);
    const QString path = freePath(m_documents, own.isEmpty() ? tr("Piece") : own, jsonEnd);
    return QFileInfo(path).completeBaseName();
}

QVariantMap OpenFiles::write(const QString &name)
{
    const QString plain = plainFileName(name, jsonEnd);
    if (plain.isEmpty())
        return answer(false, tr("The file needs a name."));
    const QString path = pathFor(plain);
    if (QFile::exists(path))
        return answer(
            false,
            tr("There is a file “%1” already, and it was left as it is. Choose another name.").arg(plain));
    if (!madeFolder(m_documents))
        return answer(false, tr("The folder %1 cannot be made.").arg(m_documents));
    // Written whole under a passing name first; a file that came meanwhile is not written over.
    QTemporaryFile passing(path + QStringLiteral(".XXXXXX"));
    const QByteArray text = m_workspace.document().toUtf8();
    if (!passing.open() || passing.write(text) != text.size() || !flushed(passing))
        return answer(false, tr("The file could not be written: %1").arg(passing.errorString()));
    passing.close();
    if (!namedForGood(passing.fileName(), path))
        return answer(false, tr("The file could not be written to %1.").arg(m_documents));
    passing.setAutoRemove(false);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ReadGroup | QFile::ReadOther);
    emit nameForFileChanged();
    return answer(true, tr("Written to %1").arg(QDir::toNativeSeparators(path)));
}

} // namespace matside
