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

    /// Codes: CannotOpen, NotAnArchive, TooLarge, TooManyFiles, TooTight, OutsidePath, Link, Locked,
    /// UnknownPacking, DoubledFile.
    [[nodiscard]] static ShareResult<std::unique_ptr<ArchiveReader>> open(const QString &path);
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
    explicit ArchiveReader(zip *archive) : m_archive(archive) {}
    [[nodiscard]] ShareResult<bool> lookOver(qint64 fileSize);

    zip *m_archive;
    std::vector<Entry> m_entries; ///< in the order of the archive's own index
};

} // namespace matside
