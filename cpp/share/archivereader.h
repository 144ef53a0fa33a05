// SPDX-License-Identifier: MIT
#pragma once

#include "share/sharefault.h"

#include <QByteArray>

#include <memory>
#include <vector>

struct zip;

namespace matside {

/// A zip file (PKWARE's application note 6.3) opened for reading and looked over before anything is unpacked:
/// sizes, names, kinds and packing of everything in it. Nothing of it is ever written by this class.
class ArchiveReader {
public:
    struct Entry {
        QString name;
        qint64 bytes = 0; ///< unpacked, as its header says
    };

    /// What may be in it at most.
    struct Bounds {
        qint64 files = sharelimits::files;
        qint64 bytes = sharelimits::bytes; ///< of the file, and of all in it unpacked
        qint64 text = sharelimits::text;   ///< up to this size a file may shrink as it likes
    };

    /// Codes: CannotOpen, NotAnArchive, TooLarge, TooManyFiles, TooTight, OutsidePath, Link, Locked,
    /// UnknownPacking, DoubledFile.
    [[nodiscard]] static ShareResult<std::unique_ptr<ArchiveReader>> open(const QString &path,
                                                                          const Bounds &bounds);
    [[nodiscard]] static ShareResult<std::unique_ptr<ArchiveReader>> open(const QString &path)
    {
        return open(path, Bounds());
    }
    ~ArchiveReader();
    ArchiveReader(const ArchiveReader &) = delete;
    ArchiveReader &operator=(const ArchiveReader &) = delete;

    [[nodiscard]] const std::vector<Entry> &entries() const { return m_entries; }
    /// nullptr: nothing of that name.
    [[nodiscard]] const Entry *entry(const QString &name) const;
    /// All bytes, at most `most`, exactly as many as its header says. Codes: MissingFile, TooLarge, WrongHash
    /// (its checksum or its size is wrong).
    [[nodiscard]] ShareResult<QByteArray> read(const QString &name, qint64 most) const;

private:
    ArchiveReader(zip *archive, const Bounds &bounds) : m_archive(archive), m_bounds(bounds) {}
    [[nodiscard]] ShareResult<bool> lookOver(qint64 fileSize);

    zip *m_archive;
    Bounds m_bounds;
    std::vector<Entry> m_entries; ///< in the order of the archive's own index
};

/// A backup holds every project, and its photographs as they came.
inline constexpr ArchiveReader::Bounds backupBounds{200'000, qint64{200} << 30U, qint64{64} << 20U};

} // namespace matside
