// SPDX-License-Identifier: MIT
#include "share/parcel.h"

#include "share/archivewriter.h"
#include "share/bare.h"
#include "share/manifest.h"
#include "share/unpacking.h"
#include "store/files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <map>

namespace matside {

namespace {

/// Photographs on their way into the file, by the SHA-256 they have in the store.
class Outgoing {
public:
    Outgoing(const PhotoFolder &folder, Photographs as, QString passing)
        : m_folder(folder), m_as(as), m_passing(std::move(passing))
    {
    }

    /// The photograph as it goes out, and its bytes beside the others in the passing folder.
    ShareResult<Photograph> take(const Photograph &photo)
    {
        if (const auto held = m_taken.find(photo.sha); held != m_taken.end())
            return held->second;
        if (m_taken.size() >= static_cast<std::size_t>(sharelimits::pictures))
            return ShareError{ShareCode::TooManyFiles, {}, QString::number(sharelimits::pictures)};
        const QString name = pictureName(photo);
        const auto bytes = readPicture(m_folder.original(photo.sha, photo.format));
        if (!bytes)
            return ShareError{ShareCode::NoPicture, name, bytes.error().detail};
        Bare bare{bytes.value(), photo.format};
        if (m_as == Photographs::Bare) {
            auto made = bareOf(bytes.value());
            if (!made)
                return ShareError{ShareCode::NoPicture, name, made.error().detail};
            bare = std::move(made).value();
        }
        const Photograph out{QString::fromLatin1(shaOf(bare.bytes)), bare.format, bare.bytes.size(), {}};
        m_bytes += bare.bytes.size();
        if (m_bytes > sharelimits::bytes)
            return ShareError{ShareCode::TooLarge, name, QString::number(m_bytes)};
        QFile file(pathOf(out));
        if (!file.open(QIODevice::WriteOnly) || file.write(bare.bytes) != bare.bytes.size() || !file.flush())
            return ShareError{ShareCode::Disk, name, file.errorString()};
        m_taken.emplace(photo.sha, out);
        return out;
    }

    [[nodiscard]] QString pathOf(const Photograph &photo) const
    {
        return QDir(m_passing).filePath(photo.sha + u'.' + photo.format);
    }
    [[nodiscard]] const std::map<QString, Photograph> &taken() const { return m_taken; }

private:
    const PhotoFolder &m_folder;
    Photographs m_as;
    QString m_passing;
    std::map<QString, Photograph> m_taken;
    qint64 m_bytes = 0;
};

ShareResult<std::vector<Note>> outgoing(const std::vector<Note> &notes, Outgoing &photos)
{
    std::vector<Note> all = notes;
    for (Note &note : all)
        for (std::optional<Photograph> &face : note.faces) {
            if (!face)
                continue;
            const auto out = photos.take(*face);
            if (!out)
                return out.error();
            face = out.value();
        }
    return all;
}

/// What was written says the same as what was meant.
ShareResult<Done> readBack(const QString &path, const Parcel &meant)
{
    const auto inside = lookInside(path);
    if (!inside)
        return inside.error();
    const Parcel &held = inside.value().parcel;
    const bool same = held.project == meant.project && held.document == meant.document &&
                      held.past == meant.past && writeNotes(held.notes) == writeNotes(meant.notes);
    if (!same)
        return ShareError{ShareCode::Disk, {}, QStringLiteral("it does not read as it was written")};
    return Done{};
}

} // namespace

StoreResult<Parcel> gather(const Store &store, const NoteBook &book, const QString &project)
{
    auto document = store.load(project);
    if (!document)
        return document.error();
    auto notes = book.notes(project);
    if (!notes)
        return notes.error();
    // A past that cannot be read keeps nothing from being shared: it only makes more to be asked later.
    const auto past = store.past(project);
    return Parcel{project, std::move(document).value(), std::move(notes).value(),
                  past ? past.value() : QStringList()};
}

ShareResult<Done> writeShare(const Parcel &parcel, const PhotoFolder &folder, const QString &path,
                             Photographs photographs)
{
    if (QFile::exists(path))
        return ShareError{ShareCode::Exists, {}, path};
    // Beside the file, so that it is renamed, not copied; and gone with everything in it whatever happens.
    const QTemporaryDir passing(QFileInfo(path).absoluteDir().filePath(QStringLiteral(".matside-XXXXXX")));
    if (!passing.isValid())
        return ShareError{ShareCode::Disk, {}, passing.errorString()};
    Outgoing photos(folder, photographs, passing.path());
    auto notes = outgoing(parcel.notes, photos);
    if (!notes)
        return notes.error();
    const Parcel meant{parcel.project, parcel.document, std::move(notes).value(), parcel.past};

    ArchiveWriter archive;
    Manifest manifest;
    manifest.project = meant.project;
    manifest.past = meant.past;
    const QByteArray document = meant.document.toUtf8();
    const QByteArray noted = writeNotes(meant.notes);
    manifest.files[sharenames::project] = {document.size(), shaOf(document)};
    manifest.files[sharenames::notes] = {noted.size(), shaOf(noted)};
    for (const auto &[before, photo] : photos.taken())
        manifest.files[pictureName(photo)] = {photo.bytes, photo.sha.toLatin1()};
    archive.addText(sharenames::manifest, writeManifest(manifest));
    archive.addText(sharenames::project, document);
    archive.addText(sharenames::notes, noted);
    for (const auto &[name, file] : manifest.files)
        if (const auto photo = pictureOf(name))
            archive.addFile(name, photos.pathOf(*photo));
    const QString part = QDir(passing.path()).filePath(QStringLiteral("share.part"));
    if (auto done = archive.write(part); !done)
        return done;
    if (auto same = readBack(part, meant); !same)
        return same;
    if (!namedForGood(part, path))
        return ShareError{QFile::exists(path) ? ShareCode::Exists : ShareCode::Disk, {}, path};
    return Done{};
}

} // namespace matside
