// SPDX-License-Identifier: MIT
#include "share/unpacking.h"

#include "project/codec.h"
#include "share/archivereader.h"
#include "share/manifest.h"

#include <QFile>

#include <algorithm>

namespace matside {

namespace {

using Archive = std::unique_ptr<ArchiveReader>;

bool isFolder(const ArchiveReader::Entry &entry)
{
    return entry.name == sharenames::folder && entry.bytes == 0;
}

/// Everything in the archive is in the manifest, and the other way round.
ShareResult<Done> compareLists(const ArchiveReader &archive, const Manifest &manifest)
{
    for (const ArchiveReader::Entry &entry : archive.entries()) {
        if (entry.name == sharenames::manifest || isFolder(entry))
            continue;
        const auto listed = manifest.files.find(entry.name);
        if (listed == manifest.files.end())
            return ShareError{ShareCode::StrayFile, entry.name, {}};
        if (listed->second.bytes != entry.bytes)
            return ShareError{ShareCode::WrongHash, entry.name, QString::number(entry.bytes)};
    }
    for (const auto &[name, file] : manifest.files) {
        if (!archive.entry(name))
            return ShareError{ShareCode::MissingFile, name, {}};
        const bool known = name == sharenames::project || name == sharenames::notes || pictureOf(name);
        if (!known)
            return ShareError{ShareCode::StrayFile, name, {}};
    }
    for (const QString &name : {QString(sharenames::project), QString(sharenames::notes)})
        if (!manifest.files.contains(name))
            return ShareError{ShareCode::MissingFile, name, {}};
    return Done{};
}

/// A whole picture, named by its own hash and format.
ShareResult<QByteArray> readPhotograph(const ArchiveReader &archive, const Manifest &manifest,
                                       const Photograph &photo)
{
    const QString name = pictureName(photo);
    auto bytes = readListed(archive, manifest, name, photolimits::bytes);
    if (!bytes)
        return bytes;
    if (QString::fromLatin1(manifest.files.at(name).sha) != photo.sha)
        return ShareError{ShareCode::WrongHash, name, QStringLiteral("its name")};
    const auto looked = lookAt(bytes.value());
    if (!looked || looked.value().format != photo.format)
        return ShareError{ShareCode::NotAPicture, name,
                          looked ? looked.value().format : looked.error().detail};
    return bytes;
}

/// Each photograph once that the notes speak of.
std::vector<Photograph> spokenOf(const std::vector<Note> &notes)
{
    std::vector<Photograph> photos;
    QSet<QString> names;
    for (const Note &note : notes)
        for (const auto &face : note.faces)
            if (face && !names.contains(pictureName(*face))) {
                names.insert(pictureName(*face));
                photos.push_back(*face);
            }
    return photos;
}

ShareResult<Done> lookAtPictures(const ArchiveReader &archive, const Manifest &manifest, Inside &inside)
{
    const std::vector<Photograph> photos = spokenOf(inside.parcel.notes);
    for (const Photograph &photo : photos) {
        const auto bytes = readPhotograph(archive, manifest, photo);
        if (!bytes)
            return bytes.error();
        inside.pictureBytes += bytes.value().size();
    }
    inside.pictures = static_cast<qint64>(photos.size());
    // Nothing comes along that no note shows.
    for (const auto &listed : manifest.files) {
        const auto same = [&](const Photograph &photo) { return pictureName(photo) == listed.first; };
        if (pictureOf(listed.first) && std::none_of(photos.begin(), photos.end(), same))
            return ShareError{ShareCode::StrayFile, listed.first, {}};
    }
    return Done{};
}

ShareResult<Done> readDocument(const QByteArray &text, Inside &inside)
{
    auto read = readProject({text.constData(), static_cast<std::size_t>(text.size())});
    if (!read) {
        const std::string &code = read.error().problem.code;
        return ShareError{code == "version-newer" ? ShareCode::Newer : ShareCode::BadProject,
                          sharenames::project, QString::fromStdString(code)};
    }
    const Project &project = read.value().project;
    inside.parcel.document = QString::fromUtf8(text);
    inside.name = QString::fromStdString(project.name);
    inside.columns = project.blocks.columns;
    inside.rows = project.blocks.rows;
    inside.marks = project.marks();
    const std::vector<MadeBlock> &blocks = project.made.blocks;
    inside.blocksMade =
        std::count_if(blocks.begin(), blocks.end(), [](const MadeBlock &block) { return block.good(); });
    inside.problems = std::move(read.value().problems);
    return Done{};
}

ShareResult<Manifest> manifestOf(const ArchiveReader &archive)
{
    if (!archive.entry(sharenames::manifest))
        return ShareError{ShareCode::NotAShare, sharenames::manifest, {}};
    const auto text = archive.read(sharenames::manifest, sharelimits::text);
    if (!text)
        return text.error();
    auto manifest = readManifest(text.value());
    if (!manifest)
        return manifest;
    if (const auto compared = compareLists(archive, manifest.value()); !compared)
        return compared.error();
    return manifest;
}

} // namespace

ShareResult<Inside> lookInside(const QString &path)
{
    const auto archive = ArchiveReader::open(path);
    if (!archive)
        return archive.error();
    const ArchiveReader &held = *archive.value();
    const auto manifest = manifestOf(held);
    if (!manifest)
        return manifest.error();
    Inside inside;
    inside.parcel.project = manifest.value().project;
    inside.parcel.past = manifest.value().past;
    const auto document = readListed(held, manifest.value(), sharenames::project, sharelimits::text);
    if (!document)
        return document.error();
    if (const auto read = readDocument(document.value(), inside); !read)
        return read.error();
    const auto noted = readListed(held, manifest.value(), sharenames::notes, sharelimits::text);
    if (!noted)
        return noted.error();
    auto notes = readNotes(noted.value());
    if (!notes)
        return notes.error();
    inside.parcel.notes = std::move(notes).value();
    if (const auto pictures = lookAtPictures(held, manifest.value(), inside); !pictures)
        return pictures.error();
    return inside;
}

ShareResult<std::vector<Note>> keepPictures(const QString &path, const Inside &inside,
                                            const PhotoFolder &folder)
{
    const auto archive = ArchiveReader::open(path);
    if (!archive)
        return archive.error();
    const auto manifest = manifestOf(*archive.value());
    if (!manifest)
        return manifest.error();
    QStringList fresh;
    const auto failed = [&](const ShareError &error) {
        for (const QString &file : fresh)
            QFile::remove(file);
        return error;
    };
    std::map<QString, Photograph> kept;
    for (const Photograph &photo : spokenOf(inside.parcel.notes)) {
        const auto bytes = readPhotograph(*archive.value(), manifest.value(), photo);
        if (!bytes)
            return failed(bytes.error());
        for (const QString &file : {folder.original(photo.sha, photo.format), folder.thumb(photo.sha)})
            if (!QFile::exists(file))
                fresh.append(file);
        const auto done = folder.keep(bytes.value());
        if (!done)
            return failed({ShareCode::Disk, pictureName(photo), done.error().detail});
        kept[photo.sha] = done.value();
    }
    std::vector<Note> notes = inside.parcel.notes;
    for (Note &note : notes)
        for (std::optional<Photograph> &face : note.faces)
            if (face)
                face = kept[face->sha];
    return notes;
}

} // namespace matside
