// SPDX-License-Identifier: MIT
#pragma once

#include "share/sharefault.h"
#include "store/photonotes.h"

#include <map>
#include <optional>

namespace matside {

class ArchiveReader;

/// The names inside a share file.
namespace sharenames {
inline constexpr QLatin1String manifest("manifest.json");
inline constexpr QLatin1String project("project.json");
inline constexpr QLatin1String notes("notes.json");
inline constexpr QLatin1String folder("photographs/");
} // namespace sharenames

/// What a share file says is in it (`manifest.json`, format "matside-share", version 1).
struct Manifest {
    struct File {
        qint64 bytes = 0;
        QByteArray sha; ///< SHA-256 of the unpacked bytes, 64 hexadecimal digits
    };
    QString project;               ///< the project's id: a UUID
    QStringList past = {};         ///< SHA-256 of its documents, newest first: see Store::past()
    std::map<QString, File> files; ///< by name; everything but the manifest
};

/// A share file, or a backup (`format` "matside-backup", no project) with its own bounds.
enum class ManifestKind { Share, Backup };

[[nodiscard]] QByteArray writeManifest(const Manifest &manifest, ManifestKind kind = ManifestKind::Share);
/// Codes: NotAShare, Newer, BadManifest, TooManyFiles.
[[nodiscard]] ShareResult<Manifest> readManifest(const QByteArray &text,
                                                 ManifestKind kind = ManifestKind::Share);

/// The notes of a project (`notes.json`), oldest first. A face names a file of the photographs' folder.
[[nodiscard]] QByteArray writeNotes(const std::vector<Note> &notes);
/// The notes as read: of a photograph only its SHA-256 and its format are known yet. Code: BadNotes.
[[nodiscard]] ShareResult<std::vector<Note>> readNotes(const QByteArray &text);

/// "photographs/SHA.FORMAT".
[[nodiscard]] QString pictureName(const Photograph &photo);
/// The photograph of such a name; nullopt when it is none.
[[nodiscard]] std::optional<Photograph> pictureOf(const QString &name);

[[nodiscard]] QByteArray shaOf(const QByteArray &bytes);
/// A file of the archive, of at most so many bytes, as the manifest means it. Codes: those of
/// ArchiveReader::read(), WrongHash.
[[nodiscard]] ShareResult<QByteArray> readListed(const ArchiveReader &archive, const Manifest &manifest,
                                                 const QString &name, qint64 most);

} // namespace matside
