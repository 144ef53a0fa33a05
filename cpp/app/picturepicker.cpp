// SPDX-License-Identifier: MIT
#include "app/picturepicker.h"

#include <QDir>
#include <QImageReader>
#include <QStandardPaths>

namespace matside {

namespace {

QStringList pictureNames()
{
    QStringList names;
    for (const QByteArray &format : QImageReader::supportedImageFormats())
        names.append(QStringLiteral("*.") + QString::fromLatin1(format));
    return names;
}

} // namespace

PictureFolder::PictureFolder(const QString &root, QObject *parent)
    : QAbstractListModel(parent),
      m_root(QDir(root.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::PicturesLocation) : root)
                 .absolutePath()),
      m_here(m_root)
{
}

int PictureFolder::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant PictureFolder::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Entry &entry = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Name:
        return entry.name;
    case Picture:
        return entry.folder ? QUrl() : QUrl::fromLocalFile(entry.path);
    case IsFolder:
        return entry.folder;
    default:
        return {};
    }
}

QHash<int, QByteArray> PictureFolder::roleNames() const
{
    return {{Name, "name"}, {Picture, "picture"}, {IsFolder, "isFolder"}};
}

QString PictureFolder::title() const
{
    return QDir(m_here).dirName();
}

bool PictureFolder::canGoUp() const
{
    return m_here != m_root;
}

void PictureFolder::refresh()
{
    const QDir here(m_here);
    std::vector<Entry> rows;
    for (const QFileInfo &info :
         here.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot | QDir::Readable, QDir::Name))
        rows.push_back({info.fileName(), info.absoluteFilePath(), true});
    for (const QFileInfo &info : here.entryInfoList(pictureNames(), QDir::Files | QDir::Readable, QDir::Time))
        rows.push_back({info.completeBaseName(), info.absoluteFilePath(), false});
    if (rows.size() > rowsShown)
        rows.resize(rowsShown);
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    emit listed();
}

void PictureFolder::goUp()
{
    QDir up(m_here);
    if (canGoUp() && up.cdUp())
        m_here = up.absolutePath();
    refresh();
}

QString PictureFolder::open(int row)
{
    if (row < 0 || row >= count())
        return {};
    const Entry entry = m_rows[static_cast<std::size_t>(row)];
    if (!entry.folder)
        return entry.path;
    m_here = entry.path;
    refresh();
    return {};
}

PicturePicker::PicturePicker(const QString &root, QObject *parent) : PhotoSource(parent), m_folder(root)
{
    setState(true, true);
}

void PicturePicker::choose(int row)
{
    m_chosen = m_folder.open(row);
    if (!m_chosen.isEmpty())
        capture();
}

void PicturePicker::take()
{
    deliver(m_chosen, false);
}

} // namespace matside
